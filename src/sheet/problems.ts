// The problems of a sheet's file, with their words. Places are in the file.
import { kind, problemMaker, replace } from '../text/problem.ts';

/** Problems of the file's structure. */
export const sheetProblem = problemMaker({
  'block-not-at-margin': kind<object>(
    'warning',
    () => 'This calc block is not evaluated: it must stand at the margin, outside lists and quotes, its first line in the first column',
  ),
  'info-string-near': kind<{ info: string }>(
    'warning',
    (f) => `This block is not evaluated: its first line names it \`${f.info}\`; a calc block is named \`ampwright\``,
    (_, at) => [replace('Write `ampwright`', at, 'ampwright')],
  ),
  'block-not-closed': kind<{ fence: string }>(
    'error',
    (f) => `This calc block is never closed, so the rest of the file belongs to it; close it with a line ${f.fence}`,
  ),
  'fence-in-block': kind<{ fence: string }>(
    'error',
    (f) =>
      `The marks of another block stand inside this calc block; the block above was probably not closed: put a line ${f.fence} where it ends`,
  ),
  'direction-control': kind<{ characters: string }>(
    'warning',
    (f) => `${f.characters} changes the direction of the text, so that it reads otherwise than it stands in the file; remove it`,
    (_, at) => [replace('Remove it', at, '')],
  ),
  'conflict-markers': kind<object>(
    'error',
    () => 'A merge left conflict markers here; nothing in them is evaluated, and no results are recorded until one side is chosen',
  ),
  'results-conflict': kind<object>(
    'error',
    () => 'A merge left conflict markers in the recorded results; choose between the formulas first, then record the results anew',
  ),
  'results-without-block': kind<object>(
    'error',
    () => 'These recorded results have no calc block directly above them, so nothing keeps them up to date; delete them',
    (_, at) => [replace('Delete these results', at, '')],
  ),
  'results-twice': kind<object>(
    'error',
    () => 'The calc block above has its recorded results already; delete these',
    (_, at) => [replace('Delete these results', at, '')],
  ),
  'results-not-closed': kind<object>(
    'error',
    () =>
      'These recorded results do not end with a line `<!-- end results -->`; only table rows may stand in them. Recording writes them anew',
  ),
  'results-end-alone': kind<object>(
    'error',
    () => 'This line ends recorded results that do not begin; delete it',
    (_, at) => [replace('Delete the line', at, '')],
  ),
  'front-matter-not-closed': kind<object>(
    'error',
    () => 'The front matter opens here with `---` but no later line `---` closes it, so it is read as prose',
  ),
});

/** Problems of the front matter. */
export const frontMatterProblem = problemMaker({
  'front-matter-syntax': kind<{ key: string | null; because: string }>(
    'error',
    (f) => `${f.key ? `\`${f.key}\`` : 'This'} is no valid YAML: ${f.because}`,
  ),
  'front-matter-line': kind<object>('error', () => 'The front matter holds lines `key: value`; this is none'),
  'front-matter-key-twice': kind<{ key: string }>('error', (f) => `\`${f.key}\` stands in the front matter twice; the first one counts`),
  'front-matter-key-unknown': kind<{ key: string; near: readonly string[] }>(
    'warning',
    (f) =>
      `\`${f.key}\` means nothing to Ampwright and is kept as it is${f.near.length > 0 ? `; did you mean \`${f.near.join('`, `')}\`` : ''}`,
    (f, at) => f.near.map((name) => replace(`Write \`${name}\``, at, name)),
  ),
  'front-matter-value': kind<{ key: string; wanted: string }>('error', (f) => `\`${f.key}\` ${f.wanted}`),
  'front-matter-reference': kind<object>(
    'error',
    () => 'YAML anchors and aliases (`&a`, `*a`) are not read here; write the value out, or in quotes if it begins so',
  ),
});

/** Problems of values in prose. */
export const proseProblem = problemMaker({
  'value-and-heading': kind<{ target: string }>(
    'error',
    (f) => `\`${f.target}\` is the name of an entry and of a heading, so this link is not kept up to date; rename one of them`,
  ),
  'link-leads-nowhere': kind<{ target: string }>(
    'warning',
    (f) => `No entry and no heading is named \`${f.target}\`, so this value is not kept up to date`,
  ),
});

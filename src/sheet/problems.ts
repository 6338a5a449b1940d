// The problems of a sheet's file, with their words. Places are in the file.
import { kind, problemMaker, replace } from '../text/problem.ts';

/** Problems of the file's structure; front matter and tables have tables of their own. */
export const sheetProblem = problemMaker({
  'block not at margin': kind<object>(
    'warning',
    () => 'this calc block is not evaluated: it must stand at the margin, outside lists and quotes, with its fence in the first column',
  ),
  'info string near': kind<{ info: string }>(
    'warning',
    (f) => `this block is not evaluated: its info string is \`${f.info}\`; a calc block has \`ampwright\``,
    (_, at) => [replace('Write `ampwright`', at, 'ampwright')],
  ),
  'block not closed': kind<{ fence: string }>(
    'error',
    (f) => `this calc block is never closed, so the rest of the file belongs to it; close it with a line \`${f.fence}\``,
  ),
  'fence in block': kind<{ fence: string }>(
    'error',
    (f) => `a fence opens inside a calc block; the block above was probably not closed: put a line \`${f.fence}\` where it ends`,
  ),
  'conflict markers': kind<object>(
    'error',
    () => 'a merge left conflict markers here; nothing in them is evaluated and the file is not written until one side is chosen',
  ),
  'results conflict': kind<object>(
    'error',
    () => 'a merge left conflict markers in the recorded results; choose between the formulas first, then record the results anew',
  ),
  'results without block': kind<object>(
    'error',
    () => 'these recorded results have no calc block directly above them, so nothing keeps them up to date; delete them',
    (_, at) => [replace('Delete these results', at, '')],
  ),
  'results twice': kind<object>(
    'error',
    () => 'the calc block above has its recorded results already; delete these',
    (_, at) => [replace('Delete these results', at, '')],
  ),
  'results not closed': kind<object>(
    'error',
    () =>
      'these recorded results do not end with a line `<!-- end results -->`; only table rows may stand in them. Recording writes them anew',
  ),
  'results end alone': kind<object>(
    'error',
    () => 'this line ends recorded results that do not begin; delete it',
    (_, at) => [replace('Delete the line', at, '')],
  ),
  'front matter not closed': kind<object>(
    'error',
    () => 'the front matter opens here with `---` but no later line `---` closes it, so it is read as prose',
  ),
});

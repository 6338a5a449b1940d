// `ampwright compare OLD NEW`, `ampwright compare --since REV SHEET`: what changed in meaning.
import { Option } from 'commander';
import { comparePaths, compareSince } from '../../node/compare.ts';
import { GitError } from '../../node/git.ts';
import { comparisonsMarkdown } from '../../report/comparison/markdown.ts';
import { comparisonsPage } from '../../report/comparison/page.ts';
import type { Comparisons } from '../../review/comparisons.ts';
import type { Declare } from '../command.ts';
import { printComparisons } from '../compared.ts';
import type { Stream } from '../terminal.ts';

const FORMATS: Readonly<Record<string, (comparisons: Comparisons, stream: Stream) => void>> = {
  text: printComparisons,
  markdown: (comparisons, { write }) => write(comparisonsMarkdown(comparisons)),
  json: (comparisons, { write }) => write(`${JSON.stringify(comparisons, null, 2)}\n`),
  html: (comparisons, { write }) => write(comparisonsPage(comparisons)),
};

interface Options {
  readonly since?: string;
  readonly until?: string;
  readonly format: string;
}

export const compare: Declare = (program, { terminal: { out, err }, end }) => {
  program
    .command('compare')
    .summary('say what changed in meaning between two sheets, folders or revisions')
    .description(
      'Compares OLD with NEW, two sheets or two folders. With one PATH, or with --since, compares with a revision of the repository: ' +
        'without --since it is where the present work left the default branch. Says which inputs, sources, formulas, results, tables, ' +
        'choices, requirements, signatures and words changed, the most serious first; spacing, order and names alone are no change. ' +
        'Exit code 0 without a change, 1 with changes, 2 where something could not be compared.',
    )
    .argument('<PATH...>', 'OLD and NEW; or a sheet or folder of a repository')
    .option('--since <REV>', 'the older revision: a branch, a tag, a commit')
    .option('--until <REV>', 'the newer revision, instead of the files as they are')
    .addOption(
      new Option('--format <FORMAT>', 'the form of the answer; markdown fits a comment in a pull request')
        .choices(Object.keys(FORMATS))
        .default('text'),
    )
    .action(async (paths: readonly string[], options: Options) => {
      const fail = (because: string) => {
        err.line(`${err.paint('red', 'error:')} ${because}`);
        end(2);
      };
      const comparisons = await answer(paths, options);
      if (typeof comparisons === 'string') return fail(comparisons);
      const broken = comparisons.sheets.filter(({ change }) => change === 'not compared');
      for (const { path, because } of broken) fail(`${path}: ${because}`);
      if (broken.length === comparisons.sheets.length) return;
      FORMATS[options.format]!(comparisons, out);
      if (comparisons.sheets.some(({ change }) => change !== 'same')) end(1);
    });
};

/** The comparisons, or why there are none. */
async function answer(paths: readonly string[], { since, until }: Options): Promise<Comparisons | string> {
  const ofRevision = since !== undefined || until !== undefined || paths.length === 1;
  if (!ofRevision && paths.length > 2) return 'name two sheets or folders, or one or more with --since';
  try {
    return ofRevision
      ? await compareSince(paths, { since: since ?? null, until: until ?? null })
      : await comparePaths(paths[0]!, paths[1]!);
  } catch (error) {
    if (error instanceof GitError) return error.message;
    throw error;
  }
}

// `ampwright verify PATH…`: evaluates every sheet under the paths and finds what needs a person. The gate for CI.
import { InvalidArgumentError, Option } from 'commander';
import { findSheets } from '../../node/find-sheets.ts';
import { onAllProcessors } from '../../node/threads.ts';
import { worstLevel } from '../../review/verification.ts';
import type { Declare } from '../command.ts';
import { parseDay, today } from '../day.ts';
import { progress } from '../progress.ts';
import { asJson, asText, type Print } from '../verified.ts';
import { asGithub, asJunit, asSarif } from '../verified-for-services.ts';
import { verifyFile } from '../verify-file.ts';

const FORMATS: Readonly<Record<string, Print>> = { text: asText, json: asJson, sarif: asSarif, junit: asJunit, github: asGithub };

interface Options {
  readonly format: string;
  readonly part: Part;
  readonly on: number;
  readonly require: readonly string[];
}

export const verify: Declare = (program, { terminal: { out, err }, end, file }) => {
  program
    .command('verify')
    .summary('find what needs a person in every sheet under the paths')
    .description(
      'Evaluates every sheet under the paths. Finds errors, failed and undecided requirements, concessions that have run out, results and ' +
        'values in prose that are out of date, inputs without source, overdue instruments, signatures that cover another text (and what changed since), checks by the one who prepared the sheet. ' +
        'Exit code 0 where all hold (a `should` that fails is only reported), 1 with a finding, 2 with an error.',
    )
    .argument('<PATH...>', '*.ampwright.md files, or folders that hold them')
    .addOption(new Option('--format <FORMAT>', 'the form of the answer').choices(Object.keys(FORMATS)).default('text'))
    .addOption(
      new Option('--part <I/N>', 'verify the I-th of N parts of the sheets').argParser(parsePart).default({ index: 1, of: 1 }, '1/1'),
    )
    .addOption(new Option('--on <DATE>', 'the day on which concessions count').argParser(parseDay).default(today(), 'today'))
    .addOption(
      new Option('--require <ROLE>', 'a role that must have signed; may be given several times').argParser(another).default([], 'none'),
    )
    .action(async (paths: readonly string[], options: Options) => {
      const { sheets, missing } = await findSheets(paths);
      for (const { path, because } of missing) err.line(`${err.paint('red', 'error:')} ${path}: ${because}`);
      if (missing.length > 0) end(2);
      const chosen = partOf(sheets, options.part);
      const line = progress(err, chosen.length, 'sheets');
      const settings = { on: options.on, require: options.require };
      const verified = await onAllProcessors(chosen, { work: verifyFile, settings, program: file, onDone: (done) => line.at(done, done) });
      line.end();
      if (verified.length > 0 || missing.length === 0) FORMATS[options.format]!(verified, options.on, out);
      for (const worst of verified.map(worstLevel)) if (worst !== null) end(worst === 'error' ? 2 : 1);
    });
};

function another(role: string, before: readonly string[]): readonly string[] {
  return [...before, role];
}

/** The `index`-th of `of` parts, counted from 1. */
interface Part {
  readonly index: number;
  readonly of: number;
}

/** Every N-th sheet in the order of the paths, so that the parts of all machines together are all sheets. */
function partOf(sheets: readonly string[], { index, of }: Part): readonly string[] {
  return sheets.filter((_, i) => i % of === index - 1);
}

function parsePart(text: string): Part {
  const [, index, of] = /^(\d{1,6})\/(\d{1,6})$/.exec(text)?.map(Number) ?? [];
  if (!index || !of || index > of) throw new InvalidArgumentError('Write I/N with 1 <= I <= N, such as 2/4.');
  return { index, of };
}

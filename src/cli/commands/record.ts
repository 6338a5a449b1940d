// `ampwright record SHEET…`: writes results and values in prose into the files.
import { writeAtomically } from '../../node/write-atomically.ts';
import { recordSheet } from '../../run/record.ts';
import { encodeSheet } from '../../sheet/decode.ts';
import type { Context, Declare } from '../command.ts';
import type { ExitCode } from '../exit.ts';
import { loadSheet, report } from '../load.ts';
import { explain } from '../outside.ts';

export const record: Declare = (program, context) => {
  program
    .command('record')
    .summary('write results and values in prose into the files')
    .description(
      'Writes the results under every calc block and refreshes the values in prose; everything else keeps its bytes. ' +
        'Errors are recorded too, beside what they concern. Exit code 2 where a sheet has errors or could not be written.',
    )
    .argument('<SHEET...>', '*.ampwright.md files')
    .action(async (paths: readonly string[]) => {
      for (const path of paths) context.end(await recordOne(path, context));
    });
};

/** A sheet that fails stops none of the others. */
async function recordOne(path: string, { terminal: { out, err } }: Context): Promise<ExitCode> {
  const fail = (because: string): ExitCode => {
    err.line(`${err.paint('red', 'error:')} ${because}`);
    return 2;
  };
  try {
    const sheet = loadSheet(path);
    report(sheet.diagnostics, err);
    if (sheet.evaluation.sheet.conflicts.length > 0) return fail(`${path} was not written: choose a side in the conflict first`);
    const outcome = await writeAtomically(path, encodeSheet(recordSheet(sheet.evaluation)), sheet.bytes);
    if (outcome.kind === 'refused') return fail(`${path} was not written: ${outcome.because}`);
    out.line(outcome.kind === 'written' ? `recorded ${path}` : `unchanged ${path}`);
    return sheet.failed ? 2 : 0;
  } catch (error) {
    return fail(explain(error));
  }
}

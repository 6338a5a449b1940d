// `ampwright export SHEET --to html|csv|json`: the calc sheet for an audit, or its results for another program.

import { resolve } from 'node:path';
import { Option } from 'commander';
import { writeAtomically } from '../../node/write-atomically.ts';
import { sheetCsv } from '../../report/csv.ts';
import { evaluationJson } from '../../report/json.ts';
import { auditPage } from '../../report/page.ts';
import type { Declare } from '../command.ts';
import { type LoadedSheet, loadSheet, report } from '../load.ts';
import { isSameFile } from '../same-file.ts';
import { VERSION } from '../version.ts';

/** What a sheet can be exported to. */
const FORMATS: Readonly<Record<string, (sheet: LoadedSheet) => string>> = {
  html: ({ evaluation }) => auditPage({ ...evaluation, version: VERSION }),
  csv: ({ evaluation }) => sheetCsv(evaluation),
  json: ({ path, evaluation }) => evaluationJson(path, evaluation),
};

export const exportSheet: Declare = (program, { terminal: { out, err }, end }) => {
  program
    .command('export')
    .summary('write the calc sheet for an audit, or its results for another program')
    .description(
      'Exports a sheet: html is one self-contained page, csv and json are its results. Without --out it goes to standard output. ' +
        'A sheet with errors is exported with its errors, and the exit code is 2.',
    )
    .argument('<SHEET>', 'a *.ampwright.md file')
    .addOption(new Option('--to <FORMAT>', 'the form of the export').choices(Object.keys(FORMATS)).makeOptionMandatory())
    .option('--out <FILE>', 'the file to write; - is standard output', '-')
    .action(async (path: string, options: { to: string; out: string }) => {
      const sheet = loadSheet(path);
      report(
        sheet.diagnostics.filter((d) => d.severity === 'error'),
        err,
      );
      end(sheet.failed ? 2 : 0);
      const text = FORMATS[options.to]!(sheet);
      if (options.out === '-') return out.write(text);
      const refusal = isSameFile(path, options.out) ? 'it is the sheet itself' : await write(options.out, text);
      if (refusal === null) return out.line(`exported ${resolve(options.out)}`);
      err.line(`${err.paint('red', 'error:')} ${options.out} was not written: ${refusal}`);
      end(2);
    });
};

async function write(path: string, text: string): Promise<string | null> {
  const outcome = await writeAtomically(path, text);
  return outcome.kind === 'refused' ? outcome.because : null;
}

// `ampwright export SHEET --to html|pdf|csv|json`: the calc sheet for an audit, or its results for another program.

import { resolve } from 'node:path';
import { Option } from 'commander';
import { changeHistory } from '../../node/change-history.ts';
import { coveredIn } from '../../node/git-covered.ts';
import { pdfOf } from '../../node/pdf.ts';
import { writeAtomically } from '../../node/write-atomically.ts';
import { sheetCsv } from '../../report/csv.ts';
import type { ReportInput } from '../../report/input.ts';
import { evaluationJson } from '../../report/json.ts';
import { auditPage } from '../../report/page.ts';
import { PAPERS, type Paper } from '../../report/typeset/document.ts';
import type { Declare } from '../command.ts';
import { type LoadedSheet, loadSheet, report } from '../load.ts';
import { isSameFile } from '../same-file.ts';
import type { Stream } from '../terminal.ts';
import { VERSION } from '../version.ts';

interface Options {
  readonly to: string;
  readonly out: string;
  readonly paper: Paper;
}

interface Refusal {
  readonly refused: string;
}

type Export = (sheet: LoadedSheet, options: Options, err: Stream) => string | Promise<Uint8Array | Refusal>;

/** What a sheet can be exported to. */
const FORMATS: Readonly<Record<string, Export>> = {
  html: (sheet) => auditPage(reportInput(sheet)),
  pdf,
  csv: ({ evaluation }) => sheetCsv(evaluation),
  json: ({ path, evaluation }) => evaluationJson(path, evaluation),
};

function reportInput({ path, evaluation }: LoadedSheet): ReportInput {
  return { ...evaluation, version: VERSION, history: changeHistory(path), covered: coveredIn(path, evaluation.files) };
}

async function pdf(sheet: LoadedSheet, { paper }: Options, err: Stream): Promise<Uint8Array | Refusal> {
  const outcome = await pdfOf(reportInput(sheet), paper);
  if (outcome.kind === 'refused') return { refused: outcome.because };
  const { bytes, unshown } = outcome;
  if (unshown.length > 0) {
    const count = `${unshown.length} ${unshown.length === 1 ? 'character' : 'characters'}`;
    err.line(
      `${err.paint('yellow', 'warning:')} no typeface of the PDF has ${count} (${unshown.slice(0, 10).join(' ')}): shown by code point`,
    );
  }
  return bytes;
}

export const exportSheet: Declare = (program, { terminal: { out, err }, end }) => {
  program
    .command('export')
    .summary('write the calc sheet for an audit, or its results for another program')
    .description(
      'Exports a sheet: html is one self-contained page, pdf is the same on paper (PDF/A-2a), csv and json are its results. Without --out ' +
        'it goes to standard output. A sheet with errors is exported with its errors, and the exit code is 2.',
    )
    .argument('<SHEET>', 'a *.ampwright.md file')
    .addOption(new Option('--to <FORMAT>', 'the form of the export').choices(Object.keys(FORMATS)).makeOptionMandatory())
    .option('--out <FILE>', 'the file to write; - is standard output', '-')
    .addOption(new Option('--paper <SIZE>', 'the paper of a pdf').choices(PAPERS).default('a4'))
    .action(async (path: string, options: Options) => {
      const fail = (because: string) => {
        err.line(`${err.paint('red', 'error:')} ${because}`);
        end(2);
      };
      if (options.to === 'pdf' && options.out === '-' && out.isTerminal)
        return fail('a pdf is no text for a terminal: name its file with --out');
      const sheet = loadSheet(path);
      report(
        sheet.diagnostics.filter((d) => d.severity === 'error'),
        err,
      );
      end(sheet.failed ? 2 : 0);
      const content = await FORMATS[options.to]!(sheet, options, err);
      if (isRefusal(content)) return fail(`${path} was not exported: ${content.refused}`);
      if (options.out === '-') return out.write(content);
      const refusal = isSameFile(path, options.out) ? 'it is the sheet itself' : await write(options.out, content);
      if (refusal === null) return out.line(`exported ${resolve(options.out)}`);
      fail(`${options.out} was not written: ${refusal}`);
    });
};

function isRefusal(content: string | Uint8Array | Refusal): content is Refusal {
  return typeof content === 'object' && 'refused' in content;
}

async function write(path: string, content: string | Uint8Array): Promise<string | null> {
  const outcome = await writeAtomically(path, content);
  return outcome.kind === 'refused' ? outcome.because : null;
}

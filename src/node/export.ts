// The export of a sheet that is open in an editor, with what git knows of its file. Takes plain data, gives plain data.
import { type TextExport, textExport } from '../report/exports.ts';
import type { ReportInput } from '../report/input.ts';
import type { Paper } from '../report/typeset/document.ts';
import { evaluateSheet, type SheetEvaluation } from '../run/evaluate.ts';
import type { FileAnswer } from '../run/files.ts';
import { changeHistory } from './change-history.ts';
import { coveredIn } from './git-covered.ts';
import { pdfOf } from './pdf.ts';

export interface ExportAsked {
  readonly text: string;
  /** What the sheet reads, by path. */
  readonly files: ReadonlyMap<string, FileAnswer>;
  readonly format: { readonly ending: TextExport } | { readonly ending: 'pdf'; readonly paper: Paper };
  /** The sheet's path as the export names it. */
  readonly path: string;
  /** Of Ampwright. */
  readonly version: string;
  /** Where the file is on this machine's disk, for git; or why git is not asked. */
  readonly disk: { readonly path: string } | { readonly because: string };
}

/** The bytes or the text of the file. Throws where it can't be made, in words for a person. */
export async function exportOf({ text, files, format, path, version, disk }: ExportAsked): Promise<string | Uint8Array> {
  const evaluation = evaluateSheet(text, { read: (of) => files.get(of) ?? { refused: 'it has not been read' } });
  const input = { ...evaluation, version, ...fromGit(disk, evaluation) };
  if (format.ending !== 'pdf') return textExport(format.ending, input, path);
  const outcome = await pdfOf(input, format.paper);
  if (outcome.kind === 'refused') throw new Error(outcome.because);
  return outcome.bytes;
}

function fromGit(disk: ExportAsked['disk'], { files }: SheetEvaluation): Pick<ReportInput, 'history' | 'covered'> {
  return 'because' in disk ? { history: disk } : { history: changeHistory(disk.path), covered: coveredIn(disk.path, files) };
}

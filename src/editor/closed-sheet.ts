// The answer of a sheet that is not open in the editor, from its file as it is now.
import * as vscode from 'vscode';
import { evaluateSheet, type SheetEvaluation } from '../run/evaluate.ts';
import type { FileAnswer } from '../run/files.ts';
import { decodeSheet } from '../sheet/decode.ts';
import { openFiles } from './files.ts';

/** The file as it was read, its answer, and what it reads itself, by path; or why it is no sheet. */
export type ClosedSheet =
  | { readonly bytes: Uint8Array; readonly evaluation: SheetEvaluation; readonly files: ReadonlyMap<string, FileAnswer> }
  | { readonly refused: string };

/** More rounds of reading files than sheets can use each other deep. */
const rounds = 20;

export async function evaluateClosed(uri: vscode.Uri): Promise<ClosedSheet> {
  const files = openFiles(uri, null);
  try {
    const bytes = await vscode.workspace.fs.readFile(uri);
    const text = decodeSheet(bytes);
    if (typeof text !== 'string') return text;
    let evaluation = evaluateSheet(text, files);
    for (let round = 0; round < rounds && (await files.settle()); round++) evaluation = evaluateSheet(text, files);
    return { bytes, evaluation, files: files.answers };
  } catch (error) {
    if (error instanceof vscode.FileSystemError) return { refused: `it can't be read (${error.code})` };
    throw error;
  } finally {
    files.dispose();
  }
}

// A place in a cell's document as the writing help knows it, and back.
import * as vscode from 'vscode';
import type { LocatedEdit } from '../assist/edits.ts';
import { block, type Location, type Spot } from '../assist/location.ts';
import type { Span } from '../text/span.ts';
import { notebookType } from './notebook-document.ts';
import { locationInBlock, locationInFile } from './places.ts';
import type { Answer, Session } from './session.ts';
import type { Sessions } from './sessions.ts';

/** The cells in which writing help is given. */
export const CELLS: vscode.DocumentSelector = { language: notebookType, notebookType };

/** A calc cell's document with the answer that belongs to its text. */
export interface Block {
  readonly session: Session;
  readonly answer: Answer;
  readonly number: number;
  readonly document: vscode.TextDocument;
}

/** The block of a document, once the answer has caught up with its text; undefined where it shows none. */
export async function blockOf(sessions: Sessions, document: vscode.TextDocument): Promise<Block | undefined> {
  for (const session of sessions.all()) {
    if (!session.notebook.getCells().some((cell) => cell.document === document)) continue;
    await session.update();
    const { answer } = session;
    const number = answer?.laid.blocks.findIndex((cell) => cell?.document === document) ?? -1;
    return answer && number !== -1 ? { session, answer, number, document } : undefined;
  }
  return undefined;
}

/** The place of a position in its block. */
export function spotOf({ number, document }: Block, position: vscode.Position): Spot {
  return { text: block(number), offset: document.offsetAt(position) };
}

/** A span of a document as its range. */
export function rangeOf(document: vscode.TextDocument, { start, end }: Span): vscode.Range {
  return new vscode.Range(document.positionAt(start), document.positionAt(end));
}

/** Where a place of the writing help is shown: in a block, in prose, or in a file that the sheet uses. */
export function shownAt({ session, answer: { open, laid } }: Block, { text, at }: Location): vscode.Location | undefined {
  switch (text.kind) {
    case 'block':
      return locationInBlock(laid, text.number, open.cells[text.number]?.code ?? '', at);
    case 'sheet':
      return locationInFile(laid, at);
    case 'file':
      return new vscode.Location(vscode.Uri.joinPath(session.notebook.uri, '..', text.path), new vscode.Position(0, 0));
  }
}

/** Edits of blocks and prose as one edit of the workspace; null where one of them can't be made here. */
export function workspaceEdit(block: Block, edits: readonly LocatedEdit[]): vscode.WorkspaceEdit | null {
  const all = new vscode.WorkspaceEdit();
  for (const edit of edits) {
    const place = edit.text.kind === 'file' ? undefined : shownAt(block, edit);
    if (!place) return null;
    all.replace(place.uri, place.range, edit.newText);
  }
  return all;
}

// One open sheet: evaluated when it opens and after every edit, only as far as the edit reaches.
import type * as vscode from 'vscode';
import { parse } from '../language/parser.ts';
import { evaluateSheet, resultOf, type SheetEvaluation } from '../run/evaluate.ts';
import { type OpenSheet, openSheet } from '../run/open-sheet.ts';
import type { SheetResult } from '../run/result.ts';
import { editCell } from '../run/update.ts';
import { type OpenFiles, openFiles } from './files.ts';
import { editedBlocks, type Laid, lay, snapshot } from './laid.ts';
import { currentText } from './notebook-document.ts';

/** How long a line may stay unfinished before that is shown as an error, in milliseconds. */
const patience = 600;
/** More rounds of reading files than sheets can use each other deep. */
const rounds = 20;

/** The answer of the sheet as it stood at one moment. */
export interface Answer {
  readonly open: OpenSheet;
  readonly result: SheetResult;
  readonly laid: Laid;
  /** Numbers of the calc cells that may show something new since the answer before; null: all. */
  readonly changed: ReadonlySet<number> | null;
}

/** One open sheet. */
export interface Session {
  readonly notebook: vscode.NotebookDocument;
  /** The latest answer; null until there is one. */
  readonly answer: Answer | null;
  /** Brings the answer up to the text as it stands now. */
  update(): Promise<void>;
  /** The whole evaluation of the text as it stands now, for what is to be written down. */
  evaluate(): Promise<SheetEvaluation>;
}

/** A session as its owner drives it. */
export interface OwnedSession extends Session, vscode.Disposable {
  /** The text has changed: the answer follows when typing pauses for so many milliseconds. */
  changed(pause: number): void;
}

/** Opens the session of a notebook; `answered` is told of each new answer. */
export function openSession(notebook: vscode.NotebookDocument, answered: (session: Session) => void): OwnedSession {
  let answer: Answer | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let updating: Promise<void> | null = null;
  let evaluation: SheetEvaluation | null = null;
  let stale = false;
  const files = openFiles(notebook.uri, () => {
    stale = true;
    evaluation = null;
    session.changed(0);
  });

  async function bringUp(): Promise<void> {
    const next = (!stale && answer && (await afterEdit(answer, notebook, files))) || null;
    if (next === 'same') return;
    stale = false;
    answer = next ?? (await afresh(notebook, files));
    answered(session);
  }
  const session: OwnedSession = {
    notebook,
    get answer() {
      return answer;
    },
    async update() {
      clearTimeout(timer);
      // One at a time; what is under way may have begun before the latest edit.
      while (updating) await updating;
      updating = bringUp().finally(() => {
        updating = null;
      });
      await updating;
    },
    async evaluate() {
      const { text } = currentText(notebook);
      if (evaluation?.sheet.text !== text) evaluation = await settled(files, () => evaluateSheet(text, files));
      return evaluation;
    },
    changed(pause) {
      clearTimeout(timer);
      timer = setTimeout(() => {
        if (answer && isUnfinished(answer, notebook)) timer = setTimeout(() => void session.update(), patience);
        else void session.update();
      }, pause);
    },
    dispose() {
      clearTimeout(timer);
      files.dispose();
    },
  };
  session.changed(0);
  return session;
}

/** Whether an edited block has come to hold a line that can't be read: most likely someone is still typing it. */
function isUnfinished({ open, laid }: Answer, notebook: vscode.NotebookDocument): boolean {
  const unread = (statements: readonly { readonly broken: boolean }[]) => statements.filter(({ broken }) => broken).length;
  const edited = editedBlocks(laid, snapshot(notebook)) ?? [];
  return edited.some(
    (number) => unread(parse(laid.blocks[number]!.document.getText()).statements) > unread(open.loaded.parsed[number]!.statements),
  );
}

/** Reads and runs the whole sheet. */
async function afresh(notebook: vscode.NotebookDocument, files: OpenFiles): Promise<Answer> {
  const now = snapshot(notebook);
  const { text, starts } = currentText(notebook);
  const open = await settled(files, () => openSheet(text, files));
  return { open, result: resultOf(open), laid: lay(open.loaded.sheet, starts, now), changed: null };
}

/** The answer after an edit of blocks alone; null where the sheet must be read anew, `same` where nothing was edited. */
async function afterEdit(
  { open, result, laid }: Answer,
  notebook: vscode.NotebookDocument,
  files: OpenFiles,
): Promise<Answer | 'same' | null> {
  const now = snapshot(notebook);
  const edited = editedBlocks(laid, now);
  if (edited === null) return null;
  if (edited.length === 0) return 'same';
  const touched = new Set<number>();
  for (const number of edited) for (const other of editCell(open, number, laid.blocks[number]!.document.getText())) touched.add(other);
  if (await files.settle()) return null;
  const after = resultOf(open);
  // An entry shows who uses it with which value: it changes with those that read it.
  const changed = new Set([...touched, ...readBy(touched, result), ...readBy(touched, after)]);
  return { open, result: after, laid: { ...laid, snapshot: now }, changed };
}

/** Numbers of the cells whose entries these cells read. */
function readBy(cells: ReadonlySet<number>, { cells: all, entries }: SheetResult): number[] {
  const names = [...cells].flatMap((number) => all[number]?.statements.flatMap((statement) => statement.reads) ?? []);
  return names.flatMap((name) => entries.get(name)?.cell ?? []);
}

/** What `make` gives once no file is missing that could be read: a used sheet may use others. */
async function settled<T>(files: OpenFiles, make: () => T): Promise<T> {
  let made = make();
  for (let round = 0; round < rounds && (await files.settle()); round++) made = make();
  return made;
}

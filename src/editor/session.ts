// One open sheet: evaluated when it opens and after every edit, only as far as the edit reaches.
import type * as vscode from 'vscode';
import { editCell } from '../run/edit-cell.ts';
import { editSheet } from '../run/edit-sheet.ts';
import { evaluateSheet, resultOf, type SheetEvaluation } from '../run/evaluate.ts';
import { type OpenSheet, openSheet } from '../run/open-sheet.ts';
import type { SheetResult } from '../run/result.ts';
import { type OpenFiles, openFiles, settled } from './files.ts';
import { editedBlocks, type Laid, lay, liesAs, snapshot } from './laid.ts';
import { currentText } from './notebook-document.ts';

/** How long a line may stay unfinished before that is shown as an error, in milliseconds. */
const patience = 600;

/** The answer of the sheet as it stood at one moment. */
export interface Answer {
  readonly open: OpenSheet;
  readonly result: SheetResult;
  readonly laid: Laid;
  /** Numbers of the calc cells that may show something new since the answer that was shown before; null: all. */
  readonly changed: ReadonlySet<number> | null;
}

/** One open sheet. */
export interface Session {
  readonly notebook: vscode.NotebookDocument;
  /** The latest answer; null until there is one. */
  readonly answer: Answer | null;
  /** Whether results follow the text; where they do not, they are shown as they were until `show`. */
  readonly live: boolean;
  /** Brings the answer up to the text as it stands now, for help in writing: what is shown stays. */
  update(): Promise<void>;
  /** Brings the answer up to the text as it stands now, and has it shown. */
  show(): Promise<void>;
  /** The whole evaluation of the text as it stands now, for what is to be written down. */
  evaluate(): Promise<SheetEvaluation>;
}

/** A session as its owner drives it. */
export interface OwnedSession extends Session, vscode.Disposable {
  /** The text has changed: the answer follows when typing pauses for so many milliseconds. */
  changed(pause: number): void;
  follow(live: boolean): void;
}

/** What a session tells its owner. */
export interface Listener {
  /** There is a new answer to be shown. */
  answered(session: Session): void;
  /** The text has gone on, and what is shown does not follow. */
  fellBehind(session: Session): void;
}

/** Opens the session of a notebook. */
export function openSession(notebook: vscode.NotebookDocument, listener: Listener): OwnedSession {
  let answer: Answer | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let updating: Promise<void> | null = null;
  let evaluation: SheetEvaluation | null = null;
  /** Whether a file that the sheet reads has changed. */
  let stale = false;
  let live = true;
  /** Whether there is an answer that nobody was told of. */
  let untold = false;
  /** Numbers of the cells that may show something new since the last answer that was shown; null: all. */
  let unshown: ReadonlySet<number> | null = null;
  /** How many lines of each block could not be read when it was shown last. */
  let unread: readonly number[] = [];
  const files = openFiles(notebook.uri, () => {
    stale = true;
    evaluation = null;
    session.changed(0);
  });

  async function bringUp(): Promise<void> {
    const reread = stale;
    stale = false;
    const next = answer ? await afterEdit(answer, notebook, files, reread) : await afresh(notebook, files);
    if (next === 'same') return;
    answer = next;
    untold = true;
    unshown = joined(unshown, answer.changed);
  }
  function tell(anyway = false): void {
    if (!answer || !(untold || anyway)) return;
    answer = { ...answer, changed: unshown };
    untold = false;
    unshown = new Set();
    unread = unreadLines(answer.open);
    listener.answered(session);
  }
  /** Most likely someone is still typing a line that could be read before, and can't be read now. */
  const isUnfinished = () =>
    answer !== null && unread.length === answer.open.cells.length && unreadLines(answer.open).some((count, i) => count > unread[i]!);
  async function follow(): Promise<void> {
    await session.update();
    if (isUnfinished()) timer = setTimeout(() => tell(), patience);
    else tell();
  }
  const session: OwnedSession = {
    notebook,
    get answer() {
      return answer;
    },
    get live() {
      return live;
    },
    async update() {
      // One at a time; what is under way may have begun before the latest edit.
      while (updating) await updating;
      updating = bringUp().finally(() => {
        updating = null;
      });
      await updating;
    },
    async show() {
      clearTimeout(timer);
      await session.update();
      tell(true);
    },
    async evaluate() {
      const { text } = currentText(notebook);
      if (evaluation?.sheet.text !== text) evaluation = await settled(files, () => evaluateSheet(text, files));
      return evaluation;
    },
    changed(pause) {
      clearTimeout(timer);
      if (live || answer === null) timer = setTimeout(() => void follow(), pause);
      else listener.fellBehind(session);
    },
    follow(now) {
      live = now;
      if (live && answer) session.changed(0);
    },
    dispose() {
      clearTimeout(timer);
      files.dispose();
    },
  };
  session.changed(0);
  return session;
}

const unreadLines = ({ loaded }: OpenSheet) => loaded.parsed.map(({ statements }) => statements.filter(({ broken }) => broken).length);

/** Reads and runs the whole sheet. */
async function afresh(notebook: vscode.NotebookDocument, files: OpenFiles): Promise<Answer> {
  const now = snapshot(notebook);
  const { text, starts } = currentText(notebook);
  const open = await settled(files, () => openSheet(text, files));
  return { open, result: resultOf(open), laid: lay(open.loaded.sheet, starts, now), changed: null };
}

/** The answer after an edit, `same` where nothing was edited. `reread`: a file that the sheet reads has changed. */
async function afterEdit(before: Answer, notebook: vscode.NotebookDocument, files: OpenFiles, reread: boolean): Promise<Answer | 'same'> {
  const { open, laid } = before;
  const now = snapshot(notebook);
  const edited = reread ? null : editedBlocks(laid, now);
  if (edited?.length === 0) return 'same';
  if (edited === null) return afterAnyEdit(before, notebook, files);
  const touched = new Set<number>();
  for (const number of edited) for (const other of editCell(open, number, laid.blocks[number]!.document.getText())) touched.add(other);
  if (await files.settle()) return afterAnyEdit(before, notebook, files, touched);
  return answerOf(before, { ...laid, snapshot: now }, touched);
}

/** The answer after an edit of the text around the blocks, of cells, or of files. */
async function afterAnyEdit(before: Answer, notebook: vscode.NotebookDocument, files: OpenFiles, known: ReadonlySet<number> = new Set()) {
  const { open } = before;
  const now = snapshot(notebook);
  const { text, starts } = currentText(notebook);
  let touched: ReadonlySet<number> | null = known;
  await settled(files, () => {
    touched = joined(touched, editSheet(open, text));
  });
  const laid = lay(open.loaded.sheet, starts, now);
  return answerOf(before, laid, liesAs(before.laid, laid) ? touched : null);
}

function answerOf({ open, result }: Answer, laid: Laid, touched: ReadonlySet<number> | null): Answer {
  const after = resultOf(open);
  // An entry shows who uses it with which value: it changes with those that read it.
  const changed = touched && new Set([...touched, ...readBy(touched, result), ...readBy(touched, after)]);
  return { open, result: after, laid, changed };
}

const joined = (a: ReadonlySet<number> | null, b: ReadonlySet<number> | null) => a && b && new Set([...a, ...b]);

/** Numbers of the cells whose entries these cells read. */
function readBy(cells: ReadonlySet<number>, { cells: all, entries }: SheetResult): number[] {
  const names = [...cells].flatMap((number) => all[number]?.statements.flatMap((statement) => statement.reads) ?? []);
  return names.flatMap((name) => entries.get(name)?.cell ?? []);
}

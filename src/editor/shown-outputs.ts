// The outputs of one notebook as they were written last, and what has to be written to bring them up to an answer.
import * as vscode from 'vscode';
import type { CellView } from '../view/model.ts';
import { sentences } from '../view/sentence.ts';
import { toView } from '../view/to-view.ts';
import type { RecordedResults } from './recorded-results.ts';
import type { Answer } from './session.ts';

/** The form in which the renderer takes the results of a cell: a `CellView`. */
const ledgerMime = 'application/vnd.ampwright.ledger+json';

export interface ShownOutputs {
  /** Brings the outputs up to the answer. */
  show(answer: Answer): Promise<void>;
  /** Marks all outputs as not current, since the text has gone on without them. */
  fallBehind(): Promise<void>;
  /** Brings up to date what has come into view. */
  inView(): Promise<void>;
  /** Looks at all outputs again. */
  all(): Promise<void>;
  /** Writes the outputs of these cells anew, as when someone runs them. */
  again(cells: readonly vscode.NotebookCell[]): Promise<void>;
  /** Brings back what someone cleared. */
  cleared(cells: readonly vscode.NotebookCell[]): Promise<void>;
}

/** How many cells out of view are written together. */
const PART = 40;

/**
 * How long nobody may have typed or scrolled before they are written, in milliseconds, and how long where no editor shows any of it yet. A
 * little behind opening a notebook the editor begins to draw whatever outputs it then finds, in view or not, and all typing waits for that.
 */
const CALM = { shown: 300, hidden: 2000 } as const;

/** What cells are to show; null: nothing. */
type Views = ReadonlyMap<vscode.NotebookCell, CellView | null>;

interface Written {
  /** Null where nothing is shown. */
  readonly view: CellView | null;
  readonly json: string;
}

export function shownOutputs(of: vscode.NotebookDocument, controller: vscode.NotebookController, recorded: RecordedResults): ShownOutputs {
  const written = new WeakMap<vscode.NotebookCell, Written>();
  let latest: Answer | null = null;
  let outdated = false;
  /** Numbers of the calc cells that are still to be looked at; null: all, and the cells that are no blocks. */
  let stale: ReadonlySet<number> | null = null;
  let busy: Promise<void> | null = null;
  let rest: ReturnType<typeof setTimeout> | undefined;

  /** Results of an answer for the cells in view that are to be looked at, or for some of the others. */
  function nextPart(answer: Answer, which: 'in view' | 'others'): Views {
    const { blocks, snapshot } = answer.laid;
    const noBlocks = stale ? [] : snapshot.cells.filter((cell) => !blocks.includes(cell));
    const numbers = [...(stale ?? blocks.keys())];
    const part = new Set(which === 'in view' ? numbers.filter((number) => isInView(blocks[number])) : numbers.slice(0, PART));
    stale = new Set(numbers.filter((number) => !part.has(number)));
    return new Map([...noBlocks.map((cell) => [cell, null] as const), ...viewsOf(answer, part, recorded)]);
  }
  /** What is there, marked as not current. */
  function notCurrent({ laid }: Answer): Views {
    stale = new Set();
    const views = laid.blocks.flatMap((cell) => {
      const view = cell && written.get(cell)?.view;
      return cell && view ? [[cell, { ...view, current: false }] as const] : [];
    });
    return new Map(views);
  }
  async function writeViews(views: Views): Promise<void> {
    const changed = [...views].flatMap(([cell, view]) => {
      const json = view ? JSON.stringify(view) : '';
      return cell.index >= 0 && (written.get(cell)?.json ?? '') !== json ? [{ cell, view, json }] : [];
    });
    if (changed.length === 0) return;
    // One execution may write the outputs of other cells too, and is much faster than one each.
    const execution = controller.createNotebookCellExecution(changed[0]!.cell);
    execution.start();
    await Promise.all(
      changed.map(({ cell, view, json }) => {
        written.set(cell, { view, json });
        const output = cell.outputs[0];
        // In its old output the new result replaces the old one without a flash.
        if (view && output) return execution.replaceOutputItems(items(view), output);
        return execution.replaceOutput(view ? new vscode.NotebookCellOutput(items(view)) : [], cell);
      }),
    );
    execution.end(undefined);
  }
  /** One at a time; what comes meanwhile is written together in the next. */
  async function alone(write: () => Promise<void>): Promise<void> {
    while (busy) await busy;
    busy = write().finally(() => {
      busy = null;
    });
    await busy;
  }
  /** Writes what is in view, and the others once nobody types: who looks on never waits for what is out of view. */
  async function update(): Promise<void> {
    clearTimeout(rest);
    await alone(async () => {
      if (latest && stale?.size !== 0) await writeViews(outdated ? notCurrent(latest) : nextPart(latest, 'in view'));
    });
    clearTimeout(rest);
    if (latest && stale?.size !== 0) rest = setTimeout(() => void alone(writeOthers), isShown(of) ? CALM.shown : CALM.hidden);
  }
  async function writeOthers(): Promise<void> {
    const answer = latest;
    while (latest && latest === answer && !outdated && stale?.size !== 0) await writeViews(nextPart(latest, 'others'));
  }
  const anew = async (cells: readonly vscode.NotebookCell[]) => {
    for (const cell of cells) written.delete(cell);
    if (cells.length > 0) stale = null;
    await update();
  };
  return {
    async show(answer) {
      latest = answer;
      stale = outdated ? null : stale && answer.changed && new Set([...stale, ...answer.changed]);
      outdated = false;
      await update();
    },
    async fallBehind() {
      if (outdated) return;
      outdated = true;
      stale = null;
      await update();
    },
    inView: update,
    async all() {
      stale = null;
      await update();
    },
    again: anew,
    cleared: (cells) => anew(cells.filter((cell) => cell.outputs.length === 0 && written.get(cell)?.view)),
  };
}

/** What each of the calc cells with these numbers is to show, null where it shows nothing. */
function viewsOf(answer: Answer, numbers: ReadonlySet<number>, recorded: RecordedResults): Views {
  const { result, laid } = answer;
  return new Map(
    toView(result, { cells: numbers, recorded: recorded.of(answer) }).cells.flatMap((view) => {
      const cell = laid.blocks[view.cell];
      const shows = view.rows.length + view.problems.length + view.gone.length > 0;
      return cell ? [[cell, shows ? view : null] as const] : [];
    }),
  );
}

/** Whether some editor shows a part of the notebook. */
function isShown(of: vscode.NotebookDocument): boolean {
  return vscode.window.visibleNotebookEditors.some(({ notebook, visibleRanges }) => notebook === of && visibleRanges.length > 0);
}

/** Whether a cell is in view in some editor. */
function isInView(cell: vscode.NotebookCell | undefined): boolean {
  return vscode.window.visibleNotebookEditors.some(
    ({ notebook, visibleRanges }) =>
      notebook === cell?.notebook && visibleRanges.some(({ start, end }) => start <= cell.index && cell.index < end),
  );
}

function items(view: CellView): vscode.NotebookCellOutputItem[] {
  return [vscode.NotebookCellOutputItem.json(view, ledgerMime), vscode.NotebookCellOutputItem.text(sentences(view), 'text/plain')];
}

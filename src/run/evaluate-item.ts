// The raw value of one item: of an entry its value, of a computed column its cells.
import type { Checked } from '../language/checked.ts';
import { compilerOf } from '../language/compiler/compile.ts';
import { type Compiler, freshFrame } from '../language/compiler/compiler.ts';
import type { Decide, Decision } from '../language/compiler/decision.ts';
import { compileDecision } from '../language/compiler/decisions.ts';
import type { Evaluate, Frame, Run } from '../language/compiler/frame.ts';
import { Fault, raise } from '../language/fault.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { elementOf } from '../language/type.ts';
import { combined } from '../language/uncertainty/combine.ts';
import { Dual, standard } from '../language/uncertainty/dual.ts';
import type { Span } from '../text/span.ts';

/** A new run of an item. Without `spread` no inputs are shifted for it. */
export function newRun(item: Item, shifting: boolean, spread?: Run['spread']): Run {
  return { item, notes: [], met: 0, shifting, choice: null, spread: spread ?? ((x) => ({ combined: combined(x), shifted: false })) };
}

/** A frame for an item's own statement. */
export function frameOf(run: Run): Frame {
  return { locals: new Array<unknown>(run.item.checked?.frameSize ?? 0), run };
}

/** The value of an entry or the cells of a column; throws a Fault where there is none. */
export function evaluateRaw(item: Item, run: Run): unknown {
  item.evaluate ??= compileItem(item);
  return item.evaluate(frameOf(run));
}

function compileItem(item: Item): Evaluate {
  const { plan } = item.checked!;
  const k = compilerOf();
  if (plan.kind === 'value') {
    const value = k.compile(plan.value);
    const at = plan.value.at;
    const decide = deciding(k, plan.value);
    if (decide === null) return (f) => finite(value(f), at);
    return (f) => {
      const found = value(f);
      const decision = decide(f);
      if (decision !== undefined) item.slot.decisions = [decision];
      return found;
    };
  }
  if (plan.kind !== 'column') return () => undefined;
  const cell = k.compile(plan.value);
  const { row, table } = plan;
  const at = plan.value.at;
  const decide = deciding(k, plan.value);
  if (decide === null) return columnOf(cell);
  return (f) => {
    const decisions = new Array<Decision | undefined>(table.rowCount);
    const cells = columnOf((inRow) => {
      const found = cell(inRow);
      decisions[inRow.locals[row] as number] = decide(inRow);
      return found;
    })(f);
    if (!f.run.shifting) item.slot.decisions = decisions;
    return cells;
  };
  function columnOf(value: Evaluate): Evaluate<unknown[]> {
    return (f) => {
      const cells = new Array<unknown>(table.rowCount);
      for (let from = 0; from < cells.length; ) from = fill(cells, from, row, value, f, at);
      return cells;
    };
  }
}

/** Decides a yes or no that is uncertain, for requirements that read it by its name; null where there is nothing to decide. */
function deciding(k: Compiler, node: Checked): ((f: Frame) => Decision | undefined) | null {
  if (!node.uncertain || elementOf(node.type).is !== 'yesno') return null;
  const decide: Decide = compileDecision(k, node, (frame, run) => freshFrame(k, frame, run));
  return (f) => {
    if (f.run.shifting) return undefined;
    f.run.met = 0;
    return decide(f);
  };
}

/** Evaluates cells from a row on, up to the end or to a cell in error, which leaves the others (T9). The row to go on with. */
function fill(cells: unknown[], from: number, row: number, cell: Evaluate, f: Frame, at: Span): number {
  let i = from;
  try {
    for (; i < cells.length; i++) {
      f.locals[row] = i;
      cells[i] = finite(cell(f), at);
    }
    return i;
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    cells[i] = fault;
    return i + 1;
  }
}

/** Nothing infinite or undefined leaves a statement. */
function finite(value: unknown, at: Span): unknown {
  if (typeof value === 'number') {
    if (value - value !== 0) raise(valueProblem('overflow', at, {}));
  } else if (value instanceof Dual) {
    if (!Number.isFinite(value.value) || !Number.isFinite(standard(value))) raise(valueProblem('overflow', at, {}));
  } else if (Array.isArray(value)) {
    for (const element of value) finite(element, at);
  }
  return value;
}

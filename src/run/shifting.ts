// Evaluation by shifting (U6; after JCGM 100, 5.1.3 note 2): where a derivative does not serve, each input is moved by ±u.

import type { Run } from '../language/compiler/frame.ts';
import { Fault, raise } from '../language/fault.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { type Combined, type Contribution, combine, combined } from '../language/uncertainty/combine.ts';
import { best, Dual, type Uncertain } from '../language/uncertainty/dual.ts';
import { type Input, inTextOrder } from '../language/uncertainty/input.ts';
import { evaluateRaw, newRun } from './evaluate-item.ts';

/** The contributions of x: its slopes, or what shifting gives. `again` computes x in a run whose inputs are shifted. */
export function contributionsOf(
  item: Item,
  x: Uncertain,
  again: (run: Run) => Uncertain,
): { readonly parts: readonly Contribution[]; readonly shifted: boolean } {
  if (!(x instanceof Dual) || !x.kink) return { parts: [], shifted: false };
  const cone = uncertainDependencies(item);
  const parts = [...x.inputs].sort(inTextOrder).filter((input) => input.u > 0);
  return { parts: parts.map((input) => ({ input, slope: slopeByShifting(item, input, cone, x.value, again) })), shifted: true };
}

/** The combined uncertainty of x, by its slopes or by shifting. */
export function spreadOf(
  item: Item,
  x: Uncertain,
  again: (run: Run) => Uncertain,
): { readonly combined: Combined; readonly shifted: boolean } {
  if (!(x instanceof Dual) || !x.kink) return { combined: combined(x), shifted: false };
  const { parts } = contributionsOf(item, x, again);
  const found = combine(parts);
  if (!Number.isFinite(found.expanded)) raise(valueProblem('overflow', item.statement.at, {}));
  return { combined: found, shifted: true };
}

/** The larger change of the result for ±u, over u; where one side has no value, the other. */
function slopeByShifting(item: Item, input: Input, cone: readonly Item[], value: number, again: (run: Run) => Uncertain): number {
  const changes = [input.u, -input.u].flatMap((by) => {
    const moved = withShift(item, input, by, cone, again);
    return moved === null ? [] : [(moved - value) / by];
  });
  if (changes.length === 0) raise(valueProblem('not-shiftable', item.statement.at, { input: input.name }));
  return changes.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
}

/** x with one input moved; null where it has no value there. All slots are as before afterwards. */
function withShift(item: Item, input: Input, by: number, cone: readonly Item[], again: (run: Run) => Uncertain): number | null {
  const before = cone.map((i) => i.slot.value);
  input.shift(by);
  try {
    for (const i of cone) i.slot.value = evaluateRaw(i, newRun(i, true));
    const x = best(again(newRun(item, true)));
    return Number.isFinite(x) ? x : null;
  } catch (fault) {
    if (fault instanceof Fault) return null;
    throw fault;
  } finally {
    input.shift(0);
    cone.forEach((i, n) => {
      i.slot.value = before[n];
    });
  }
}

/** The uncertain items that an item reads, directly or not, each behind what it reads itself. */
function uncertainDependencies(item: Item): readonly Item[] {
  const order: Item[] = [];
  const seen = new Set<Item>([item]);
  const stack: { readonly item: Item; next: number }[] = [{ item, next: 0 }];
  while (stack.length > 0) {
    const top = stack[stack.length - 1]!;
    const read = top.item.checked?.reads[top.next++];
    if (read === undefined) {
      stack.pop();
      if (top.item !== item) order.push(top.item);
    } else if (!seen.has(read) && read.checked?.signature.uncertain) {
      seen.add(read);
      stack.push({ item: read, next: 0 });
    }
  }
  return order;
}

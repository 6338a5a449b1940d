// Checks items in the order that their dependencies ask for, and finds circles; no recursion, however long the chain.

import type { CheckedStatement } from '../language/checked.ts';
import type { World } from '../language/checker/context.ts';
import { checkItem } from '../language/checker/statements.ts';
import { nameProblem } from '../language/problems/names.ts';
import type { Item } from '../language/program.ts';
import { UNKNOWN } from '../language/type.ts';
import type { Problem } from '../text/problem.ts';
import { ownedName } from './module.ts';

interface Waiting {
  readonly item: Item;
  /** What it needs first, and how far that has come. */
  readonly needed: readonly Item[];
  next: number;
}

/** Checks `items` and all that they need; those that are checked already stay. */
export function checkItems(world: World, items: Iterable<Item>, sourcesRequired: (item: Item) => boolean): void {
  const waiting: Waiting[] = [];
  const inWork = new Map<Item, number>();
  const check = (item: Item) => {
    const { checked, missing } = checkItem(world, item, { sourcesRequired: sourcesRequired(item) });
    if (missing.length === 0) item.checked = checked;
    else {
      inWork.set(item, waiting.length);
      waiting.push({ item, needed: missing, next: 0 });
    }
  };
  for (const start of items) {
    if (start.checked !== null) continue;
    check(start);
    while (waiting.length > 0) {
      const top = waiting[waiting.length - 1]!;
      const need = top.needed[top.next++];
      if (need === undefined) {
        waiting.pop();
        inWork.delete(top.item);
        check(top.item);
      } else if (need.checked === null) {
        const place = inWork.get(need);
        if (place === undefined) check(need);
        else for (const { item } of closeCircle(waiting.splice(place))) inWork.delete(item);
      }
    }
  }
}

/** Marks the items of a circle; the first in the text tells of the whole circle. */
function closeCircle(circle: readonly Waiting[]): readonly Waiting[] {
  const items = circle.map((w) => w.item);
  const first = items.reduce((a, b) => (before(b, a) ? b : a));
  const from = items.indexOf(first);
  const ring = [...items.slice(from), ...items.slice(0, from)];
  const names = [...ring, first].map((i) => i.label);
  const code = items.every((i) => i.statement.kind === 'function') ? 'recursion' : 'circle';
  ring.forEach((item, i) => {
    const at = item.statement.kind === 'column' ? item.statement.column.at : (ownedName(item.statement)?.at ?? item.statement.at);
    const problems = i === 0 ? [nameProblem(code, at, { names })] : [];
    item.checked = circular(problems, ring[(i + 1) % ring.length]!);
  });
  return circle;
}

function circular(problems: readonly Problem[], next: Item): CheckedStatement {
  const signature = { type: UNKNOWN, display: null, uncertain: false };
  return {
    signature,
    plan: { kind: 'nothing' },
    frameSize: 0,
    reads: [next],
    grounds: [],
    lost: [],
    problems,
    inputs: [],
    failed: true,
  };
}

const before = (a: Item, b: Item) => (a.module.id - b.module.id || a.cell - b.cell || a.statement.at.start - b.statement.at.start) < 0;

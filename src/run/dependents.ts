// The items between two: those that an item reads, directly or not, and that depend on certain others.
import type { Item } from '../language/program.ts';

/** What `item` reads, directly or not, and that itself reads one of `of`; each behind what it reads. `of` themselves are left out. */
export function between(item: Item, of: ReadonlySet<Item>): readonly Item[] {
  const order: Item[] = [];
  const depends = new Map<Item, boolean>();
  const stack: { readonly item: Item; next: number; found: boolean }[] = [{ item, next: 0, found: false }];
  depends.set(item, false);
  while (stack.length > 0) {
    const top = stack[stack.length - 1]!;
    const read = top.item.checked?.reads[top.next++];
    if (read === undefined) {
      stack.pop();
      depends.set(top.item, top.found);
      if (top.found && top.item !== item) order.push(top.item);
      const below = stack[stack.length - 1];
      if (below !== undefined && top.found) below.found = true;
    } else if (of.has(read)) top.found = true;
    else if (depends.has(read)) top.found ||= depends.get(read)!;
    else {
      depends.set(read, false);
      stack.push({ item: read, next: 0, found: false });
    }
  }
  return order;
}

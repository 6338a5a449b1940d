// A register of the page: a heading and a table made from the rows of the sheet; left out where the sheet has nothing for it.
import type { SheetView } from '../../view/model.ts';
import { type Child, type ElementNode, element } from '../../view/node.ts';
import type { ReportInput } from '../input.ts';

export interface RegisterInput extends ReportInput {
  readonly view: SheetView;
}

export interface Register {
  readonly id: string;
  readonly title: string;
  /** The register's content; null where there is nothing to list. */
  readonly make: (input: RegisterInput) => Child;
}

/** A table with heads; the first cell of each line is its head. */
export function table(heads: readonly string[], lines: readonly (readonly Child[])[], caption: string | null = null): ElementNode {
  return element(
    'table',
    { class: 'aw-register' },
    caption && element('caption', {}, caption),
    element('thead', {}, element('tr', {}, ...heads.map((h) => element('th', { scope: 'col' }, h)))),
    element(
      'tbody',
      {},
      ...lines.map((cells) =>
        element('tr', {}, ...cells.map((c, i) => (i === 0 ? element('th', { scope: 'row' }, c) : element('td', {}, c)))),
      ),
    ),
  );
}

/** All rows of a view, with the number of their block from 1. */
export function rowsOf(view: SheetView) {
  return view.cells.flatMap((cell) => cell.rows.map((row) => ({ row, block: cell.cell + 1 })));
}

/** A link to a block of the page. */
export function blockLink(block: number): ElementNode {
  return element('a', { class: 'aw-nowrap', href: `#${blockId(block)}` }, `block ${block}`);
}

export function blockId(block: number): string {
  return `block-${block}`;
}

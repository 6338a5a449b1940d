// Cells of a comparison's rows from texts, and sections from rows.

import { percentChange } from '../../review/compare/values.ts';
import type { Texts, ValueChange } from '../../review/comparison.ts';
import type { Cell, Piece, Row, Section } from './sections.ts';

export const plain = (text: string | null): Cell => (text === null || text === '' ? [] : [{ kind: 'plain', text }]);
export const code = (text: string | null): Cell => (text === null || text === '' ? [] : [{ kind: 'code', text }]);
export const strong = (text: string): Cell => [{ kind: 'strong', text }];

/** Cells behind each other with something between; empty ones are left out. */
export function joined(cells: readonly Cell[], between = ', '): Cell {
  const filled = cells.filter((cell) => cell.length > 0);
  return filled.flatMap((cell, i): readonly Piece[] => (i === 0 ? cell : [{ kind: 'plain', text: between }, ...cell]));
}

/** `source: plate "M-12" → datasheet "…"`; empty where nothing changed. */
export function changedText(what: string, texts: Texts | null): Cell {
  if (texts === null) return [];
  if (texts.old === null) return plain(`${what} added: ${texts.new}`);
  if (texts.new === null) return plain(`${what} removed: ${texts.old}`);
  return plain(`${what}: ${texts.old} → ${texts.new}`);
}

/** `+1.20 A (+3.6 %)`; empty where there is no number to give. */
export function differenceOf(value: ValueChange | null): string {
  if (value === null) return '';
  const percent = value.relative === null ? '' : percentChange(value.relative);
  return value.absolute === null ? percent && `up to ${percent}` : `${value.absolute}${percent && ` (${percent})`}`;
}

/** `I_n`, or `I_full (was I_n)`. */
export function nameCell(name: string, oldName: string | null): Cell {
  return joined(
    [
      code(name),
      oldName === null
        ? []
        : [
            { kind: 'plain', text: 'was ' },
            { kind: 'code', text: oldName },
          ],
    ],
    ' ',
  );
}

/** A section of these rows; null where there is none. */
export function section(title: string, heads: readonly string[], rows: readonly Row[], open: boolean): Section | null {
  return rows.length === 0 ? null : { title, heads, rows, open };
}

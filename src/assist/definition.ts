// Go to definition: of entries, functions, tables, columns, instruments, locals and parameters, wherever they stand.
import { resolvePath } from '../run/files.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import { type Span, touches } from '../text/span.ts';
import { type Location, SHEET, type Spot } from './location.ts';
import { definedAs, definitionOf } from './referent.ts';
import { occurrenceAt } from './sheet-occurrences.ts';

/** `from`: what the place belongs to. */
export interface Definition {
  readonly from: Span;
  readonly to: Location;
}

/** Where the name at a place is defined, or the file at a path; null where there is nothing to go to. */
export function definition(open: OpenSheet, spot: Spot): Definition | null {
  const occurrence = occurrenceAt(open, spot);
  if (!occurrence) return fileAt(open, spot);
  const to = occurrence.referent && definitionOf(open, occurrence.referent);
  return to && { from: occurrence.at, to };
}

/** Where a name of the sheet is defined, from the name alone; a column as `motors.I_n`. Null for what has no place of its own. */
export function definitionByName(open: OpenSheet, written: string): Location | null {
  const [name = '', column] = written.split('.');
  const defined = open.world.define(open.loaded.module, name);
  if (!defined) return null;
  const referent = definedAs(name, defined);
  return definitionOf(
    open,
    column !== undefined && referent.kind === 'table' ? { kind: 'column', name: column, table: referent.table } : referent,
  );
}

/** The file behind `use "…"`, and the one that a table's caption links to. */
function fileAt(open: OpenSheet, { text, offset }: Spot): Definition | null {
  if (text.kind === 'block') {
    const statements = (open.cells[text.number]?.items ?? []).map((item) => item.statement);
    const use = statements.find((s) => s.kind === 'use' && touches(s.path.at, offset));
    return use?.kind === 'use' ? toFile(use.path.at, use.path.value) : null;
  }
  const caption = text.kind === SHEET.kind ? open.loaded.sheet.csvTables.find(({ at }) => touches(at, offset)) : undefined;
  return caption ? toFile(caption.at, caption.path ?? '') : null;
}

function toFile(from: Span, written: string): Definition | null {
  const path = resolvePath('', written);
  return path ? { from, to: { text: { kind: 'file', path }, at: { start: 0, end: 0 } } } : null;
}

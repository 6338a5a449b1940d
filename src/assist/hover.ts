// Hover: what is known of the name, unit or word at a place.
import { lex } from '../language/lexer.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import { type Span, touches } from '../text/span.ts';
import { bindingParts } from './hover/binding.ts';
import { columnParts } from './hover/column.ts';
import { entryParts } from './hover/entry.ts';
import { functionParts } from './hover/function.ts';
import { instrumentParts } from './hover/instrument.ts';
import { code, type HoverPart, text } from './hover/part.ts';
import { tableParts } from './hover/table.ts';
import { unitParts } from './hover/unit.ts';
import type { Spot } from './location.ts';
import { occurrenceAt, type PlacedOccurrence } from './sheet-occurrences.ts';
import { wordNamed } from './words.ts';

export interface Hover {
  readonly at: Span;
  readonly parts: readonly HoverPart[];
}

/** What is said of a place; null where there is nothing to say. */
export function hover(open: OpenSheet, spot: Spot): Hover | null {
  const occurrence = occurrenceAt(open, spot);
  const parts = occurrence ? partsOf(open, occurrence) : [];
  return occurrence && parts.length > 0 ? { at: occurrence.at, parts } : wordAt(open, spot);
}

function partsOf(open: OpenSheet, occurrence: PlacedOccurrence): readonly HoverPart[] {
  const { referent } = occurrence;
  switch (referent?.kind) {
    case undefined:
      return [];
    case 'entry':
      return entryParts(open, referent.item);
    case 'function':
    case 'mathematics':
      return functionParts(referent);
    case 'instrument':
      return instrumentParts(open, referent.item);
    case 'table':
      return tableParts(open, referent.table);
    case 'column':
      return columnParts(open, referent, occurrence);
    case 'parameter':
    case 'local':
    case 'variable':
      return bindingParts(referent.binding);
    case 'unit':
      return unitParts(referent.symbol);
    case 'row':
      return [code('row'), text(`a row of \`${referent.table.name}\``)];
    default:
      return referent satisfies never;
  }
}

/** The words of the notation, but not where they are names, or columns. */
function wordAt(open: OpenSheet, { text: of, offset }: Spot): Hover | null {
  if (of.kind !== 'block') return null;
  const { tokens } = lex(open.cells[of.number]?.code ?? '');
  const token = tokens.findLast(({ at }) => touches(at, offset));
  const word = token?.kind === 'word' ? token.word : token?.kind === 'name' ? token.name : null;
  const known = word === null ? undefined : wordNamed(word);
  return token && known ? { at: token.at, parts: [code(known.form), text(known.meaning)] } : null;
}

// Declaring the unit of a computed entry: the unit that its value is shown in is written behind its name.
import { resultOf } from '../run/evaluate.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import { span } from '../text/span.ts';
import type { Fix } from './fixes.ts';
import type { Spot } from './location.ts';

/** Null where the cursor stands at no computed entry, or where its unit is declared. */
export function declareUnit(open: OpenSheet, { text, offset }: Spot): Fix | null {
  if (text.kind !== 'block') return null;
  const statements = resultOf(open).cells[text.number]?.statements ?? [];
  const entry = statements.find(({ statement: { at } }) => at.start <= offset && offset <= at.end);
  if (entry?.kind !== 'entry' || entry.role === 'input' || entry.statement.type !== null) return null;
  const { value } = entry;
  const unit = value?.kind === 'quantity' || value?.kind === 'list' ? (value.unit?.text ?? '') : '';
  if (unit === '') return null;
  const { end } = entry.statement.name.at;
  const mark = value?.kind === 'list' ? `[${unit}]` : unit;
  return {
    title: `Declare the unit: \`${entry.name}: ${mark}\``,
    edits: [{ text, at: span(end, end), newText: `: ${mark}` }],
    snippet: false,
  };
}

// An entry: its formula, its value with uncertainty and what that comes from, its source, who uses it.
import { print, printTyped } from '../../language/print.ts';
import type { Item } from '../../language/program.ts';
import { resultOf } from '../../run/evaluate.ts';
import type { OpenSheet } from '../../run/open-sheet.ts';
import type { BudgetLine, EntryResult } from '../../run/result.ts';
import { dateText } from '../../text/date.ts';
import { answerText } from '../answer-text.ts';
import { textOfModule } from '../referent.ts';
import { code, described, fact, type HoverPart, listed, shortened, sourced, text } from './part.ts';

export function entryParts(open: OpenSheet, item: Item): readonly HoverPart[] {
  const { statement } = item;
  if (statement.kind !== 'entry') return [text('This line could not be read')];
  const { name, type, value, clauses, reading } = statement;
  const result = resultOf(open);
  const entry = item.module === open.loaded.module ? result.entries.get(name.name) : undefined;
  const file = textOfModule(item.module);
  const on = reading?.on ? ` on ${dateText(reading.on.days)}` : '';
  return [
    code(shortened(`${printTyped(name.name, type)} = ${print(value)}`)),
    ...(entry ? valueParts(entry) : []),
    ...described(clauses),
    ...sourced(clauses),
    ...fact('by', reading && `${reading.instrument.name}${on}`),
    ...fact('where', clauses.locals.map((local) => `${printTyped(local.name.name, local.type)} = ${print(local.value)}`).join(', ')),
    ...(entry ? [...fact('uncertainty', shares(result.budget(name.name))), ...fact('used by', listed(result.usedBy(name.name)))] : []),
    ...fact('defined in', file.kind === 'file' ? file.path : null),
  ];
}

/** A literal without limits says its value itself. */
function valueParts(entry: EntryResult): readonly HoverPart[] {
  const exact = entry.value?.kind === 'quantity' && entry.value.uncertainty === null;
  if (entry.role === 'input' && entry.missing === null && exact) return [];
  const answer = answerText(entry);
  const row = entry.choice ? ` (row ${entry.choice.row + 1} of ${entry.choice.rows})` : '';
  return answer === null ? [] : [text(`${entry.missing === null ? '= ' : ''}${answer}${row}`)];
}

/** `62 % from eta, 30 % from U_n`: what to measure better. */
function shares(budget: readonly BudgetLine[]): string {
  const lines = budget.filter(({ share }) => share >= 0.01).slice(0, 3);
  return budget.length < 2 ? '' : lines.map(({ input, share }) => `${Math.round(share * 100)} % from ${input}`).join(', ');
}

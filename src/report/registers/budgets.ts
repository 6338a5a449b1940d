// Register of uncertainty budgets: for every uncertain result, what each input contributes, largest first.
import { label, link } from '../../view/ledger/parts.ts';
import { element } from '../../view/node.ts';
import { valueText } from '../../view/sentence.ts';
import { type Register, rowsOf, table } from './register.ts';

/** Inputs beyond these are summed up in words. */
const MOST = 8;

export const budgets: Register = {
  id: 'budgets',
  title: 'Uncertainty budgets',
  make: ({ view }) => {
    const lines = rowsOf(view).flatMap(({ row }) => {
      if (row.kind !== 'entry' || row.budget.length === 0 || row.value === null) return [];
      const result = [link(row.name, row.symbol), element('div', {}, valueText(row.value))];
      const shown = row.budget.slice(0, MOST).map((b) => element('div', {}, label(b.input), ` ${b.contribution}, ${b.share}`));
      const more = row.budget.length - shown.length;
      return [[result, [...shown, more > 0 && element('div', {}, `and ${more} more`)]]];
    });
    return lines.length === 0 ? null : table(['Result', 'Input: standard uncertainty contributed, share of the variance'], lines);
  },
};

// A shown value as the ledger has it: its text, what stands behind the ± and how sure that is.
import type { Shown } from '../../run/result.ts';
import { coverageText, quantityText, shownText } from '../math/quantity.ts';
import type { ValueView } from '../model.ts';

/** The view of a value. */
export function valueView(shown: Shown): ValueView {
  if (shown.kind === 'list') return { text: listText(shown), plusMinus: null, coverage: null, remark: null };
  const text = shownText(shown);
  if (shown.kind !== 'quantity' || shown.uncertainty === null) return { text, plusMinus: null, coverage: null, remark: null };
  const { number, unit, k, nu, shifted } = shown.uncertainty;
  return {
    text,
    plusMinus: `±\u00A0${quantityText(number, unit)}`,
    coverage: k === null ? null : coverageText(k, nu),
    remark: shifted ? 'evaluated by shifting' : null,
  };
}

const LONGEST_LIST = 8;

// Elements with their uncertainty; of a long list the first.
function listText(shown: Shown & { kind: 'list' }): string {
  const items = shown.items.slice(0, LONGEST_LIST).map((item) => {
    const { text, plusMinus } = valueView(item);
    return plusMinus === null ? text : `${text} ${plusMinus}`;
  });
  return `[${items.join(', ')}${shown.count > items.length ? `, … (${shown.count} values)` : ''}]`;
}

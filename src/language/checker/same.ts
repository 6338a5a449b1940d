// Whether two checked expressions stand for the same value by their form.
import type { Checked } from '../checked.ts';

/** Equal by form: the same names, literals and operations in the same order. What depends on locals is never equal. */
export function sameChecked(a: Checked, b: Checked): boolean {
  if (a.kind === 'constant') return b.kind === 'constant' && a.value === b.value;
  if (a.kind === 'entry') return b.kind === 'entry' && a.item === b.item;
  if (a.kind === 'cell') return b.kind === 'cell' && a.column.name === b.column.name && sameChecked(a.row, b.row);
  if (a.kind === 'column') return b.kind === 'column' && a.table.name === b.table.name && a.column.name === b.column.name;
  if (a.kind === 'negate' || a.kind === 'squareRoot') return b.kind === a.kind && sameChecked(a.operand, b.operand);
  if (a.kind === 'power') return b.kind === 'power' && sameChecked(a.base, b.base) && sameChecked(a.exponent, b.exponent);
  if (a.kind === 'sum') {
    return b.kind === 'sum' && allSame(a.terms, b.terms, (x, y) => x.sign === y.sign && sameChecked(x.operand, y.operand));
  }
  if (a.kind === 'product') {
    return b.kind === 'product' && allSame(a.factors, b.factors, (x, y) => x.inverse === y.inverse && sameChecked(x.operand, y.operand));
  }
  if (a.kind === 'builtin') return b.kind === 'builtin' && a.builtin === b.builtin && allSame(a.args, b.args, sameChecked);
  if (a.kind === 'call') return b.kind === 'call' && a.instance.item === b.instance.item && allSame(a.args, b.args, sameChecked);
  return false;
}

function allSame<T>(a: readonly T[], b: readonly T[], same: (x: T, y: T) => boolean): boolean {
  return a.length === b.length && a.every((x, i) => same(x, b[i]!));
}

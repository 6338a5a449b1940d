// `x from a to b`: behind `over` and `throughout`.
import type { Range } from '../ast.ts';
import { sum } from './arithmetic.ts';
import { type Cursor, spanFrom } from './cursor.ts';
import { nameHere, wordHere } from './missing.ts';

export function range(c: Cursor, form: string): Range {
  const first = c.at;
  const variable = nameHere(c, 'The name of what varies');
  wordHere(c, 'from', form);
  const from = sum(c);
  wordHere(c, 'to', form);
  const to = sum(c);
  return { at: spanFrom(c, first), variable, from, to };
}

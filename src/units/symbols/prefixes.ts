// SI prefixes: SI Brochure, 9th edition (BIPM, 2019), Table 7. Which of them a unit takes is said with the unit.

/** A prefix in words and its power of ten. */
export interface Prefix {
  readonly name: string;
  readonly decimal: number;
}

/** By canonical spelling; micro is U+00B5. */
export const PREFIXES: ReadonlyMap<string, Prefix> = new Map([
  ['T', { name: 'tera', decimal: 12 }],
  ['G', { name: 'giga', decimal: 9 }],
  ['M', { name: 'mega', decimal: 6 }],
  ['k', { name: 'kilo', decimal: 3 }],
  ['h', { name: 'hecto', decimal: 2 }],
  ['da', { name: 'deca', decimal: 1 }],
  ['d', { name: 'deci', decimal: -1 }],
  ['c', { name: 'centi', decimal: -2 }],
  ['m', { name: 'milli', decimal: -3 }],
  ['µ', { name: 'micro', decimal: -6 }],
  ['n', { name: 'nano', decimal: -9 }],
  ['p', { name: 'pico', decimal: -12 }],
]);

// Superscript digits: whole powers as they are written behind a value.

const DIGITS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A whole power in superscript digits: `-1` is `⁻¹`. */
export function superscriptText(power: number): string {
  return [...String(power)].map((c) => (c === '-' ? '⁻' : DIGITS[Number(c)]!)).join('');
}

/** The whole power that superscript digits stand for. */
export function superscriptPower(written: string): number {
  return Number([...written].map((c) => (c === '⁻' ? '-' : DIGITS.indexOf(c))).join('')) || 0;
}

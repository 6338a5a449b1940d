// Reads a unit in a text (grammar L1 to L3, L5, L6): what belongs to it, where it ends, what is wrong with it.
import { type Span, span } from '../text/span.ts';
import { longestSymbol } from './catalogue.ts';
import { MAX_EXPONENT } from './dimension.ts';
import { makeUnit } from './make-unit.ts';
import { MAX_DENOMINATOR, ONE, type Rational, rational, rationalFrom, times } from './rational.ts';
import { PLAIN_UNIT, type Unit, type UnitPart, type UnitSymbol } from './unit.ts';

/**
 * Something wrong inside a unit.
 * `solidus`: something joined on behind the divisor. `at` is the whole unit, `joined` the symbol that is one too many, `forms` the right
 * spellings: as it was read from left to right, and, where that differs, with all that follows the first solidus below it.
 * `exponent`: a power that no unit can have (0, a denominator above 60, beyond all use); `at` is the power. It is read as 1.
 * `size`: a unit that is too large or too small to compute with; read as its first symbol alone.
 */
export type UnitFault =
  | { readonly kind: 'solidus'; readonly at: Span; readonly joined: Span; readonly forms: readonly string[] }
  | { readonly kind: 'exponent'; readonly at: Span }
  | { readonly kind: 'size'; readonly at: Span };

/** A unit in a text, which ends before `end`. */
export interface UnitReading {
  readonly unit: Unit;
  readonly end: number;
  readonly faults: readonly UnitFault[];
}

/** Powers as written, with the sign that their side of the solidus gives them. */
interface Factors {
  readonly parts: readonly UnitPart[];
  readonly end: number;
  readonly faults: readonly UnitFault[];
}

const MINUS_ONE: Rational = { num: -1, den: 1 };

/**
 * The longest unit that begins at `at`, or `null` where none does. `1/` there begins a reciprocal unit (L6): whether one may
 * stand there is for the caller to know. A `*`, `·` or `/` belongs to the unit only if a unit goes on directly behind it (L2).
 */
export function readUnit(text: string, at: number): UnitReading | null {
  const reciprocal = text.startsWith('1/', at);
  const first = reciprocal ? readDivisor(text, at + 2) : readPower(text, at);
  if (!first) return null;
  const lone = reciprocal || goesOn(text.charAt(first.end)) ? null : makeUnit(first.parts);
  if (lone) return { unit: lone, end: first.end, faults: first.faults };
  const parts = [...first.parts];
  const grouped = [...first.parts];
  const faults = [...first.faults];
  let { end } = first;
  let divided = reciprocal;
  let joined: Span | null = null;
  for (;;) {
    const division = text.charAt(end) === '/';
    const next = division ? readDivisor(text, end + 1) : isTimes(text.charAt(end)) ? readPower(text, end + 1) : null;
    if (!next) break;
    if (divided) joined ??= span(end + 1, next.end);
    parts.push(...next.parts);
    grouped.push(...(divided && !division ? inverse(next.parts) : next.parts));
    faults.push(...next.faults);
    divided ||= division;
    end = next.end;
  }
  const whole = span(at, end);
  const unit = makeUnit(parts);
  if (!unit) return { unit: makeUnit([{ ...parts[0]!, power: ONE }])!, end, faults: [{ kind: 'size', at: whole }] };
  if (joined) {
    const forms = [unit.text, makeUnit(grouped)?.text ?? unit.text];
    faults.push({ kind: 'solidus', at: whole, joined, forms: [...new Set(forms)] });
  }
  return { unit, end, faults };
}

/** The unit that the whole text is, `1` for the plain number included; `null` where it is none or has a fault. */
export function parseUnit(text: string): Unit | null {
  if (text === '1') return PLAIN_UNIT;
  const reading = readUnit(text, 0);
  return reading && reading.end === text.length && reading.faults.length === 0 ? reading.unit : null;
}

/** The unit of a constant in our own code. Throws where the text is no unit: that is a mistake of ours, never of a sheet. */
export function unitOf(text: string): Unit {
  const unit = parseUnit(text);
  if (!unit) throw new Error(`"${text}" is no unit`);
  return unit;
}

/** What may stand behind the solidus: one power, or a product of powers in parentheses. */
function readDivisor(text: string, at: number): Factors | null {
  if (text.charAt(at) !== '(') return divided(readPower(text, at));
  const parts: UnitPart[] = [];
  const faults: UnitFault[] = [];
  let end = at;
  do {
    const next = readPower(text, end + 1);
    if (!next) return null;
    parts.push(...next.parts);
    faults.push(...next.faults);
    end = next.end;
  } while (isTimes(text.charAt(end)));
  return text.charAt(end) === ')' ? divided({ parts, end: end + 1, faults }) : null;
}

function divided(factors: Factors | null): Factors | null {
  return factors && { ...factors, parts: inverse(factors.parts) };
}

function inverse(parts: readonly UnitPart[]): UnitPart[] {
  return parts.map((p) => ({ ...p, power: times(p.power, MINUS_ONE) }));
}

function goesOn(character: string): boolean {
  return character === '/' || isTimes(character);
}

function isTimes(character: string): boolean {
  return character === '*' || character === '·' || character === '⋅';
}

const SUPERSCRIPT = /(⁻?)([⁰¹²³⁴⁵⁶⁷⁸⁹]+)/y;
const CARET = /\^(?:([-−]?\d+(?:\.\d+)?)|\(([-−]?\d+)\/(\d+)\))/y;

/** One symbol with its power. */
function readPower(text: string, at: number): Factors | null {
  const found = longestSymbol(text, at);
  if (!found) return null;
  const written = matchAt(SUPERSCRIPT, text, found.end) ?? matchAt(CARET, text, found.end);
  if (!written) return one(found.symbol, ONE, found.end);
  const end = found.end + written[0].length;
  const power = written[0].startsWith('^') ? caretPower(written) : superscriptPower(written);
  const allowed = power && power.num !== 0 && power.den <= MAX_DENOMINATOR && Math.abs(power.num) <= MAX_EXPONENT * power.den;
  return allowed ? one(found.symbol, power, end) : one(found.symbol, ONE, end, { kind: 'exponent', at: span(found.end, end) });
}

function one(symbol: UnitSymbol, power: Rational, end: number, ...faults: UnitFault[]): Factors {
  return { parts: [{ symbol, power }], end, faults };
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

function caretPower([, decimal, num, den]: RegExpExecArray): Rational | null {
  return decimal !== undefined ? rationalFrom(number(decimal)) : rational(number(num!), number(den!));
}

function superscriptPower([, minus, digits]: RegExpExecArray): Rational | null {
  const value = Number([...digits!].map((d) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(d)).join(''));
  return rational(minus ? -value : value);
}

function number(text: string): number {
  return Number(text.replace('−', '-'));
}

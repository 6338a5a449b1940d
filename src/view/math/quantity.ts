// Numbers, units and shown values: as MathML, and as the short text that a person reads (`mΩ`, `°C`).
import type { QuantityLiteral } from '../../language/ast.ts';
import type { Shown } from '../../run/result.ts';
import { numberText as digits, coverageText as factorText } from '../../units/number-text.ts';
import { differenceFromSI } from '../../units/quantity.ts';
import type { Unit } from '../../units/unit.ts';
import { element, type ViewNode } from '../node.ts';
import { grouped, infix, words } from './typeset.ts';

/** A unit's spelling for reading: letters of the notation that stand for signs become the signs. All of them can be typed as well. */
export function unitText(unit: Unit | null): string {
  return unit === null ? '' : readable(unit.text);
}

/** A text of quantities in the notation, such as `3.597 mohm`, for reading. */
export function readableText(text: string): string {
  return readable(numberText(text)).replaceAll(' ', '\u00A0');
}

/** A line of several quantities and words, such as `5.6 mohm ≤ 3.5 mohm, fails`, for reading; its blanks may break. */
export function readableLine(text: string): string {
  return readable(text.replace(/(?<![^\s([=])-(?=[\d.])/g, '−'));
}

function readable(text: string): string {
  return text.replace(/(?<![\p{L}\d])([\p{L}µ]?)ohm(?!\p{L})/gu, '$1Ω').replace(/(?<!\p{L})deg([CF])(?!\p{L})/gu, '°$1');
}

/** A number's text with a true minus sign. */
export function numberText(number: string): string {
  return number.replace(/^-/, '−').replace(/e\+?(-?)(\d+)$/i, (_, sign, digits) => `·10${raised(`${sign}${digits}`)}`);
}

function raised(digits: string): string {
  return digits.replace(/[-\d]/g, (c) => (c === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)]!));
}

/** Number and unit with the space that belongs between them: a no-break space, so that they stay on one line. */
export function quantityText(number: string, unit: Unit | null): string {
  const written = unitText(unit);
  return written === '' ? numberText(number) : `${numberText(number)}\u00A0${written}`;
}

/** A shown value for reading, without its uncertainty. */
export function shownText(shown: Shown): string {
  if (shown.kind === 'quantity') return quantityText(shown.number, shown.unit);
  if (shown.kind === 'list') return listText(shown);
  return shown.short;
}

const LONGEST_LIST = 8;

function listText(shown: Shown & { kind: 'list' }): string {
  const items = shown.items.slice(0, LONGEST_LIST).map(shownText);
  const rest = shown.count > items.length ? `, … (${shown.count} values)` : '';
  return `[${items.join(', ')}${rest}]`;
}

/** A piece of MathML with what decides whether it needs parentheses. */
export interface Numeral {
  readonly nodes: readonly ViewNode[];
  readonly negative: boolean;
  /** Whether it is more than one plain number: with a unit or a power of ten. */
  readonly compound: boolean;
}

/** A number as written, with its unit, as MathML. `pi` is the letter. */
export function numeral(number: string, unit: Unit | null): Numeral {
  const negative = number.startsWith('-') || number.startsWith('−');
  const digits = negative ? number.slice(1) : number;
  const nodes: ViewNode[] = negative ? [element('mo', { form: 'prefix' }, '−')] : [];
  const power = /^(.*)e\+?(-?\d+)$/i.exec(digits);
  if (digits === 'pi' || digits === 'π') nodes.push(element('mi', { mathvariant: 'normal' }, 'π'));
  else if (power) nodes.push(...powerOfTen(power[1]!, power[2]!));
  else nodes.push(element('mn', {}, digits));
  if (unit !== null && unit.text !== '') nodes.push(SPACE, unitNode(unit));
  return { nodes, negative, compound: nodes.length > (negative ? 2 : 1) };
}

const SPACE = element('mspace', { width: '0.22em' });

function powerOfTen(mantissa: string, exponent: string): ViewNode[] {
  const sign = exponent.startsWith('-') ? [element('mo', { form: 'prefix' }, '−')] : [];
  const power = element('msup', {}, element('mn', {}, '10'), grouped([...sign, element('mn', {}, exponent.replace('-', ''))]));
  return mantissa === '1' ? [power] : [element('mn', {}, mantissa), infix('·'), power];
}

/** A unit, upright; powers that have no superscript character are raised. */
function unitNode(unit: Unit): ViewNode {
  const pieces = readable(unit.text).split(/\^(\([^()^]*\)|-?[\d.]+)/);
  if (pieces.length === 1) return element('mi', { mathvariant: 'normal' }, pieces[0]!);
  const nodes: ViewNode[] = [];
  for (let i = 0; i < pieces.length; i += 2) {
    const power = pieces[i + 1];
    const text = element('mi', { mathvariant: 'normal' }, pieces[i]!);
    nodes.push(power === undefined ? text : element('msup', {}, text, element('mtext', {}, power.replace(/[()]/g, ''))));
  }
  return grouped(nodes.filter((n) => typeof n === 'string' || n.tag !== 'mi' || n.children[0] !== ''));
}

/** A literal as written, its `±` or `within` included. */
export function literalNodes(literal: QuantityLiteral): Numeral {
  const plain = numeral(literal.number, literal.unit);
  const { bounds } = literal;
  if (bounds === null) return plain;
  if (bounds.kind === 'within') {
    const between = [words(' within '), ...literalNodes(bounds.from).nodes, words(' to '), ...literalNodes(bounds.to).nodes];
    return { nodes: [...plain.nodes, ...between], negative: plain.negative, compound: true };
  }
  return { nodes: [...plain.nodes, ...plusMinusNodes(bounds)], negative: plain.negative, compound: true };
}

/** `± (1.5 % + 0.5 mV) (k = 2)` as MathML. */
export function plusMinusNodes(bounds: {
  readonly parts: readonly QuantityLiteral[];
  readonly coverage: { readonly k: number; readonly nu: number | null } | null;
}): ViewNode[] {
  const parts = bounds.parts.flatMap((part, i) => [
    ...(i === 0 ? [] : [element('mo', { form: 'infix' }, '+')]),
    ...literalNodes(part).nodes,
  ]);
  const width =
    bounds.parts.length > 1 ? [element('mo', { stretchy: 'false' }, '('), ...parts, element('mo', { stretchy: 'false' }, ')')] : parts;
  return [
    element('mo', { form: 'infix' }, '±'),
    ...width,
    ...(bounds.coverage ? [element('mtext', {}, `\u00A0(${coverageText(bounds.coverage.k, bounds.coverage.nu)})`)] : []),
  ];
}

/** `k = 2`, or `k = 2.17, ν = 16`; k to three digits, as results write it. */
export function coverageText(k: number, nu: number | null): string {
  return nu === null ? `k = ${factorText(k)}` : `k = ${factorText(k)}, ν = ${nu}`;
}

/** A width in coherent SI as a number to two digits in `unit`, with the unit: for shares of an uncertainty. */
export function widthText(si: number, unit: Unit | null): string {
  return quantityText(digits(differenceFromSI(si, unit), 2), unit);
}

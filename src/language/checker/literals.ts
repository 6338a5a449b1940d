// Literals, and the uncertain inputs that `±`, `within` and `readings` make of them (L10, L11, U1, U2, U12, U13).
import type { Mend } from '../../text/problem.ts';
import type { Span } from '../../text/span.ts';
import { PLAIN } from '../../units/dimension.ts';
import { differenceUnit } from '../../units/quantity.ts';
import type * as ast from '../ast.ts';
import type { Checked, Display } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { DATE, disagreement, listOf, type QuantityType, quantity, TEXT, typeOfUnit, YESNO } from '../type.ts';
import { Input, limitsSpread, type Spread } from '../uncertainty/input.ts';
import { type Context, checkExpression, failed, unknown } from './context.ts';
import { describe } from './describe.ts';

/** A literal's value and type, without its bounds. `0` takes any dimension (T5). */
function literalType(node: ast.QuantityLiteral): QuantityType {
  if (node.unit === null && node.value === 0) return quantity(PLAIN, { zero: true });
  return typeOfUnit(node.unit);
}

export function checkQuantity(c: Context, node: ast.QuantityLiteral, name: string): Checked {
  const type = literalType(node);
  if (node.bounds === null) {
    return { kind: 'constant', at: node.at, type, display: node.unit, uncertain: false, value: node.value, written: node.number };
  }
  const spread = spreadOf(c, node.bounds, node.value, node.unit, type);
  if (spread === null) return unknown(node.at);
  const input = new Input(name, c.item, node.at.start, node.value, spread);
  c.inputs.push(input);
  return { kind: 'input', at: node.at, type: { ...type, zero: false }, display: node.unit, uncertain: true, input };
}

export function checkText(node: ast.TextLiteral): Checked {
  return { kind: 'constant', at: node.at, type: TEXT, display: null, uncertain: false, value: node.value, written: null };
}

export function checkDate(node: ast.DateLiteral): Checked {
  return { kind: 'constant', at: node.at, type: DATE, display: null, uncertain: false, value: node.days, written: null };
}

export function checkYesNo(node: ast.YesNoLiteral): Checked {
  return { kind: 'constant', at: node.at, type: YESNO, display: null, uncertain: false, value: node.value, written: null };
}

/** `readings [12.1 mV, 12.4 mV]`, with or without the instrument's limits; `readings (U / I)` of a computed list (U11). */
export function checkReadings(c: Context, node: ast.Readings, name: string): Checked {
  if (node.of !== null) return checkComputedReadings(c, node, node.of);
  const items = node.items ?? [];
  const first = items[0];
  if (items.length < 2 || first === undefined) return failed(c, typeProblem('readings-count', node.at, {}));
  const type = typeOfUnit(first.unit);
  for (const item of items) {
    const other = typeOfUnit(item.unit);
    if (disagreement(type.dimension, other.dimension) !== null || type.point !== other.point) {
      return failed(
        c,
        typeProblem('readings-dimension', item.at, { first: describe(type, first.unit), found: describe(other, item.unit) }),
      );
    }
  }
  const values = items.map((i) => i.value);
  const { mean, spread } = spreadOfReadings(values);
  const components = [...spread.components];
  const limits = node.bounds === null ? null : spreadOf(c, node.bounds, mean, first.unit, type);
  if (limits !== null) components.push(...limits.components);
  if (values.every((v) => v === values[0])) {
    if (limits === null) c.problems.push(typeProblem('readings-equal', node.at, {}));
    components.splice(0, 1);
  }
  const base = { at: node.at, type, display: first.unit } as const;
  const input = new Input(name, c.item, node.at.start, mean, {
    components,
    limits: components.length > 0 && limits?.components === components ? limits.limits : null,
  });
  c.inputs.push(input);
  return { ...base, kind: 'input', uncertain: true, input };
}

function checkComputedReadings(c: Context, node: ast.Readings, of: ast.Expression): Checked {
  const list = checkExpression(c, of);
  if (list.type.is === 'unknown') return list;
  if (list.type.is !== 'list' || list.type.of.is !== 'quantity') {
    return failed(
      c,
      typeProblem('wants-list', list.at, { name: 'readings', what: 'its values', found: describe(list.type, list.display) }),
    );
  }
  if (list.uncertain) return failed(c, typeProblem('readings-uncertain', list.at, {}));
  const type = list.type.of;
  const unit = list.display === 'auto' ? null : list.display;
  const bounds = node.bounds;
  const limits =
    bounds === null
      ? null
      : (mean: number) => {
          const spread = spreadOf(c, bounds, mean, unit, type) ?? { components: [], limits: null };
          const u = spread.components[0]?.u ?? 0;
          return { low: spread.limits?.low ?? 0, high: spread.limits?.high ?? 0, u, bounded: spread.limits !== null };
        };
  limits?.(1); // reports what is wrong with the bounds once, where they stand
  return { kind: 'readings', at: node.at, type, display: list.display, uncertain: true, of: list, limits };
}

/** Mean and s/√n of repeated readings with n − 1 degrees of freedom (JCGM 100, 4.2). */
export function spreadOfReadings(values: readonly number[]): { mean: number; spread: Spread } {
  const n = values.length;
  const mean = values.reduce((sum, v) => sum + v, 0) / n;
  const s = Math.sqrt(values.reduce((sum, v) => sum + (v - mean) * (v - mean), 0) / (n - 1));
  return { mean, spread: { components: [{ u: s / Math.sqrt(n), nu: n - 1 }], limits: null } };
}

/** The spread that bounds give to a value (coherent SI) written in `unit`; null where they are wrong and reported. */
export function spreadOf(
  c: Context,
  bounds: ast.Bounds,
  value: number,
  unit: ast.QuantityLiteral['unit'],
  type: QuantityType,
): Spread | null {
  if (bounds.kind === 'within') return withinSpread(c, bounds, value, type);
  let halfWidth = 0;
  for (const part of bounds.parts) {
    const width = partWidth(c, part, value, unit, type);
    if (width === null) return null;
    halfWidth += width;
  }
  if (!(halfWidth >= 0)) return problem(c, bounds.at, 'a half-width is not negative');
  if (bounds.coverage === null) return limitsSpread(-halfWidth, halfWidth);
  const { k, nu } = bounds.coverage;
  if (!(k > 0)) return problem(c, bounds.coverage.at, 'a coverage factor is above zero');
  if (nu !== null && !(nu >= 1)) return problem(c, bounds.coverage.at, 'degrees of freedom are at least 1');
  return { components: [{ u: halfWidth / k, nu }], limits: null };
}

/** One part of a half-width in coherent SI: relative in % and ppm unless the value itself is in them (L11). */
function partWidth(
  c: Context,
  part: ast.QuantityLiteral,
  value: number,
  unit: ast.QuantityLiteral['unit'],
  type: QuantityType,
): number | null {
  const relative = isRelative(part.unit);
  if (relative && !isRelative(unit)) {
    if (type.point) return mended(c, part, 'a point of temperature has no percent; give the half-width in K', []);
    return Math.abs(value) * Math.abs(part.value);
  }
  if (isRelative(unit) && part.unit === null) {
    return mended(c, part, `the value is in ${unit!.text}; give the half-width in ${unit!.text} as well`, [
      {
        title: `Write \`${part.number} ${unit!.text}\``,
        edits: [{ at: { start: part.at.end, end: part.at.end }, text: ` ${unit!.text}` }],
      },
    ]);
  }
  const found = typeOfUnit(part.unit);
  if (found.point) {
    const write = differenceUnit(part.unit!)?.text ?? 'K';
    return mended(c, part, `a half-width is a difference; write it in ${write}`, [
      { title: `Write \`${write}\``, edits: [{ at: part.unitAt ?? part.at, text: write }] },
    ]);
  }
  if (disagreement(found.dimension, type.dimension) !== null) {
    return mended(c, part, `the half-width is ${inWords(found, part.unit)}, the value ${inWords(type, unit)}`, withUnitOf(part, unit));
  }
  return Math.abs(part.value);
}

/** `34 A ± 0.7`: the mend with the unit of the value, or of its differences. */
function withUnitOf(part: ast.QuantityLiteral, unit: ast.QuantityLiteral['unit']): readonly Mend[] {
  if (part.unit !== null || unit === null) return [];
  const { text } = differenceUnit(unit);
  return [{ title: `Write \`${part.number} ${text}\``, edits: [{ at: { start: part.at.end, end: part.at.end }, text: ` ${text}` }] }];
}

function withinSpread(c: Context, bounds: ast.Within, value: number, type: QuantityType): Spread | null {
  for (const end of [bounds.from, bounds.to]) {
    const found = typeOfUnit(end.unit);
    if (found.point !== type.point || disagreement(found.dimension, type.dimension) !== null) {
      return mended(c, end, `this limit is ${inWords(found, end.unit)}, the value ${inWords(type)}`, []) as null;
    }
  }
  const low = bounds.from.value - value;
  const high = bounds.to.value - value;
  if (low > 0 || high < 0 || low > high) return problem(c, bounds.at, 'the limits hold the value between them, the lower one first');
  return limitsSpread(low, high);
}

/** `in V`, `a plain number`, `a temperature in degC`. */
function inWords(type: QuantityType, display?: Display): string {
  return type.point || type.dimension === PLAIN ? describe(type, display) : `in ${describe(type, display)}`;
}

function isRelative(unit: ast.QuantityLiteral['unit']): boolean {
  return unit !== null && (unit.text === '%' || unit.text === 'ppm');
}

function mended(c: Context, part: ast.QuantityLiteral, words: string, mends: readonly Mend[]): null {
  c.problems.push(typeProblem('bounds-dimension', part.at, { words, mends }));
  return null;
}

function problem(c: Context, at: Span, words: string): null {
  c.problems.push(typeProblem('bounds-range', at, { words }));
  return null;
}

/** The inputs that an entry's literals make are named after it; elements of a list by their number. */
export function checkInputList(c: Context, node: ast.List, name: string): Checked | null {
  if (!node.items.every((i) => i.kind === 'quantity') || !node.items.some((i) => i.kind === 'quantity' && i.bounds !== null)) return null;
  const items = node.items.map((item, i) => checkQuantity(c, item as ast.QuantityLiteral, `${name}[${i + 1}]`));
  const first = items[0]!;
  return { kind: 'list', at: node.at, type: listOf(first.type), display: first.display, uncertain: true, items };
}

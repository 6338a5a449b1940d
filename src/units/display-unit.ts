// The unit in which a calculated value is shown where nothing declares one (the last part of grammar T7).
import { findSymbol } from './catalogue.ts';
import type { Dimension } from './dimension.ts';
import { displayForm } from './display-form.ts';
import { makeUnit } from './make-unit.ts';
import { unitOf } from './read-unit.ts';
import { PLAIN_UNIT, type PowerKind, type Unit, type UnitPart } from './unit.ts';

/** A unit and the coherent magnitude from which on it is used. */
interface Step {
  readonly unit: Unit;
  readonly from: number;
}

/** Units for one dimension and kind, by rising magnitude; `plain` for 0 and for what lies far outside. */
interface Ladder {
  readonly plain: Unit;
  readonly steps: readonly Step[];
}

const CELSIUS = unitOf('degC');
const PREFIXES: readonly (readonly [string, number])[] = [
  ['p', 1e-12],
  ['n', 1e-9],
  ['µ', 1e-6],
  ['m', 1e-3],
  ['', 1],
  ['k', 1e3],
  ['M', 1e6],
  ['G', 1e9],
];
// Shown without prefix whatever their magnitude: half a kelvin is 0.5 K to an engineer, not 500 mK.
const NEVER_PREFIXED = ['K', 'rad', 'cycle', 'rev', 'kg', 'mol', 'cd'];
// No kilometre in a product: a speed is m/s.
const NOT_IN_PRODUCTS = ['km'];

/** Steps other than prefixes, by the unit's coherent form. */
const OWN_STEPS: Readonly<Record<string, readonly (readonly [string, number])[]>> = {
  s: [['ns', 1e-9], ['µs', 1e-6], ['ms', 1e-3], ['s', 1], ['min', 1000], ['h', 7200], ['d', 172_800], ['year', 63_115_200]],
  kg: [['µg', 1e-9], ['mg', 1e-6], ['g', 1e-3], ['kg', 1]],
  'm²': [['µm²', 1e-12], ['mm²', 1e-8], ['m²', 1e-2]],
  'm³': [['mm³', 1e-9], ['mL', 1e-6], ['L', 1e-3], ['m³', 1]],
  'm³/s': [['mL/s', 1e-6], ['L/s', 1e-3], ['m³/s', 0.1]],
  'A/m²': [['A/m²', 1], ['A/mm²', 1e4]],
  'A·s^(1/2)/m²': [['A·s^(1/2)/m²', 1], ['A·s^(1/2)/mm²', 1e4]],
}; // biome-ignore format: tables

const ladders = new Map<Dimension, Map<PowerKind | null, Ladder>>();

/**
 * The unit for a value of this dimension, kind and coherent magnitude: a named unit with a prefix so that 1 ≤ |v| < 1000, else a
 * short product of named units; 0 takes no prefix. Time goes on in min, h, d and year, areas in mm² and m². Work is J unless
 * it is counted per radian, then it is a torque in N·m. For a list, give its greatest magnitude. Any number gives a unit.
 */
export function displayUnit(dimension: Dimension, power: PowerKind | null, point: boolean, magnitude: number): Unit {
  if (point && dimension === CELSIUS.dimension) return CELSIUS;
  const { plain, steps } = ladder(dimension, power);
  // What is 1 but for rounding errors counts as 1, as in comparisons (grammar P4).
  const size = Math.abs(magnitude) * (1 + 1e-9);
  const [lowest] = steps;
  const highest = steps.at(-1);
  if (!lowest || !highest || !(size >= lowest.from * 1e-3) || size >= highest.from * 1e6) return plain;
  return steps.reduce((best, step) => (step.from <= size ? step : best), lowest).unit;
}

function ladder(dimension: Dimension, power: PowerKind | null): Ladder {
  let kinds = ladders.get(dimension);
  if (!kinds) {
    kinds = new Map();
    ladders.set(dimension, kinds);
  }
  let found = kinds.get(power);
  if (!found) {
    found = makeLadder(ofKind(displayForm(dimension), power));
    kinds.set(power, found);
  }
  return found;
}

/** A bare watt in the symbol of its kind of power. */
function ofKind(form: readonly UnitPart[], power: PowerKind | null): readonly UnitPart[] {
  const bare = form.length === 1 && form[0]!.symbol.symbol === 'W' && isOne(form[0]!);
  if (!bare || power === null || power === 'active') return form;
  return [{ ...form[0]!, symbol: findSymbol(power === 'apparent' ? 'VA' : 'var')! }];
}

function makeLadder(form: readonly UnitPart[]): Ladder {
  const plain = makeUnit(form) ?? PLAIN_UNIT;
  const own = Object.hasOwn(OWN_STEPS, plain.text) ? OWN_STEPS[plain.text] : undefined;
  if (own) return { plain, steps: own.map(([text, from]) => ({ unit: unitOf(text), from })) };
  const [first, ...others] = form;
  if (!first || !isOne(first) || NEVER_PREFIXED.includes(first.symbol.symbol)) return { plain, steps: [] };
  const steps = PREFIXES.flatMap(([prefix, from]): Step[] => {
    const symbol = findSymbol(prefix + first.symbol.symbol);
    if (!symbol || (others.length > 0 && NOT_IN_PRODUCTS.includes(symbol.symbol))) return [];
    return [{ unit: makeUnit([{ ...first, symbol }, ...others])!, from }];
  });
  return { plain, steps };
}

function isOne(part: UnitPart): boolean {
  return part.power.num === 1 && part.power.den === 1;
}

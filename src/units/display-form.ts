// In which symbols a dimension is shown where nothing else says it (grammar T7): the shortest product that an engineer would write.

import { findSymbol } from './catalogue.ts';
import { BASES, type Base, type Dimension, divide, isRate, PLAIN, raise } from './dimension.ts';
import { add, ONE, type Rational, rational, times, toNumber, ZERO } from './rational.ts';
import { unitOf } from './read-unit.ts';
import type { UnitPart } from './unit.ts';

/** In the order in which products are written: `kg·m²`, `A·s`, `m²·K/W`. */
const SI_BASES: readonly Base[] = ['kg', 'A', 'mol', 'cd', 'm', 's', 'K'];
/** Named units that products are built with, and those that are shown alone only. The order settles ties. */
const IN_PRODUCTS = ['W', 'V', 'ohm', 'J', 'N', 'Pa', 'H', 'F', 'S'];
const ALONE = ['C', 'Wb', 'T'];

/** Products that the trade writes in another way than the shortest one. */
const FIXED = new Map(['A²·s', 'J/(kg·K)', 'ohm/s'].map((text) => [unitOf(text).dimension, unitOf(text).parts]));

const TORQUE = unitOf('N·m');
const VOLTS_PER_HERTZ = unitOf('V/Hz');
const known = new Map<Dimension, readonly UnitPart[]>();

/**
 * The symbols, without prefixes and of size 1, in which a dimension is shown; none for the plain number.
 * Counts show where they are the point of the value: `rad/s`, torque as work per radian, volts per hertz, and a turn
 * that no radian has met (grammar R2), which would otherwise vanish unseen. `1/s` never becomes Hz or rpm.
 */
export function displayForm(dimension: Dimension): readonly UnitPart[] {
  let form = known.get(dimension);
  if (!form) {
    form = isRate(dimension) ? rateForm(dimension) : otherForm(dimension);
    known.set(dimension, form);
  }
  return form;
}

function rateForm(dimension: Dimension): readonly UnitPart[] {
  const { rad, cycle, turn } = dimension;
  const time = exponentOf(dimension, 's');
  if (rad.num !== 0) {
    const against = (count: Rational): Rational => (count.num * rad.num < 0 ? count : ZERO);
    return parts([
      ['rad', rad],
      ['cycle', against(cycle)],
      ['rev', against(turn)],
      ['s', time],
    ]);
  }
  const matched = time.num !== 0 || add(cycle, turn).num === 0;
  return parts(
    matched
      ? [['s', time]]
      : [
          ['cycle', cycle],
          ['rev', turn],
        ],
  );
}

function otherForm(dimension: Dimension): readonly UnitPart[] {
  const { si, rad, cycle, turn } = dimension;
  if (si === TORQUE.dimension && toNumber(rad) === -1) return TORQUE.parts;
  if (si === VOLTS_PER_HERTZ.dimension.si && toNumber(cycle) === -1 && turn.num === 0) return VOLTS_PER_HERTZ.parts;
  const form = FIXED.get(si) ?? shortest(si);
  return turn.num !== 0 && rad.num === 0 ? [...form, ...parts([['rev', turn]])] : form;
}

/** The cheapest of: base symbols alone, or one named symbol whose power does away with one base, times base symbols. */
function shortest(dimension: Dimension): readonly UnitPart[] {
  let best = candidate(dimension, null, ONE);
  for (const name of [...IN_PRODUCTS, ...ALONE]) {
    const symbol = findSymbol(name)!;
    for (const [i, exponent] of symbol.dimension.exponents.entries()) {
      if (exponent.num === 0 || dimension.exponents[i]!.num === 0) continue;
      const power = times(dimension.exponents[i]!, rational(exponent.den, exponent.num)!);
      if (power.den > dimension.exponents[i]!.den) continue;
      const next = candidate(dimension, name, power);
      if (next.parts.length > 1 && ALONE.includes(name)) continue;
      if (next.cost < best.cost) best = next;
    }
  }
  return best.parts;
}

function candidate(dimension: Dimension, name: string | null, power: Rational): { parts: readonly UnitPart[]; cost: number } {
  const rest = name ? divide(dimension, raise(findSymbol(name)!.dimension, power)) : dimension;
  const powers = SI_BASES.map((base): [string, Rational] => [base, exponentOf(rest, base)]);
  const used = powers.filter(([, p]) => p.num !== 0);
  const named: [string, Rational][] = name ? [[name, power]] : [];
  const cost = [...named, ...used].reduce((sum, [, p]) => sum + 1 + Math.abs(toNumber(p)), 0);
  // Mass where the dimension holds none (J/kg for a speed squared) reads worse than a longer product; so does 1/ohm than S.
  const strange = exponentOf(dimension, 'kg').num === 0 && exponentOf(rest, 'kg').num !== 0;
  return { parts: parts([...named, ...used]), cost: cost + (strange ? 3 : 0) + (power.num < 0 ? 0.5 : 0) };
}

function exponentOf(dimension: Dimension, base: Base): Rational {
  return dimension.exponents[BASES.indexOf(base)]!;
}

function parts(powers: readonly (readonly [string, Rational])[]): readonly UnitPart[] {
  return powers.filter(([, power]) => power.num !== 0).map(([name, power]) => ({ symbol: findSymbol(name)!, power }));
}

/** The form of plain numbers. */
known.set(PLAIN, []);

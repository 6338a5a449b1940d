// How a unit of the catalogue is written down, and how its prefixed symbols are made from it.
import { BASES, type Base, type Dimension, dimension } from '../dimension.ts';
import { type Rational, ZERO } from '../rational.ts';
import type { PowerKind, Source, UnitSymbol } from '../unit.ts';
import { PREFIXES } from './prefixes.ts';

/** One unit with all its spellings and prefixes. */
export interface Definition {
  /** The spelling that results use. */
  readonly symbol: string;
  /** Other spellings, which take the same prefixes. */
  readonly also?: readonly string[];
  /** In words, without prefix. */
  readonly name: string;
  readonly dimension: Dimension;
  /**
   * One such unit in coherent SI units: as text where it is a finite decimal (taken exactly), as a number where it is none.
   * Absent for a coherent unit.
   */
  readonly size?: string | number;
  /** Allowed prefixes, separated by blanks. */
  readonly prefixes?: string;
  readonly power?: PowerKind;
  /** For points on a scale: the coherent value of the point 0. */
  readonly offset?: number;
  readonly source: Source;
}

/** Publications that many definitions share. */
export const SI_BROCHURE = 'SI Brochure, 9th edition (BIPM, 2019)';
export const SP_811 = 'NIST SP 811, 2008 edition, Appendix B.8';

/** The dimension with these whole exponents. */
export function of(powers: Partial<Record<Base, number>>): Dimension {
  return dimension(BASES.map((b): Rational => (powers[b] ? { num: powers[b], den: 1 } : ZERO)));
}

/** Every spelling of a definition with its symbol: without prefix first, then in the order of its prefixes. */
export function spellingsOf(definition: Definition): [spelling: string, symbol: UnitSymbol][] {
  const prefixes = definition.prefixes?.split(' ') ?? [];
  return ['', ...prefixes].flatMap((prefix) => {
    const symbol = prefixed(definition, prefix);
    const spelledPrefixes = prefix === 'µ' ? ['µ', 'μ', 'u'] : [prefix];
    return spelledPrefixes.flatMap((p) =>
      [definition.symbol, ...(definition.also ?? [])].map((s): [string, UnitSymbol] => [p + s, symbol]),
    );
  });
}

function prefixed(definition: Definition, prefix: string): UnitSymbol {
  const { factor, decimal } = exactSize(definition.size ?? '1');
  const scale = PREFIXES.get(prefix);
  return {
    symbol: prefix + definition.symbol,
    dimension: definition.dimension,
    factor,
    decimal: decimal + (scale?.decimal ?? 0),
    offset: definition.offset ?? 0,
    point: definition.offset !== undefined,
    power: definition.power ?? null,
    name: (scale?.name ?? '') + definition.name,
    source: definition.source,
  };
}

/** A finite decimal as whole number · 10^decimal where the whole number is exact, else the nearest number. */
function exactSize(size: string | number): { factor: number; decimal: number } {
  if (typeof size === 'number') return { factor: size, decimal: 0 };
  const [digits, exponent = '0'] = size.split('e') as [string, string?];
  const [whole, fraction = ''] = digits.split('.') as [string, string?];
  const factor = Number(whole + fraction);
  const decimal = Number(exponent) - fraction.length;
  if (!Number.isSafeInteger(factor)) return { factor: Number(size), decimal: 0 };
  const zeros = /^10*$/.test(String(factor)) ? String(factor).length - 1 : 0;
  return zeros > 0 ? { factor: 1, decimal: decimal + zeros } : { factor, decimal };
}

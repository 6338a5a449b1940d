// Units as the notation has them: a product of powers of catalogue symbols, with its size and its spelling.
import { type Dimension, PLAIN } from './dimension.ts';
import type { Rational } from './rational.ts';

/** Active, apparent or reactive power (grammar W1). */
export type PowerKind = 'active' | 'apparent' | 'reactive';

/** Where a definition comes from: a publication with its place, `common practice` or `from memory`. Never blank. */
export type Source = string;

/** One symbol of the catalogue, prefix included (`kW`, `rpm`, `degC`). */
export interface UnitSymbol {
  /** The spelling that results use (`ohm`, `degC`, `µs` as written below). */
  readonly symbol: string;
  readonly dimension: Dimension;
  /** Coherent SI value = number · factor · 10^decimal, exactly `decimal` where the factor is a power of ten (L16). */
  readonly factor: number;
  readonly decimal: number;
  /** For points on a scale: coherent value = (number · factor + offset). 0 for everything else. */
  readonly offset: number;
  /** Whether a literal in this unit alone is a point (`degC`, `degF`; A1). */
  readonly point: boolean;
  readonly power: PowerKind | null;
  /** In words, such as `kilowatt`. */
  readonly name: string;
  readonly source: Source;
}

/** A symbol with its exponent in a unit. */
export interface UnitPart {
  readonly symbol: UnitSymbol;
  readonly power: Rational;
}

/** A unit as it stands behind a number or a colon. The plain number `1` has no parts. */
export interface Unit {
  /** Canonical spelling, such as `W/(m²·K)`, `1/K`, `mohm`; empty for the plain number. */
  readonly text: string;
  readonly parts: readonly UnitPart[];
  readonly dimension: Dimension;
  /** Coherent SI value = number · factor · 10^decimal + offset. */
  readonly factor: number;
  readonly decimal: number;
  readonly offset: number;
  /** Whether values in it are points on a temperature scale: a bare `degC` or `degF`. */
  readonly point: boolean;
  /** The kind of power of a bare `W`, `VA`, `var` … unit, else null. */
  readonly power: PowerKind | null;
}

/** The plain number: no parts, dimension without exponents. */
export const PLAIN_UNIT: Unit = {
  text: '',
  parts: [],
  dimension: PLAIN,
  factor: 1,
  decimal: 0,
  offset: 0,
  point: false,
  power: null,
};

// Arbitrary units, numbers and dimensions for laws.
import fc from 'fast-check';
import { findSymbol, spellings } from '../../src/units/catalogue.ts';
import { BASES, type Dimension, dimension } from '../../src/units/dimension.ts';
import { type Rational, rational } from '../../src/units/rational.ts';
import type { UnitPart } from '../../src/units/unit.ts';

/** A small power, mostly whole. */
export const power: fc.Arbitrary<Rational> = fc
  .tuple(
    fc.integer({ min: -4, max: 4 }).filter((n) => n !== 0),
    fc.constantFrom(1, 1, 1, 2, 3, 5),
  )
  .map(([num, den]) => rational(num, den)!);

const part: fc.Arbitrary<UnitPart> = fc.record({ symbol: fc.constantFrom(...spellings()).map((s) => findSymbol(s)!), power });

/** Up to four symbols with powers. */
export const parts: fc.Arbitrary<UnitPart[]> = fc.array(part, { maxLength: 4 });

/** A unit symbol's canonical spelling. */
export const spelling: fc.Arbitrary<string> = fc.constantFrom(...spellings());

/** A number as the notation writes it, without sign. */
export const numberText: fc.Arbitrary<string> = fc
  .tuple(fc.nat(1e9), fc.option(fc.stringMatching(/^\d{1,6}$/)), fc.option(fc.integer({ min: -12, max: 12 })))
  .map(([whole, fraction, exponent]) => `${whole}${fraction === null ? '' : `.${fraction}`}${exponent === null ? '' : `e${exponent}`}`);

/** Any dimension with small exponents. */
export const anyDimension: fc.Arbitrary<Dimension> = fc
  .array(fc.tuple(fc.integer({ min: -6, max: 6 }), fc.constantFrom(1, 1, 2, 3)), { minLength: BASES.length, maxLength: BASES.length })
  .map((powers) => dimension(powers.map(([num, den]) => rational(num, den)!)));

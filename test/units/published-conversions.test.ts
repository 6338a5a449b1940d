// Conversions as publications print them.
import assert from 'node:assert/strict';
import { fromSI, toSI } from '../../src/units/quantity.ts';
import { toNumber } from '../../src/units/rational.ts';
import { unitOf } from '../../src/units/read-unit.ts';
import { PUBLISHED_CONVERSIONS } from '../reference/units.ts';

describe('published conversions', () => {
  for (const { id, number, unit, to, expected, tolerance, source } of PUBLISHED_CONVERSIONS) {
    it(`${id}: ${number} ${unit} is ${expected} ${to} (${source})`, () => {
      const from = unitOf(unit);
      const target = unitOf(to);
      assert.equal(from.dimension.si, target.dimension.si);
      // A turn is 2π radians; the notation asks for that factor in words.
      const turns = toNumber(from.dimension.turn) - toNumber(target.dimension.turn);
      const found = fromSI(toSI(number, from), target) * (2 * Math.PI) ** turns;
      assert.ok(Math.abs(found - expected) <= tolerance, `found ${found}`);
    });
  }

  it('has one row for each id', () => {
    assert.equal(new Set(PUBLISHED_CONVERSIONS.map((c) => c.id)).size, PUBLISHED_CONVERSIONS.length);
  });
});

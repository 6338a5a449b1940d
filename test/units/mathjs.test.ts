// Every unit against an independent catalogue: mathjs must agree on dimension and, to 1e-12, on size.
import assert from 'node:assert/strict';
import { all, create } from 'mathjs';
import { DEFINITIONS } from '../../src/units/catalogue.ts';
import { BASES } from '../../src/units/dimension.ts';
import { toNumber } from '../../src/units/rational.ts';
import { spellingsOf } from '../../src/units/symbols/definition.ts';
import type { UnitSymbol } from '../../src/units/unit.ts';

const math = create(all!);

/** How mathjs spells a unit, where it is not as we do. */
const OTHER_SPELLING: Readonly<Record<string, string>> = {
  Btu: 'BTU',
  Torr: 'torr',
  cfm: 'cuft / minute',
  cmil: '(pi / 4) mil^2',
  d: 'day',
  gpm: 'gallon / minute',
  inH2O: '25.4 mmH2O',
  min: 'minute',
  mho: '1 / ohm',
  psf: 'lbf / ft^2',
  ton_short: 'ton',
  ozf: '(1 / 16) lbf',
};

/** What mathjs does not have at all. */
const ABSENT = ['var', 'gauss', 'maxwell', 'oersted', 'gilbert', 'cal_IT', 'cal_th', 'hp_electric', 'hp_metric', 'rev', 'rpm', 'ft_survey', 'inHg', 'g_n', '%', 'ppm']; // biome-ignore format: a word list
const ABSENT_WITH_PREFIX = ['kft', 'µin', 'kcmil', 'mTorr'];
/** Where mathjs rounds its factor. */
const ROUNDED = ['hp', 'psi', 'Torr'];

const evaluated = (expression: string): math.Unit => {
  const value: unknown = math.evaluate(expression);
  assert.ok(value instanceof math.Unit, `mathjs reads ${expression}`);
  return value;
};
const tried = (expression: string): math.Unit | null => {
  try {
    return evaluated(`1 ${expression}`);
  } catch {
    return null;
  }
};
const sizeOf = (unit: math.Unit): number => Number(unit.toSI().toJSON().value);

function theirs(base: string, prefix: string): string {
  const spelling = OTHER_SPELLING[base] ?? base;
  return /^\p{L}+$/u.test(spelling) ? (prefix === 'µ' ? 'u' : prefix) + spelling : prefix === '' ? spelling : '';
}

/** Our dimension in mathjs's base units. */
function baseUnits({ dimension }: UnitSymbol): math.Unit {
  const powers = BASES.flatMap((base, i) => {
    const exponent = dimension.exponents[i]!;
    return exponent.num === 0 || base === 'turn' || base === 'cycle' ? [] : [`(1 ${base})^${toNumber(exponent)}`];
  });
  return evaluated(powers.join(' * '));
}

describe('units against mathjs', () => {
  for (const definition of DEFINITIONS) {
    for (const symbol of new Set(spellingsOf(definition).map(([, s]) => s))) {
      const prefix = symbol.symbol.slice(0, symbol.symbol.length - definition.symbol.length);
      if (definition.symbol === 'cycle') continue;
      if (ABSENT.includes(definition.symbol) || ABSENT_WITH_PREFIX.includes(symbol.symbol)) {
        it(`${symbol.symbol} is not there`, () => assert.equal(tried(symbol.symbol.replace('µ', 'u')), null));
      } else {
        const expression = theirs(definition.symbol, prefix);
        it(`${symbol.symbol} is ${expression}`, () => agree(symbol, expression));
      }
    }
  }

  it('cycle is 2π radians there, and a count of its own here', () => {
    assert.equal(sizeOf(evaluated('1 cycle')), 2 * Math.PI);
  });
});

function agree(symbol: UnitSymbol, expression: string): void {
  const unit = evaluated(/^[(\d]/.test(expression) ? expression : `1 ${expression}`);
  assert.ok(unit.equalBase(baseUnits(symbol)), 'dimension');
  const size = sizeOf(unit);
  const ours = symbol.factor * 10 ** symbol.decimal + symbol.offset;
  const difference = Math.abs(ours - size) / size;
  const expected = ROUNDED.includes(symbol.symbol) ? difference > 1e-12 && difference < 1e-5 : difference <= 1e-12;
  assert.ok(expected, `mathjs has ${size}, ours is ${ours}`);
}

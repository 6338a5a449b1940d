// Where a unit begins and ends in a text, what it means, and what is said where it is wrong.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { spellings } from '../../src/units/catalogue.ts';
import { PLAIN } from '../../src/units/dimension.ts';
import { makeUnit } from '../../src/units/make-unit.ts';
import { parseUnit, readUnit, type UnitFault, unitOf } from '../../src/units/read-unit.ts';
import { PLAIN_UNIT } from '../../src/units/unit.ts';
import { parts } from './support.ts';

/** Reads at `|`; the unit must end at the second `|` and print as `expected`. */
function reads(marked: string, expected: string): void {
  it(`${marked} is ${expected}`, () => {
    const [before, inside, after] = marked.split('|') as [string, string, string];
    const reading = readUnit(before + inside + after, before.length);
    assert.ok(reading);
    assert.equal(reading.unit.text, expected);
    assert.equal(reading.end, before.length + inside.length);
    assert.deepEqual(reading.faults, []);
  });
}

/** No unit begins at `|`. */
function readsNone(marked: string): void {
  it(`${marked} has no unit`, () => assert.equal(readUnit(marked.replace('|', ''), marked.indexOf('|')), null));
}

describe('the end of a unit (L1)', () => {
  reads('400 |V| + x', 'V');
  reads('|kW|', 'kW');
  reads('25|°C|', 'degC');
  reads('92.4|%|', '%');
  reads('5 |hp_electric|', 'hp_electric');
  reads('0.8 |mm²|, x', 'mm²');
  reads('a: |kW|, b', 'kW');
  reads('[|ohm|]', 'ohm');
  reads('0.00393 |%/K|', '%/K');
  reads('within 91.3 |%| to 92.4 %', '%');
  reads('5 |m|.', 'm');
  reads('2 |m|.2ohm', 'm');
  reads('5 |V| (k=2)', 'V');
  reads('4 |%|(', '%');
  readsNone('2 |K.I_AC3');
  readsNone('2 |K[');
  readsNone('2 |m.\u{1D465}');
  readsNone('2 |min(a, b)');
  readsNone('2 |K_n');
  readsNone('2 |Kx');
  readsNone('2 |K2');
  readsNone('2 |kw');
  readsNone('2 |%x');
  readsNone('2 |°x');
  readsNone('2 |x');
  readsNone('2 | V');
  readsNone('2| V');
  readsNone('|');
  readsNone('2 |constructor');
  readsNone('2 |V\u0307');
  it('reads from any offset, past the end too', () => {
    for (const at of [-1, 0, 99]) assert.doesNotThrow(() => readUnit('5 V', at));
  });
});

describe('products and quotients that belong to a unit (L2)', () => {
  reads('400 |V*A|', 'V·A');
  reads('400 |V·A|', 'V·A');
  reads('400 |V⋅A|', 'V·A');
  reads('400 |V|*I_n', 'V');
  reads('400 |V| * A', 'V');
  reads('400 |V|* A', 'V');
  reads('400 |V| *A', 'V');
  reads('5 |V|*min(a, b)', 'V');
  reads('2 |A|*K.I_AC3', 'A');
  reads('2 |V|×A', 'V');
  reads('18.1 |ohm/km|', 'ohm/km');
  reads('10 |W|/(a + b)', 'W');
  reads('10 |W|/(m²·x)', 'W');
  reads('10 |W|/(m²·K', 'W');
  reads('10 |W|/(m² ·K)', 'W');
  reads('10 |W|/(m²/K)', 'W');
  reads('10 |W|/()', 'W');
  reads('10 |W/(m²·K)| + 1', 'W/(m²·K)');
  reads('10 |W/(m²*K)|', 'W/(m²·K)');
  reads('10 |N·m/(A²)|', 'N·m/A²');
  reads('|lbf·ft|', 'lbf·ft');
  reads('|m·m|', 'm·m');
});

describe('powers (L5)', () => {
  reads('5 |m^2| + x', 'm²');
  reads('5 |m²|', 'm²');
  reads('5 |m| ^2', 'm');
  reads('5 |m|^n', 'm');
  reads('5 |m|^ 2', 'm');
  reads('5 |m|^(a/b)', 'm');
  reads('5 |m^2|x', 'm²');
  reads('5 |s^-1|', '1/s');
  reads('5 |s^−1|', '1/s');
  reads('5 |s⁻¹|', '1/s');
  reads('5 |V·s⁻¹·K^-2|', 'V/(s·K²)');
  reads('5 |V/K^-1|', 'V·K');
  reads('115 |A·s^(1/2)/mm²|', 'A·s^(1/2)/mm²');
  reads('5 |T^1.6|', 'T^(8/5)');
  reads('5 |T^(2/4)|', 'T^(1/2)');
  reads('5 |m^12|', 'm¹²');
});

describe('reciprocal units (L6)', () => {
  reads('0.00393 |1/K|', '1/K');
  reads(': |1/K| = 2', '1/K');
  reads('|1/(m·K)|', '1/(m·K)');
  readsNone('|1/2');
  readsNone('|1/x');
  readsNone('|1 /K');
  readsNone('|1/(a)');
  reads('1 |K^-1|', '1/K');
});

describe('faults inside a unit', () => {
  const check = (text: string, unit: string, ...expected: UnitFault[]) =>
    it(`${text}: ${expected.map((f) => (f.kind === 'solidus' ? `write ${f.forms.join(' or ')}` : f.kind)).join(', ')}`, () => {
      const reading = readUnit(`${text} + 1`, 0);
      assert.equal(reading?.end, text.length);
      assert.equal(reading.unit.text, unit);
      assert.deepEqual(reading.faults, expected);
    });
  const solidus = (length: number, start: number, end: number, ...forms: string[]): UnitFault => ({
    kind: 'solidus',
    at: { start: 0, end: length },
    joined: { start, end },
    forms,
  });
  const exponent = (start: number, end: number): UnitFault => ({ kind: 'exponent', at: { start, end } });
  check('W/m²/K', 'W/(m²·K)', solidus(6, 5, 6, 'W/(m²·K)'));
  check('m/s*kg', 'm·kg/s', solidus(6, 4, 6, 'm·kg/s', 'm/(s·kg)'));
  check('W/m²·K', 'W·K/m²', solidus(6, 5, 6, 'W·K/m²', 'W/(m²·K)'));
  check('W/(m²)/(K·s)', 'W/(m²·K·s)', solidus(12, 7, 12, 'W/(m²·K·s)'));
  check('1/K/m', '1/(K·m)', solidus(5, 4, 5, '1/(K·m)'));
  check('1/s*m', 'm/s', solidus(5, 4, 5, 'm/s', '1/(s·m)'));
  check('m^0', 'm', exponent(1, 3));
  check('m⁰', 'm', exponent(1, 2));
  check('m^(1/61)', 'm', exponent(1, 8));
  check('m^(1/0)', 'm', exponent(1, 7));
  check('m^0.333', 'm', exponent(1, 7));
  check('m^99999999999999999999999', 'm', exponent(1, 25));
  check('V/m^0·K^61', 'V·K/m', exponent(3, 5), exponent(7, 10), solidus(10, 6, 10, 'V·K/m', 'V/(m·K)'));
  check('km^60', 'km', { kind: 'size', at: { start: 0, end: 5 } });
  check('m^40·m^40', 'm', { kind: 'size', at: { start: 0, end: 9 } });
});

describe('a whole text as a unit', () => {
  it('takes 1 as the plain number', () => assert.equal(parseUnit('1'), PLAIN_UNIT));
  for (const text of ['', ' V', 'V ', 'V A', 'x', 'W/m/K', 'm^0', '1/', '2', 'V/', 'V·'])
    it(`"${text}" is none`, () => assert.equal(parseUnit(text), null));
  it('gives the same object for the same unit, however it is spelled', () => {
    assert.equal(parseUnit('W·m^-2·K⁻¹'), parseUnit('W/(m²*K)'));
    assert.equal(parseUnit('kΩ'), parseUnit('kohm'));
  });
  it('throws for a wrong constant of our own', () => assert.throws(() => unitOf('kw'), /"kw" is no unit/));
});

describe('what a unit is', () => {
  const check = (text: string, expected: { factor?: number; decimal?: number; point?: boolean; offset?: number; power?: string | null }) =>
    it(`${text}: ${JSON.stringify(expected)}`, () => {
      const unit = unitOf(text);
      for (const [key, value] of Object.entries(expected)) assert.equal(unit[key as keyof typeof unit], value, key);
    });
  check('kW', { factor: 1, decimal: 3, power: 'active', point: false, offset: 0 });
  check('hp', { power: 'active' });
  check('hp_metric', { power: 'active' });
  check('MVA', { power: 'apparent', decimal: 6 });
  check('kvar', { power: 'reactive' });
  check('W·h', { power: null, factor: 3600, decimal: 0 });
  check('V·A', { power: null });
  check('W/m', { power: null });
  check('degC', { point: true, offset: 273.15, factor: 1 });
  check('degF', { point: true, factor: 5 / 9 });
  check('%/degC', { point: false, offset: 0, factor: 1, decimal: -2 });
  check('W/(m²·degF)', { point: false, offset: 0, factor: 1 / (5 / 9) });
  check('degC²', { point: false, offset: 0 });
  check('mm²', { factor: 1, decimal: -6 });
  check('ohm·mm²/km', { factor: 1, decimal: -9 });
  check('s^(1/2)', { factor: 1, decimal: 0 });
  check('ms^(1/2)', { factor: Math.sqrt(10), decimal: -2 });
  check('in²', { factor: 64516, decimal: -8 });
  it('rpm and 1/min differ only in what they count', () => {
    assert.equal(unitOf('rpm').dimension.si, unitOf('1/min').dimension);
    assert.equal(unitOf('rpm').factor, unitOf('1/min').factor);
    assert.equal(unitOf('rev/min').dimension, unitOf('rpm').dimension);
    assert.equal(unitOf('cycle/s').dimension, unitOf('Hz').dimension);
    assert.equal(unitOf('rad/s').dimension.si, unitOf('Hz').dimension.si);
  });
});

describe('laws of reading units', () => {
  const separators = { '·': ['·', '*', '⋅'] };
  it('printing a unit and reading it back gives the same unit', () => {
    fc.assert(
      fc.property(parts, (given) => {
        const unit = makeUnit(given);
        fc.pre(unit !== null && unit.text !== '');
        assert.equal(parseUnit(unit!.text), unit);
      }),
    );
  });

  it('other signs for the product change nothing', () => {
    fc.assert(
      fc.property(parts, fc.constantFrom(...separators['·']), (given, sign) => {
        const unit = makeUnit(given);
        fc.pre(unit !== null && unit.text !== '');
        assert.equal(parseUnit(unit!.text.replaceAll('·', sign)), unit);
      }),
    );
  });

  it('never throws, never goes back, never reads past the end', () => {
    const alphabet = fc.constantFrom(
      'm',
      'K',
      'W',
      'kg',
      '1',
      '/',
      '*',
      '·',
      '(',
      ')',
      '^',
      '²',
      '⁻',
      '-',
      '.',
      ' ',
      'x',
      '%',
      '°',
      'C',
      '_',
      '9',
      '[',
    );
    fc.assert(
      fc.property(
        fc.array(alphabet, { maxLength: 30 }).map((a) => a.join('')),
        fc.nat(30),
        (text, at) => {
          const reading = readUnit(text, at);
          if (!reading) return;
          assert.ok(reading.end > at && reading.end <= text.length);
          assert.ok(Number.isFinite(reading.unit.factor) && reading.unit.factor > 0);
          for (const { at: place } of reading.faults) assert.ok(place.start >= at && place.end <= reading.end && place.start < place.end);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('reads endless units in one pass', () => {
    const long = 200_000;
    assert.equal(readUnit(`V/(${'m·'.repeat(long)}x)`, 0)?.end, 1);
    assert.equal(readUnit(`V${'/m·m'.repeat(long)}`, 0)?.end, 1 + 4 * long);
    assert.equal(readUnit('x'.repeat(long), 0), null);
    assert.equal(readUnit(`m^${'9'.repeat(long)}`, 0)?.faults[0]?.kind, 'exponent');
  });

  it('every symbol times and over every other is read as both', () => {
    const all = spellings();
    for (const [i, first] of all.entries()) {
      const second = all[(i * 7 + 3) % all.length]!;
      assert.equal(parseUnit(`${first}*${second}`)?.parts.length, 2, `${first}*${second}`);
      assert.equal(parseUnit(`${first}/${second}`)?.parts[1]?.power.num, -1, `${first}/${second}`);
    }
  });

  it('the plain number has no dimension', () => assert.equal(PLAIN_UNIT.dimension, PLAIN));
});

// Trees printed on one line, and names in their one spelling.
import assert from 'node:assert/strict';
import { isName, nameSpelling } from '../../src/language/name.ts';
import { parse } from '../../src/language/parser.ts';
import { print } from '../../src/language/print.ts';
import { children, expressionsOf, walk } from '../../src/language/walk.ts';

describe('printing', () => {
  const rows: [text: string, printed: string][] = [
    ['I_n<=K . I_AC3', 'I_n <= K.I_AC3'],
    ['0.85·U_s ≤ U_c ≤ 1.10×U_s', '0.85 * U_s <= U_c <= 1.10 * U_s'],
    ['25°C + 5mm^2/(a÷2)', '25 degC + 5 mm² / (a / 2)'],
    ['η² − √x^-2', 'power-of-root'],
    ['η²−(√x)^-2', 'eta² - (√x)^-2'],
    ['-5 degC ± 2K', '-5 degC ± 2 K'],
    ['12.4 mV+/-(1.5%+0.5 mV)( k=2, nu = 18 )', '12.4 mV ± (1.5 % + 0.5 mV) (k=2, nu=18)'],
    ['92%   within 91 % to 93%', '92 % within 91 % to 93 %'],
    ['readings[1 V,2 V] ± 1 mV', 'readings [1 V, 2 V] ± 1 mV'],
    ['readings(U/I)', 'readings (U / I)'],
    ['f(a,k=2)', 'f(a, k = 2)'],
    ['if not a then "x \\" y"else yes', 'if not a then "x \\" y" else yes'],
    ['least I_AC3 of contactors where type is not "K5"', 'least I_AC3 of contactors where type is not "K5"'],
    ['the R of wires where row.A==a', 'the R of wires where row.A == a'],
    ['first  of wires', 'first of wires'],
    ['root of x-1 over x from 0 to 2026-09-14', 'root of x - 1 over x from 0 to 2026-09-14'],
    ['', '…'],
  ];
  for (const [text, printed] of rows) {
    it(`${text || 'nothing'} is ${printed}`, () => {
      const { statements, problems } = parse(`x = ${text}`);
      const [value] = expressionsOf(statements[0]!);
      const hole = value?.kind === 'hole';
      assert.equal(problems.length === 0 || hole ? print(value!) : problems[0]!.code, printed);
    });
  }
});

describe('walking', () => {
  it('visits every part of an expression, outer ones first, in the order of the text', () => {
    const seen: string[] = [];
    const [value] = expressionsOf(parse('x = f(a, -b.c) + if [d] then √e else (g^2)').statements[0]!);
    const [whole] = expressionsOf(parse('x = if f(a, -b.c) < √e then [d] else (g^2)').statements[0]!);
    walk(whole!, (node) => seen.push(node.kind));
    assert.deepEqual(children(value!).length, 2);
    assert.deepEqual(seen, 'if comparison call name negate member name squareRoot name list name group power name quantity'.split(' '));
  });

  it('finds all expressions of a statement', () => {
    const printed = (text: string) => expressionsOf(parse(text).statements[0]!).map(print);
    assert.deepEqual(printed('x = a with b = c, d = e'), ['a', 'c', 'e']);
    assert.deepEqual(printed('f(a) = b with c = d needs e > 1 because "x"'), ['b', 'd', 'e > 1']);
    assert.deepEqual(printed('shall a for each t where b throughout c from d to e'), ['a', 'b', 'd', 'e']);
    assert.deepEqual(printed('curve a, b over x from c to d\n  mark e\n  limit f'), ['a', 'b', 'e', 'f', 'c', 'd']);
    assert.deepEqual(printed('tabulate a over x from b to c step d'), ['a', 'b', 'c', 'd']);
    assert.deepEqual(printed('use "x"'), []);
  });
});

describe('names', () => {
  it('have one spelling: composed, Greek letters as English names', () => {
    const rows = {
      η_n: 'eta_n',
      eta_n: 'eta_n',
      ΔT: 'DeltaT',
      '\u00B5': 'mu',
      μ: 'mu',
      '\u2126': 'Omega',
      ς: 'sigma',
      'e\u0301': '\u00E9',
      Länge: 'Länge',
    };
    for (const [written, spelling] of Object.entries(rows)) assert.equal(nameSpelling(written), spelling);
  });

  it('are a letter or `_`, then letters, digits and `_`', () => {
    for (const name of ['a', '_', 'I_AC3', 'η', 'Länge', 'x1', 'e\u0301x']) assert.ok(isName(name), name);
    for (const none of ['', '1a', 'a b', 'a-b', 'a.b', 'x²', 'I₁', '%', 'a ', '\u0301a']) assert.ok(!isName(none), none);
  });
});

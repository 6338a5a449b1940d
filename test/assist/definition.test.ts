// Go to definition, from every kind of name.
import assert from 'node:assert/strict';
import { definition, definitionByName } from '../../src/assist/definition.ts';
import { opened, same, underlined } from './support.ts';

/** The place that a name leads to. */
function check(marked: string, expected: string): void {
  const { open, spot } = opened(marked);
  const found = definition(open, spot);
  same(found === null ? 'nothing' : underlined(open, [{ location: found.to }]), expected);
}

describe('go to definition', () => {
  it('leads from an entry to the line that defines it, wherever that stands', () => {
    check('b = 2 * a|\na = 3 A', 'a = 3 A\n^');
    check('|b = 2 A', 'b = 2 A\n^');
    check('η_n = 92 %\nx = 1 / et|a_n', 'η_n = 92 %\n^^^');
  });

  it('leads to the first of two definitions', () => {
    check('a = 3 A\na = 4 A\nb = |a', 'a = 3 A\n^');
  });

  it('leads to a line that could not be read but would have defined the name', () => {
    check('a == 3 A\nb = |a', 'a == 3 A\n^');
    check('a = 3 +\nb = |a', 'a = 3 +\n^');
  });

  it('leads to functions of the sheet and of the library', () => {
    check('double(x) = 2 * x\ny = dou|ble(2)', 'double(x) = 2 * x\n^^^^^^');
    check('I = fla_3ph|(18.5 kW, 400 V, 92 %, 0.84)', 'library motors');
    check('y = |sqrt(2)', 'nothing');
  });

  it('leads to parameters, from the body and from a named argument', () => {
    check('double(x) = 2 * |x\nx = 5', 'double(x) = 2 * x\n       ^');
    check('part(x, n) = x / n\ny = part(2, |n = 3)', 'part(x, n) = x / n\n        ^');
  });

  it('leads to locals, which hide the sheet', () => {
    check('a = 1\ny = 2 * |a with a = 3', 'y = 2 * a with a = 3\n               ^');
    check('y = a with a = 2 * |b, b = 3', 'y = a with a = 2 * b, b = 3\n                      ^');
    check('f(x) = |k * x with k = x + 1', 'f(x) = k * x with k = x + 1\n                  ^');
  });

  it('leads to the variable of a range inside it, and to the sheet at its ends', () => {
    check('x = 1 A\ny = root of |x - 2 A over x from 0 A to 9 A', 'y = root of x - 2 A over x from 0 A to 9 A\n                         ^');
    check('x = 1 A\ny = root of x - 2 A over x from |x to 9 A', 'x = 1 A\n^');
    check('L = 9 m\ncurve 2 * |L over L from 0 m to L\n  mark L', 'curve 2 * L over L from 0 m to L\n                 ^');
    check('L = 9 m\ncurve 2 * L over L from 0 m to L\n  mark |L', 'L = 9 m\n^');
    check('U = 9 V\nshall U >= 1 V throughout |U from 8 V to 9 V', 'U = 9 V\n^');
  });

  it('leads to columns through rows, choices, look-ups, conditions and lists of rows', () => {
    const head = '| type | I_AC3 / A | U_s / V | f / Hz | S_inrush / VA |';
    check('K = least I_AC3 of contactors where type is "K5"\nx = K.|I_AC3', `${head}\n         ^^^^^`);
    check('K = least I_AC3 of contactors where |type is "K5"', `${head}\n  ^^^^`);
    check('K = least |I_AC3 of contactors', `${head}\n         ^^^^^`);
    check('r = the R of wires where row.|A == 2.5 mm²', '| A / mm² | R / (mohm/m) |\n  ^');
    check('x = max(contactors.|I_AC3)', `${head}\n         ^^^^^`);
    check('pick(I: A) = least I_AC3 of contactors where I_AC3 >= I\nx = pick(2 A).|U_s', `${head}\n                     ^^^`);
    check('wires.K = first of contactors\nx = wires.K.|U_s', `${head}\n                     ^^^`);
    check('K = first of contactors\ny = k.|U_s with k = K', `${head}\n                     ^^^`);
    check('K = first of contactors\ny = 2 +\nz = (if 1 < 2 then K else K).|f', `${head}\n                               ^`);
  });

  it('leads to computed columns', () => {
    check('wires.G = 1 / R\nx = sum(wires.|G)', 'wires.G = 1 / R\n      ^');
    check('wires.G = 1 / R\nwires.H = 2 * |G', 'wires.G = 1 / R\n      ^');
  });

  it('leads to tables, in the sheet and in files', () => {
    check(
      'K = first of |contactors',
      'Table contactors — Contactor range, invented  from datasheet "invented for this test"\n      ^^^^^^^^^^',
    );
    check('|wires.G = 1 / R', 'Table wires — Copper, class 2, at 20 °C  from standard "IEC 60228"\n      ^^^^^');
    check('shall R > 0 mohm/m for each wires where |R > 1 mohm/m', '| A / mm² | R / (mohm/m) |\n            ^');
    check('\nTable motors — [The mill](motors.csv)\n\n```ampwright\nx = sum(motors.|P_n)\n```\n', 'motors.csv');
  });

  it('leads to instruments', () => {
    check('instrument DMM ± 1 %\nU = 2 V by |DMM', 'instrument DMM ± 1 %\n           ^^^');
  });

  it('leads to what another sheet defines, and to that sheet', () => {
    check('use "panel-standard.ampwright.md"\nT = |T_panel', 'panel-standard.ampwright.md');
    check('use "panel-standard.ampwright.md" for |margin', 'panel-standard.ampwright.md');
    check('use "panel-sta|ndard.ampwright.md"', 'panel-standard.ampwright.md');
  });

  it('leads from a value in prose to its entry', () => {
    check('\nIt draws [3 A](#|I_n).\n\n```ampwright\nI_n = 3 A\n```\n', 'I_n = 3 A\n^^^');
    check('\n# I_n\n\nSee [there](#|i_n).\n\n```ampwright\ni_n = 3 A\n```\n', 'nothing');
  });

  it('leads nowhere from what has no definition', () => {
    check('x = |unknown', 'nothing');
    check('x = 3 |V', 'nothing');
    check('x = 3 |+ 4', 'nothing');
    check('x = the R of wires where |row.A == 1 mm²', 'nothing');
  });

  it('leads from a name alone, as results show it', () => {
    const { open } = opened('|a = 3 A\ndouble(x) = 2 * x\ninstrument DMM_7 ± 1 %\ncontactors.half: A = I_AC3 / 2');
    const place = (name: string) => {
      const location = definitionByName(open, name);
      return location === null ? 'nothing' : underlined(open, [{ location }]);
    };
    same(place('a'), 'a = 3 A\n^');
    same(place('double'), 'double(x) = 2 * x\n^^^^^^');
    same(place('DMM_7'), 'instrument DMM_7 ± 1 %\n           ^^^^^');
    same(place('contactors.half'), 'contactors.half: A = I_AC3 / 2\n           ^^^^');
    for (const nothing of ['x', 'sqrt', '', '.', 'a.b.c', '<img>', '__proto__']) assert.doesNotThrow(() => place(nothing));
    same(place('x'), 'nothing');
  });
});

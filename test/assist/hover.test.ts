// Hover: what is said of every kind of name, of units and of words.
import type { HoverPart } from '../../src/assist/hover/part.ts';
import { hover } from '../../src/assist/hover.ts';
import { contentOf } from '../../src/assist/location.ts';
import { opened, same } from './support.ts';

/** The hovered text, and what is said of it: code in backquotes, facts behind what they are about, the reference behind an arrow. */
function check(marked: string, expected: string): void {
  const { open, spot } = opened(marked);
  const found = hover(open, spot);
  const content = contentOf(open, spot.text)!;
  const lines = (found?.parts ?? []).map(line);
  same(found === null ? 'nothing' : [`[${content.slice(found.at.start, found.at.end)}]`, ...lines].join('\n'), expected);
}

function line(part: HoverPart): string {
  switch (part.kind) {
    case 'code':
      return `\`${part.text}\``;
    case 'fact':
      return `${part.about}: ${part.text}`;
    case 'reference':
      return `→ ${part.page}, ${part.of} ${part.name}`;
    case 'text':
      return part.text;
  }
}

const MOTOR = `
P_n = 18.5 kW  from plate "M-12"
U_n = 400 V ± 2 %  from plate "M-12"
eta = 92.4 % ± 0.5 %  from datasheet "rev 2"
I: A = fla_3ph(P_n, U_n, eta, 0.84)
  "full-load current"
  because "it sizes the contactor"
K = least I_AC3 of contactors where I_AC3 >= 1.1 * 30 A
shall I <= K.I_AC3
`;
const motor = (line: string, marked: string) => MOTOR.replace(line, marked).trim();

describe('hover', () => {
  it('says of an entry its formula, value, reason, what its uncertainty comes from and who uses it', () => {
    check(
      motor('shall I <=', 'shall |I <='),
      `
[I]
\`I: A = fla_3ph(P_n, U_n, eta, 0.84)\`
= 34.40 A ± 0.82 A (k=2)
full-load current
because: it sizes the contactor
uncertainty: 93 % from U_n, 7 % from eta
used by: shall I <= K.I_AC3`,
    );
  });

  it('says of an input where it comes from', () => {
    check(motor('fla_3ph(P_n,', 'fla_3ph(|P_n,'), '[P_n]\n`P_n = 18.5 kW`\nfrom: plate "M-12"\nused by: I');
    check('instrument M ± 1 %\nI = |a\na = 2 A by M on 2026-01-02', '[a]\n`a = 2 A`\n= 2.000 A ± 0.020 A\nby: M on 2026-01-02\nused by: I');
  });

  it('says why there is no value', () => {
    check('a = 2 + 3 V\nb = |a', '[a]\n`a = 2 + 3 V`\nerror: Adds a plain number and V\nused by: b');
    check('a = 2 + 3 V\n|b = a', '[b]\n`b = a`\nnot calculated: needs a');
    check('a == 2\nb = |a', '[a]\nThis line could not be read');
  });

  it('says of a choice what was chosen', () => {
    check(
      motor('<= K.', '<= |K.'),
      '[K]\n`K = least I_AC3 of contactors where I_AC3 >= 1.1 * 30 A`\n= K5 (row 2 of 3)\nused by: shall I <= K.I_AC3',
    );
  });

  it('says of a function its form, formula, source, needs and example', () => {
    check(
      'x = |fla_dc(1 kW, 2 V, 90 %)',
      `
[fla_dc]
\`fla_dc(P: kW, U: V, eta): A\`
full-load current of a direct-current motor from its rated shaft power
formula: P / (U * eta)
from: handbook "definition of efficiency: shaft power over electrical power"
needs: P > 0, because the rated shaft power is above zero
needs: U > 0, because the rated voltage is above zero: take it from the plate
needs: 0 < eta <= 1, because an efficiency is above 0 and at most 100 %: for 85 percent write 85 % or 0.85
example: fla_dc(5.5 kW, 440 V, 85 %)
library: motors
→ motors, function fla_dc`,
    );
    check(
      'f(a, b) = a / b  from practice "x"  needs b > 0\nx = |f(1, 2)',
      '[f]\n`f(a, b)`\nformula: a / b\nfrom: practice "x"\nneeds: b > 0',
    );
    check(
      'x = |sqrt(2)',
      '[sqrt]\n`sqrt(x)`\nSquare root; the exponents of the unit are halved.\nformula: √x\nfrom: ISO 80000-2:2019, 2-10.6\nexample: sqrt(2) * 230 V\n→ mathematics, function sqrt',
    );
  });

  it('says of names of one statement what they are', () => {
    check('f(a: V, b) = |a * b', '[a]\n`a: V`\na parameter of `f`');
    check('f(a: V, b) = a * |b', '[b]\n`b`\na parameter of `f`, a plain number');
    check('y = |k * 2 with k: A = 3 A', '[k]\n`k: A = 3 A`\na name of this statement');
    check('y = root of |t - 1 over t from 0 to 2', '[t]\n`t from 0 to 2`\nthe variable of this statement');
  });

  it('says of tables and columns what they hold', () => {
    check(
      'K = first of |contactors',
      `
[contactors]
\`Table contactors\`
Contactor range, invented
columns: type, I_AC3 / A, U_s / V, f / Hz, S_inrush / VA
rows: 3
from: datasheet "invented for this test"
used by: K`,
    );
    check(
      motor('K.I_AC3', 'K.|I_AC3'),
      '[I_AC3]\n`contactors.I_AC3 / A`\n= 40 A\na column of `contactors`\nvalues: 31.5, 40, 50\nused by: K, shall I <= K.I_AC3',
    );
    check(
      'wires.G: S·m = 1 / R\nx = sum(wires.|G)',
      '[G]\n`wires.G: S·m = 1 / R`\na column of `wires`, computed\nvalues: [75.19 S·m, 125.3 S·m]\nused by: x',
    );
  });

  it('says of an instrument what it is good for', () => {
    check(
      'instrument M ± (1.5 % + 0.5 mV) serial "B41" calibrated 2026-03-01 due 2027-03-01\nU = 2 V by |M',
      '[M]\n`instrument M ± (1.5 % + 0.5 mV)`\nserial: B41\ncalibrated: 2026-03-01\ndue: 2027-03-01\nused by: U',
    );
  });

  it('says of a unit its name, size and source', () => {
    check('x = 3 |kW', '[kW]\n`kW`\nkilowatt\nsize: 1 kW = 1000 W\nfrom: SI Brochure, 9th edition (BIPM, 2019), Table 4');
    check('x = 3 |A', '[A]\n`A`\nampere\nfrom: SI Brochure, 9th edition (BIPM, 2019), Table 2');
    check('x: W/(m²·|K) = 3 W/(m²·K)', '[K]\n`K`\nkelvin\nfrom: SI Brochure, 9th edition (BIPM, 2019), Table 2');
  });

  it('says of a word of the notation what it means, unless it is a name', () => {
    check(
      'K = |least I_AC3 of contactors',
      '[least]\n`least column of table where …`\nthe row with the least value of the column among those that fit',
    );
    check('limit = 2\nx = |limit', '[limit]\n`limit = 2`\nused by: x');
  });

  it('says where a used name is defined', () => {
    check(
      'use "panel-standard.ampwright.md"\nx = |T_panel',
      '[T_panel]\n`T_panel = 45 degC`\nfrom: standard "house rule 3, invented"\ndefined in: panel-standard.ampwright.md',
    );
  });

  it('says of a value in prose what its entry is', () => {
    check('\nIt is [3 A](#|I).\n\n```ampwright\nI = 3 A  "current"\n```\n', '[I]\n`I = 3 A`\ncurrent');
  });

  it('says nothing of what means nothing', () => {
    check('x = |y', 'nothing');
    check('x = 3 |+ 4', 'nothing');
  });
});

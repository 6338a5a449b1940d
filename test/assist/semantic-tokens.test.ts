// Colours by meaning.
import { semanticTokens } from '../../src/assist/semantic-tokens.ts';
import { block, opened, SHEET, same, underlined } from './support.ts';

function check(code: string, expected: string, text = block(0)): void {
  const { open } = opened(code);
  const marks = semanticTokens(open, text).map(({ at, kind, modifiers }) => ({
    location: { text, at },
    label: [kind, ...modifiers].join(' '),
  }));
  same(underlined(open, marks), expected);
}

describe('semantic tokens', () => {
  it('tell inputs from computed entries, and definitions from uses', () => {
    check(
      'a = 2 A\nb = 2 * a',
      `
a = 2 A
^ input definition
b = 2 * a
^ computed definition
        ^ input`,
    );
  });

  it('tell functions, parameters and locals apart', () => {
    check(
      'f(x: A) = x * k + sqrt(4) * 1 A\n  with k = 2\ny = f(x = 3 A)',
      `
f(x: A) = x * k + sqrt(4) * 1 A
^ function definition
  ^ parameter definition
          ^ parameter
              ^ local
                  ^^^^ function library
  with k = 2
       ^ local definition
y = f(x = 3 A)
^ computed definition
    ^ function
      ^ parameter`,
    );
    check(
      'x = root of t - 1 over t from 0 to 2',
      'x = root of t - 1 over t from 0 to 2\n^ computed definition\n            ^ parameter\n                       ^ parameter definition',
    );
  });

  it('tell tables, columns and instruments apart, whatever they are called', () => {
    check(
      'instrument A ± 1 %\nwires.G = 1 / R\nr = the R of wires where row.A == 1.5 mm²\nI = 2 A by A',
      `
instrument A ± 1 %
           ^ instrument definition
wires.G = 1 / R
^^^^^ table
      ^ column definition
              ^ column
r = the R of wires where row.A == 1.5 mm²
^ computed definition
        ^ column
             ^^^^^ table
                             ^ column
I = 2 A by A
^ input definition
           ^ instrument`,
    );
  });

  it('mark what comes from the library', () => {
    check('x = fla_dc(1 kW, 2 V, 90 %)', 'x = fla_dc(1 kW, 2 V, 90 %)\n^ computed definition\n    ^^^^^^ function library');
  });

  it('leave unknown names, units and words alone', () => {
    check('x = y + 2 A * pi', 'x = y + 2 A * pi\n^ computed definition');
  });

  it('mark names in prose', () => {
    check(
      '\nIt is [3 A](#I).\n\nTable u — Invented\n\n| b / A |\n| --: |\n| 1 |\n\n```ampwright\nI = 3 A\n```\n',
      'It is [3 A](#I).\n             ^ input\nTable u — Invented\n      ^ table definition\n| b / A |\n  ^ column definition',
      SHEET as never,
    );
  });
});

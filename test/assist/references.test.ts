// References and highlights: every place of the same thing, and of nothing else.
import { highlights, references } from '../../src/assist/references.ts';
import { opened, same, underlined } from './support.ts';

function check(marked: string, expected: string, withDefinition = true): void {
  const { open, spot } = opened(marked);
  const marks = references(open, spot, withDefinition).map((location) => ({ location }));
  same(underlined(open, marks) || 'nothing', expected);
}

function checkHighlights(marked: string, expected: string): void {
  const { open, spot } = opened(marked);
  const marks = highlights(open, spot).map(({ text, at, role }) => ({ location: { text, at }, label: role }));
  same(underlined(open, marks), expected);
}

const SHEET = `
# Drum

It draws [34 A](#I_n) and takes [40 A](#K.I_AC3) of [K5](#K).

Table contactors — Invented  from datasheet "invented for this test"

| type | I_AC3 / A |
| --- | --: |
| K5 | 40 |

\`\`\`ampwright
η = 92 %  from memory "plate"
I_n = 31 A / ETA
K = least COLUMN of contactors where I_AC3 >= I_n
\`\`\`

\`\`\`ampwright
shall NAME <= K.I_AC3  because "I_n is not read here" # nor I_n here
f(I_n: A) = I_n / eta
x = f(I_n = I_n)
\`\`\`
`;
const sheet = (cursor: { eta?: string; column?: string; name?: string }) =>
  SHEET.replace('ETA', cursor.eta ?? 'eta')
    .replace('COLUMN', cursor.column ?? 'I_AC3')
    .replace('NAME', cursor.name ?? 'I_n');

describe('references', () => {
  it('are found in all blocks and in prose, but not in texts, comments, or where the name means something else', () => {
    check(
      sheet({ name: '|I_n' }),
      `
It draws [34 A](#I_n) and takes [40 A](#K.I_AC3) of [K5](#K).
                 ^^^
I_n = 31 A / eta
^^^
K = least I_AC3 of contactors where I_AC3 >= I_n
                                             ^^^
shall I_n <= K.I_AC3  because "I_n is not read here" # nor I_n here
      ^^^
x = f(I_n = I_n)
            ^^^`,
    );
  });

  it('of a column are its head, and where it is read bare, behind a dot or in prose', () => {
    check(
      sheet({ column: 'I_A|C3' }),
      `
It draws [34 A](#I_n) and takes [40 A](#K.I_AC3) of [K5](#K).
                                          ^^^^^
| type | I_AC3 / A |
         ^^^^^
K = least I_AC3 of contactors where I_AC3 >= I_n
          ^^^^^
                                    ^^^^^
shall I_n <= K.I_AC3  because "I_n is not read here" # nor I_n here
               ^^^^^`,
    );
  });

  it('take a Greek letter and its English name as one name', () => {
    check(
      sheet({ eta: '|eta' }),
      `
η = 92 %  from memory "plate"
^
I_n = 31 A / eta
             ^^^
f(I_n: A) = I_n / eta
                  ^^^`,
    );
  });

  it('of a parameter are in its function and in named arguments', () => {
    check('f(I_n: A) = |I_n / 2\nI_n = 3 A\nx = f(I_n = I_n)', 'f(I_n: A) = I_n / 2\n  ^^^\n            ^^^\nx = f(I_n = I_n)\n      ^^^');
  });

  it('of functions, instruments and units are found as well', () => {
    check('f(a) = 2 * a\nx = f(2) + |f(3)', 'f(a) = 2 * a\n^\nx = f(2) + f(3)\n    ^\n           ^');
    check(
      'instrument M ± 1 %\nU = 2 V by |M\nI = 2 A by M on 2026-01-02',
      'U = 2 V by M\n           ^\nI = 2 A by M on 2026-01-02\n           ^',
      false,
    );
    check('x = 2 N·|m\ny: 1/m = 3 / 1 m', 'x = 2 N·m\n        ^\ny: 1/m = 3 / 1 m\n     ^\n               ^');
  });

  it('can leave out the definition', () => {
    check('a = 2\nb = |a', 'b = a\n    ^', false);
    check('a = 2\nb = |c', 'nothing');
  });
});

describe('highlights', () => {
  it('are the places of the same name in the same block, the definition told apart', () => {
    checkHighlights('a = 2\nb = |a + a', 'a = 2\n^ definition\nb = a + a\n    ^ use\n        ^ use');
    checkHighlights(
      sheet({ name: '|I_n' }),
      'shall I_n <= K.I_AC3  because "I_n is not read here" # nor I_n here\n      ^^^ use\nx = f(I_n = I_n)\n            ^^^ use',
    );
  });
});

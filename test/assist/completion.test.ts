// Completion: what is offered at a cursor, in which order, and what it writes.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { Completion } from '../../src/assist/completion/item.ts';
import { relativePath, wantsFiles } from '../../src/assist/completion/paths.ts';
import { completions } from '../../src/assist/completion.ts';
import { contentOf } from '../../src/assist/location.ts';
import { SOURCE_KINDS } from '../../src/language/token.ts';
import { opened } from './support.ts';

const SHEETS = ['panel-standard.ampwright.md', '../shared/wires.ampwright.md'];
const FILES = [...SHEETS, 'motors.csv', 'lists/fans.csv'];

/** The offers that begin with what is written already, as an editor filters them. */
function offers(marked: string): readonly Completion[] {
  const { open, spot } = opened(marked);
  const content = contentOf(open, spot.text)!;
  return completions(open, spot, FILES).filter(({ label, insertAt }) => label.startsWith(content.slice(insertAt.start, insertAt.end)));
}

const shown = ({ label, detail }: Completion) => (detail === '' ? label : `${label} | ${detail}`);

/** All offers, or the first ones where the list ends with `…`. */
function check(marked: string, expected: readonly string[]): void {
  const all = offers(marked).map((o) => (expected.some((e) => e.includes(' | ')) ? shown(o) : o.label));
  if (expected.at(-1) === '…') assert.deepEqual(all.slice(0, expected.length - 1), expected.slice(0, -1));
  else assert.deepEqual(all, expected);
}

function checkHas(marked: string, ...labels: readonly string[]): void {
  const all = offers(marked).map(({ label }) => label);
  assert.deepEqual(
    labels.filter((label) => !all.includes(label)),
    [],
  );
}

function checkLacks(marked: string, ...labels: readonly string[]): void {
  const all = offers(marked).map(({ label }) => label);
  assert.deepEqual(
    labels.filter((label) => all.includes(label)),
    [],
  );
}

/** The line after an offer has been taken; tab stops as they are. */
function checkTaken(marked: string, label: string, expected: string): void {
  const { open, spot } = opened(marked);
  const taken = completions(open, spot, FILES).find((o) => o.label === label);
  assert.ok(taken, `no ${label}`);
  const content = contentOf(open, spot.text)!;
  assert.equal(content.slice(0, taken.replaceAt.start) + taken.insert + content.slice(taken.replaceAt.end), expected);
}

const MOTOR =
  'P_n = 18.5 kW\nU_n = 400 V ± 2 %\nI_n: A = fla_3ph(P_n, U_n, 92 %, 0.84)\nI_max = 40 A\nK = least I_AC3 of contactors where I_AC3 >= I_n\n';

describe('completion of values', () => {
  it('offers entries with their values', () => {
    check(`${MOTOR}x = I_|`, ['I_n | 34.55 A ± 0.69 A', 'I_max | 40 A']);
    check(`${MOTOR}x = 2 * U|`, ['U_n | 400.0 V ± 8.0 V']);
    check(`${MOTOR}shall K|`, ['K | K5']);
  });

  it('offers what has the dimension that is wanted first', () => {
    check(`${MOTOR}x = 2 A + |`, ['I_n', 'I_max', 'P_n', 'U_n', 'K', '…']);
    check(`${MOTOR}shall U_n <= |`, ['U_n', 'P_n', 'I_n', 'I_max', 'K', '…']);
    check(`${MOTOR}x = coil_current(80 VA, |`, ['U_n', 'U =', '…']);
  });

  it('offers functions with their forms, and puts the cursor between the brackets', () => {
    check(`f(a: A, b) = a * b\nx = f|`, ['f | f(a: A, b)', 'floor | floor(x, step)', 'fit | fit(xs, ys, x)', '…']);
    checkTaken('x = sq|', 'sqrt', 'x = sqrt($1)');
    checkTaken('x = fla|(18.5 kW)', 'fla_3ph', 'x = fla_3ph(18.5 kW)');
    checkHas('x = fla_|', 'fla_3ph', 'fla_1ph', 'fla_dc');
  });

  it('offers parameters, locals and variables where they are seen, and only there', () => {
    check('f(alpha: A, b) = al|', ['alpha | alpha: A', '…']);
    checkLacks('f(alpha: A, b) = b\nx = al|', 'alpha');
    check('x = lo| with local = 3', ['local | local = 3', 'log10 | log10(x)', '…']);
    checkHas('curve 2 * di| over distance from 0 m to 9 m', 'distance');
    checkLacks('curve 2 over distance from 0 m to di|', 'distance');
  });

  it('offers the columns of the row in sight', () => {
    check('K = first of contactors where S_|', ['S_inrush | S_inrush / VA']);
    check('wires.G = |', ['A', 'R', '…']);
    checkHas('shall | > 0 for each wires', 'R', 'row');
    checkLacks('x = |', 'R', 'row');
  });

  it('does not offer an entry in its own definition', () => {
    checkLacks('alpha = al|', 'alpha');
    checkHas('x = root of x| - 1 over x from 0 to 2', 'x');
  });

  it('offers named arguments that are not given yet', () => {
    check('f(aa: A, ab, ac) = aa\nx = f(a|', ['aa = | A', 'ab = | a plain number', 'ac = | a plain number', '…']);
    checkHas('f(aa: A, ab, ac) = aa\nx = f(1 A, a|', 'ab =', 'ac =');
    checkLacks('f(aa: A, ab, ac) = aa\nx = f(1 A, ac = 3, a|', 'aa =', 'ac =');
    checkLacks('f(aa: A, ab, ac) = aa\nx = f(1 A, 2 + a|', 'ab =');
    checkTaken('f(aa: A, ab) = aa\nx = f(a|', 'ab =', 'f(aa: A, ab) = aa\nx = f(ab = ');
  });

  it('offers names of a used sheet', () => {
    checkHas('use "panel-standard.ampwright.md"\nx = |', 'T_panel', 'margin');
  });

  it('goes on in lines that are not finished elsewhere', () => {
    checkHas(`${MOTOR}x = (I_n + |`, 'U_n');
    checkHas(`${MOTOR}x = max(I_n, |\ny = 3`, 'I_max');
    checkHas(`x = I_|\n${MOTOR}`, 'I_n');
    checkHas('L = 2 m\ncurve 2 * x over x from 0 m to 9 m\n  mark |', 'L');
    checkHas('x = if a| then 2 else 3\nalpha = yes', 'alpha');
  });
});

describe('completion of columns', () => {
  it('offers them behind a dot, with the values of the row that was chosen', () => {
    check(`${MOTOR}x = K.|`, ['type | K5', 'I_AC3 | 40 A', 'U_s | 110 V', 'f | 50 Hz', 'S_inrush | 160 VA']);
    check('x = max(contactors.I|)', ['I_AC3 | I_AC3 / A']);
    check('wires.G = 1 / R\nx = sum(wires.|)', ['A', 'R', 'G']);
    check('x = (first of wires).|', ['A', 'R']);
    check('x = 3 V.|', []);
  });

  it('offers them where a row is chosen', () => {
    check('x = the R of wires where row.|', ['A', 'R']);
    check('x = least | of wires', ['A', 'R']);
    check('x = least S|', ['S_inrush of contactors | S_inrush / VA', '…']);
    checkTaken('x = the R|', 'R of wires', 'x = the R of wires where $0');
  });

  it('offers tables where one is chosen', () => {
    check('x = first of w|', ['wires | A, R']);
    check('shall 1 < 2 for each wi|', ['wires | A, R']);
  });
});

describe('completion of units', () => {
  it('offers them behind a number, those that fit first', () => {
    check(`${MOTOR}shall I_n <= 40 |`, ['A', '…']);
    check('x: V = 40 k|', ['kV', '…']);
    check('x = fla_dc(5 |', ['kW', 'W', '…']);
    check('x = 3 mm|', ['mm', 'mm²', '…']);
  });

  it('offers the units of the sheet before others', () => {
    check('a = 3 kvar\nb = 4 k|', ['kvar | kilovar', '…']);
  });

  it('offers them inside of compound units', () => {
    checkHas('x = 3 N·|', 'm');
    checkHas('x = 3 N·m|', 'mm');
    checkTaken('x = 3 N·m|', 'mm', 'x = 3 N·mm');
    checkTaken('x = 18 o|hm/km', 'mohm', 'x = 18 mohm/km');
  });

  it('puts a space behind the number', () => {
    checkTaken('x = 3|', 'kW', 'x = 3 kW');
  });

  it('offers types behind a colon', () => {
    check('x: |', ['1', 'text', 'date', '…']);
    check('x: d|', ['date', 'd', '…']);
    checkHas('f(a: |', 'any');
    checkHas('f(a: any, b: [|', 'any', 'ohm');
    checkLacks('x: |', 'any');
    checkTaken('I: |= 3 A', 'A', 'I: A= 3 A');
  });
});

describe('completion of words', () => {
  it('offers statements at the margin', () => {
    check('|', ['shall', 'should', 'curve', 'tabulate', 'instrument', 'action', 'use', 'contactors.', 'wires.']);
    check('a = 2\nsh|', ['shall', 'should']);
    check('a = 2\n|\nb = 3', ['shall', '…']);
  });

  it('offers the clauses that a statement may have and lacks', () => {
    check('x = 3 A |', ['from', 'by', 'within', 'because', 'with', 'and', 'or', 'is', 'is not']);
    check('x = 3 A  from plate "p"\n  |', ['by', 'because', 'with']);
    check('x = 3 A  from plate "p" |', ['by', 'because', 'with']);
    checkHas('shall a <= b |', 'because', 'for each', 'throughout', 'accepted by');
    checkLacks('shall a <= b |', 'by', 'needs', 'serial');
    check('f(a) = 2 * a n|', ['needs']);
    check('instrument M ± 1 % |', ['from', 'serial', 'calibrated', 'due']);
    check('action "Renew K4" |', ['by', 'due']);
    check('curve x over x from 0 to 1\n  |', ['from', 'because', 'with', 'mark', 'limit', 'log', '…']);
    check('use "panel-standard.ampwright.md" |', ['for']);
  });

  it('offers no clause inside brackets', () => {
    check('x = (3 A |', ['and', 'or', 'is', 'is not']);
    checkLacks('x = max(3 A |', 'from', 'because', 'with');
  });

  it('offers what a form asks for next', () => {
    check('K = least I_AC3 |', ['of', '…']);
    check('K = first of contactors |', ['where', '…']);
    check('x = if 1 < 2 |', ['then', '…']);
    check('x = if 1 < 2 then 3 |', ['else', '…']);
    check('curve 2 * x |', ['over', '…']);
    check('curve 2 * x over x |', ['from']);
    check('curve 2 * x over x from 0 m |', ['to', '…']);
    check('tabulate 2 * x over x from 0 m to 9 m |', ['step', '…']);
    check('shall 1 < 2 for |', ['each']);
    check('x = root of t - 2 |', ['over', '…']);
  });

  it('offers the kinds of source, each with its text', () => {
    check('x = 3 A  from |', [...SOURCE_KINDS]);
    check('x = 3 A\n  from d|', ['datasheet', 'drawing']);
    checkTaken('x = 3 A  from pl|', 'plate', 'x = 3 A  from plate "$1"$0');
    checkHas('a = 1 m\ncurve 2 over x from |', 'a');
    checkLacks('a = 1 m\ncurve 2 over x from |', 'plate');
  });

  it('offers instruments behind `by`, with their limits', () => {
    check('instrument DMM_7 ± (1.5 % + 0.5 mV)\ninstrument DMM_8 ± 1 %\nx = 3 V by |', ['DMM_7 | ± (1.5 % + 0.5 mV)', 'DMM_8 | ± 1 %']);
    checkHas('instrument DMM_7 ± 1 %\nx = 3 V by DMM_7 |', 'on');
  });

  it('offers the inputs that a range of operation may replace', () => {
    check(`${MOTOR}T = "text"\nshall I_n <= 40 A throughout |`, ['P_n', 'U_n', 'I_max', 'I_n']);
  });
});

describe('completion of files and their names', () => {
  it('offers sheets behind `use`', () => {
    check('use "|"', SHEETS);
    check('use "pan|', ['panel-standard.ampwright.md']);
    checkTaken('use "old|-path" for a', 'panel-standard.ampwright.md', 'use "panel-standard.ampwright.md" for a');
  });

  it('offers what that sheet defines', () => {
    check('use "panel-standard.ampwright.md" for |', ['T_panel', 'margin']);
    check('use "panel-standard.ampwright.md" for T_panel, m|', ['margin']);
  });

  it('offers entries for values in prose', () => {
    check('\nIt draws [x](#I|).\n\n```ampwright\nI_n = 3 A\nU_n = 4 V\n```\n', ['I_n | 3 A']);
    check(
      '\nIt takes [x](#K.I|).\n\nTable u — U\n\n| t | I_a / A | I_b / A |\n| - | -: | -: |\n| x | 1 | 2 |\n\n```ampwright\nK = first of u\n```\n',
      ['I_a | 1 A', 'I_b | 2 A'],
    );
    check('\nIt draws 3| A.\n\n```ampwright\nI_n = 3 A\n```\n', []);
  });
});

describe('completion of a table’s file', () => {
  const sheet = (line: string) => `\n${line}\n\n\`\`\`ampwright\nx = 1\n\`\`\`\n`;

  it('offers CSV files in a caption, and there alone', () => {
    check(sheet('Table motors — [The mill](m|)'), ['motors.csv']);
    check(sheet('Table motors — [The mill](lists/|)'), ['lists/fans.csv']);
    checkTaken(
      sheet('Table motors — [The mill](ol|d.csv)  from drawing "d"'),
      'motors.csv',
      sheet('Table motors — [The mill](motors.csv)  from drawing "d"').slice(1),
    );
    check(sheet('See [the list](m|)'), []);
  });

  it('asks for files only where one may be named', () => {
    const wants = (marked: string) => {
      const { open, spot } = opened(marked);
      return wantsFiles(open, spot);
    };
    assert.deepEqual(
      [sheet('Table motors — [The mill](m|)'), 'use "p|', 'use "p" for a|', 'x = "p|"', sheet('See [the list](m|)')].map(wants),
      [true, true, false, false, false],
    );
  });

  it('writes paths from the sheet’s own folder', () => {
    assert.equal(relativePath('/mill/sheets/a.md', '/mill/sheets/b.csv'), 'b.csv');
    assert.equal(relativePath('/mill/sheets/a.md', '/mill/lists/b.csv'), '../lists/b.csv');
    assert.equal(relativePath('/mill/a.md', '/mill/lists/old/b.csv'), 'lists/old/b.csv');
    assert.equal(relativePath('/mill/a/b/c.md', '/mill/c.csv'), '../../c.csv');
  });
});

describe('completion', () => {
  const silent = ['x = 3 # co|', 'x = 3 A from plate "M|"', 'x = "a|', 'x = 20|00 A', 'x = 2026-0|1-02', 'y = 2 * a with |'];
  const fresh = ['y = 2 * a with b = 2, c|', 'f(a|', 'f(a, b|) = a', 'instrument M|', 'wires.|', 'curve x over |'];
  for (const marked of [...silent, ...fresh]) it(`is silent in \`${marked}\``, () => check(marked, []));

  it('never fails, whatever is written', () => {
    const pieces = fc.constantFrom(
      ...['a', ' = ', ' ', '2', ' A', '\n', '\n  ', '(', ')', '[', '.', ',', ':', ' + ', '#', '"', 'from ', 'least ', 'of ', 'wires'],
      ...['where ', 'shall ', 'with ', 'row', 'curve ', 'over ', 'if ', '·', '²', 'sqrt', 'use ', 'by ', 'for '],
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 20 }), fc.nat(20), (parts, at) => {
        const marked = `${parts.slice(0, at).join('')}|${parts.slice(at).join('')}`;
        for (const { insertAt, replaceAt } of offers(marked)) {
          assert.ok(insertAt.start === replaceAt.start && insertAt.end <= replaceAt.end);
        }
      }),
    );
  });
});

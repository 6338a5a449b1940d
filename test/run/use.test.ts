// Sheets that use others: names whole or by list, what is refused, and where errors are told.
import assert from 'node:assert/strict';
import { answers, evaluated, type Given, sheetText } from '../support/answers.ts';

/** A used sheet with this code. */
const sheet = (code: string, before = '') => sheetText(code, { before });

const standard = sheet(
  `margin = 1.1                 from practice "panel standard"
U_s = 110 V                  from practice "panel standard"
drop(I: A, r: ohm): V = I * r
contactors.P_loss: W = 0.4 W/A * I_AC3
K = least I_AC3 of contactors where I_AC3 >= 35 A
instrument DMM_7 ± 1 %       due 2027-03-01`,
  `Table contactors — Contactor range, invented  from datasheet "invented"

| type | I_AC3 / A |
| --- | --: |
| K4 | 31.5 ± 1 % |
| K5 | 40 |`,
);

const files = { 'standard.ampwright.md': standard };

function check(title: string, code: string, expected: readonly string[], given: Given = { files }): void {
  it(title, () => assert.deepEqual(answers(code, given), expected));
}

describe('use', () => {
  check('takes everything', 'use "standard.ampwright.md"\nx = margin * U_s\ny = drop(2 A, 3 ohm)\nz = K.I_AC3\nw = contactors.P_loss', [
    'x = 121.0 V',
    'y = 6.000 V',
    'z = 40 A',
    'w = [12.60 W ± 0.13 W, 16.00 W]',
  ]);
  check('takes names by list', 'use "standard.ampwright.md" for margin, drop\nx = margin\ny = drop(2 A, 3 ohm)', [
    'x = 1.1',
    'y = 6.000 V',
  ]);
  check('takes no more than the list has', 'use "standard.ampwright.md" for margin\nx = U_s', [
    'x: no value',
    '! unknown-name at "U_s": `U_s` is not defined',
  ]);
  check('says which name is not there', 'use "standard.ampwright.md" for margin, maargin\nx = margin', [
    '! use-unknown at "maargin": `standard.ampwright.md` does not define `maargin`',
    'x = 1.1',
  ]);
  check('takes an instrument', 'use "standard.ampwright.md"\nx = 10 V by DMM_7', ['x = 10.00 V ± 0.10 V']);
  check('adds columns to a used table in this sheet only', 'use "standard.ampwright.md"\ncontactors.k = I_AC3 / 1 A\nx = contactors.k', [
    'contactors.k = [31.50 ± 0.32, 40.00]',
    'x = [31.50 ± 0.32, 40.00]',
  ]);
  check(
    'knows the same input through both sheets',
    'use "standard.ampwright.md"\nx = (first of contactors).I_AC3 - (first of contactors).I_AC3',
    ['x = 0 A'],
  );
  check(
    'lets a function see the sheet that it is written in',
    'use "f.ampwright.md" for f\nr = 100 ohm\nx = f(2 A)',
    ['r = 100 ohm', 'x = 6.000 V'],
    {
      files: { 'f.ampwright.md': sheet('r = 3 ohm\nf(I: A) = r * I') },
    },
  );
  check(
    'takes throughout over a used entry',
    'use "standard.ampwright.md" for U_s\nshall 0.9 * U_s >= 90 V throughout U_s from 99 V to 121 V',
    ['shall 0.9 * U_s >= 90 V: fails, 89.10 V ≥ 90 V, in hand -0.9000 V (-1.0 %), worst at U_s = 99.00 V'],
  );
});

describe('two definitions of one name', () => {
  check('here and in a used sheet', 'use "standard.ampwright.md"\nmargin = 1.2\nx = margin', [
    '! used-and-defined at ""standard.ampwright.md"": `margin` is defined here and comes from `standard.ampwright.md` as well; name what you take: `use "standard.ampwright.md" for …`',
    'margin = 1.2',
    'x = 1.2',
  ]);
  check('here, where the list leaves it out', 'use "standard.ampwright.md" for U_s\nmargin = 1.2\nx = margin', ['margin = 1.2', 'x = 1.2']);
  const two = { files: { ...files, 'other.ampwright.md': sheet('margin = 1.3') } };
  check(
    'in two used sheets',
    'use "standard.ampwright.md"\nuse "other.ampwright.md"\nx = margin',
    [
      '! used-twice at ""other.ampwright.md"": `margin` comes from `standard.ampwright.md` and from `other.ampwright.md`; take it from one by `use "…" for …`',
      'x = 1.1',
    ],
    two,
  );
  check(
    'in one sheet used twice is one',
    'use "standard.ampwright.md" for margin\nuse "standard.ampwright.md" for margin, U_s\nx = margin',
    ['x = 1.1'],
  );
  check('of the library is hidden by a used one', 'use "a.ampwright.md"\nx = fla_3ph(3)', ['x = 3.000'], {
    files: { 'a.ampwright.md': sheet('fla_3ph(x) = x') },
  });
});

describe('a used sheet is refused', () => {
  const refuse = (path: string, reason: string) =>
    check(`at ${path}`, `use "${path}"\nx = 3`, [`! use-refused at ""${path}"": \`${path}\` can't be used: ${reason}`, 'x = 3']);
  refuse('missing.ampwright.md', 'there is no such file');
  refuse('/etc/standard.ampwright.md', 'a path is relative to the sheet, with "/" between folders');
  refuse('http://lindrow.invalid/a.ampwright.md', 'a path is relative to the sheet, with "/" between folders');
  refuse('C:/standard.ampwright.md', 'a path is relative to the sheet, with "/" between folders');
  refuse('motors.csv', 'a sheet is a file `*.ampwright.md`');
  refuse('', 'a sheet is a file `*.ampwright.md`');
  check('without quotation marks, once', 'use panel.ampwright.md\nx = 3', [
    '! missing-text at "panel": A text is missing behind `use`; the form is `use "sheet.ampwright.md" for …`',
    'x = 3',
  ]);

  it('where its path leads out of the workspace, as the workspace says', () => {
    const { result } = evaluated('use "../../secret.ampwright.md"');
    assert.match(result.cells[0]!.problems[0]!.message, /^`..\/..\/secret.ampwright.md` can't be used: there is no such file$/);
  });
});

describe('sheets that use each other', () => {
  const chain = (length: number): Record<string, string> =>
    Object.fromEntries(
      Array.from({ length }, (_, i) => [
        `s${i + 1}.ampwright.md`,
        sheet(
          i + 1 === length
            ? 'x = 7'
            : `use "s${i + 2}.ampwright.md" for x_${i + 2}\nx_${i + 1} = x_${i + 2}`
                .replace(`x_${length}`, 'x')
                .replace(`x_${length}`, 'x'),
        ),
      ]),
    );
  check('do so up to 16 deep', 'use "s1.ampwright.md" for x_1\ny = x_1', ['y = 7'], { files: chain(16) });

  it('no more than 16 deep', () => {
    const { problems } = evaluated('use "s1.ampwright.md" for x_1\ny = x_1', { files: chain(17) });
    const depth = problems.find(({ problem }) => problem.code === 'use-depth');
    assert.equal(depth?.path, 's16.ampwright.md');
    assert.match(depth?.problem.message ?? '', /more than 16 deep/);
  });

  it('not in a circle, which is told whole', () => {
    const circle = { 'a.ampwright.md': sheet('use "b.ampwright.md"\na = 1'), 'b.ampwright.md': sheet('use "a.ampwright.md"\nb = 2') };
    const { problems, result } = evaluated('use "a.ampwright.md"\nx = a', { files: circle });
    assert.deepEqual(
      problems
        .filter(({ problem }) => problem.code.startsWith('use'))
        .map(({ problem, path }) => `${path} ${problem.code}: ${problem.message}`),
      [
        'null use-errors: `a.ampwright.md` has an error: `b.ampwright.md` has an error: These sheets use each other in a circle: a.ampwright.md → b.ampwright.md → a.ampwright.md',
        'b.ampwright.md use-circle: These sheets use each other in a circle: a.ampwright.md → b.ampwright.md → a.ampwright.md',
        'a.ampwright.md use-errors: `b.ampwright.md` has an error: These sheets use each other in a circle: a.ampwright.md → b.ampwright.md → a.ampwright.md',
      ],
    );
    assert.equal(result.entries.get('x')?.value?.text, '1');
  });

  check('through folders, each path from its own sheet', 'use "shared/a.ampwright.md"\nx = a', ['x = 3.000'], {
    files: {
      'shared/a.ampwright.md': sheet('use "../b.ampwright.md"\na = b + 1'),
      'b.ampwright.md': sheet('b = 2'),
    },
  });
});

describe('errors of a used sheet', () => {
  const broken = { 'a.ampwright.md': `# A\n\n${sheet('ok = 1\nbad = 3 V + 2 A\nworse = bad')}` };

  it('are told there and where it is used, and leave the rest', () => {
    const { problems, result } = evaluated('use "a.ampwright.md"\nx = ok\ny = worse', { files: broken });
    assert.deepEqual(
      problems
        .filter(({ problem }) => problem.severity === 'error')
        .map(({ problem, at, path }) => [path, problem.code, at.start, problem.message]),
      [
        [null, 'use-errors', 17, '`a.ampwright.md` has an error: Adds V and A'],
        ['a.ampwright.md', 'dimension-mismatch', broken['a.ampwright.md'].indexOf('3 V + 2 A'), 'Adds V and A'],
      ],
    );
    assert.deepEqual(
      [...result.entries].map(([name, { value, missing }]) => [name, value?.text ?? missing]),
      [
        ['x', '1'],
        ['y', { kind: 'not calculated', because: ['worse'] }],
      ],
    );
  });

  it('are told of its tables as well', () => {
    const { problems } = evaluated('use "a.ampwright.md"\nx = count(t)', {
      files: { 'a.ampwright.md': sheet('', 'Table t — [List](t.csv)'), 't.csv': 'a / kW\n3\nx\n' },
    });
    assert.deepEqual(
      problems.filter(({ problem }) => problem.severity === 'error').map(({ problem, path }) => [path, problem.code]),
      [
        [null, 'use-errors'],
        ['t.csv', 'cell-number'],
      ],
    );
  });
});

describe('the digest', () => {
  const digestOf = (given: Given) => evaluated('use "a.ampwright.md"\nx = b', given).digest;
  const a = sheet('use "b.ampwright.md"\na = 1');
  const given = (b: string, signed = a): Given => ({
    files: { 'a.ampwright.md': signed, 'b.ampwright.md': sheet(b), 'unused.ampwright.md': '' },
  });

  it('covers the files that are read, however deep', () => {
    assert.notEqual(digestOf(given('b = 1')), digestOf(given('b = 2')));
    assert.equal(digestOf(given('b = 1')), digestOf(given('b = 1')));
  });

  it('takes no notice of signatures of a used sheet, and of line ends', () => {
    const signed = `---\nampwright: 1\nsignatures:\n  - role: checked\n    name: R. Osei\n    date: 2026-11-20\n---\n\n${a}`;
    const unsigned = `---\nampwright: 1\n---\n\n${a}`;
    assert.equal(digestOf(given('b = 1', signed)), digestOf(given('b = 1', unsigned)));
    assert.equal(digestOf(given('b = 1', unsigned.replace(/\n/g, '\r\n'))), digestOf(given('b = 1', unsigned)));
  });

  it('lists every file with a digest of its own', () => {
    const { files } = evaluated('use "a.ampwright.md"\nx = b', given('b = 1'));
    assert.deepEqual(files.map((f) => f.path).sort(), ['a.ampwright.md', 'b.ampwright.md']);
    assert.ok(files.every((f) => /^sha256:[0-9a-f]{64}$/.test(f.digest)));
  });
});

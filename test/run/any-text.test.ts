// No text makes a run throw or hang: token soups, mutated sheets, and sizes that no sheet has.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { answers, evaluated, sheetText } from '../support/answers.ts';
import { checkSound } from '../support/sound.ts';
import { blocks, soups } from '../support/sources.ts';
import { GIVEN, wellTyped } from '../support/well-typed.ts';

const SAMPLE = readFileSync('samples/starter-sizing.ampwright.md', 'utf8');
const EVERYTHING = readFileSync('test/run/fixtures/everything.md', 'utf8');
const LIBRARY = readFileSync('src/library/coils.ampwright.md', 'utf8');

describe('any text', () => {
  it('as the code of a block has an answer', () => {
    const text = fc.oneof(
      soups,
      blocks,
      fc.tuple(blocks, soups).map((both) => both.join('\n')),
    );
    fc.assert(
      fc.property(text, (code) =>
        checkSound(evaluateSheet(sheetText(code.replaceAll('```', ''), { before: EVERYTHING.split('## Inputs')[0]! }), NO_FILES)),
      ),
      { numRuns: 300 },
    );
  });

  const pieces = [
    '(',
    ')',
    ' ± 2 %',
    '1/0',
    'I_n',
    'K.',
    '"',
    '```',
    '\n',
    '| ',
    ' of ',
    ' if ',
    '-',
    '^',
    'where',
    ' throughout ',
    '[',
    ', ',
    'V',
    'degC',
    '<!-- results -->',
    '#',
    '—',
    '0',
    'row',
  ];
  const mutation = fc.tuple(fc.nat(1e6), fc.nat(30), fc.constantFrom('', '', ...pieces));
  for (const [name, text] of Object.entries({ sample: SAMPLE, 'sheet of everything': EVERYTHING, 'library sheet': LIBRARY })) {
    it(`that was the ${name} has an answer`, () => {
      fc.assert(
        fc.property(fc.array(mutation, { minLength: 1, maxLength: 8 }), (changes) => {
          const mutated = changes.reduce((its, [where, length, by]) => {
            const at = where % its.length;
            return its.slice(0, at) + by + its.slice(at + length);
          }, text);
          checkSound(evaluateSheet(mutated));
        }),
        { numRuns: 60 },
      );
    });
  }

  it('that is well-typed has values that are finite', () => {
    fc.assert(
      fc.property(wellTyped(4), ({ text }) => checkSound(evaluated(`${GIVEN.replace(/^(u_1 = .*)$/m, '$1 ± 2 %')}\nx = ${text}`))),
      { numRuns: 150 },
    );
  });
});

describe('a size that no sheet has', () => {
  const check = (title: string, code: string, expected: readonly (string | RegExp)[]) =>
    it(title, () => {
      const lines = answers(code);
      for (const [i, line] of expected.entries()) {
        if (typeof line === 'string') assert.equal(lines.at(i - expected.length), line);
        else assert.match(lines.at(i - expected.length) ?? '', line);
      }
    });
  const times = (count: number, of: (i: number) => string, between = '') => Array.from({ length: count }, (_, i) => of(i)).join(between);

  check('10,000 nested brackets', `x = ${'('.repeat(10_000)}1${')'.repeat(10_000)}\ny = 3`, [/^! nested-too-deep/, 'y = 3']);
  const doubled = times(40, (i) => `f${i + 1}(x) = f${i}(x) + f${i}(x)\n`);
  check('functions that double their calls 40 times', `f0(x) = x + 1\n${doubled}x = f40(1)\ny = f10(1)`, [
    'x: not calculated, needs f40',
    'y = 2048',
  ]);
  const rooted = (depth: number): string => (depth === 0 ? 't' : `(root of ${rooted(depth - 1)} - u${depth} over u${depth} from -9 to 9)`);
  check('roots of roots of roots', `x = root of ${rooted(5)} - 1 over t from 0 to 2\ny = 3`, [/^! too-many-calls/, 'y = 3']);
  check('10,000 unclosed brackets', `x = ${'('.repeat(10_000)}\ny = 3`, ['y = 3']);
  check('nesting up to 200', `x = ${'('.repeat(150)}1${')'.repeat(150)}\ny = 3`, ['x = 1', 'y = 3']);
  check('10,000 signs', `x = ${'-'.repeat(10_000)}1\ny = 3`, [/^! nested-too-deep/, 'y = 3']);
  check('10,000 branches', `x = ${'if yes then 1 else '.repeat(10_000)}2\ny = 3`, [/^! nested-too-deep/, 'y = 3']);
  check('10,000 powers', `x = ${times(10_000, () => '1', '^')}\ny = 3`, [/^! nested-too-deep/, 'y = 3']);
  check('a line of a megabyte', `x = "${'a'.repeat(1_000_000)}"\ny = 3`, [/^! /, 'y = 3']);
  check('a comment of a megabyte', `x = 3 # ${'a'.repeat(1_000_000)}\ny = 3`, ['x = 3', 'y = 3']);
  check('a sum of 100,000 terms', `x = ${times(100_000, () => '1', ' + ')}\ny = 3`, ['x = 100000', 'y = 3']);
  check('an uncertain sum of 100,000 terms', `a = 1 V ± 1 %\nx = ${times(100_000, () => 'a', ' + ')}`, ['x = 100000 V ± 1000 V']);
  check('a product of 10,000 factors', `x = ${times(10_000, () => '1', ' * ')}`, ['x = 1.000']);
  check('a list of 100,000 elements', `x = [${times(100_000, () => '1', ', ')}]\ny = sum(x)\nz = count(2 * x)`, [
    'y = 100000',
    'z = 100000',
  ]);
  check('a list of 100,001 elements', `x = [${times(100_001, () => '1', ', ')}]\ny = 3`, [/^! list-too-long/, 'y = 3']);
  check('10,000 entries in reverse order', `${times(10_000, (i) => `x_${i} = x_${i + 1} + 1`, '\n')}\nx_10000 = 0\ny = x_0`, ['y = 10000']);
  check(
    '10,000 uncertain entries in a row',
    `x_0 = 1 V ± 1 V\n${times(10_000, (i) => `x_${i + 1} = x_${i} + 1 mV`, '\n')}\ny = x_10000 - x_0`,
    ['y = 10.00 V'],
  );
  check('a circle of 10,000 entries', `${times(10_000, (i) => `x_${i} = x_${(i + 1) % 10_000}`, '\n')}\ny = 3`, ['y = 3']);
  check(
    'functions that call each other up to 200 deep',
    `${times(199, (i) => `f_${i}(a) = f_${i + 1}(a) + 1`, '\n')}\nf_199(a) = a\nx = f_0(1)`,
    ['x = 200.0'],
  );
  check(
    '5,000 functions that call each other',
    `${times(5_000, (i) => `f_${i}(a) = f_${i + 1}(a) + 1`, '\n')}\nf_5000(a) = a\nx = f_0(1)\ny = f_4990(1)`,
    [/^x: not calculated/, 'y = 11.00'],
  );
  check(
    '5,000 functions of any value that call each other',
    `${times(5_000, (i) => `f_${i}(a: any) = f_${i + 1}(a)`, '\n')}\nf_5000(a: any) = a\nx = f_0(1 V)\ny = f_4990(1 V)`,
    [/^! |^x: /, 'y = 1.000 V'],
  );
  check(
    '10,000 `with` definitions that rely on each other',
    `x = a_0 with ${times(10_000, (i) => `a_${i} = a_${i + 1}`, ', ')}, a_10000 = 1\ny = 3`,
    [/^! evaluation-depth/, 'y = 3'],
  );
  check('200 `with` definitions that rely on each other', `x = a_0 with ${times(200, (i) => `a_${i} = a_${i + 1} + 1`, ', ')}, a_200 = 0`, [
    'x = 200.0',
  ]);
  const within = (depth: number, inner: string) => `${'abs('.repeat(depth)}${inner}${')'.repeat(depth)}`;
  check(
    'functions 190 deep, each nested 190 deep',
    `${times(190, (i) => `f_${i}(a) = ${within(190, `f_${i + 1}(a)`)}`, '\n')}\nf_190(a) = a\nx = f_0(1)\ny = f_189(3)`,
    [/^x: not calculated/, 'y = 3.000'],
  );
  check(
    '`with` definitions 190 deep, each nested 190 deep',
    `x = a_0 with ${times(190, (i) => `a_${i} = ${within(190, `a_${i + 1}`)}`, ', ')}, a_190 = 1\ny = 3`,
    [/^! evaluation-depth/, 'y = 3'],
  );
  check(
    '1,001 kinds of argument',
    `f(a: any) = a\n${times(1_001, (i) => `x_${i} = f(1 m^${1 + (i % 40)}/kg^${1 + Math.floor(i / 40)})`, '\n')}`,
    [/^! too-many-instances/],
  );
  check('10 million samples asked for', 'tabulate x over x from 0 to 1 step 1e-7', [/^! too-many-samples .* 10000001 rows; at most 1000/]);
  check('1,000 rows of a tabulation', 'tabulate x over x from 1 to 1000 step 1\ny = 3', ['y = 3']);
  check('a text of 10,001 characters', `x = "${'a'.repeat(10_001)}"\ny = 3`, [/^! /, 'y = 3']);
  check('20,000 statements in error', `${times(20_000, (i) => `x_${i} = 3 V + ${i} A`, '\n')}\ny = 3`, ['y = 3']);
  check('20,000 requirements', `x = 3 V\n${times(20_000, () => 'shall x <= 4 V', '\n')}`, [/: holds/]);
  check(
    'names like those of objects',
    'constructor = 3\n__proto__ = 4\ntoString = 5\nhasOwnProperty = 6\nx = constructor + __proto__ + toString + hasOwnProperty',
    ['x = 18.00'],
  );
  check('columns like those of objects', 'x = valueOf.constructor', ['x: no value', /unknown-name at "valueOf"/]);

  it('a table of 100,000 rows is chosen from and summed', () => {
    const rows = times(100_000, (i) => `| r${i} | ${i} |`, '\n');
    const before = `Table t — Rows\n\n| tag | I / A |\n| --- | --: |\n${rows}`;
    const lines = answers('K = least I of t where I > 70000 A\nx = sum(t.I)\nt.P = 2 * I\ny = sum(t.P)\nshall I <= 1e6 A for each t', {
      before,
    });
    assert.deepEqual(lines.slice(0, 2), ['K = r70001  (row 70002 of 100000; 70001 ruled out by I > 70000 A)', 'x = 5.000e9 A']);
    assert.equal(lines[3], 'y = 10000 MA');
  });

  it('a sheet of 2,000 blocks', () => {
    const text = times(2_000, (i) => sheetText(i === 0 ? 'x_0 = 1' : `x_${i} = x_${i - 1} + 1`), '\n');
    assert.equal(evaluateSheet(text).result.entries.get('x_1999')?.value?.text, '2000');
  });
});

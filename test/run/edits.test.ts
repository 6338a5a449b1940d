// After any sequence of edits the answer is that of a fresh run: values, texts, problems, budgets, readers.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { print } from '../../src/language/print.ts';
import { editCell } from '../../src/run/edit-cell.ts';
import { editSheet } from '../../src/run/edit-sheet.ts';
import { evaluationOf, type SheetEvaluation } from '../../src/run/evaluate.ts';
import { type OpenSheet, openSheet } from '../../src/run/open-sheet.ts';
import { recorded } from '../../src/run/record.ts';
import { answersOf, filesOf, sheetText } from '../support/answers.ts';
import { soupLines } from '../support/sources.ts';

/** What may stand at the beginning, where the tables stand, between the blocks, and at the end. The first of each is how a sheet begins. */
const TEXTS: readonly (readonly string[])[] = [
  ['', 'The motor draws [12 A](#K.I) at [10 V](#x).\n', '---\nampwright: 1\ndigits: 3\n---\n', '---\nampwright: 1\ntitle: T\n---\n', '# A\n\n> quoted\n', 'A [link](#gone).\n', '<!--\n'],
  [
    table('t', 'tag | I / A | R / mohm', 'a | 3 | 0.40 ± 0.01', 'b | 5 | 0.42 ± 2 %', 'c | 9 |'),
    table('t', 'tag | I / A | R / mohm', 'a | 3.0 | 0.40 ± 0.01', 'b | 5 | 0.42 ± 2 %', 'c | 9 |'),
    table('t', 'tag | I / A | R / mohm', 'a | 3 | 0.40 ± 0.01', 'b | 6 | 0.42 ± 2 %', 'c | 9 |'),
    table('t', 'tag | I / A | R / mohm', 'a | 3 | 0.40 ± 0.02', 'b | 5 | 0.42', 'c | 9 | 0.5 ± 0.1'),
    table('t', 'tag | I / A | R / mohm', 'a | 3 | 0.40 ± 0.01', 'b | 5 | 0.42 ± 2 %'),
    table('t', 'tag | I / A | R / mohm', 'b | 5 | 0.42 ± 2 %', 'a | 3 | 0.40 ± 0.01', 'c | 9 |', 'd | 4.5 | 0.41 ± 0.01'),
    table('t', 'tag | R / mohm | I / A', 'a | 0.40 ± 0.01 | 3', 'b | 0.42 ± 2 % | 5', 'c | | 9'),
    table('t', 'tag | I / mA | R / mohm', 'a | 3 | 0.40 ± 0.01', 'b | 5 | 0.42 ± 2 %', 'c | 9 |'),
    table('t', 'tag | I / V | R / mohm', 'a | 3 | 0.40 ± 0.01', 'b | 5 | 0.42 ± 2 %', 'c | 9 |'),
    table('t', 'tag | I / bogus | R / mohm', 'a | 3 | 0.40 ± 0.01', 'b | 5 | 0.42 ± 2 %', 'c | 9 |'),
    table('t', 'tag | J / A | R / mohm', 'a | 3 | 0.40 ± 0.01', 'b | 5 | 0.42 ± 2 %', 'c | 9 |'),
    table('t', 'tag | I / A | R / mohm | P / W | x / 1', 'a | 3 | 0.40 ± 0.01 | 1 | 2', 'b | 5 | 0.42 ± 2 % | 2 | 3'),
    table('t', 'tag | I / A | R / mohm', 'a | three | 0.40 ± 0.01', 'b | 5 | 0.42 ± 2 %', 'c | 9'),
    table('t', 'I / A ', '3 ± 0.1', '5', '9'),
    table('t', 'tag | I / A | R / mohm'),
    'Table t — [of a file](t.csv)\n',
    'Table q — [of a file](t.csv)\n',
    'Table t — nothing below\n',
    '',
  ],
  [
    table('motors', 'name | P / kW', 'M1 | 7.5', 'M2 | 15'),
    `${table('motors', 'name | P / kW', 'M1 | 7.5', 'M2 | 16')}\n${table('m', 'I / A', '2')}`,
    table('motors from catalogue "c"', 'name | P / kW', 'M1 | 7.5', 'M2 | 15 ± 1'),
    table('motors', 'name | P / kW | I', 'M1 | 7.5 | a', 'M0 | 22 | b', 'M2 | 15 | c'),
    `${table('motors', 'name | P / kW', 'M1 | 7.5', 'M2 | 15')}\n${table('t', 'I / A', '2')}`,
  ],
  ['Table c — [losses](c.csv)\n', 'Losses\n\nTable c — [losses](c.csv) from catalogue "c"\n', 'Table c — [losses](other.csv)\n', 'Table c — [losses](t.csv)\n', ''],
  ['', 'Between.\n', '# Results of [10](#x)\n', '```text\nx = 1\n```\n'],
  ['', 'The end, [5 A](#K.I), [1](#none).\n'],
]; // biome-ignore format: pools

function table(name: string, head: string, ...rows: readonly string[]): string {
  const [first, ...source] = name.split(' from ');
  const rule = head.replaceAll(/[^|]+/g, ' --- ');
  const caption = `Table ${first} — Values, invented${source.map((one) => ` from ${one}`).join('')}`;
  return `${caption}\n\n${[head, rule, ...rows].map((row) => `| ${row} |\n`).join('')}`;
}

/** What the files of the workspace may hold; null: there is none. */
const FILES: Readonly<Record<string, readonly (string | null)[]>> = {
  'a.ampwright.md': [
    `${table('parts', 'part | mass / kg', 'p | 1', 'q | 2 ± 1 %')}\n${sheetText('std = 2 V ± 1 %\ncommon(v: V) = v / std')}`,
    `${table('parts', 'part | mass / kg', 'p | 1', 'q | 2 ± 1 %')}\n${sheetText('std = 2 V ± 2 %\ncommon(v: V) = v / std')}`,
    `${table('parts', 'part | mass / kg', 'p | 1', 'q | 3 ± 1 %')}\n${sheetText('std = 2 V ± 2 %\ncommon(v: V) = v / std')}`,
    `${table('parts', 'mass / kg | I / A', '2 | 1')}\n${sheetText('std = 2 V ± 1 %\ncommon(v: V) = v / std')}`,
    sheetText('std = 2 A\ncommon(v: V) = v / 2 V'),
    sheetText('std = 2 V\ncommon(v: V) = v / std\nof(r: any) = r.I'),
    sheetText('std(v: V) = v\ncommon(v: V) = v / (2 V + 1 A)'),
    null,
  ],
  'b.ampwright.md': [sheetText('std = 3 V\nbad = 1 V + 1 A'), sheetText('use "a.ampwright.md"\nbad = 1 V'), sheetText('Table x')],
  'c.csv': ['n,L / W\n1,3\n2,4 ± 1\n', 'n,L / W\n1,3\n2,5 ± 1\n', 'n,L / W\n1,3\n2,4 ± 1\n3,2\n', 'n;L\n', 'n,L / W\n1\n', '', null],
  't.csv': ['tag,I / A,R / mohm\na,3,0.40\nb,5,0.41 ± 0.01\n', 'tag,I / A,R / mohm\nz,4,0.40\n', null],
}; // biome-ignore format: pools

/** What may stand in each of the blocks. */
const POOLS: readonly (readonly string[])[] = [
  [
    'x = 10 V ± 1 V', 'x = 12 V ± 1 V', 'x = 10.0 V', 'x = 10 V', 'x = 10 A', 'x = y + 1 V', 'x = 1/0', 'x =', 'x = "text"', '# x = 10 V', 'x = 10 V\nx = 11 V', '\n\n x = 10 V',
    'x = 10 V   from plate "p"', 'x = readings [9 V, 10 V, 11 V]', 'x = [1 V, 2 V]', 'x = std', 'x(a) = a', 'x = 12.4 V by DMM', 'x: mV = 10 V', 'x = max(0 V ± 1 V, 0 V)',
    'x_0 = 0 V ± 1 V\nx = abs(x_0)', 'shall 3 <= 4', '',
  ],
  [
    'y = 3 V ± 2 %', 'y = x', 'y = x / 2', 'y = f(x)', 'y = 4 V', 'y = x - x', 'y = common(x)', 'z = y', 'y = if x > 9.9 V then 1 V else 2 V', 'y = 3 V + 2 A', 'y = sum(t.P) / 1 A',
    'y = q * 1 V', 'y = slope([1, 2, 3], [1 V, 2 V, x])', 'y = w with w = x', 'y = sum(c.L) / 1 A', 'y = the L of c where n is "2" / 1 A', 'y = h(K) * 1 V', 'y = root of a - x over a from 0 V to 100 V', 'y = x\nx = y', 'm = 3 m\ny = 3 V', 'm = 3 s\ny = 3 V',
  ],
  [
    'f(a: V) = a * 2', 'f(a: V) = a + x', 'f(a: any) = a + a', 'f(a: V): V = g(a)\ng(b: V) = b', 'f(a: V) = f(a)', 'f(a: V): A = a', 'f(a) = a', 'f = 3 V', 'h(r: any) = r.I / 1 A', 'h(r: any) = r.R / 1 ohm', 'h(r: any) = r.P / 1 W', 'f(a: V) = a + of(K) * 1 ohm\nh(r: any) = of(r) / 1 A', 'f(a: V) = a\n  needs a > 5 V because "small"',
    'f(a: V) = if a > 10.2 V then a else 2 * a', '', 'f(a: V) = (the I of t where I > 4 A and I < 6 A) / 1 A * a',
  ],
  [
    't.P = I^2 * row.R', 't.P = I * x', 't.P = 3 A', 't.P = I^2 * row.R\nt.Q = P / 2', 't.Q = 1', 't.P = sum(t.P)', 't.P = 1 / (I - 5 A)', 't.R = 3', '', 't.P = first of motors where P > 8 kW', 'c.M = L / 2\nmotors.n = P / 1 kW', 'parts.M = 2 * mass\nt.P = I * 1 V', 't.P = I by DMM', 'motors.I = P / x',
  ],
  [
    'K = least I of t where I > 4 A', 'K = least I of t where I > x / 2.5 ohm', 'K = greatest I of t where row.R > 0.405 mohm', 'K = first of t where I > 100 A', 'K = 3', 'K = first of motors where P > 8 kW',
    'K = least I of t where P > 0.005 W', 'K = 5 A\nq = 2', 'q = K.I / 1 A', 'K = first of t\nq = 3', 'K = t', 'K = first of parts where mass > 1 kg', 'L = first of parts where M > 3 kg\nK = L\nq = K.mass / 1 kg', 'K = first of t\nq = K', 'L = first of t where I > 4 A\nK = L', 'K = first of t where P.P > 8 kW', 'K = greatest L of c where L > 1 W', 'k = 2\nK = first of t where tag is "b"', 'r = 5 N*m\nK = first of t',
  ],
  [
    'shall x <= 11 V', 'shall K.I <= 9 A', 'shall K.I >= 4 A', 'shall I <= 8 A for each t', 'shall y >= 1 V throughout x from 8 V to 12 V', 'should x <= 11 V and y >= 1 V', 'curve a * x over a from 0 to 3', 'tabulate f(a), a over a from 0 V to 12 V step 3 V',
    'shall P <= 10 W for each t', 'shall y == x', 'n = K.tag\nshall n is "b"', 'n = count(t)\nshall n <= 3', 'shall L <= 4 W for each c where n is not "1"', 'tabulate K.I * a over a from 0 to 2 step 1', 'shall K.I > 4 A', 'shall f(x) <= 30 V', 'e = y + x\nshall e <= 100 V',
  ],
  [
    'use "a.ampwright.md"', 'use "b.ampwright.md"', 'use "a.ampwright.md" for common', 'use "a.ampwright.md"\nuse "b.ampwright.md"', 'std = 4 V', '', 'use "none.ampwright.md"', 'use "none.ampwright.md"\nq_1 = 1', 'use "none.ampwright.md"\nq_1 = 2', 'instrument DMM ± 1 %', 'instrument DMM ± 2 % due 2026-01-01',
    'instrument DMM ± (1 % + 3 mV)', 'DMM = 3', 'instrument DMM ± 1 A',
  ],
]; // biome-ignore format: pools

/** A sheet with what stands around it: what each of its places and files holds. */
interface Situation {
  readonly texts: string[];
  readonly codes: string[];
  readonly files: Record<string, string | null>;
}

function textOf({ texts, codes }: Situation): string {
  const [front, ...rest] = texts as [string, string, string, string, string, string];
  const [t, motors, c, between, end] = rest as [string, string, string, string, string];
  const blocks = codes.map((code) => sheetText(code));
  return [front, t, blocks[0], motors, c, between, ...blocks.slice(1), end].join('\n');
}

const filesAt = ({ files }: Situation) =>
  filesOf(Object.fromEntries(Object.entries(files).filter((file): file is [string, string] => file[1] !== null)));

/** Where tables and their cells stand, for an editor that goes there. */
function placesOfTables({ loaded }: OpenSheet): unknown {
  const models = [...loaded.module.tables.values()]
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .map((table) => ({
      ...table,
      module: table.module.path,
      columns: [...table.columns.keys()],
    }));
  return { models, tables: loaded.tables };
}

/** What each block shows. */
function shown(evaluation: SheetEvaluation): readonly unknown[] {
  const { result } = evaluation;
  const { results } = recorded(evaluation);
  return result.cells.map((cell) => ({
    answers: cell.statements.flatMap((s) => answersOf(s)),
    problems: cell.problems.map(({ at, code, severity, message, places }) => ({ at, code, severity, message, places })),
    reads: cell.statements.map((s) => s.reads),
    recorded: results.get(cell.cell),
    budgets: cell.statements.map((s) => (s.kind === 'entry' ? result.budget(s.name) : [])),
    rows: cell.statements.map((s) => (s.kind === 'entry' ? result.row(s.name).map((r) => r.value?.text) : [])),
  }));
}

/** Names that are functions here or there: of the sheet, of one that it uses, of the library. */
const FUNCTIONS = ['f', 'g', 'h', 'x', 'common', 'fla_3ph'];

/** What else there is to say of a sheet, with places in its file as it stands now. */
function rest({ result, problems, sheet, digest }: SheetEvaluation): unknown {
  const usedBy = [...result.entries.keys()].map((name) => [name, result.usedBy(name)]);
  return {
    usedBy,
    functions: FUNCTIONS.map((name) => result.functionNamed(name)).map((of) => of && print(of.body)),
    problems: problems.map(({ problem, at, path }) => JSON.stringify([problem.message, problem.mends, at, path])).sort(),
    text: sheet.text,
    digest,
  };
}

type Edit = (situation: Situation) => number | null;

/** An edit of one block gives its number; edits of the text around them, and of files, null. */
const codeEdit = fc.nat(POOLS.length - 1).chain((cell) =>
  fc
    .oneof(
      { weight: 12, arbitrary: fc.constantFrom(...POOLS[cell]!) },
      { weight: 1, arbitrary: soupLines.map((soup) => soup.replaceAll('`', '')) },
    )
    .map(
      (code): Edit =>
        ({ codes }) => {
          codes[cell] = code;
          return cell;
        },
    ),
);

const textEdit = fc.constantFrom(0, 1, 1, 1, 2, 3, 4, 5).chain((place) =>
  fc.constantFrom(...TEXTS[place]!).map(
    (text): Edit =>
      ({ texts }) => {
        texts[place] = text;
        return null;
      },
  ),
);

const fileEdit = fc.constantFrom(...Object.keys(FILES)).chain((path) =>
  fc.constantFrom(...FILES[path]!).map(
    (text): Edit =>
      ({ files }) => {
        files[path] = text;
        return null;
      },
  ),
);

const start = fc.tuple(...POOLS.map((pool) => fc.constantFrom(...pool))).map(
  (codes): Situation => ({
    texts: TEXTS.map(([first]) => first!),
    codes,
    files: Object.fromEntries(Object.entries(FILES).map(([path, [first]]) => [path, first!])),
  }),
);

describe('after edits', function () {
  this.timeout(300_000);

  it('everything is as in a fresh run, and only the blocks told show something new', () => {
    holdsAfter(fc.array(codeEdit.map((edit) => [edit]), { minLength: 1, maxLength: 12 }), 200); // biome-ignore format: one line
  });

  it('of the text around the blocks and of files as well', () => {
    const several = fc.array(fc.oneof(textEdit, textEdit, fileEdit, codeEdit), { minLength: 1, maxLength: 3 });
    holdsAfter(fc.array(fc.oneof(several, fc.tuple(textEdit)), { minLength: 1, maxLength: 10 }), 200);
  });
});

/** Each step makes some edits and brings the sheet up to them; a single edit of a block reaches it as such. */
function holdsAfter(steps: fc.Arbitrary<readonly (readonly Edit[])[]>, numRuns: number): void {
  fc.assert(
    fc.property(start, steps, (situation, all) => {
      const now: Situation = structuredClone(situation);
      const open = openSheet(textOf(now), { read: (path) => filesAt(now).read(path) });
      let before = shown(evaluationOf(open));
      for (const edits of all) {
        const [block, ...others] = edits.map((edit) => edit(now));
        const alone = block != null && others.length === 0 && open.cells.length === now.codes.length;
        const touched = alone ? editCell(open, block, now.codes[block]!) : editSheet(open, textOf(now));
        const evaluation = evaluationOf(open);
        const after = shown(evaluation);
        const anew = openSheet(textOf(now), filesAt(now));
        const fresh = evaluationOf(anew);
        const situated = () => `in ${JSON.stringify(now, null, 1)}`;
        assert.deepEqual(after, shown(fresh), situated());
        assert.deepEqual(rest(evaluation), rest(fresh), situated());
        if (!alone) assert.deepEqual(placesOfTables(open), placesOfTables(anew), situated());
        for (const [i, one] of after.entries())
          if (touched !== null && !touched.has(i)) assert.deepEqual(one, before[i], `block ${i} changed unsaid, ${situated()}`);
        before = after;
      }
    }),
    { numRuns },
  );
}

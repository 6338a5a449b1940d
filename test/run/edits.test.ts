// After any sequence of edits the answer is that of a fresh run: values, texts, problems, budgets, readers.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { evaluateSheet, evaluationOf, type SheetEvaluation } from '../../src/run/evaluate.ts';
import { openSheet } from '../../src/run/open-sheet.ts';
import { recorded } from '../../src/run/record.ts';
import { editCell } from '../../src/run/update.ts';
import { answersOf, filesOf, sheetText } from '../support/answers.ts';
import { soupLines } from '../support/sources.ts';

const TABLES = `Table t — Values, invented

| tag | I / A | R / mohm |
| --- | --: | --- |
| a | 3 | 0.40 ± 0.01 |
| b | 5 | 0.42 ± 2 % |
| c | 9 | |

Table motors — Motors, invented

| name | P / kW |
| --- | --: |
| M1 | 7.5 |
| M2 | 15 |
`;

const FILES = filesOf({
  'a.ampwright.md': sheetText('std = 2 V ± 1 %\ncommon(v: V) = v / std'),
  'b.ampwright.md': sheetText('std = 3 V\nbad = 1 V + 1 A'),
});

/** What may stand in each of the blocks. */
const POOLS: readonly (readonly string[])[] = [
  [
    'x = 10 V ± 1 V', 'x = 12 V ± 1 V', 'x = 10.0 V', 'x = 10 V', 'x = 10 A', 'x = y + 1 V', 'x = 1/0', 'x =', 'x = "text"', '# x = 10 V', 'x = 10 V\nx = 11 V', '\n\n x = 10 V',
    'x = 10 V   from plate "p"', 'x = readings [9 V, 10 V, 11 V]', 'x = [1 V, 2 V]', 'x = std', 'x(a) = a', 'x = 12.4 V by DMM', 'x: mV = 10 V', 'x = max(0 V ± 1 V, 0 V)',
    'x_0 = 0 V ± 1 V\nx = abs(x_0)', 'shall 3 <= 4', '',
  ],
  [
    'y = 3 V ± 2 %', 'y = x', 'y = x / 2', 'y = f(x)', 'y = 4 V', 'y = x - x', 'y = common(x)', 'z = y', 'y = if x > 9.9 V then 1 V else 2 V', 'y = 3 V + 2 A', 'y = sum(t.P) / 1 A',
    'y = q * 1 V', 'y = slope([1, 2, 3], [1 V, 2 V, x])', 'y = w with w = x', 'y = root of a - x over a from 0 V to 100 V', 'y = x\nx = y', 'm = 3 m\ny = 3 V', 'm = 3 s\ny = 3 V',
  ],
  [
    'f(a: V) = a * 2', 'f(a: V) = a + x', 'f(a: any) = a + a', 'f(a: V): V = g(a)\ng(b: V) = b', 'f(a: V) = f(a)', 'f(a: V): A = a', 'f(a) = a', 'f = 3 V', 'f(a: V) = a\n  needs a > 5 V because "small"',
    'f(a: V) = if a > 10.2 V then a else 2 * a', '', 'f(a: V) = (the I of t where I > 4 A and I < 6 A) / 1 A * a',
  ],
  [
    't.P = I^2 * row.R', 't.P = I * x', 't.P = 3 A', 't.P = I^2 * row.R\nt.Q = P / 2', 't.Q = 1', 't.P = sum(t.P)', 't.P = 1 / (I - 5 A)', 't.R = 3', '', 't.P = first of motors where P > 8 kW', 'motors.I = P / x',
  ],
  [
    'K = least I of t where I > 4 A', 'K = least I of t where I > x / 2.5 ohm', 'K = greatest I of t where row.R > 0.405 mohm', 'K = first of t where I > 100 A', 'K = 3', 'K = first of motors where P > 8 kW',
    'K = least I of t where P > 0.005 W', 'K = 5 A\nq = 2', 'q = K.I / 1 A', 'K = first of t\nq = 3', 'k = 2\nK = first of t where tag is "b"', 'r = 5 N*m\nK = first of t',
  ],
  [
    'shall x <= 11 V', 'shall K.I <= 9 A', 'shall K.I >= 4 A', 'shall I <= 8 A for each t', 'shall y >= 1 V throughout x from 8 V to 12 V', 'should x <= 11 V and y >= 1 V', 'curve a * x over a from 0 to 3', 'tabulate f(a), a over a from 0 V to 12 V step 3 V',
    'shall P <= 10 W for each t', 'shall y == x', 'n = K.tag\nshall n is "b"', 'shall K.I > 4 A', 'shall f(x) <= 30 V', 'e = y + x\nshall e <= 100 V',
  ],
  [
    'use "a.ampwright.md"', 'use "b.ampwright.md"', 'use "a.ampwright.md" for common', 'use "a.ampwright.md"\nuse "b.ampwright.md"', 'std = 4 V', '', 'use "none.ampwright.md"', 'use "none.ampwright.md"\nq_1 = 1', 'use "none.ampwright.md"\nq_1 = 2', 'instrument DMM ± 1 %', 'instrument DMM ± 2 % due 2026-01-01',
    'instrument DMM ± (1 % + 3 mV)', 'DMM = 3', 'instrument DMM ± 1 A',
  ],
]; // biome-ignore format: pools

const textOf = (codes: readonly string[]) => `${TABLES}\n${codes.map((code) => sheetText(code)).join('\n')}`;

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

/** What else there is to say of a sheet, with places in its file as it stands now. */
function others({ result, problems, sheet, digest }: SheetEvaluation): unknown {
  const usedBy = [...result.entries.keys()].map((name) => [name, result.usedBy(name)]);
  return {
    usedBy,
    functions: [...result.functions.keys()],
    problems: problems.map(({ problem, at, path }) => JSON.stringify([problem.code, at, path])).sort(),
    text: sheet.text,
    digest,
  };
}

const edit = fc
  .nat(POOLS.length - 1)
  .chain((cell) =>
    fc
      .oneof(
        { weight: 12, arbitrary: fc.constantFrom(...POOLS[cell]!) },
        { weight: 1, arbitrary: soupLines.map((soup) => soup.replaceAll('`', '')) },
      )
      .map((code) => ({ cell, code })),
  );

describe('after edits', () => {
  it('everything is as in a fresh run, and only the blocks told show something new', () => {
    fc.assert(
      fc.property(
        fc.tuple(...POOLS.map((pool) => fc.constantFrom(...pool))),
        fc.array(edit, { minLength: 1, maxLength: 12 }),
        (start, edits) => {
          const codes: string[] = [...start];
          const open = openSheet(textOf(codes), FILES);
          let before = shown(evaluationOf(open));
          for (const { cell, code } of edits) {
            codes[cell] = code;
            const touched = editCell(open, cell, code);
            const evaluation = evaluationOf(open);
            const now = shown(evaluation);
            const fresh = evaluateSheet(textOf(codes), FILES);
            const after = `after block ${cell} became ${JSON.stringify(code)} in ${JSON.stringify(codes)}`;
            assert.deepEqual(now, shown(fresh), after);
            assert.deepEqual(others(evaluation), others(fresh), after);
            for (const [i, block] of now.entries())
              if (!touched.has(i)) assert.deepEqual(block, before[i], `block ${i} changed unsaid, ${after}`);
            before = now;
          }
        },
      ),
      { numRuns: 250 },
    );
  });
});

// What an edit evaluates: what depends on what it changed, and nothing else.
import assert from 'node:assert/strict';
import { editCell } from '../../src/run/edit-cell.ts';
import { editSheet } from '../../src/run/edit-sheet.ts';
import { evaluateSheet, evaluationOf } from '../../src/run/evaluate.ts';
import { type OpenSheet, openSheet } from '../../src/run/open-sheet.ts';
import { recordSheet } from '../../src/run/record.ts';
import { filesOf, sheetText } from '../support/answers.ts';

const SHEET = `# Survey

The feeder of the mill, at [10 V](#x).

Table t — contactors, invented

| tag | I / A | R / mohm |
| --- | --: | --- |
| a | 3 | 0.40 ± 0.01 |
| b | 5 | 0.42 ± 2 % |
| c | 9 | 0.41 |

Table motors — not read by anything, invented

| name | P / kW |
| --- | --: |
| M1 | 7.5 |

Table c — [losses](c.csv)

${sheetText('t.P = I^2 * row.R\nt.hot = P > 0.02 W')}
${sheetText('K = least I of t where I > 4 A\nL = K\nq = L.I / 1 A\nz = 2 * q')}
${sheetText('S = sum(t.I)\nx = 10 V\ny = x / 2')}
${sheetText('W = sum(c.L)\nV = 2 * W\nf(a: W) = a + least_loss\nleast_loss = 1 W\ng(a: W) = a + (the L of c where n is "2")\nF = f(1 W)\nG = g(1 W)')}
${sheetText('use "a.ampwright.md"\nu = 2 * std\nv = common(x)\nm = u / 1 V')}
${sheetText('shall K.I <= 9 A\nshall y <= 11 V\nshall I <= 10 A for each t\nshall W <= 9 W')}
${sheetText('use "parts.ampwright.md"\nparts.M = 2 * mass\nB = first of parts where M > 3 kg\nC = B\nM_B = C.M')}
End.
`;

const FILES = {
  'a.ampwright.md': sheetText('std = 2 V\ncommon(v: V) = v / std'),
  'parts.ampwright.md': 'Table parts — invented\n\n| part | mass / kg |\n| --- | --- |\n| p | 1 |\n| q | 2 |\n',
  'c.csv': 'n,L / W\n1,3\n2,4\n',
};

const OF_T = ['t.P', 't.hot', 'K', 'L', 'q', 'S', 'shall K.I <= 9 A', 'shall I <= 10 A'];
const OF_C = ['W', 'V', 'g', 'G', 'shall W <= 9 W'];

/** The items that ran between two looks at a sheet, in the order of the text. */
function evaluatedBy(open: OpenSheet, edit: () => void): readonly string[] {
  const runsOf = () => new Map(open.cells.flatMap((cell) => cell.items.map((item) => [item, cell.runs.get(item)] as const)));
  const before = runsOf();
  edit();
  return [...runsOf()].flatMap(([item, run]) => (before.get(item) === run ? [] : [item.label]));
}

/** What is evaluated after a text was replaced in the sheet, or in one of its files. */
function check(edit: { readonly of?: string; readonly from: string; readonly to: string }, expected: readonly string[]): void {
  const { of = 'the sheet', from, to } = edit;
  it(`${of}: ${JSON.stringify(from)} becomes ${JSON.stringify(to)}`, () => {
    const files: Record<string, string> = { ...FILES };
    const open = openSheet(SHEET, { read: (path) => filesOf(files).read(path) });
    const errors = evaluationOf(open).problems.filter(({ problem }) => problem.severity === 'error');
    assert.deepEqual(errors, []);
    const replaced = (text: string) => {
      assert.equal(text.split(from).length, 2, 'what is replaced stands there once');
      return text.replace(from, to);
    };
    if (edit.of !== undefined) files[edit.of] = replaced(files[edit.of]!);
    const text = edit.of === undefined ? replaced(SHEET) : SHEET;
    let touched: ReadonlySet<number> | null = null;
    const found = evaluatedBy(open, () => {
      touched = editSheet(open, text);
    });
    assert.deepEqual(found, expected);
    assert.equal(recordSheet(evaluationOf(open)), recordSheet(evaluateSheet(text, open.files)));
    // A block that uses another sheet says what is wrong with that one.
    const reached = open.cells.flatMap(({ items }, number) => (items.some(({ label }) => expected.includes(label)) ? [number] : []));
    const told = [...(touched ?? [])].filter((number) => reached.includes(number) || !usesOther(open, number));
    assert.deepEqual(told.sort(), reached);
    const again = evaluatedBy(open, () => editSheet(open, text));
    assert.deepEqual(again, []);
  });
}

const usesOther = (open: OpenSheet, number: number) => open.cells[number]!.items.some(({ statement }) => statement.kind === 'use');

describe('an edit evaluates what depends on it:', () => {
  describe('prose, and what else no result depends on', () => {
    check({ from: 'The feeder', to: '## Feeder\n\nThe main feeder' }, []);
    check({ from: 'End.', to: '[20 V](#x), [none](#gone)' }, []);
    check({ from: 'contactors, invented', to: 'contactors from catalogue "C-4"' }, []);
    check({ from: '| M1 | 7.5 |', to: '| M1 | 11 |\n| M2 | x |' }, []);
    check({ from: '| --- | --: | --- |', to: '| :-- | :-- | :-- |' }, []);
    check({ of: 'c.csv', from: '2,4\n', to: '2,4' }, []);
    check({ of: 'a.ampwright.md', from: '```ampwright', to: 'Prose.\n\n```ampwright' }, ['u', 'v']);
  });

  describe('a table', () => {
    check({ from: '| c | 9 |', to: '| c | 8 |' }, OF_T);
    check({ from: '| b | 5 |', to: '| b | 6 |' }, [...OF_T.slice(0, 5), 'z', ...OF_T.slice(5)]);
    check({ from: '| b | 5 |', to: '| b | 5.0 |' }, OF_T);
    check({ from: '0.40 ± 0.01', to: '0.40 ± 0.02' }, OF_T);
    check({ from: '| c | 9 |', to: '| d | 7 | 0.4 |\n| c | 9 |' }, OF_T);
    check({ from: '| c | 9 | 0.41 |\n', to: '' }, OF_T);
    check({ from: 'R / mohm', to: 'R / ohm' }, OF_T);
    check({ from: '| tag |', to: '| type |' }, OF_T);
  });

  describe('a file', () => {
    check({ of: 'c.csv', from: '2,4', to: '2,5' }, OF_C);
    check({ of: 'c.csv', from: '2,4', to: '2,4\n3,1' }, OF_C);
    check({ of: 'a.ampwright.md', from: 'std = 2 V', to: 'std = 3 V' }, ['u', 'v', 'm']);
    check({ of: 'parts.ampwright.md', from: '| q | 2 |', to: '| q | 5 |' }, ['parts.M', 'B', 'C', 'M_B']);
    check({ of: 'parts.ampwright.md', from: '| p | 1 |\n', to: '' }, ['parts.M', 'B', 'C', 'M_B']);
  });

  it('a block together with a table', () => {
    const open = openSheet(SHEET, filesOf(FILES));
    const text = SHEET.replace('| c | 9 |', '| c | 8 |').replace('x = 10 V', 'x = 12 V');
    assert.deepEqual(new Set(evaluatedBy(open, () => editSheet(open, text))), new Set([...OF_T, 'x', 'y', 'v', 'shall y <= 11 V']));
  });

  it('a block alone', () => {
    const open = openSheet(SHEET, filesOf(FILES));
    const edit = () => editCell(open, 2, open.cells[2]!.code.replace('x = 10 V', 'x = 12 V'));
    assert.deepEqual(evaluatedBy(open, edit), ['x', 'y', 'v', 'shall y <= 11 V']);
  });
});

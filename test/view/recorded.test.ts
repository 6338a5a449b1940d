// What the file has recorded beside what comes out now, and results that are not current.
import assert from 'node:assert/strict';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { recordSheet } from '../../src/run/record.ts';
import { calcCells } from '../../src/sheet/sheet.ts';
import { ledger } from '../../src/view/ledger.ts';
import type { CellView } from '../../src/view/model.ts';
import { textOf, toHtml } from '../../src/view/node.ts';
import { sentences } from '../../src/view/sentence.ts';
import { toView } from '../../src/view/to-view.ts';
import { sheetOf } from '../support/shown.ts';

const MOTORS =
  'Table motors — Motors, invented  from drawing "invented"\n\n| tag | I / A |\n| --- | --: |\n| M-12 | 34.5 |\n| M-20 | 39.8 |\n';

/** The view of the first block of `after`, with the results that `before` records. */
function changed(before: string, after: string, tables = ''): CellView {
  const file = recordSheet(evaluateSheet(sheetOf(before, tables))).replace(before, () => after);
  const { sheet, result } = evaluateSheet(file);
  const recorded = new Map(calcCells(sheet).map((cell) => [cell.number, cell.results?.rows ?? []]));
  return toView(result, { recorded }).cells[0]!;
}

const text = (view: CellView) => textOf(ledger(view)).replaceAll('\u00A0', ' ');

describe('beside a result', () => {
  const rows: readonly (readonly [title: string, before: string, after: string, was: readonly (string | null)[]])[] = [
    ['stands nothing where the file has recorded the same', 'a = 2 A\nb = 3 * a', 'a = 2 A\nb = 3 * a', [null, null]],
    ['stands what is recorded of a computed value', 'a = 2 A\nb = 3 * a', 'a = 4 A\nb = 3 * a', [null, '6.000 A']],
    ['with its uncertainty', 'a = 2 A ± 1 %', 'a = 2 A ± 2 %', ['2.000 A ± 0.020 A']],
    ['with a true minus sign', 'a = 2 A\nb = 1 A - a', 'a = 3 A\nb = 1 A - a', [null, '−1.000 A']],
    ['of a requirement both sides and the status', 'shall 3 A <= 4 A', 'shall 3 A <= 4 A', [null]],
    ['of one that is no longer calculated', 'a = 3 A\nshall a <= 4 A', 'a = 5 A\nshall a <= 4 A', [null, '3 A ≤ 4 A: holds, 25 % in hand']],
    ['the error that is recorded', 'b = 1/0', 'b = 1/1', [/^error: .*zero/.source]],
    ['nothing for what is new', 'a = 2 A', 'a = 2 A\nc = 3 * a', [null, null]],
  ];
  for (const [title, before, after, was] of rows) {
    it(title, () => {
      const found = changed(before, after).rows.map((row) => row.was);
      for (const [i, expected] of was.entries()) {
        if (expected?.startsWith('^')) assert.match(found[i] ?? '', new RegExp(expected));
        else assert.equal(found[i], expected);
      }
      assert.equal(found.length, was.length);
    });
  }

  it('each of two statements that read alike keeps its own', () => {
    const twice = (a: number, b: number) => `shall ${a} A <= 4 A\nshall 1 A <= 4 A\nshall ${b} A <= 4 A`;
    assert.deepEqual(
      changed(twice(1, 1), twice(1, 1)).rows.map((r) => r.was),
      [null, null, null],
    );
  });

  it('each row of a computed column has its own, also where several columns are recorded together', () => {
    const code = (k: number) =>
      `k = ${k}\nmotors.a = k * I\nmotors.b = 2 * I\nmotors.K = if motors.I > 35 A then "K6, large" else "K5"`.replaceAll('motors.I', 'I');
    const [, a, b, K] = changed(code(2), code(3), MOTORS).rows;
    assert.ok(a?.kind === 'column' && b?.kind === 'column' && K?.kind === 'column');
    assert.deepEqual(a.were, ['69.00 A', '79.60 A']);
    assert.deepEqual(b.were, [null, null]);
    assert.deepEqual(K.were, [null, null]);
  });

  it('each line of a tabulation has its own', () => {
    const code = (k: number) => `tabulate ${k} * L: m over L from 1 m to 2 m step 1 m`;
    const [row] = changed(code(2), code(3)).rows;
    assert.deepEqual(row?.kind === 'tabulation' && row.were, ['2.000 m', '4.000 m']);
    assert.match(text(changed(code(2), code(3))), /Recorded.*2\.000 m/);
  });
});

describe('a ledger', () => {
  it('says how many results are recorded otherwise, and shows old and new beside each other', () => {
    const view = changed('a = 2 A\nb = 3 * a\nshall b <= 9 A', 'a = 4 A\nb = 3 * a\nshall b <= 9 A');
    assert.match(
      text(view),
      /^Recorded otherwise\. 2 results differ from what the file has recorded\. Saving records what stands here now\./,
    );
    assert.match(text(view), /Recorded 6\.000 ANow12\.00 A/);
    assert.match(text(view), /Recorded 6\.000 A ≤ 9 A: holds, 33 % in handNow.*fails/);
    assert.match(sentences(view), /^b = 12\.00 A; recorded: 6\.000 A\.$/m);
  });

  it('tells what is recorded of statements that are gone', () => {
    const view = changed('a = 2 A\nb = 3 * a\nc = 2 * a', 'a = 2 A\nc = 2 * a');
    assert.deepEqual(view.gone, [{ result: 'b', text: '6.000 A' }]);
    assert.match(text(view), /1 recorded result is no longer in the sheet\. .*b 6\.000 A/);
  });

  it('says nothing of it where nothing differs, or nothing was asked', () => {
    assert.doesNotMatch(text(changed('a = 2 A\nb = a', 'a = 2 A\nb = a')), /ecorded/);
    assert.doesNotMatch(text(toView(evaluateSheet(sheetOf('a = 2 A')).result).cells[0]!), /ecorded|Not current/);
  });

  it('that is not current says so before anything else, in a copy too', () => {
    const view = toView(evaluateSheet(sheetOf('a = 2 A')).result, { current: false }).cells[0]!;
    assert.match(text(view), /^Not current\. The sheet has changed since these results were made\./);
    assert.match(toHtml(ledger(view)), /^<div class="aw-ledger aw-outdated">/);
    assert.match(sentences(view), /^Not current: /);
  });

  it('shows recorded texts as text', () => {
    const hostile = '<img src=x onerror=y>';
    const { result } = evaluateSheet(sheetOf('a = 2 A\nb = a'));
    const recorded = new Map([
      [
        0,
        [
          { result: 'b', value: hostile, note: '' },
          { result: hostile, value: hostile, note: hostile },
        ],
      ],
    ]);
    const html = toHtml(ledger(toView(result, { recorded }).cells[0]!));
    assert.doesNotMatch(html, /<img/);
    assert.match(html, /&lt;img src=x/);
  });
});

// Bodies of functions are checked once for the types that they are called with, and again where these have come to mean something else.
import assert from 'node:assert/strict';
import { checkItems } from '../../src/run/check-items.ts';
import { editSheet } from '../../src/run/edit-sheet.ts';
import { evaluationOf } from '../../src/run/evaluate.ts';
import { buildModule, parseCell } from '../../src/run/module.ts';
import { type OpenSheet, openSheet } from '../../src/run/open-sheet.ts';
import { makeWorld } from '../../src/run/world.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { filesOf, sheetText } from '../support/answers.ts';

const table = (head: string, name = 't') =>
  `Table ${name} — Coils, invented  from plate "x"\n\n| tag | ${head} |\n| --- | --: |\n| a | 3 |\n`;
const IT_TAKES = 'its(r: any) = 2 * r.I';

describe('a function that takes rows of any table', () => {
  const files = filesOf({ 'a.ampwright.md': sheetText(IT_TAKES) });
  const y = (open: OpenSheet) => evaluationOf(open).result.entries.get('y')?.value?.text;

  /** Its answer before and after an edit of the sheet; what comes out then is what a fresh run says. */
  function check(what: string, [before, after]: readonly [string, string], answers: readonly [string, string]): void {
    it(what, () => {
      const open = openSheet(before, files);
      assert.equal(y(open), answers[0]);
      editSheet(open, after);
      assert.equal(y(open), answers[1]);
      assert.equal(y(openSheet(after, files)), answers[1]);
    });
  }

  const used = (head: string, columns = '') => `${table(head)}\n${sheetText(`use "a.ampwright.md"\n${columns}K = first of t\ny = its(K)`)}`;
  check('of a used sheet, sees another unit of a column', [used('I / A'), used('I / V')], ['6.000 A', '6.000 V']);
  check(
    'of a used sheet, sees another unit of a computed column',
    [used('J / A', 't.I = 2 * J\n'), used('J / A', 't.I = 2 ohm * J\n')],
    ['12.00 A', '12.00 V'],
  );
  const own = (column: string) => `${table('J / A')}\n${sheetText(`${IT_TAKES}\nt.I = ${column}\nK = first of t\ny = its(K)`)}`;
  check('of the sheet, sees another unit of a computed column', [own('2 * J'), own('2 ohm * J')], ['12.00 A', '12.00 V']);

  it('and that two sheets share sees the table of each', () => {
    const shared = buildModule('library', 'shared.ampwright.md', [parseCell(IT_TAKES)], [], 1).cells[0]![0]!;
    const world = makeWorld();
    const types = ['A', 'V', 'A'].map((unit) => {
      const { module, cells } = buildModule('sheet', '', [parseCell('y = its(first of t)')], readSheet(table(`I / ${unit}`)).tables);
      module.used.set('its', { kind: 'item', item: shared });
      const [item] = cells.flat();
      checkItems(world, [shared, item!], () => false);
      assert.deepEqual(item!.checked?.problems, []);
      const { type } = item!.checked!.signature;
      return type.is === 'quantity' ? type.dimension : null;
    });
    assert.notEqual(types[0], null);
    assert.notEqual(types[0], types[1]);
    assert.equal(types[0], types[2]);
  });
});

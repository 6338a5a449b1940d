// What always holds of a comparison, whatever the sheets are.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { compareSheets } from '../../src/review/compare.ts';
import { type Comparison, isSame } from '../../src/review/comparison.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { recordSheet } from '../../src/run/record.ts';
import { signSheet } from '../../src/sheet/signatures.ts';
import { comparedTexts, FILES, readCases, sheetText } from './fixtures.ts';

const compare = (old: string, now: string): Comparison => compareSheets(evaluateSheet(sheetText(old)), evaluateSheet(sheetText(now)));
const samples = join(import.meta.dirname, '../../samples');

describe('comparing', () => {
  it('a sheet with itself finds nothing', () => {
    const texts = readdirSync(samples)
      .filter((name) => name.endsWith('.ampwright.md'))
      .map((name) => readFileSync(join(samples, name), 'utf8'));
    assert.ok(texts.length > 0);
    for (const text of [...texts, ...FILES.flatMap(({ path }) => readCases(path)).flatMap((one) => [one.old, one.new])]) {
      assert.ok(isSame(compare(text, text)), text);
    }
  });

  it('the same two sheets always gives the same answer', () => {
    for (const { old, new: now } of FILES.flatMap(({ path }) => readCases(path))) assert.deepEqual(compare(old, now), compare(old, now));
  });

  it('backwards, what was added was removed, and names go back', () => {
    const turn = { added: 'removed', removed: 'added', changed: 'changed' } as const;
    const key = (change: string, one: object) =>
      `${change} ${Object.entries(one).find(([name]) => name === 'name' || name === 'field' || name === 'message')?.[1]}`;
    for (const { old, new: now } of FILES.flatMap(({ path }) => readCases(path))) {
      const [there, back] = [compare(old, now), compare(now, old)];
      for (const list of ['problems', 'functions', 'tables', 'frontMatter'] as const) {
        const forward = there[list].map((one) =>
          key(turn[one.change], { ...one, ...('oldName' in one && one.oldName ? { name: one.oldName } : {}) }),
        );
        assert.deepEqual(forward.sort(), back[list].map((one) => key(one.change, one)).sort(), `${list}: ${now}`);
      }
      assert.equal(there.requirements.length, back.requirements.length);
      assert.equal(there.entries.length, back.entries.length);
    }
  });

  it('the order of the statements is no change', () => {
    const lines = [
      'P = 18.5 kW from plate "M-12"',
      'U = 400 V from plate "M-12"',
      'I: A = P / (√3 * U)',
      'shall I <= 40 A',
      'f(x) = 2 * x',
      'y = f(3)',
      'action "Measure again"',
    ];
    fc.assert(
      fc.property(fc.shuffledSubarray(lines, { minLength: lines.length }), (shuffled) =>
        isSame(compare(lines.join('\n'), shuffled.join('\n'))),
      ),
    );
  });

  it('every change of a number is found, and every name consistently replaced is no more than that', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 999 }), (a, b) => {
        const sheet = (n: number, name: string) => `${name} = ${n} V from plate "p"\nx = 2 * ${name}\nshall x <= 500 V`;
        const { entries, requirements } = compare(sheet(a, 'U'), sheet(b, 'U'));
        assert.deepEqual(
          entries.map(({ name, knockOn }) => [name, knockOn]),
          a === b
            ? []
            : [
                ['U', false],
                ['x', true],
              ],
        );
        assert.equal(requirements.length, a === b ? 0 : 1);
        const renamed = compare(sheet(a, 'U'), sheet(a, 'U_n'));
        assert.deepEqual(
          renamed.entries.map(({ name, oldName, value }) => [name, oldName, value]),
          [['U_n', 'U', null]],
        );
      }),
    );
  });

  it('names that objects have of their own are names', () => {
    const { entries } = compare('constructor = 1 V\n__proto__ = 2 V\ntoString = 3 V', 'constructor = 2 V\n__proto__ = 3 V\nvalueOf = 4 V');
    assert.deepEqual(
      entries.map(({ name, change }) => `${name} ${change}`),
      ['constructor changed', '__proto__ changed', 'valueOf added', 'toString removed'],
    );
  });

  it('of a table with more changed cells than anyone reads, the first are kept and all are counted', () => {
    const table = (add: number) =>
      `Table t — many\n\n| n / 1 | x / V |\n| --- | --- |\n${Array.from({ length: 6000 }, (_, i) => `| ${i} | ${i + add} |`).join('\n')}\n\n\`\`\`ampwright\ny = 1\n\`\`\`\n`;
    const [change] = compare(table(0), table(1)).tables;
    assert.equal(change!.cells.length, 5000);
    assert.equal(change!.cellCount, 6000);
  });

  it('text that is no sheet, and text of any kind, is compared without an exception', () => {
    fc.assert(fc.property(fc.string(), fc.string(), (a, b) => comparedTexts(a, b).change !== 'not compared'));
  });
});

describe('signatures that lapsed', () => {
  const text = '---\nampwright: 1\n---\n\n```ampwright\nI_n = 34 A from plate "M-12"\nshall I_n <= 40 A\n```\n';
  const recorded = (of: string) => recordSheet(evaluateSheet(of));
  const sign = (of: string, role: string) => signSheet(of, { role, name: 'R. Osei', date: '2026-11-20', version: '1.0.0' })!;
  const signed = sign(sign(recorded(text), 'prepared'), 'checked');
  const states = (now: string) =>
    compare(signed, now).signatures.map(
      ({ role, change, state, lapsed }) => `${role} ${change}: ${state.old} → ${state.new}${lapsed ? ', lapsed' : ''}`,
    );

  it('the sheet was changed and signed by nobody since', () => {
    assert.deepEqual(states(recorded(signed.replace('34 A', '36 A'))), [
      'prepared changed: current → out of date, lapsed',
      'checked changed: current → out of date, lapsed',
    ]);
  });

  it('one was renewed', () => {
    assert.deepEqual(states(sign(recorded(signed.replace('34 A', '36 A')), 'prepared')), [
      'prepared changed: current → current',
      'checked changed: current → out of date, lapsed',
    ]);
  });

  it('one came', () => {
    assert.deepEqual(states(sign(signed, 'approved')), ['approved added: null → current']);
  });
});

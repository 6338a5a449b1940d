// JSON of an evaluation: its shape, figures unrounded in their units, places in the file.
import assert from 'node:assert/strict';
import { type Evaluation, evaluationData, evaluationJson, evaluationSchema } from '../../src/report/json.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { evaluated, sheetOf } from '../support/shown.ts';

const entry = (code: string): Evaluation['entries'][number] | undefined =>
  evaluationData('s', evaluated(code)).entries.find((e) => e.name === 'x');
const requirement = (code: string) => evaluationData('s', evaluated(code)).requirements[0];

describe('JSON', () => {
  it('has the shape that it states', () => {
    const data = evaluationData(
      'a/b.ampwright.md',
      evaluated('x = 12 mV ± 1 mV from plate "p"\ny = [1 A, 2 A]\nK = 1/0\nshall x <= 15 mV\njunk junk'),
    );
    assert.deepEqual(evaluationSchema.parse(data), data);
    assert.deepEqual(Object.keys(data), ['sheet', 'digest', 'entries', 'requirements', 'diagnostics']);
    assert.deepEqual(Object.keys(data.entries[0]!), ['name', 'value', 'unit', 'uncertainty', 'text', 'kind', 'source', 'block', 'error']);
    assert.deepEqual(Object.keys(data.requirements[0]!), [
      'text',
      'kind',
      'status',
      'accepted',
      'left',
      'right',
      'unit',
      'margin',
      'because',
    ]);
    assert.deepEqual(Object.keys(data.diagnostics[0]!), ['severity', 'code', 'message', 'line', 'column', 'endLine', 'endColumn']);
    assert.equal(data.sheet, 'a/b.ampwright.md');
    assert.match(data.digest, /^sha256:[0-9a-f]{64}$/);
  });

  const values: readonly (readonly [code: string, value: unknown, unit: string | null, uncertainty: unknown])[] = [
    ['x = 18.5 kW', 18.5, 'kW', null],
    ['x: A = 1 V / (3 ohm)', 1 / 3, 'A', null],
    ['x = -5 degC', -5, 'degC', null],
    ['x = 77 degF ± 3.6 degR (k=2)', 77, 'degF', 3.6],
    ['x = 0.84', 0.84, null, null],
    ['x = [1 A, 2 A ± 0.1 A (k=2)]', [1, 2], 'A', [null, 0.1]],
    ['x = "K5"', 'K5', null, null],
    ['x = 2026-09-14', '2026-09-14', null, null],
    ['x = yes', true, null, null],
    ['x = 1/0', null, null, null],
  ];
  for (const [code, value, unit, uncertainty] of values) {
    it(code, () => {
      const x = entry(code);
      const close = (a: unknown): unknown => (Array.isArray(a) ? a.map(close) : typeof a === 'number' ? Number(a.toPrecision(12)) : a);
      assert.deepEqual([close(x?.value), x?.unit, close(x?.uncertainty)], [close(value), unit, close(uncertainty)]);
    });
  }

  it('gives every element of a long list', () => {
    const many = Array.from({ length: 30 }, (_, i) => i);
    assert.deepEqual(entry(`x = [${many.map((i) => `${i} A`).join(', ')}]`)?.value, many);
  });

  it('gives source, kind and block as they stand in the sheet', () => {
    const x = entry('instrument M ± 1 %\nx = 3 V by M on 2026-10-02 from measurement "survey"');
    assert.deepEqual([x?.kind, x?.source, x?.block], ['input', 'measurement "survey" by M on 2026-10-02', 1]);
  });

  it('says what an entry without a value lacks', () => {
    assert.match(entry('x = 1/0')?.error ?? '', /zero/);
    assert.equal(entry('y = 1/0\nx = y + 1')?.error, 'needs y');
    assert.equal(entry('x = 1')?.error, null);
  });

  it('gives both sides and the margin of a requirement in one unit', () => {
    const one = requirement('x = 440 mV\nshall x <= 0.4 V because "limit"');
    assert.deepEqual(
      [one?.text, one?.kind, one?.status, one?.unit, one?.because],
      ['shall x <= 0.4 V', 'shall', 'fails', one?.unit, 'limit'],
    );
    const size = one?.unit === 'V' ? 1 : 1000;
    for (const [got, volt] of [
      [one?.left, 0.44],
      [one?.right, 0.4],
      [one?.margin, -0.04],
    ] as const)
      assert.ok(Math.abs((got as number) - volt * size) < 1e-9 * size);
    assert.equal(requirement('shall 20 degC <= 40 degC')?.margin, 20);
    assert.deepEqual([requirement('shall "a" is "b"')?.left, requirement('shall "a" is "b"')?.margin], ['a', null]);
  });

  it('gives the concession of a requirement', () => {
    const one = requirement('shall 3 A <= 2 A accepted by "A. Sample" until 2027-03-31 because "part load"');
    assert.deepEqual(one?.accepted, { by: 'A. Sample', until: '2027-03-31', because: 'part load' });
  });

  it('places diagnostics in the file, from 1, as UTF-16 code units', () => {
    const text = sheetOf('x = "𝒳" + 5 kw');
    const line = text.split('\n').findIndex((l) => l.startsWith('x =')) + 1;
    const [first] = evaluationData('s', evaluateSheet(text)).diagnostics.filter((d) => d.severity === 'error');
    assert.deepEqual([first?.line, first?.endLine], [line, line]);
    assert.equal(
      text
        .split('\n')
        [line - 1]!.slice(first!.column - 1, first!.endColumn - 1)
        .includes('kw'),
      true,
    );
  });

  it('is text with a line end behind it', () => {
    const json = evaluationJson('s', evaluated('x = 1'));
    assert.match(json, /\}\n$/);
    assert.equal(JSON.parse(json).sheet, 's');
  });
});

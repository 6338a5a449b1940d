// Sources of inputs: what has none is warned of, or is an error where the sheet asks for them (T10).
import assert from 'node:assert/strict';
import { evaluated } from '../support/answers.ts';

const CODES = ['no-source', 'source-required', 'specification-range'];
const REQUIRED = '---\nampwright: 1\nsources: required\n---\n';

function found(code: string, before: string): readonly string[] {
  const { problems, sheet } = evaluated(code, { before });
  return problems
    .filter(({ problem }) => CODES.includes(problem.code))
    .map(({ problem, at }) => `${problem.severity} at ${sheet.text.slice(at.start, at.end)}`);
}

function check(code: string, expected: readonly string[]): void {
  it(`of ${code.replaceAll('\n', ' ⏎ ')}`, () => {
    assert.deepEqual(found(code, ''), expected);
    assert.deepEqual(
      found(code, REQUIRED),
      expected.map((line) => (/specification|±/.test(line) ? line : line.replace('warning', 'error'))),
    );
  });
}

describe('the source', () => {
  for (const literal of [
    '3 kW',
    '-3 kW',
    '92.4 % ± 0.5 %',
    '2026-09-14',
    '"K5"',
    'yes',
    '[1 V, 2 V]',
    '[1 V ± 1 %, 2 V]',
    'readings [1 V, 2 V]',
    '(3 kW)',
    '0',
  ])
    check(`x = ${literal}`, ['warning at x']);
  for (const formula of [
    '2 * 3 kW',
    'pi',
    '3 kW + 1 kW',
    'sqrt(2)',
    '-(3 kW)',
    '[1 V, 2 * 1 V]',
    'readings ([1 V, 2 V] * 1)',
    'if yes then 1 else 2',
  ])
    check(`x = ${formula}`, []);
  check('x = 3 kW from plate "M-12"', []);
  check('x = 3 kW\n  from plate "M-12"', []);
  check('instrument DMM ± 1 %\nx = 3 V by DMM on 2026-10-02', []);
  check('x = 3 kW because "so"', ['warning at x']);
  check('x = 3 kW "a description"', ['warning at x']);
  check('f(a) = 3', []);
  check('x = y with y = 3', []);
  check('x = 110 V ± 10 % from specification "mains"', ['warning at ± 10 %']);
  check('x = 110 V ± 10 % from datasheet "mains"', []);

  it('of a table is asked for like that of an input', () => {
    const table = (source: string) => `Table t — Values, invented${source}\n\n| a |\n| --- |\n| x |\n`;
    assert.deepEqual(found('', table('')), ['warning at t']);
    assert.deepEqual(found('', `${REQUIRED}\n${table('')}`), ['error at t']);
    assert.deepEqual(found('', `${REQUIRED}\n${table('  from drawing "E-1"')}`), []);
  });

  it('may be missing and the value is there all the same', () => {
    const { result } = evaluated('x = 3 kW\ny = 2 * x', { before: REQUIRED });
    assert.deepEqual(
      [...result.entries.values()].map((e) => e.value?.text),
      ['3 kW', '6.000 kW'],
    );
  });
});

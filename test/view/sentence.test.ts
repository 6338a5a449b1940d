// Rows as plain sentences.
import assert from 'node:assert/strict';
import { sentences } from '../../src/view/sentence.ts';
import { toView } from '../../src/view/to-view.ts';
import { evaluated } from '../support/shown.ts';

describe('a sentence', () => {
  const rows: readonly (readonly [code: string, expected: string])[] = [
    ['P_n = 18.5 kW from plate "M-12" "rated power"', 'P_n = 18.5 kW (rated power), from plate "M-12".'],
    ['x = 400 V ± 8 V (k=2) from plate "p"', 'x = 400.0 V ± 8.0 V (k = 2), from plate "p".'],
    ['R = 0.4 mohm from plate "p"', 'R = 0.4 mΩ, from plate "p".'],
    ['x = 1/0', 'x: not calculated, it has an error.\nerror, line 1: Divides by zero.'],
    ['shall 30 A <= 40 A because "AC-3 duty"', 'shall 30 A <= 40 A: 30 A ≤ 40 A: holds, 10.00 A (25 %) in hand, because AC-3 duty.'],
    [
      'shall 3 A <= 2 A accepted by "plant manager" until 2027-03-31 because "part load"',
      'shall 3 A <= 2 A: 3 A ≤ 2 A: fails, 1.000 A (50 %) short, accepted by plant manager until 2027-03-31.',
    ],
    ['f(a: A): A = 2 * a "twice"', 'function f = 2 * a (twice).'],
    ['curve 2 * L over L from 0 m to 1 m', 'curve of 2 * L over L.'],
    ['tabulate 2 * L: m over L from 0 m to 2 m step 1 m', 'tabulation of L, 2 * L: 3 rows.'],
    ['instrument DMM_7 ± 2 % serial "B41" due 2027-03-01', 'instrument DMM_7 ± 2 %, serial B41, due 2027-03-01.'],
    ['action "Renew the poles" by "maintenance" due 2026-12-15', 'action: Renew the poles, by maintenance, due 2026-12-15.'],
  ];
  for (const [code, expected] of rows) {
    it(code, () => assert.equal(toView(evaluated(code).result).cells.map(sentences).join('\n'), expected));
  }
});

// The one line that says how a sheet stands.
import assert from 'node:assert/strict';
import { summaryLine } from '../../src/report/summary.ts';
import { toView } from '../../src/view/to-view.ts';
import { evaluated } from '../support/shown.ts';

function check(lines: string, expected: string): void {
  it(expected, () => assert.equal(summaryLine(toView(evaluated(lines).result)), expected));
}

describe('the summary of a sheet', () => {
  check('shall 1 A < 2 A\nshall 1 A < 3 A\nshall 3 A < 2 A', '2 requirements hold · 1 fails');
  check('shall 3 A < 2 A', '1 requirement fails');
  check('shall a < 2 A\nshall a < 3 A\na = 1 / 0', '2 requirements are not calculated');
  check('a = 1 A', 'No requirements · 1 input without a source');
});

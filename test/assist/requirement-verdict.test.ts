// What a requirement comes to as a check that passes or not, in words.
import assert from 'node:assert/strict';
import { type RequirementVerdict, requirementVerdict } from '../../src/assist/requirement-verdict.ts';
import { daysOf } from '../../src/text/date.ts';
import { evaluated } from '../support/answers.ts';

const LAST_DAY = daysOf(2026, 11, 25)!;

const POLES = 'Table poles — Millivolt drops, invented\n\n| pole | U / mV |\n| --- | --: |\n| L1 | 12 |\n| L2 | 30 |';

function verdictOf(code: string, day = LAST_DAY): RequirementVerdict {
  const statements = evaluated(`a = 2 A\n${code}`, { before: POLES }).result.cells.flatMap((cell) => cell.statements);
  const requirement = statements.find((statement) => statement.kind === 'requirement');
  assert.ok(requirement, code);
  return requirementVerdict(requirement, day);
}

describe('the verdict on a requirement', () => {
  const check = (code: string, state: RequirementVerdict['state'], message: string, day = LAST_DAY) => {
    const verdict = verdictOf(code, day);
    assert.deepEqual([verdict.state, verdict.message], [state, message]);
  };
  const conceded = 'accepted by "T. Marsh" until 2026-11-25 because "spare is on order"';

  it('passes where it holds', () => check('shall a <= 2.5 A', 'passes', '2 A ≤ 2.5 A: holds, 20 % in hand'));

  it('fails where it does not', () => check('shall a <= 1 A', 'fails', '2 A ≤ 1 A: fails, 100 % short'));

  it('fails where uncertainty leaves it open', () =>
    check('m = 2.9 A ± 0.5 A\nshall m <= 3 A', 'fails', '2.90 A ≤ 3 A: undecided, 3.3 % in hand, U 0.50 A'));

  it('is noted of a recommendation that is not met', () => {
    check('should a <= 1 A', 'noted', '2 A ≤ 1 A: fails, 100 % short');
    check('should a <= 3 A', 'passes', '2 A ≤ 3 A: holds, 33 % in hand');
  });

  it('says where nothing was calculated, and what is in the way', () => {
    check('shall a <= missing', 'not calculated', 'not calculated');
    check('b = 1 A / 0\nshall a <= b', 'not calculated', 'not calculated since b has no value');
    check('b = 1 A / 0\nshould a <= b', 'noted', 'not calculated since b has no value');
  });

  it('is noted where someone has accepted it, up to the last day of the concession', () => {
    check(`shall a <= 1 A ${conceded}`, 'noted', '2 A ≤ 1 A: fails, 100 % short; accepted by T. Marsh until 2026-11-25');
    const ranOut = '2 A ≤ 1 A: fails, 100 % short; the concession by T. Marsh ran out on 2026-11-25';
    check(`shall a <= 1 A ${conceded}`, 'fails', ranOut, LAST_DAY + 1);
  });

  it('says nothing of a concession that is not needed', () =>
    check(`shall a <= 3 A ${conceded}`, 'passes', '2 A ≤ 3 A: holds, 33 % in hand', LAST_DAY + 1));

  it('names the worst row of a table, and the worst point of a range of operation', () => {
    check('shall U <= 20 mV for each poles', 'fails', '30 mV ≤ 20 mV: fails, 50 % short; worst: L2');
    check(
      'U_0 = 110 V\nU_c = 0.9 * U_0\nshall U_c >= 90 V throughout U_0 from 95 V to 115 V',
      'fails',
      '85.50 V ≥ 90 V: fails, 5.0 % short; at U_0 = 95.00 V',
    );
  });
});

describe('both sides of a requirement', () => {
  const check = (code: string, expected: RequirementVerdict['sides']) => assert.deepEqual(verdictOf(code).sides, expected);

  it('are what is wanted and what there is', () => {
    check('shall a <= 1 A', { wanted: '≤ 1 A', found: '2 A' });
    check('shall a > 3 A', { wanted: '> 3 A', found: '2 A' });
  });

  it('have the limit of a range on the wanted side, wherever it is written', () => {
    check('shall 3 A <= a <= 5 A', { wanted: '≥ 3 A', found: '2 A' });
    check('shall 3 A < a', { wanted: '> 3 A', found: '2 A' });
    check('shall 0.85 * 3 A <= a', { wanted: '≥ 2.550 A', found: '2 A' });
    check('shall a >= 3 A', { wanted: '≥ 3 A', found: '2 A' });
    check('shall 1 A < a < 1.5 A', { wanted: '< 1.5 A', found: '2 A' });
  });

  it('are none where nothing was compared', () => check('shall a <= missing', null));
});

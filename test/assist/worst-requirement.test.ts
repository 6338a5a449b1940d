// Which of a sheet's requirements most needs a look.
import assert from 'node:assert/strict';
import { worstRequirement } from '../../src/assist/worst-requirement.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { evaluated } from '../support/answers.ts';

describe('the worst requirement', () => {
  const check = (code: string, expected: string | null) => {
    const worst = worstRequirement(evaluated(`a = 2 A\nu = 100 V\n${code}`).result);
    assert.equal(worst && `${worst.force} ${worst.condition}`, expected);
  };
  const conceded = 'accepted by "T. Marsh, Lindrow Mill" until 2027-06-30 because "spare is on order"';

  it('is none where there is no requirement', () => check('b = 2 * a', null));

  it('is one that fails before one that could not be calculated', () =>
    check('shall a <= missing\nshall a <= 1 A\nshall a <= 3 A', 'shall a <= 1 A'));

  it('is one that could not be calculated before one that holds by a hair', () =>
    check('shall a <= 2.001 A\nshall a <= missing', 'shall a <= missing'));

  it('is one that uncertainty leaves open before one that holds', () =>
    check('m = 2.9 A ± 0.5 A\nshall a <= 2.001 A\nshall m <= 3 A', 'shall m <= 3 A'));

  it('is of two that hold the one with less in hand, whatever their units', () => {
    check('shall a <= 2.5 A\nshall u <= 105 V', 'shall u <= 105 V');
    check('shall a <= 2.5 A\nshall u >= 30 V', 'shall a <= 2.5 A');
  });

  it('is of two that fail the one that is further beyond its limit', () => {
    check('shall a <= 1.9 A\nshall u <= 50 V', 'shall u <= 50 V');
    check('shall a <= 1 A\nshall u <= 99 V', 'shall a <= 1 A');
  });

  it('is the first of two that stand alike', () => check('shall a <= 4 A\nshall u <= 200 V', 'shall a <= 4 A'));

  it('is a `shall` that is open before a `should` that fails', () =>
    check('m = 2.9 A ± 0.5 A\nshould a <= 1 A\nshall m <= 3 A', 'shall m <= 3 A'));

  it('is a `should` that fails before a `shall` that holds', () => check('shall a <= 2.001 A\nshould a <= 1 A', 'should a <= 1 A'));

  it('is what nobody has accepted before what a concession covers', () =>
    check(`shall a <= 0.5 A ${conceded}\nshall a <= 1.9 A`, 'shall a <= 1.9 A'));

  it('of one block is looked for in that block alone', () => {
    const block = (code: string) => `\`\`\`ampwright\n${code}\n\`\`\`\n`;
    const { result } = evaluateSheet([block('a = 2 A'), block('shall a <= 3 A'), block('shall a <= 1 A')].join('\n'));
    const found = [null, 0, 1, 2].map((number) => worstRequirement(result, number)?.condition ?? null);
    assert.deepEqual(found, ['a <= 1 A', null, 'a <= 3 A', 'a <= 1 A']);
  });
});

// Compiled closures against a plain walk of the syntax tree with quantity objects, on random well-typed expressions.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { PLAIN } from '../../src/units/dimension.ts';
import { toNumber } from '../../src/units/rational.ts';
import { evaluated, numberOf } from '../support/answers.ts';
import { NoValue, type Quantity, type Value, walkEntry } from '../support/tree-walk.ts';
import { GIVEN, wellTyped, wellTypedCondition } from '../support/well-typed.ts';

/** What the slow walk says; null where it has no value, or can't tell on which side of an edge it is. */
function walked(code: string): Value | null {
  try {
    return walkEntry(code, 'x');
  } catch (fault) {
    if (fault instanceof NoValue) return null;
    throw fault;
  }
}

function errorsIn(code: string): readonly string[] {
  return evaluated(code)
    .result.cells[0]!.problems.filter((p) => p.severity === 'error')
    .map((p) => p.code);
}

/** What may go wrong in a well-typed expression. */
const UNDEFINED = ['divides-by-zero', 'overflow', 'inside-call', 'element-fault', 'power-undefined'];

function check(text: string, slow: Value | null): void {
  const code = `${GIVEN}\nx = ${text}`;
  const errors = errorsIn(code);
  assert.deepEqual(
    errors.filter((e) => !UNDEFINED.includes(e)),
    [],
    text,
  );
  if (slow === null) return;
  assert.deepEqual(errors, [], text);
  const evaluation = evaluated(code);
  const fast = numberOf(evaluation, 'x');
  const { value, error, powers } = slow as Quantity;
  assert.ok(Math.abs(fast - value) <= 4 * error + Number.MIN_VALUE, `${text}: ${fast} is not ${value} ± ${error}`);
  const shown = evaluation.result.entries.get('x')?.value;
  const exponents = (shown?.kind === 'quantity' && shown.unit?.dimension.exponents) || PLAIN.exponents;
  exponents.slice(0, 7).forEach((e, i) => {
    assert.ok(Math.abs(toNumber(e) - (powers[`${i}`] ?? 0)) < 1e-9, `${text} is shown in ${shown?.text}`);
  });
}

describe('a compiled expression', () => {
  it('gives what a plain walk of the tree gives, in the same dimension', () => {
    let compared = 0;
    fc.assert(
      fc.property(wellTyped(4), ({ text }) => {
        const slow = walked(`${GIVEN}\nx = ${text}`);
        if (slow !== null) compared++;
        check(text, slow);
      }),
      { numRuns: 1500 },
    );
    assert.ok(compared > 800, `${compared} had a value`);
  });

  it('decides conditions as the plain walk does', () => {
    let compared = 0;
    fc.assert(
      fc.property(wellTypedCondition(3), (text) => {
        const code = `${GIVEN}\nx = ${text}`;
        const slow = walked(code);
        const { result } = evaluated(code);
        assert.deepEqual(
          errorsIn(code).filter((e) => !UNDEFINED.includes(e)),
          [],
          text,
        );
        const value = result.entries.get('x')?.value;
        if (slow === null || value == null) return;
        compared++;
        assert.ok(value.kind === 'yesno' && value.value === slow, text);
      }),
      { numRuns: 600 },
    );
    assert.ok(compared > 200, `${compared} had a value`);
  });
});

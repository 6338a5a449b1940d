// Published values as test cases: an expression of the notation, through the real evaluator, against what was printed.
import assert from 'node:assert/strict';
import { evaluateSheet } from '../../src/run/evaluate.ts';

export interface PublishedCase {
  /** The name of the published value; several checks may share one. */
  readonly id: string;
  /** Author, title, edition, clause or page; or `common practice`. */
  readonly source: string;
  /** In the notation, with the trade library in sight. */
  readonly expression: string;
  /** Statements that the expression needs, such as uncertain inputs. */
  readonly given?: string;
  /** A number in a unit (`1` for a plain number), a text, or what the refusal must say. */
  readonly expected: readonly [value: number, unit: string] | string | RegExp;
  /** In the expected unit: half of the last printed digit, unless `why` says otherwise. 0 for a table's value. */
  readonly tolerance?: number;
  /** Why the tolerance is wider than the printed digits, or what is off in the source. */
  readonly why?: string;
}

/** One published value in one line. */
export function row(id: string, source: string, expression: string, expected: PublishedCase['expected'], tolerance = 0): PublishedCase {
  return { id, source, expression, expected, tolerance };
}

/** Declares the test of one published value. */
export function checkCase(published: PublishedCase): void {
  const { id, expression, expected, source, given = '' } = published;
  const shown = typeof expected === 'string' ? expected : expected instanceof RegExp ? 'is refused' : expected.join(' ');
  it(`${id}: ${expression} → ${shown} (${source})`, () => {
    const unit = Array.isArray(expected) ? `: ${expected[1]}` : '';
    const { value, errors } = evaluate(`${given}\nx${unit} = ${expression}`);
    if (expected instanceof RegExp) {
      assert.match(errors.join('\n'), expected);
      return;
    }
    assert.deepEqual(errors, []);
    if (typeof expected === 'string') {
      assert.equal(value, expected);
      return;
    }
    const [wanted] = expected;
    const tolerance = Math.max(published.tolerance ?? 0, 1e-9 * Math.abs(wanted));
    assert.ok(
      typeof value === 'number' && Math.abs(value - wanted) <= tolerance,
      `${expression} gives ${value} ${expected[1]}; printed is ${wanted} ± ${tolerance} ${expected[1]}`,
    );
  });
}

/** The value of the entry `x` in its declared unit, and the messages of all errors and warnings. */
export function evaluate(code: string): { readonly value: number | string | boolean | null; readonly errors: readonly string[] } {
  const { result } = evaluateSheet(`# Published value\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`);
  const errors = result.cells.flatMap((cell) => cell.problems.filter((p) => p.severity === 'error').map((p) => p.message));
  const shown = result.entries.get('x')?.value ?? null;
  if (shown === null) return { value: null, errors };
  if (shown.kind === 'quantity' || shown.kind === 'yesno') return { value: shown.value, errors };
  return { value: shown.kind === 'text' ? shown.text.slice(1, -1) : shown.text, errors };
}

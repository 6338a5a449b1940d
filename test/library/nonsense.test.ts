// Zero, the wrong sign and percent without their sign, put into every example of the library: what is refused is refused in words of the trade.
import assert from 'node:assert/strict';
import type { Entry } from '../../src/language/ast.ts';
import { parse } from '../../src/language/parser.ts';
import { print } from '../../src/language/print.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { functionList } from '../../src/run/function-list.ts';

/** What an argument `18.5 kW` may be by mistake. */
const MISTAKES: Readonly<Record<string, (number: string, unit: string) => string>> = {
  'is zero': (_, unit) => `0${unit}`,
  'has the wrong sign': (number, unit) => `-${number}${unit}`,
  'has lost its percent sign': (number, unit) => (unit.trim() === '%' ? number : `${Number(number) * 100}${unit}`),
};

interface Trial {
  readonly call: string;
  readonly argument: string;
}

/** The calls of all examples with one argument changed. */
function trials(mistake: (number: string, unit: string) => string): readonly Trial[] {
  return functionList().flatMap(({ library, name, parameters, example }) => {
    const value = library === null ? null : (parse(`x = ${example}`).statements[0] as Entry).value;
    if (value?.kind !== 'call') return [];
    const args = value.args.map((a) => print(a.value));
    return parameters.flatMap((_, i) => {
      const literal = /^([\d.]+(?:e\d+)?)( ?\D.*)?$/.exec(args[i] ?? '');
      if (literal === null || value.args[i]!.value.kind !== 'quantity' || args[i]!.includes('deg')) return [];
      const argument = mistake(literal[1]!, literal[2] ?? '');
      return [{ call: `${name}(${args.map((a, k) => (k === i ? argument : a)).join(', ')})`, argument }];
    });
  });
}

describe('an argument that', () => {
  for (const [what, mistake] of Object.entries(MISTAKES)) {
    it(`${what} gives a value or a refusal that says what is meant, and never a fault of arithmetic`, () => {
      const all = trials(mistake);
      const answers = all.map(({ call }) => {
        const errors = evaluateSheet(`\`\`\`ampwright\nx = ${call}\n\`\`\`\n`).problems.filter((p) => p.problem.severity === 'error');
        return {
          call,
          bare: errors.filter(({ problem }) => problem.code !== 'needs-failed' && !/neighbours/.test(problem.message)),
        };
      });
      assert.ok(all.length > 400);
      assert.deepEqual(
        answers.flatMap(({ call, bare }) => bare.map(({ problem }) => `${call}: ${problem.message}`)),
        [],
      );
    });
  }
});

// Decisions and stated uncertainties of published examples, through the real evaluator.
import assert from 'node:assert/strict';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import type { RequirementResult, SheetResult } from '../../src/run/result.ts';
import { coverages, decisions, gaugeBlockBudget } from './cases/decisions.ts';
import { GAUGE_BLOCK } from './cases/uncertainty.ts';

const sheet = (code: string): SheetResult => evaluateSheet(`# Published example\n\n\`\`\`ampwright\n${code.trim()}\n\`\`\`\n`).result;

const requirement = (result: SheetResult): RequirementResult | undefined =>
  result.cells.flatMap((cell) => cell.statements).find((s) => s.kind === 'requirement');

describe('published decisions and statements of uncertainty', () => {
  for (const { id, source, code, status } of decisions) {
    it(`${id}: ${code.replace('\n', ', ')} → ${status} (${source})`, () => {
      assert.equal(requirement(sheet(code))?.status, status);
    });
  }

  for (const { id, source, code, entry, nu, k, why } of coverages) {
    it(`${id}: ν = ${nu ?? '∞'}, k = ${k[0].toFixed(2)} (${source}; ${why})`, () => {
      const value = sheet(code).entries.get(entry)?.value;
      assert.ok(value?.kind === 'quantity' && value.uncertainty?.k);
      assert.equal(value.uncertainty.nu, nu);
      assert.ok(Math.abs(value.uncertainty.k - k[0]) <= k[1], `k is ${value.uncertainty.k}`);
    });
  }

  for (const [input, nanometres, tolerance] of gaugeBlockBudget) {
    it(`gum-h1-2: ${input} contributes ${nanometres} nm (JCGM 100:2008, H.1, Table H.1)`, () => {
      const part = sheet(GAUGE_BLOCK)
        .budget('l')
        .find((p) => p.input === input);
      assert.ok(part && Math.abs(part.contribution * 1e9 - nanometres) <= tolerance, `it is ${part && part.contribution * 1e9} nm`);
    });
  }

  it('gum-h1-2: what enters as a product of two zeros contributes nothing to first order (JCGM 100:2008, H.1)', () => {
    const budget = sheet(GAUGE_BLOCK).budget('l');
    for (const input of ['alpha_s', 'theta']) assert.ok((budget.find((p) => p.input === input)?.contribution ?? 0) < 1e-18);
  });
});

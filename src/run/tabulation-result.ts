// Results of tabulations: expressions at the steps of a range (N8, F10).
import type * as ast from '../language/ast.ts';
import { raise } from '../language/fault.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { best, type Uncertain } from '../language/uncertainty/dual.ts';
import { differenceFromSI, differenceUnit, fromSI } from '../units/quantity.ts';
import { missingOf } from './entry-result.ts';
import { frameOf } from './evaluate-item.ts';
import type { Shown, TabulationResult } from './result.ts';
import type { Base } from './result-base.ts';
import { attempt, type Sampler, sampler } from './sampler.ts';
import { show, showQuantity, unitFor } from './shown.ts';

/** Rows of a tabulation at most. */
const TABULATION_ROWS = 1000;

export function tabulationResult(item: Item, statement: ast.Tabulation, base: () => Base, digits: number): TabulationResult {
  const variable = statement.over.variable.name;
  const made = attempt(item, (plan, run) => {
    const s = sampler(item, plan, variable, run);
    const step = best(s.compile(plan.step!)(frameOf(run)) as Uncertain);
    if (!(step > 0)) raise(valueProblem('step-range', statement.step.at, { variable }));
    const count = Math.floor((s.to - s.from) / step + 1e-9) + 1;
    if (count > TABULATION_ROWS) raise(valueProblem('too-many-samples', statement.step.at, { count: `${count}`, limit: TABULATION_ROWS }));
    const xs = Array.from({ length: count }, (_, i) => s.from + i * step);
    const columns = plan.traces.map((trace) => {
      const code = s.compile(trace.value);
      const ys = xs.map((x) => s.at(code, x));
      return { label: trace.label, unit: unitFor(trace.value.type, trace.unit, ys), ys };
    });
    const xShown = (x: number): Shown => show(x, plan.from.type, s.xUnit, { digits, written: cleanNumber(x, s, step) });
    return {
      heads: [{ title: variable, unit: s.xUnit }, ...columns.map((c) => ({ title: c.label, unit: c.unit }))],
      rows: xs.map((x, i) => [
        xShown(x),
        ...columns.map((c) => (c.ys[i] === null ? null : showQuantity(c.ys[i]!, c.unit, { digits }, null))),
      ]),
    };
  });
  return {
    ...base(),
    kind: 'tabulation',
    statement,
    ...(made.value ?? { heads: [], rows: [] }),
    missing: made.value === null ? missingOf(item, made.fault) : null,
  };
}

/** The abscissas with as many places as range and step need. */
function cleanNumber(x: number, s: Sampler, step: number): string {
  const difference = s.xUnit === null ? null : differenceUnit(s.xUnit);
  const places = Math.max(
    ...[differenceFromSI(step, difference), fromSI(s.from, s.xUnit)].map((v) => `${Number(v.toPrecision(10))}`.split('.')[1]?.length ?? 0),
  );
  return fromSI(x, s.xUnit).toFixed(Math.min(places, 12));
}

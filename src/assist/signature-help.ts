// Signature help: the function whose arguments are being written, and which of them.
import type { FunctionDescription } from '../run/function-list.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import { type Span, span } from '../text/span.ts';
import { callAt } from './call-at.ts';
import { describeReferent } from './describe-function.ts';
import type { Spot } from './location.ts';
import { resolveCall } from './referent.ts';
import { statementAt } from './statement-at.ts';

export interface SignatureParameter {
  /** In the label. */
  readonly at: Span;
  readonly documentation: string;
}

export interface SignatureHelp {
  /** `fla_3ph(P: kW, U: V, eta, pf): A`. */
  readonly label: string;
  readonly documentation: string;
  readonly parameters: readonly SignatureParameter[];
  /** Null where the argument is none of them. */
  readonly active: number | null;
}

export function signatureHelp(open: OpenSheet, { text, offset }: Spot): SignatureHelp | null {
  if (text.kind !== 'block') return null;
  const { before } = statementAt(open.cells[text.number]?.code ?? '', offset);
  const call = callAt(before.filter(({ at }) => at.end <= offset));
  // A statement that begins with `f(` defines f.
  const callee = call && call.callee !== before[0] && resolveCall({ open, module: open.loaded.module }, call.callee.name);
  const described = callee ? describeReferent(callee) : null;
  if (!call || !described) return null;
  const { form, description, parameters } = described;
  const active = call.name === null ? call.argument : parameters.findIndex(({ name }) => name === call.name);
  // `min(a, b, …)` takes as many as one likes: the last one stands for all that follow.
  const last = /…/.test(form) ? parameters.length - 1 : Number.POSITIVE_INFINITY;
  return {
    label: form,
    documentation: description ?? '',
    parameters: parameterPlaces(described).map((at, i) => ({ at, documentation: documentationOf(described, i) })),
    active: active < 0 || (active >= parameters.length && last > active) ? null : Math.min(active, last),
  };
}

/** Where the parameters stand in the form, one behind the other. */
function parameterPlaces({ form, parameters }: FunctionDescription): readonly Span[] {
  let from = form.indexOf('(') + 1;
  return parameters.map(({ name }) => {
    const found = form.indexOf(name, from);
    const start = found < 0 ? from : found;
    const end = start + (found < 0 ? 0 : (/^[^,)]*/.exec(form.slice(start))?.[0].length ?? 0));
    from = end;
    return span(start, end);
  });
}

/** Names among them. */
const WORDS = /[\p{L}\p{M}\p{N}_]+/gu;

/** What the parameter takes, and what it must satisfy. */
function documentationOf({ parameters, needs }: FunctionDescription, index: number): string {
  const { name, unit } = parameters[index]!;
  const own = needs
    .filter(({ condition }) => condition.match(WORDS)?.includes(name))
    .map(({ condition, because }) => because ?? `needs ${condition}`);
  return [unit === '1' ? 'a plain number' : unit, ...own].join('; ');
}

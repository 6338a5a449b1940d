// What is known of a function, as a small ruled table: formula, parameters, limits, example, source.
import { escapeText } from '../../view/node.ts';

/** One line; null where there is nothing to say. */
export type Fact = readonly [head: string, html: string | null];

export interface FunctionFacts {
  readonly name: string;
  readonly place: string;
  /** `fla_3ph(P: kW, U: V, eta, pf): A`. */
  readonly form: string;
  readonly description: string | null;
  readonly facts: readonly Fact[];
}

/** A function under a heading of this level. */
export function functionFacts({ name, place, form, description, facts }: FunctionFacts, level: number): string {
  const rows = facts.flatMap(([head, html]) => (html === null ? [] : [`<tr><th scope="row">${head}</th><td>${html}</td></tr>`]));
  return `<section class="aw-functionsection" id="${place}" aria-labelledby="${place}-form">
<h${level} id="${place}-form"><code><span class="aw-name">${escapeText(name)}</span>${escapeText(form.slice(name.length))}</code></h${level}>
${description === null ? '' : `<p>${sentence(description)}</p>`}
<table class="aw-register aw-facts"><tbody>${rows.join('\n')}</tbody></table>
</section>`;
}

/** `call = result`. */
export function exampleFact(call: string | null, result: string | null): Fact {
  if (call === null) return ['Example', null];
  return ['Example', `<code>${escapeText(call)}</code>${result === null ? '' : ` = <span class="aw-result">${escapeText(result)}</span>`}`];
}

/** A description as a sentence of its own. */
export function sentence(text: string): string {
  const first = /^[a-z]+\b/.test(text) ? text[0]!.toUpperCase() + text.slice(1) : text;
  return `${escapeText(first)}${/[.:]$/.test(text) ? '' : '.'}`;
}

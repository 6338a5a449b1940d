// Named arguments of the call that the cursor stands in.
import { callAt } from '../call-at.ts';
import { describeReferent } from '../describe-function.ts';
import { resolveCall } from '../referent.ts';
import { type Offer, offer } from './item.ts';
import type { Site } from './site.ts';

/** The parameters that have no argument yet, where an argument begins. */
export function argumentOffers({ n, before, places }: Site): readonly Offer[] {
  const last = before.at(-1);
  const begins = last?.kind === 'punctuation' && (last.mark === '(' || last.mark === ',');
  const call = begins && places.some(({ kind }) => kind === 'value') ? callAt(before) : null;
  const callee = call && resolveCall(n, call.callee.name);
  if (!call || callee?.kind !== 'function') return [];
  const parameters = describeReferent(callee)?.parameters ?? [];
  const open = parameters.slice(call.argument - call.given.length).filter(({ name }) => !call.given.includes(name));
  return open.map(({ name, unit }) =>
    offer('parameter', `${name} =`, { detail: unit === '1' ? 'a plain number' : unit, insert: `${name} = `, rank: 0.8 }),
  );
}

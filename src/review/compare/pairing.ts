// Which thing of the old sheet is which in the new one.
import { NO_RENAMES, type Renames } from './meaning.ts';

/** A thing on both sides, or on one. */
export type Paired<T> = readonly [old: T | null, now: T | null];

/** Tells what two things must have in common to be one; null: nothing to go by. */
export type Likeness<T> = (of: T, renames: Renames) => string | null;

/**
 * Pairs things by name, the old names replaced: in the order of the new ones, then the old ones that are gone. Of several with one name
 * the first counts.
 */
export function pairByName<T>(old: readonly T[], now: readonly T[], nameOf: (of: T) => string, renames: Renames): readonly Paired<T>[] {
  const before = firstByName(old, (of) => renames.get(nameOf(of)) ?? nameOf(of));
  const after = firstByName(now, nameOf);
  const pairs = [...after].map(([name, its]): Paired<T> => [before.get(name) ?? null, its]);
  const gone = [...before].filter(([name]) => !after.has(name)).map(([, its]): Paired<T> => [its, null]);
  return [...pairs, ...gone];
}

/** Pairs things without names by ever weaker likenesses, alike ones in their order: in the order of the new ones, then the old ones that are gone. */
export function pairByLikeness<T>(
  old: readonly T[],
  now: readonly T[],
  likenesses: readonly Likeness<T>[],
  renames: Renames,
): readonly Paired<T>[] {
  const partner = new Map<T, T>();
  const taken = new Set<T>();
  for (const likeness of likenesses) {
    const waiting = new Map<string, T[]>();
    // From behind, so that the first of those that are alike is the last of its list.
    for (const one of [...old].reverse()) {
      const key = taken.has(one) ? null : likeness(one, renames);
      const alike = key === null ? undefined : waiting.get(key);
      if (alike !== undefined) alike.push(one);
      else if (key !== null) waiting.set(key, [one]);
    }
    for (const one of now) {
      const key = partner.has(one) ? null : likeness(one, NO_RENAMES);
      const found = key === null ? undefined : waiting.get(key)?.pop();
      if (found === undefined) continue;
      partner.set(one, found);
      taken.add(found);
    }
  }
  const pairs = now.map((one): Paired<T> => [partner.get(one) ?? null, one]);
  return [...pairs, ...old.filter((one) => !taken.has(one)).map((one): Paired<T> => [one, null])];
}

function firstByName<T>(all: readonly T[], nameOf: (of: T) => string): ReadonlyMap<string, T> {
  const found = new Map<string, T>();
  for (const one of all) if (!found.has(nameOf(one))) found.set(nameOf(one), one);
  return found;
}

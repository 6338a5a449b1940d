// The functions of the mathematics, in the order in which the reference lists them.
import type { Builtin } from './builtin.ts';
import { extremes } from './extremes.ts';
import { interpolations } from './interpolation.ts';
import { powers } from './powers.ts';
import { regressions } from './regression.ts';
import { roundings } from './rounding.ts';
import { sequences } from './sequences.ts';
import { totals } from './totals.ts';
import { trigonometry } from './trigonometry.ts';
import { uncertaintyOf } from './uncertainty-of.ts';

export const BUILTINS: readonly Builtin[] = [
  ...powers, ...trigonometry, ...roundings, ...extremes, ...totals, ...interpolations, ...sequences, ...regressions, ...uncertaintyOf,
]; // biome-ignore format: a list

const byName = new Map(BUILTINS.map((b) => [b.name, b]));

/** Names that belong to the mathematics and can't be defined again (K4). */
export const MATHEMATICS: ReadonlySet<string> = new Set([...byName.keys(), 'pi', 'absolute_zero']);

export function findBuiltin(name: string): Builtin | undefined {
  return byName.get(name);
}

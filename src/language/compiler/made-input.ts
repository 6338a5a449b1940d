// Inputs that a calculation makes (U10, U11): the same one at each evaluation of the same entry, in the order they are met.
import type { Dual } from '../uncertainty/dual.ts';
import { Input, type Spread } from '../uncertainty/input.ts';
import type { Frame } from './frame.ts';

/** The next made input of this evaluation, a deviation about 0 with this spread, and its present value. */
export function makeInput(frame: Frame, name: string, offset: number, spread: Spread): Dual {
  const { run } = frame;
  const place = run.met++;
  const known = run.item.made[place];
  if (run.shifting && known !== undefined) return known.current;
  if (known !== undefined && sameSpread(known.spread, spread)) return known.current;
  const input = new Input(name, run.item, offset, 0, spread);
  run.item.made[place] = input;
  return input.current;
}

function sameSpread(a: Spread, b: Spread): boolean {
  return (
    a.components.length === b.components.length && a.components.every((c, i) => c.u === b.components[i]!.u && c.nu === b.components[i]!.nu)
  );
}

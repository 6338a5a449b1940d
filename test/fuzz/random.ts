// Numbers that look random and are the same for the same seed and index: any input of a run can be made again by itself.

export interface Random {
  /** A whole number from 0 to `below - 1`. */
  below(below: number): number;
  of<T>(options: readonly T[]): T;
  chance(percent: number): boolean;
}

/** The numbers for one input of a run (mulberry32, started at a mix of both). */
export function randomOf(seed: number, index: number): Random {
  let state = (Math.imul(seed, 0x9e3779b1) ^ Math.imul(index + 1, 0x85ebca6b)) >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  next();
  const below = (limit: number) => Math.floor(next() * limit);
  return { below, of: (options) => options[below(options.length)]!, chance: (percent) => next() * 100 < percent };
}

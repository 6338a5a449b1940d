// Times two or more ways of doing the same work in one run, alternating, in processor time: what else the machine does weighs less.

/**
 * Nanoseconds of processor time that a call of each candidate takes: the median over rounds in which the candidates take turns. Each has
 * run for ten slices before, so that all are compared as the engine has them once it knows them.
 */
export function compareTimes(candidates: Readonly<Record<string, () => unknown>>, rounds = 25, slice = 20): Record<string, number> {
  const names = Object.keys(candidates);
  for (const name of names) warm(candidates[name]!, 10 * slice);
  const counts = Object.fromEntries(names.map((name) => [name, calibrate(candidates[name]!, slice)]));
  const times: Record<string, number[]> = Object.fromEntries(names.map((name) => [name, []]));
  for (let round = 0; round < rounds; round++) {
    for (const name of names) times[name]!.push(time(candidates[name]!, counts[name]!));
  }
  return Object.fromEntries(names.map((name) => [name, median(times[name]!)]));
}

/** Runs for so many milliseconds of processor time. */
function warm(run: () => unknown, milliseconds: number): void {
  for (let spent = 0; spent < milliseconds * 1e6; spent += time(run, 1));
}

/** How many calls fill `slice` milliseconds. */
function calibrate(run: () => unknown, slice: number): number {
  let count = 1;
  for (;;) {
    const each = time(run, count);
    if (each * count > slice * 1e6 || count > 1e8) return count;
    count = Math.ceil(Math.min(count * 10, (slice * 1.1e6) / Math.max(each, 0.1)));
  }
}

let sink: unknown;

function time(run: () => unknown, count: number): number {
  const start = process.cpuUsage();
  for (let i = 0; i < count; i++) sink = run();
  const { user, system } = process.cpuUsage(start);
  return ((user + system) * 1000) / count;
}

/** One call's milliseconds of processor time; the median of several, for work too long to repeat often. */
export function onceTime(run: () => unknown, times = 5): number {
  const found: number[] = [];
  for (let i = 0; i < times; i++) found.push(time(run, 1) / 1e6);
  return median(found);
}

/** The same by the clock, for work that other processes do. */
export function wallTime(run: () => unknown, times = 5): number {
  const found: number[] = [];
  for (let i = 0; i < times; i++) {
    const start = process.hrtime.bigint();
    run();
    found.push(Number(process.hrtime.bigint() - start) / 1e6);
  }
  return median(found);
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}

/** What was computed last: it can be asked for, so no engine may leave the work out. */
export function lastResult(): unknown {
  return sink;
}

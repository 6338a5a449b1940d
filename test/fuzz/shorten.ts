// A text that fails made as short as it still fails: halves, quarters and so on are left out, in the end single characters.

const MOST_TRIES = 4_000;

export function shortest(text: string, fails: (text: string) => boolean): string {
  let short = text;
  let tries = 0;
  for (let size = Math.ceil(short.length / 2); size >= 1 && tries < MOST_TRIES; size = size === 1 ? 0 : Math.ceil(size / 2)) {
    for (let at = 0; at < short.length && tries < MOST_TRIES; tries++) {
      const shorter = short.slice(0, at) + short.slice(at + size);
      if (fails(shorter)) short = shorter;
      else at += size;
    }
  }
  return short;
}

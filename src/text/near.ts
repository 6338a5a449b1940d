// Near spellings: which of the known words was likely meant.

/**
 * Up to three of `known` that are close to `word`, nearest first: equal but for case, or within a third of the
 * word's length in Damerau-Levenshtein distance (restricted: no piece is edited twice).
 */
export function nearSpellings(word: string, known: Iterable<string>): string[] {
  const found: { name: string; distance: number }[] = [];
  const limit = Math.max(1, Math.floor(word.length / 3));
  const folded = word.toLowerCase();
  for (const name of new Set(known)) {
    if (name === word || Math.abs(name.length - word.length) > limit) continue;
    const distance = name.toLowerCase() === folded ? 0 : editDistance(folded, name.toLowerCase(), limit);
    if (distance <= limit && distance < word.length) found.push({ name, distance });
  }
  found.sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : 1));
  return found.slice(0, 3).map((f) => f.name);
}

function editDistance(a: string, b: string, limit: number): number {
  if (a.length > 64 || b.length > 64) return limit + 1;
  let before: number[] = [];
  let leastBefore = 0;
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, before[j - 2]! + 1);
      row.push(cost);
      if (cost < least) least = cost;
    }
    // Each row follows from the two above it.
    if (least > limit && leastBefore > limit) return limit + 1;
    leastBefore = least;
    before = last;
    last = row;
  }
  return last[b.length]!;
}

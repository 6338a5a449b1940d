// Cuts certain characters off the end of a text; a pattern that ends in `+$` would look for the end anew from each of them.

/** `text` without those of `characters` that it ends in. */
export function withoutEnd(text: string, characters: string): string {
  let end = text.length;
  while (end > 0 && characters.includes(text[end - 1]!)) end--;
  return text.slice(0, end);
}

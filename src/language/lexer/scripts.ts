// Names that mix scripts: letters of two alphabets that can be taken for each other (L12, after Unicode Technical Standard 39).

const SCRIPTS: readonly (readonly [name: string, pattern: RegExp])[] = [
  ['Latin', /\p{Script=Latin}/u],
  ['Greek', /\p{Script=Greek}/u],
  ['Cyrillic', /\p{Script=Cyrillic}/u],
  ['East Asian', /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Bopomofo}]/u],
  ['other', /\p{L}/u],
];

/** Letters that look like a Latin one, as printed in most typefaces. */
const LATIN: Readonly<Record<string, string>> = {
  Α: 'A', Β: 'B', Ε: 'E', Ζ: 'Z', Η: 'H', Ι: 'I', Κ: 'K', Μ: 'M', Ν: 'N', Ο: 'O', Ρ: 'P', Τ: 'T', Υ: 'Y', Χ: 'X', ο: 'o', ν: 'v',
  А: 'A', В: 'B', Е: 'E', К: 'K', М: 'M', Н: 'H', О: 'O', Р: 'P', С: 'C', Т: 'T', У: 'Y', Х: 'X', І: 'I', Ј: 'J', Ѕ: 'S',
  а: 'a', е: 'e', о: 'o', р: 'p', с: 'c', у: 'y', х: 'x', і: 'i', ј: 'j', ѕ: 's',
}; // biome-ignore format: an alphabet

/** A name with each letter that looks like a Latin one written as that; null where none does. */
export function latinForm(name: string): string | null {
  if (/^[\0-\u007F]*$/.test(name)) return null;
  const latin = [...name].map((c) => (Object.hasOwn(LATIN, c) ? LATIN[c]! : c)).join('');
  return latin === name ? null : latin;
}

/** The scripts that a name mixes and its spelling in Latin letters alone, if it has one; null where nothing can be mistaken. */
export function mixedScripts(name: string): { scripts: readonly string[]; latin: string | null } | null {
  if (/^[\0-\u007F]*$/.test(name)) return null;
  const letters = [...name].filter((c) => /\p{L}/u.test(c) && c !== '\u00B5');
  const scripts = [...new Set(letters.map((c) => SCRIPTS.find(([, pattern]) => pattern.test(c))![0]))];
  if (scripts.length < 2) return null;
  const greekHarmless = !letters.some((c) => /\p{Script=Greek}/u.test(c) && c !== 'ν' && Object.hasOwn(LATIN, c));
  const mixed = scripts.filter((s) => s !== 'Latin' && s !== 'East Asian' && !(s === 'Greek' && greekHarmless));
  if (mixed.length === 0) return null;
  const latin = latinForm(name) ?? name;
  return { scripts, latin: /^[\p{Script=Latin}\p{M}\d_]*$/u.test(latin) ? latin : null };
}

// The catalogue: every unit symbol that the notation has, by spelling.
import { spellingsOf } from './symbols/definition.ts';
import { ELECTRICITY } from './symbols/electricity.ts';
import { ENERGY_POWER } from './symbols/energy-power.ts';
import { LENGTH_AREA_VOLUME } from './symbols/length-area-volume.ts';
import { MECHANICS } from './symbols/mechanics.ts';
import { TEMPERATURE_RATIO_MATTER } from './symbols/temperature-ratio-matter.ts';
import { TIME_ROTATION } from './symbols/time-rotation.ts';
import type { UnitSymbol } from './unit.ts';

/** The definitions in the order in which completion and the reference list them. */
export const DEFINITIONS = [
  ...ELECTRICITY,
  ...ENERGY_POWER,
  ...TIME_ROTATION,
  ...LENGTH_AREA_VOLUME,
  ...MECHANICS,
  ...TEMPERATURE_RATIO_MATTER,
];

// The trade still writes MCM, thousand circular mils, on large conductors.
const OTHER_NAMES: readonly (readonly [string, string])[] = [['MCM', 'kcmil']];

/** Every spelling, prefixes and alternatives included, with its symbol. */
export const CATALOGUE: ReadonlyMap<string, UnitSymbol> = catalogue();

function catalogue(): Map<string, UnitSymbol> {
  const symbols = new Map(DEFINITIONS.flatMap(spellingsOf));
  for (const [other, symbol] of OTHER_NAMES) symbols.set(other, symbols.get(symbol)!);
  return symbols;
}

const CANONICAL: readonly string[] = [...new Set([...CATALOGUE.values()].map((s) => s.symbol))];
const LONGEST = Math.max(...[...CATALOGUE.keys()].map((s) => s.length));

/** The symbol with this spelling, alternatives included; the whole of the text must be the symbol. */
export function findSymbol(spelling: string): UnitSymbol | undefined {
  return CATALOGUE.get(spelling);
}

/** The canonical spelling of every symbol, prefixed ones included, in the catalogue's order. */
export function spellings(): readonly string[] {
  return CANONICAL;
}

/** A word goes on with letters, digits and `_`. */
const WORD = /^[\p{L}\p{M}\p{Nd}_]+/u;
const SIGN = /[%°℃℉]/;
const LETTER_FIRST = /^[\p{L}_]/u;

/**
 * The unit symbol that begins at `offset` (grammar L1): the longest one of the catalogue, and only if no letter, digit, `_`, `[`,
 * `.letter` or, for symbols that end in a letter, `(` follows directly.
 */
export function longestSymbol(text: string, offset: number): { readonly symbol: UnitSymbol; readonly end: number } | null {
  const letters = SIGN.test(text.charAt(offset)) ? offset + 1 : offset;
  // One character more than the longest spelling is enough to know that a word is no symbol; it may take two places.
  const end = letters + (WORD.exec(text.slice(letters, letters + LONGEST + 2))?.[0].length ?? 0);
  const symbol = CATALOGUE.get(text.slice(offset, end));
  if (!symbol) return null;
  const next = text.charAt(end);
  if (next === '[') return null;
  if (next === '(' && end > letters) return null;
  if (next === '.' && LETTER_FIRST.test(text.slice(end + 1, end + 3))) return null;
  return { symbol, end };
}

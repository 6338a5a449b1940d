// What to write instead of a word that is no unit: spellings that are common in the trade, then near ones.
import { nearSpellings } from '../text/near.ts';
import { findSymbol, spellings } from './catalogue.ts';
import { parseUnit } from './read-unit.ts';

/** Words seen on plates, in tables and in mail, with the notation's spelling. */
const TRADE: readonly (readonly [string, string])[] = [
  ['amp amps Amp Amps ampere amperes', 'A'],
  ['volt volts Volt Volts VAC VDC Vac Vdc', 'V'],
  ['watt watts', 'W'],
  ['VAR Var VAr', 'var'],
  ['kVAR kVAr KVAR', 'kvar'],
  ['ohms Ohm Ohms OHM', 'ohm'],
  ['mhos', 'mho'],
  ['HP Hp', 'hp'],
  ['PS CV ch', 'hp_metric'],
  ['RPM', 'rpm'],
  ['r turn turns revs', 'rev'],
  ['cycles', 'cycle'],
  ['sec secs second seconds', 's'],
  ['mins minute minutes', 'min'],
  ['hr hrs hour hours', 'h'],
  ['day days', 'd'],
  ['weeks', 'week'],
  ['months', 'month'],
  ['yr yrs years', 'year'],
  ['inch inches', 'in'],
  ['feet foot', 'ft'],
  ['metre meter metres meters', 'm'],
  ['t tonnes', 'tonne'],
  ['l litre liter', 'L'],
  ['lbs', 'lb'],
  ['sqmm', 'mm²'],
  ['CFM', 'cfm'],
  ['PSI', 'psi'],
  ['GPM', 'gpm'],
  ['KWH KWh kwh', 'kWh'],
  ['lbft lbfft ftlb ftlbf', 'lbf·ft'],
  ['inlb lbin lbfin', 'lbf·in'],
  ['Celsius celsius', 'degC'],
  ['Fahrenheit fahrenheit', 'degF'],
  ['pct percent', '%'],
];
/** The same, one word a row. */
export const TRADE_SPELLINGS: ReadonlyMap<string, string> = new Map(
  TRADE.flatMap(([words, unit]) => words.split(' ').map((word): [string, string] => [word, unit])),
);

/**
 * Up to three canonical units that were likely meant by a word that is none, likeliest first: `kw` gives `kW`, `mm2` gives `mm²`,
 * `Nm` gives `N·m`. Empty where nothing is near.
 */
export function suggestUnits(word: string): readonly string[] {
  const known = TRADE_SPELLINGS.get(word);
  if (known !== undefined) return [known];
  const power = /^(\p{L}+)([23])$/u.exec(word);
  const squared = power && parseUnit(`${power[1]}^${power[2]}`);
  if (squared) return [squared.text];
  const one = /[a-z]{3}s$/.test(word) && findSymbol(word.slice(0, -1));
  if (one) return [one.symbol];
  return product(word) ?? inOtherCase(word) ?? nearSpellings(word, spellings());
}

/** What differs by case alone; those that keep the first letter come first, since `m` and `M` are a factor of 1e9 apart. */
function inOtherCase(word: string): readonly string[] | null {
  const folded = word.toLowerCase();
  const same = spellings().filter((s) => s.toLowerCase() === folded);
  const kept = (s: string): boolean => s.charAt(0) === word.charAt(0);
  return same.length > 0 ? [...same.filter(kept), ...same.filter((s) => !kept(s))] : null;
}

/** A product without its sign, such as `Nm` or `Vs`. */
function product(word: string): readonly string[] | null {
  const split = /^(\p{L}+)(m|s|h|ft|in)$/u.exec(word);
  const first = split && findSymbol(split[1]!);
  const second = split && findSymbol(split[2]!);
  return first && second ? [`${first.symbol}·${second.symbol}`] : null;
}

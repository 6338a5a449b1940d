// Texts from a grammar written as data: each rule has alternatives, in which `{rule}` stands for a text of that rule.
import type { Random } from './random.ts';

/** Alternatives by the rule's name. The first of each rule leads to an end soonest: it is taken where nesting is deep. */
export type Grammar = Readonly<Record<string, readonly string[]>>;

/** Makes texts of one rule. */
export type Make = (random: Random) => string;

/** Most texts are short, since mistakes show in short ones; some are long. */
const SIZES = [
  { deepest: 6, longest: 60 },
  { deepest: 9, longest: 200 },
  { deepest: 12, longest: 200 },
  { deepest: 12, longest: 3_000 },
];

/** A maker of texts of the rule `start`. A reference to a rule that is not there is a mistake in the grammar and throws at once. */
export function maker(grammar: Grammar, start: string): Make {
  const rules = new Map(Object.entries(grammar).map(([name, alternatives]) => [name, alternatives.map(pieces)]));
  for (const piece of [...rules.values(), [[{ rule: start }]]].flat(2)) {
    if (typeof piece !== 'string' && !rules.has(piece.rule)) throw new Error(`the grammar has no rule ${piece.rule}`);
  }
  return (random) => {
    const { deepest, longest } = random.of(SIZES);
    let written = '';
    const grow = (rule: string, depth: number) => {
      const alternatives = rules.get(rule)!;
      const chosen = depth > deepest || written.length > longest ? alternatives[0]! : random.of(alternatives);
      for (const piece of chosen) {
        if (typeof piece === 'string') written += piece;
        else grow(piece.rule, depth + 1);
      }
    };
    grow(start, 0);
    return written;
  };
}

/** The words that a grammar is made of, for putting them where they don't belong. */
export function wordsOf(grammar: Grammar): readonly string[] {
  const texts = Object.values(grammar).flat().flatMap(pieces);
  return [...new Set(texts.filter((piece) => typeof piece === 'string').map((piece) => piece as string))];
}

function pieces(alternative: string): readonly (string | { readonly rule: string })[] {
  return alternative
    .split(/(\{\w+\})/)
    .filter((part) => part !== '')
    .map((part) => (/^\{\w+\}$/.test(part) ? { rule: part.slice(1, -1) } : part));
}

// How a name is typeset: `I_n` is an I with subscript n, `eta` the Greek letter; several letters in a row stand upright.
import { type ElementNode, element, type ViewNode } from '../node.ts';
import { grouped } from './typeset.ts';

// The English names of Greek letters, as the notation spells them, and their letters.
const ALPHABET =
  'alpha α beta β gamma γ delta δ epsilon ε zeta ζ eta η theta θ iota ι kappa κ lambda λ mu μ nu ν xi ξ omicron ο pi π rho ρ sigma σ ' +
  'tau τ upsilon υ phi φ chi χ psi ψ omega ω Gamma Γ Delta Δ Theta Θ Lambda Λ Xi Ξ Pi Π Sigma Σ Phi Φ Psi Ψ Omega Ω';
const LETTERS = new Map([...ALPHABET.matchAll(/(\w+) (\S)/gu)].map(([, word, letter]) => [word!, letter!]));

/** A name taken apart: the letter or word at the line and what hangs below it. */
export interface SymbolParts {
  readonly base: string;
  /** `U_s_max` has two. */
  readonly subscripts: readonly string[];
}

/** Takes a name apart at its underscores. A name that begins or ends with one, or doubles it, stays whole. */
function symbolParts(name: string): SymbolParts {
  const parts = name.split('_');
  if (parts.length === 1 || parts.includes('')) return { base: letter(name), subscripts: [] };
  return { base: letter(parts[0]!), subscripts: parts.slice(1).map(letter) };
}

function letter(word: string): string {
  return LETTERS.get(word) ?? word;
}

/** Whether the name's base is a single letter: then it is set in italics and may stand side by side with others. */
export function isSingleLetter(name: string): boolean {
  return [...symbolParts(name).base].length === 1;
}

/** A name as MathML. `data-name` lets a click find it. */
export function symbol(name: string, exponent: ViewNode | null = null): ElementNode {
  const { base, subscripts } = symbolParts(name);
  const at = { 'data-name': name };
  const root = element('mi', {}, base);
  if (subscripts.length === 0) {
    return exponent === null ? element('mi', at, base) : element('msup', at, root, exponent);
  }
  const below = grouped(
    subscripts.flatMap((s, i) =>
      i === 0 ? [subscript(s)] : [element('mo', { separator: 'true', lspace: '0', rspace: '0.1em' }, ','), subscript(s)],
    ),
  );
  return exponent === null ? element('msub', at, root, below) : element('msubsup', at, root, below, exponent);
}

// Subscripts name a thing (rated, coil, phase a to b) and stand upright, as ISO 80000-1 has it.
function subscript(word: string): ElementNode {
  return /^\d+$/.test(word) ? element('mn', {}, word) : element('mi', { mathvariant: 'normal' }, word);
}

/** A name as SVG text spans, at a font size of `size`. */
export function symbolSpans(name: string, size: number): ElementNode[] {
  const { base, subscripts } = symbolParts(name);
  const italic = [...base].length === 1;
  const root = element('tspan', { class: italic ? 'aw-italic' : null }, base);
  if (subscripts.length === 0) return [root];
  const drop = size * 0.28;
  return [root, element('tspan', { class: 'aw-subscript', dy: drop }, subscripts.join(',')), element('tspan', { dy: -drop }, '\u200A')];
}

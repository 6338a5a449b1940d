// Names: which words are names, and the one spelling under which a name is known (NFC, Greek letters as English names).
import { characterAt, isLetter, isNamePart } from './lexer/characters.ts';

const GREEK: Readonly<Record<string, string>> = {
  α: 'alpha', β: 'beta', γ: 'gamma', δ: 'delta', ε: 'epsilon', ζ: 'zeta', η: 'eta', θ: 'theta', ι: 'iota', κ: 'kappa', λ: 'lambda',
  μ: 'mu', ν: 'nu', ξ: 'xi', ο: 'omicron', π: 'pi', ρ: 'rho', σ: 'sigma', ς: 'sigma', τ: 'tau', υ: 'upsilon', φ: 'phi', χ: 'chi',
  ψ: 'psi', ω: 'omega',
  Α: 'Alpha', Β: 'Beta', Γ: 'Gamma', Δ: 'Delta', Ε: 'Epsilon', Ζ: 'Zeta', Η: 'Eta', Θ: 'Theta', Ι: 'Iota', Κ: 'Kappa', Λ: 'Lambda',
  Μ: 'Mu', Ν: 'Nu', Ξ: 'Xi', Ο: 'Omicron', Π: 'Pi', Ρ: 'Rho', Σ: 'Sigma', Τ: 'Tau', Υ: 'Upsilon', Φ: 'Phi', Χ: 'Chi', Ψ: 'Psi',
  Ω: 'Omega',
  '\u00B5': 'mu', ϑ: 'theta', ϕ: 'phi', ϖ: 'pi', ϰ: 'kappa', ϱ: 'rho', ϵ: 'epsilon', ϴ: 'Theta',
}; // biome-ignore format: an alphabet

/**
 * The one spelling of a name (L12): composed (NFC), and each Greek letter as its English name, since both are typeset
 * alike. `η_n` and `eta_n` are `eta_n`.
 */
export function nameSpelling(written: string): string {
  if (/^[ -~]*$/.test(written)) return written;
  return written.normalize('NFC').replace(/[\u0370-\u03FF\u00B5]/g, (c) => (Object.hasOwn(GREEK, c) ? GREEK[c]! : c));
}

/** Where the word that begins at `at` ends: a letter or `_`, then letters, digits, `_`; `at` itself where no word begins. */
export function wordEnd(text: string, at: number): number {
  let c = characterAt(text, at);
  if (!isLetter(c)) return at;
  let end = at;
  while (c !== '' && isNamePart(c)) {
    end += c.length;
    c = characterAt(text, end);
  }
  return end;
}

/** Whether the whole text has the form of a name (it may still be a reserved word). */
export function isName(text: string): boolean {
  return text !== '' && wordEnd(text, 0) === text.length;
}

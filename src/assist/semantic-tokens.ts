// Colours by meaning: whether a name is an input, computed, a function, a parameter, a local, a column, a table or an instrument.
import type { OpenSheet } from '../run/open-sheet.ts';
import type { Span } from '../text/span.ts';
import type { TextId } from './location.ts';
import { definitionOf, isGiven, type Referent } from './referent.ts';
import { occurrencesIn } from './sheet-occurrences.ts';

/** In the order in which an editor is told of them. The variable of a range is a parameter: it stands for many values. */
export const TOKEN_KINDS = ['input', 'computed', 'function', 'parameter', 'local', 'column', 'table', 'instrument'] as const;
export type TokenKind = (typeof TOKEN_KINDS)[number];

/** `library`: of the library or the mathematics, not of this sheet. */
export const TOKEN_MODIFIERS = ['definition', 'library'] as const;
export type TokenModifier = (typeof TOKEN_MODIFIERS)[number];

export interface SemanticToken {
  readonly at: Span;
  readonly kind: TokenKind;
  readonly modifiers: readonly TokenModifier[];
}

/** The names of a block, or of the prose, in order; no two overlap. */
export function semanticTokens(open: OpenSheet, text: TextId): readonly SemanticToken[] {
  return occurrencesIn(open, text).flatMap(({ at, role, referent }) => {
    const kind = referent && kindOf(referent);
    if (!referent || !kind) return [];
    const modifiers: TokenModifier[] = [];
    if (role === 'definition') modifiers.push('definition');
    if (referent.kind === 'mathematics' || definitionOf(open, referent)?.text.kind === 'library') modifiers.push('library');
    return [{ at, kind, modifiers }];
  });
}

/** Units, `row` and constants keep the colour that their form gives them. */
function kindOf(referent: Referent): TokenKind | null {
  switch (referent.kind) {
    case 'entry':
      return isGiven(referent.item) ? 'input' : 'computed';
    case 'mathematics':
      return referent.name === 'absolute_zero' || referent.name === 'pi' ? null : 'function';
    case 'variable':
      return 'parameter';
    case 'unit':
    case 'row':
      return null;
    default:
      return referent.kind;
  }
}

// The pieces that a hover is made of. Their texts come from the sheet: they are shown as they are, never read as markup.
import type * as ast from '../../language/ast.ts';

/**
 * `code`: a line of the notation. `text`: words. `fact`: words behind what they are about, such as `from` or `used by`. `reference`: where
 * the reference has more; `page` is a sheet of the library, or `mathematics`.
 */
export type HoverPart =
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'fact'; readonly about: string; readonly text: string }
  | { readonly kind: 'reference'; readonly page: string; readonly of: 'function' | 'table'; readonly name: string };

export const code = (text: string): HoverPart => ({ kind: 'code', text });
export const text = (text: string): HoverPart => ({ kind: 'text', text });
export const fact = (about: string, text: string | null | undefined): readonly HoverPart[] => (text ? [{ kind: 'fact', about, text }] : []);

const LONGEST = 400;

/** A line of the notation, cut where it is too long to be read in a hover. */
export function shortened(line: string): string {
  return line.length <= LONGEST ? line : `${line.slice(0, LONGEST)} …`;
}

export function described({ description }: ast.Clauses): readonly HoverPart[] {
  return description ? [text(description.value)] : [];
}

/** `plate "M-12"`. */
export function sourced({ source, because }: ast.Clauses): readonly HoverPart[] {
  return [...fact('from', source && `${source.kind} "${source.text.value}"`), ...fact('because', because?.value)];
}

/** Names that come to many are cut: who reads on looks for the references. */
export function listed(names: readonly string[]): string {
  return names.length <= 8 ? names.join(', ') : `${names.slice(0, 8).join(', ')} and ${names.length - 8} more`;
}

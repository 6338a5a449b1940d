// The faces of the document, by the names that they have in their files. Those of mathematics and of code are built into the typesetter.

export const SANS = 'Noto Sans';
export const ITALICS = 'New Computer Modern';
export const MATHS = 'New Computer Modern Math';
export const MONO = 'DejaVu Sans Mono';

/** Writing that the first face does not have; a face is looked at in this order. */
export const OTHER_WRITING = [
  { family: 'Noto Naskh Arabic', writing: /\p{Script=Arabic}/u },
  { family: 'Noto Sans Hebrew', writing: /\p{Script=Hebrew}/u },
  {
    family: 'Noto Sans S Chinese',
    writing: /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Bopomofo}\u3000-\u303f\uff00-\uffef]/u,
  },
  { family: 'Noto Sans Korean', writing: /\p{Script=Hangul}/u },
] as const;

export type Family = typeof SANS | (typeof OTHER_WRITING)[number]['family'];

/** The faces that a text needs, the first one always. */
export function familiesFor(text: string): readonly Family[] {
  return [SANS, ...OTHER_WRITING.filter(({ writing }) => writing.test(text)).map(({ family }) => family)];
}

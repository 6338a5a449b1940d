// Fields of CSV files as texts that a spreadsheet can't take for formulas, and back.

/** Begins like a formula, also with the full-width signs that some spreadsheets take; a sign alone is none. */
const LIKE_FORMULA = /^'*(?:[=@\t\r\n＝＠]|[-+＋－].)/s;

/** A signed number, perhaps with `±`: it is to stay one for the spreadsheet, and it can't do anything. */
const NUMBER = /^[-+]?\d+(?:[.,]\d+)*(?:e[-+]?\d+)?(?: ?(?:±|\+\/-) ?\d+(?:[.,]\d+)*(?:e[-+]?\d+)? ?%?)?$/i;

/**
 * The text of a field: one that begins like a formula and is no number gets an apostrophe before it, and so does one that begins with
 * apostrophes and goes on like a formula. `fieldText` gives every text back.
 */
export function harmless(text: string): string {
  return LIKE_FORMULA.test(text) && !NUMBER.test(text) ? `'${text}` : text;
}

/** What a field says: the apostrophe before what would be a formula is left out. */
export function fieldText(field: string): string {
  return field.startsWith("'") && LIKE_FORMULA.test(field) ? field.slice(1) : field;
}

/** A text as one field, in quotes where it needs them. */
export function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

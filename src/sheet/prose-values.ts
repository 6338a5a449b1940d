// Values in prose: links to an entry whose text is the entry's value (F8).
import type { Edit } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import type { FileLines } from './file-lines.ts';
import type { Block } from './markdown.ts';

/** A link `[text](#name)` or `[text](#name.column)` in prose that may stand for a value. */
export interface ProseValue {
  /** The name of the entry, as written. */
  readonly name: string;
  /** The column of a chosen row, as in `[40 A](#K.I_AC3)`. */
  readonly column: string | null;
  /** The link's text without its escapes. */
  readonly text: string;
  /** Whether the text has `±`, so that the value is to be written with its uncertainty. */
  readonly withUncertainty: boolean;
  /** Whether a heading of the sheet has this very fragment; if an entry has it as well the link means neither. */
  readonly heading: boolean;
  /** The whole link in the file. */
  readonly at: Span;
  /** The text between the brackets in the file. */
  readonly textAt: Span;
}

/** The links of the blocks that may be values, in order. */
export function readProseValues(_lines: FileLines, _blocks: readonly Block[]): readonly ProseValue[] {
  return [];
}

/** Changes that bring the values' texts up to date; values that say the same already are left alone. */
export function refreshValues(_values: readonly ProseValue[], _valueText: (value: ProseValue) => string | null): readonly Edit[] {
  return [];
}

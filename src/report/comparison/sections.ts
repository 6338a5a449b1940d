// A comparison as sections of rows, the most serious first: what the text, the Markdown and the page show.
import type { Comparison, Lines } from '../../review/comparison.ts';
import { choices, formulas, inputs, lost, results } from './entry-sections.ts';
import { functions, statements, tables } from './other-sections.ts';
import { margins, requirements } from './requirement-sections.ts';
import { errors, mended, prose, signatures, titleBlock } from './sheet-sections.ts';

/** A piece of a cell. `code` is notation, `old` and `new` are what went and what came, `strong` is what to look at. */
export interface Piece {
  readonly kind: 'plain' | 'code' | 'old' | 'new' | 'old code' | 'new code' | 'strong';
  readonly text: string;
}

export type Cell = readonly Piece[];

export interface Row {
  readonly cells: readonly Cell[];
  readonly line: Lines;
}

export interface Section {
  readonly title: string;
  /** One heading a column. */
  readonly heads: readonly string[];
  readonly rows: readonly Row[];
  /** Whether it is shown at once; others are folded where that can be done. */
  readonly open: boolean;
}

/** Makes a section, or null where nothing belongs into it. */
export type MakeSection = (comparison: Comparison) => Section | null;

const SECTIONS: readonly MakeSection[] = [
  errors,
  lost,
  requirements,
  signatures,
  choices,
  inputs,
  formulas,
  functions,
  tables,
  statements,
  results,
  margins,
  titleBlock,
  prose,
  mended,
];

/** The sections that have something to show, worst first. */
export function sectionsOf(comparison: Comparison): readonly Section[] {
  return SECTIONS.flatMap((make) => make(comparison) ?? []);
}

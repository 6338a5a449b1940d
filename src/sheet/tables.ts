// The tables of a sheet: pipe tables under a caption, and captions that link to a CSV file.
import type { Problem } from '../text/problem.ts';
import type { FileLines } from './file-lines.ts';
import type { Block } from './markdown.ts';
import type { Table } from './table.ts';
import type { TableCaption } from './table-caption.ts';

/** Reads every table in the blocks; what is wrong goes to `problems`. */
export function readTables(
  _lines: FileLines,
  _blocks: readonly Block[],
  _problems: Problem[],
): { readonly tables: readonly Table[]; readonly csvTables: readonly TableCaption[] } {
  return { tables: [], csvTables: [] };
}

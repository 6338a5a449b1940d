// The problems of tables, with their words. Places are in the file that holds the table: the sheet, or the CSV file.
import { kind, type Mend, problemMaker, replace } from '../text/problem.ts';
import type { Span } from '../text/span.ts';

/** Where a cell stands, in words: `Row 2 (K5), column I_AC3`. */
export interface CellFacts {
  readonly row: number;
  /** The row's first text, empty where it has none. */
  readonly label: string;
  readonly column: string;
  readonly text: string;
}

const where = (f: CellFacts) => `${rowOf(f)}, column \`${f.column}\``;
const rowOf = (f: { row: number; label: string }) => `Row ${f.row}${f.label === '' ? '' : ` (\`${f.label}\`)`}`;
const write = (at: Span, ...texts: readonly (string | null)[]): Mend[] =>
  texts.flatMap((text) => (text === null ? [] : [replace(`Write \`${text}\``, at, text)]));
const listed = (names: readonly string[]) => names.map((name) => `\`${name}\``).join(' or ');

export const tableProblem = problemMaker({
  // ------------------------------------------------------------------------------------------------------- captions
  'table-name': kind<{ name: string; instead: string | null }>(
    'error',
    (f) =>
      `\`${f.name}\` is no name for a table${f.instead === null ? '' : `; write \`${f.instead}\``}. A name has letters, digits and \`_\` and is no word of the notation`,
    (f, at) => write(at, f.instead),
  ),
  'table-twice': kind<{ name: string }>('error', (f) => `The table \`${f.name}\` stands in this sheet twice; the first one counts`),
  'caption-alone': kind<{ name: string }>(
    'warning',
    (f) => `No table follows this caption of \`${f.name}\`, and it links to no CSV file; it is read as prose`,
  ),
  'caption-source': kind<{ word: string; near: readonly string[]; kinds: readonly string[] }>(
    'error',
    (f) =>
      `\`${f.word}\` is no kind of source; ${f.near.length > 0 ? `did you mean ${listed(f.near)}` : `write one of ${f.kinds.join(', ')}`}`,
    (f, at) => write(at, ...f.near),
  ),
  'caption-quotes': kind<{ kind: string; text: string }>(
    'warning',
    (f) => `The text of a source stands in quotation marks; write \`from ${f.kind} "${f.text}"\``,
    (f, at) => [replace('Put it in quotation marks', at, `"${f.text}"`)],
  ),
  // ---------------------------------------------------------------------------------------------------------- heads
  'column-name': kind<{ name: string; instead: string | null }>(
    'error',
    (f) =>
      f.name === ''
        ? 'This column has no name, so it is left out'
        : `\`${f.name}\` is no name, so this column is left out; a head is a name, \`name / unit\` or \`name / date\`${f.instead === null ? '' : `, such as \`${f.instead}\``}`,
    (f, at) => write(at, f.instead),
  ),
  'column-unit': kind<{ unit: string; near: readonly string[] }>(
    'error',
    (f) =>
      f.unit === ''
        ? 'A unit is missing behind the `/`; numbers without a unit have `1` there'
        : `Unknown unit \`${f.unit}\`${f.near.length > 0 ? `; did you mean ${listed(f.near)}` : ''}. Nothing in this column is read`,
    (f, at) => write(at, ...f.near),
  ),
  'column-of-numbers': kind<{ name: string }>(
    'note',
    (f) =>
      `Every cell of \`${f.name}\` is a number, but its head names no unit, so they are read as texts; write \`${f.name} / A\` or the like, \`${f.name} / 1\` for plain numbers`,
    (f, at) => write(at, `${f.name} / 1`),
  ),
  'column-twice': kind<{ name: string }>('error', (f) => `The column \`${f.name}\` stands here twice; the first one counts`),
  // ---------------------------------------------------------------------------------------------------------- cells
  'cell-number': kind<CellFacts & { because: string; instead: string | null }>(
    'error',
    (f) => `${where(f)}: ${f.because}${f.instead === null ? '' : `; write \`${f.instead}\``}`,
    (f, at) => write(at, f.instead),
  ),
  'cell-date': kind<CellFacts & { because: string; instead: string | null }>(
    'error',
    (f) => `${where(f)}: ${f.because}${f.instead === null ? '' : `; write \`${f.instead}\``}`,
    (f, at) => write(at, f.instead),
  ),
  'row-ragged': kind<{ row: number; label: string; found: number; wanted: number }>(
    'error',
    (f) =>
      `${rowOf(f)} has ${f.found} ${f.found === 1 ? 'cell' : 'cells'} and the head ${f.wanted}, so nothing in this row is read; a \`|\` inside a text is written \`\\|\``,
  ),
  'record-ragged': kind<{ row: number; label: string; found: number; wanted: number }>(
    'error',
    (f) =>
      `${rowOf(f)} has ${f.found} ${f.found === 1 ? 'field' : 'fields'} and the head ${f.wanted}, so nothing in this row is read; a text with a comma stands in quotes`,
  ),
  'cells-more': kind<{ count: number; name: string }>('error', (f) => `${f.count} more cells and rows of \`${f.name}\` could not be read`),
  'table-too-large': kind<{ name: string; limit: string }>(
    'error',
    (f) => `\`${f.name}\` is too large to be read: a table has at most ${f.limit}`,
  ),
  // ------------------------------------------------------------------------------------------------------------ CSV
  'csv-syntax': kind<{ because: string }>('error', (f) => `The file is no valid CSV (RFC 4180): ${f.because}`),
  'csv-separator': kind<{ separator: string }>(
    'error',
    (f) =>
      `The fields of this file are separated by ${f.separator}; a CSV file (RFC 4180) separates them by commas and has the point as decimal sign`,
  ),
  'csv-empty': kind<object>('error', () => 'The file is empty; its first line names the columns'),
});

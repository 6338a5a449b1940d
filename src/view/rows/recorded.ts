// What the file still has recorded for a statement, where this run gives something else.
import { computedColumns } from '../../run/computed-columns.ts';
import { resultRows } from '../../run/record.ts';
import type { CellResult, ColumnResult, StatementResult, TabulationResult } from '../../run/result.ts';
import { type ResultRow, sameResults } from '../../sheet/results-block.ts';
import { readableLine } from '../math/quantity.ts';
import type { RecordedView } from '../model.ts';

/** The recorded results of one cell beside its statements. */
export interface Recorded {
  /** The recorded text of a statement that has one row; null where the file says the same, or nothing. */
  readonly was: (of: StatementResult) => string | null;
  /** The same for each row of a computed column. */
  readonly column: (of: ColumnResult) => readonly (string | null)[];
  /** The same for each line of a tabulation. */
  readonly tabulation: (of: TabulationResult) => readonly (string | null)[];
  /** What is recorded and has no statement any more. */
  readonly gone: readonly RecordedView[];
}

/** `rows`: those of the cell's results block, none where it has none. */
export function recordedOf(cell: CellResult, rows: readonly ResultRow[]): Recorded {
  const find = finder(rows);
  const fresh = rows.length === 0 ? [] : resultRows(cell);
  const names = new Set(fresh.map((row) => row.result.trim()));
  const own = (of: StatementResult) => (rows.length === 0 ? [] : resultRows({ ...cell, statements: [of] }));
  const before = earlierAlike(cell, own);
  const columnWas = columnsOf(cell, find);
  return {
    was: (of) => {
      const [now] = of.kind === 'column' || of.kind === 'tabulation' ? [] : own(of);
      const old = now && find(now.result, before.get(of)!);
      return now && old && !sameResults([now], [old]) ? told(old, now, of) : null;
    },
    column: (of) => (rows.length === 0 ? of.values.map(() => null) : columnWas(of)),
    tabulation: (of) =>
      own(of).map((now) => {
        const old = find(now.result, 0);
        return old && !sameResults([now], [old]) ? readableLine(old.value) : null;
      }),
    gone: rows.filter((row) => !names.has(row.result.trim())).map(goneView),
  };
}

function goneView({ result, value, note }: ResultRow): RecordedView {
  return { result, text: readableLine([value, note].filter((text) => text !== '').join(': ')) };
}

type Find = (result: string, number: number) => ResultRow | undefined;

function finder(rows: readonly ResultRow[]): Find {
  const byName = new Map<string, ResultRow[]>();
  for (const row of rows) {
    const alike = byName.get(row.result.trim());
    if (alike === undefined) byName.set(row.result.trim(), [row]);
    else alike.push(row);
  }
  return (result, number) => byName.get(result.trim())?.[number];
}

/** How many statements above each of those with one row read alike: each has its own recorded row. */
function earlierAlike({ statements }: CellResult, own: (of: StatementResult) => readonly ResultRow[]): Map<StatementResult, number> {
  const counts = new Map<string, number>();
  const before = new Map<StatementResult, number>();
  for (const statement of statements) {
    if (statement.kind === 'column') continue;
    for (const { result } of own(statement)) {
      const count = counts.get(result) ?? 0;
      if (!before.has(statement)) before.set(statement, count);
      counts.set(result, count + 1);
    }
  }
  return before;
}

// A status belongs to what was compared; of anything else the note counts only where the value is the same.
function told(old: ResultRow, now: ResultRow, of: StatementResult): string {
  const whole = of.kind === 'requirement' || old.value === now.value;
  return readableLine([old.value, whole || old.value === '' ? old.note : ''].filter((text) => text !== '').join(': '));
}

// `I_n = 34.40 A, K = K5`: one recorded line for all computed columns of a table. Each of them asks for it, so it is read once.
function columnsOf(cell: CellResult, find: Find): Recorded['column'] {
  const read = new Map<ResultRow, ReadonlyMap<string, string>>();
  const partsOf = (row: ResultRow, table: string) => {
    const parts = read.get(row) ?? columnParts(row.value, new Set(computedColumns(cell, table).map(({ column }) => column)));
    read.set(row, parts);
    return parts;
  };
  return ({ table, column, labels, values }) => {
    const alike = new Map<string, number>();
    return labels.map((label, row) => {
      const before = alike.get(label) ?? 0;
      alike.set(label, before + 1);
      const line = find(`${table}: ${label}`, before);
      const was = line && partsOf(line, table).get(column);
      return was === undefined || was === (values[row]?.text ?? '–') ? null : readableLine(was);
    });
  };
}

/** By column what stands behind `, COLUMN = `, up to the next of the columns. The first of several counts. */
function columnParts(value: string, columns: ReadonlySet<string>): ReadonlyMap<string, string> {
  const line = `, ${value}`;
  const starts = [...line.matchAll(/, (\S+) = /gu)].filter(([, name]) => columns.has(name!));
  const parts = starts.map(({ 0: start, 1: name, index }, i) => [name!, line.slice(index + start.length, starts[i + 1]?.index)] as const);
  return new Map(parts.reverse());
}

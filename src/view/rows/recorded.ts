// What the file still has recorded for a statement, where this run gives something else.
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
  return {
    was: (of) => {
      const [now] = of.kind === 'column' || of.kind === 'tabulation' ? [] : own(of);
      const old = now && find(now.result, countBefore(fresh, now, of, cell));
      return now && old && !sameResults([now], [old]) ? told(old, now, of) : null;
    },
    column: (of) => of.values.map((value, row) => (rows.length === 0 ? null : columnWas(of, row, value?.text ?? '–', cell, find))),
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
  for (const row of rows) byName.set(row.result.trim(), [...(byName.get(row.result.trim()) ?? []), row]);
  return (result, number) => byName.get(result.trim())?.[number];
}

// Of statements that read alike, each has its own recorded row.
function countBefore(fresh: readonly ResultRow[], now: ResultRow, of: StatementResult, cell: CellResult): number {
  if (fresh.filter((row) => row.result === now.result).length < 2) return 0;
  const before = cell.statements.slice(0, cell.statements.indexOf(of));
  return resultRows({ ...cell, statements: before }).filter((row) => row.result === now.result).length;
}

// A status belongs to what was compared; of anything else the note counts only where the value is the same.
function told(old: ResultRow, now: ResultRow, of: StatementResult): string {
  const whole = of.kind === 'requirement' || old.value === now.value;
  return readableLine([old.value, whole || old.value === '' ? old.note : ''].filter((text) => text !== '').join(': '));
}

// `I_n = 34.40 A, K = K5`: one recorded line for all computed columns of a table.
function columnWas({ table, column, labels }: ColumnResult, row: number, now: string, cell: CellResult, find: Find): string | null {
  const label = labels[row]!;
  const old = find(`${table}: ${label}`, labels.slice(0, row).filter((l) => l === label).length)?.value;
  if (old === undefined) return null;
  const others = cell.statements.flatMap((s) => (s.kind === 'column' && s.table === table ? [s.column] : []));
  const starts = others.flatMap((name) =>
    [...`, ${old}`.matchAll(new RegExp(`, ${name} = `, 'gu'))].map((m) => ({ name, at: m.index, end: m.index + m[0].length })),
  );
  const own = starts.find((start) => start.name === column);
  if (!own) return null;
  const next = Math.min(old.length + 2, ...starts.filter((start) => start.at > own.at).map((start) => start.at));
  const was = `, ${old}`.slice(own.end, next);
  return was === now ? null : readableLine(was);
}

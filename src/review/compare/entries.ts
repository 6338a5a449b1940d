// Entries and computed columns that changed: what they are defined as, what they are worth, where they come from.
import { print, printTyped } from '../../language/print.ts';
import type { ColumnResult, EntryResult } from '../../run/result.ts';
import type { EntryChange } from '../comparison.ts';
import { clauseChanges, localsText } from './clauses.ts';
import { columnChange } from './columns.ts';
import { type Renames, sameMeaning } from './meaning.ts';
import { pairByName } from './pairing.ts';
import { changeOf, linesOf, type Pair, type Side, textsOf } from './side.ts';
import { valueChange } from './values.ts';

type Valued = EntryResult | ColumnResult;

/** Entries and computed columns that are not the same on both sides. */
export function compareEntries(pair: Pair): readonly EntryChange[] {
  const pairs = pairByName(valued(pair.old), valued(pair.new), nameOf, columnRenames(pair));
  return pairs.flatMap(([old, now]) => {
    const change = entryChange(pair, old, now);
    return change === null ? [] : [change];
  });
}

function entryChange(pair: Pair, old: Valued | null, now: Valued | null): EntryChange | null {
  const either = (now ?? old)!;
  const own = old !== null && now !== null && sameMeaning(old.statement, now.statement, pair.renames);
  const { value, cells } = valuesOf(pair, old, now);
  const clauses = clauseChanges(old?.statement, now?.statement);
  const oldName = old !== null && now !== null && nameOf(old) !== nameOf(now) ? nameOf(old) : null;
  if (own && value === null && oldName === null && Object.values(clauses).every((one) => one === null)) return null;
  return {
    change: changeOf(old, now),
    line: linesOf(pair, old, now),
    name: nameOf(either),
    oldName,
    role: either.kind === 'column' ? 'column' : either.role,
    written: own ? null : textsOf(old && writtenText(old, pair.old), now && writtenText(now, pair.new)),
    value,
    cells,
    ...clauses,
    knockOn: own && value !== null,
  };
}

function valuesOf(pair: Pair, old: Valued | null, now: Valued | null): Pick<EntryChange, 'value' | 'cells'> {
  const isEntry = (of: Valued | null): of is EntryResult | null => of?.kind !== 'column';
  const isColumn = (of: Valued | null): of is ColumnResult | null => of?.kind !== 'entry';
  if (isEntry(old) && isEntry(now)) return { value: valueChange(old?.value ?? null, now?.value ?? null), cells: [] };
  if (isColumn(old) && isColumn(now)) return columnChange(pair, old, now);
  return { value: null, cells: [] };
}

/** `I_n: A = fla_3ph(P_n, U_n, eta, pf) with a = 2`; a line with an error of form as it stands. */
function writtenText(of: Valued, side: Side): string {
  const { statement } = of;
  if (statement.broken) return side.textOf(of);
  return `${printTyped(nameOf(of), statement.type)} = ${print(statement.value)}${localsText(statement.clauses)}`;
}

function valued({ statements }: Side): readonly Valued[] {
  return statements.filter((of) => of.kind === 'entry' || of.kind === 'column');
}

function nameOf(of: Valued): string {
  return of.kind === 'entry' ? of.name : `${of.table}.${of.column}`;
}

/** The names of computed columns follow their table's. */
function columnRenames({ old, renames }: Pair): Renames {
  const columns = valued(old).flatMap((of): (readonly [string, string])[] => {
    const table = of.kind === 'column' ? renames.get(of.table) : undefined;
    return of.kind === 'column' && table !== undefined ? [[nameOf(of), `${table}.${of.column}`]] : [];
  });
  return columns.length === 0 ? renames : new Map([...renames, ...columns]);
}

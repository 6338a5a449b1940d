// After an edit of one calc cell: only what depends on it is checked, evaluated and shown again; equal to a fresh run.
import type * as ast from '../language/ast.ts';
import { literalDimension } from '../language/checker/statements.ts';
import type { Item } from '../language/program.ts';
import { findSymbol } from '../units/catalogue.ts';
import { itemOf, labelOf, ownedName, parseCell } from './module.ts';
import { forgetReads, type OpenSheet, outsideProblems, reopen } from './open-sheet.ts';
import { recheck, reevaluate } from './reach.ts';

/** Gives a calc cell new code. The numbers of the cells whose result is another one now. */
export function editCell(open: OpenSheet, number: number, code: string): ReadonlySet<number> {
  const cell = open.cells[number]!;
  if (cell.code === code) return new Set();
  const parsed = parseCell(code);
  const before = cell.items;
  const sameNames = definitions(before.map((i) => i.statement)) === definitions(parsed.statements);
  // Circles and double definitions point from one statement to places of others; what is wrong with a `use` was found when it was loaded.
  const misused = before.some(({ statement }) => statement.kind === 'use' && open.loaded.useProblems.get(statement)?.length);
  if (!sameNames || misused || open.circular || open.loaded.problems.size > 0) return reopen(open, number, parsed);
  const { items, changed } = matchItems(open, number, cell.code, code, parsed.statements);
  for (const gone of before) if (!items.includes(gone)) forget(open, gone);
  open.loaded.parsed[number] = parsed;
  open.loaded.cells[number] = items;
  cell.code = code;
  cell.items = items;
  cell.outside = outsideProblems(items, parsed.problems, open.loaded);
  cell.result = null;
  const checked = recheck(open, changed);
  if (checked === 'circle') return reopen(open, number, parsed);
  const touched = reevaluate(open, new Set([...checked, ...items.filter((i) => !cell.runs.has(i))]));
  touched.add(number);
  return touched;
}

/**
 * What a cell defines, as one text: an edit that changes it is a new sheet. A name that is a unit as well counts with its dimension,
 * since it is warned of wherever the unit is joined to another (L4).
 */
function definitions(statements: readonly ast.Statement[]): string {
  return statements
    .flatMap((s) => {
      if (s.kind === 'use') return [`use ${s.path.value} ${s.names?.map((n) => n.name).join() ?? '*'}`];
      if (s.kind === 'column') return [`column ${labelOf(s)}`];
      const name = ownedName(s);
      if (name === null) return [];
      const unit = findSymbol(name.name) === undefined ? '' : (literalDimension(s)?.id ?? '');
      return [`${s.kind === 'function' || s.kind === 'instrument' ? s.kind : 'value'} ${name.name} ${unit}`];
    })
    .join('\n');
}

/** The cell's items after the edit: the same objects where the same thing is defined, with those that are to be checked again. */
function matchItems(open: OpenSheet, number: number, oldCode: string, code: string, statements: readonly ast.Statement[]) {
  const cell = open.cells[number]!;
  const known = new Map<string, Item[]>();
  for (const item of cell.items) known.set(keyOf(item.statement), [...(known.get(keyOf(item.statement)) ?? []), item]);
  const changed: Item[] = [];
  const items = statements.map((statement) => {
    const item = known.get(keyOf(statement))?.shift();
    if (item === undefined) {
      const made = itemOf(open.loaded.module, number, statement);
      changed.push(made);
      return made;
    }
    const text = (s: ast.Statement, of: string) => of.slice(s.at.start, s.at.end);
    const same = text(item.statement, oldCode) === text(statement, code);
    if (!same || item.statement.at.start !== statement.at.start || item.statement.broken !== statement.broken) changed.push(item);
    if (!same) item.made.length = 0;
    item.statement = statement;
    item.label = labelOf(statement);
    return item;
  });
  return { items, changed };
}

function keyOf(statement: ast.Statement): string {
  const name = ownedName(statement);
  return name === null ? `${statement.kind} ${labelOf(statement)}` : `name ${name.name}`;
}

function forget(open: OpenSheet, item: Item): void {
  forgetReads(open, item);
  open.readers.delete(item);
}

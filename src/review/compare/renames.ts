// Names that are only called otherwise: the same formula or the same sourced value under a name that the other sheet does not have.
import type { StatementResult } from '../../run/result.ts';
import type { Table } from '../../sheet/table.ts';
import { type Renames, statementMeaning } from './meaning.ts';
import type { Side } from './side.ts';
import { tableMeaning } from './table-meaning.ts';

/** Something that has a name in the sheet's one namespace. */
interface Definition {
  readonly name: string;
  /** What it means once names are replaced. */
  readonly meaning: (renames: Renames) => string;
  /** Source and description: what else tells it from others that mean the same. */
  readonly mark: string;
  /** Whether it means something only together with its source: the same number may well be two inputs. */
  readonly bare: boolean;
}

/** Each round may find what the names found before made alike; no sheet renames in longer chains. */
const MOST_ROUNDS = 20;

/** New names by old ones. Only what can't be meant otherwise counts: alike definitions pair up where each side has as many. */
export function findRenames(old: Side, now: Side): Renames {
  const [before, after] = [definitions(old), definitions(now)];
  const gone = without(before, after);
  const come = without(after, before);
  const renames = new Map<string, string>();
  for (let round = 0; round < MOST_ROUNDS && gone.length > 0 && come.length > 0; round++) {
    const known = renames.size;
    pairUp(gone, come, renames, (of) => `${of.meaning(renames)} ${of.mark}`);
    pairUp(gone, come, renames, (of) => (of.bare ? null : of.meaning(renames)));
    if (renames.size === known) break;
  }
  return renames;
}

/** Pairs definitions with one key, in the order of the text, and takes them out of both lists. */
function pairUp(gone: Definition[], come: Definition[], renames: Map<string, string>, keyOf: (of: Definition) => string | null): void {
  const [before, after] = [grouped(gone, keyOf), grouped(come, keyOf)];
  const found: (readonly [Definition, Definition])[] = [];
  for (const [key, olds] of before) {
    const news = after.get(key) ?? [];
    if (news.length === olds.length) for (const [i, its] of olds.entries()) found.push([its, news[i]!]);
  }
  for (const [its, other] of found) {
    renames.set(its.name, other.name);
    gone.splice(gone.indexOf(its), 1);
    come.splice(come.indexOf(other), 1);
  }
}

function grouped(all: readonly Definition[], keyOf: (of: Definition) => string | null): ReadonlyMap<string, readonly Definition[]> {
  const groups = new Map<string, Definition[]>();
  for (const one of all) {
    const key = keyOf(one);
    if (key !== null) groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return groups;
}

function without(these: readonly Definition[], others: readonly Definition[]): Definition[] {
  const names = new Set(others.map(({ name }) => name));
  return these.filter(({ name }) => !names.has(name));
}

function definitions({ statements, evaluation }: Side): readonly Definition[] {
  const seen = new Set<string>();
  return [...statements.flatMap(ofStatement), ...evaluation.tables.map(ofTable)].filter(({ name }) => !seen.has(name) && seen.add(name));
}

function ofStatement(of: StatementResult): readonly Definition[] {
  if (of.kind !== 'entry' && of.kind !== 'function' && of.kind !== 'instrument') return [];
  const { statement, name } = of;
  if (statement.broken) return [];
  const { source, description } = statement.clauses;
  const mark = JSON.stringify([source?.kind, source?.text.value, description?.value]);
  const bare = of.kind === 'entry' && of.role === 'input' && (source !== null || description !== null);
  return [{ name, mark, bare, meaning: (renames) => statementMeaning(statement, renames) }];
}

function ofTable(of: Table): Definition {
  return { name: of.name, mark: JSON.stringify([of.caption, of.source?.text]), bare: false, meaning: () => tableMeaning(of) };
}

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
  /** The sheet's names that it mentions. */
  readonly reads: ReadonlySet<string>;
  /** Source and description: what else tells it from others that mean the same. */
  readonly mark: string;
  /** Whether it is only one thing together with its source: the same number may well be two inputs. */
  readonly sourced: boolean;
}

/** New names by old ones. Only what can't be meant otherwise counts: alike definitions pair up where each side has as many. */
export function findRenames(old: Side, now: Side): Renames {
  const [before, after] = [definitions(old), definitions(now)];
  const renames = new Map<string, string>();
  let gone = meanings(without(before, after), renames);
  let come = meanings(without(after, before), renames);
  // What is found makes others alike that mention it, so it goes on until nothing more is found.
  while (gone.size > 0 && come.size > 0) {
    const found = [
      ...pairUp(gone, come, (of, meaning) => `${meaning} ${of.mark}`),
      ...pairUp(gone, come, (of, meaning) => (of.sourced ? null : meaning)),
    ];
    const fresh = new Map(found.map(([its, other]) => [its, other]));
    if (fresh.size === 0) break;
    const names = new Set<string>();
    for (const [its, other] of fresh) {
      renames.set(its.name, other.name);
      names.add(its.name);
    }
    const taken = new Set(fresh.values());
    come = new Map([...come].filter(([one]) => !taken.has(one)));
    const left = [...gone].filter(([one]) => !fresh.has(one));
    gone = new Map(left.map(([one, meaning]) => [one, [...one.reads].some((name) => names.has(name)) ? one.meaning(renames) : meaning]));
  }
  return renames;
}

type Meanings = ReadonlyMap<Definition, string>;

function meanings(of: readonly Definition[], renames: Renames): Meanings {
  return new Map(of.map((one) => [one, one.meaning(renames)]));
}

/** Pairs definitions with one key, in the order of the text. */
function pairUp(
  gone: Meanings,
  come: Meanings,
  keyOf: (of: Definition, meaning: string) => string | null,
): readonly (readonly [Definition, Definition])[] {
  const after = grouped(come, keyOf);
  return [...grouped(gone, keyOf)].flatMap(([key, olds]) => {
    const news = after.get(key) ?? [];
    return news.length === olds.length ? olds.map((its, i) => [its, news[i]!] as const) : [];
  });
}

function grouped(all: Meanings, keyOf: (of: Definition, meaning: string) => string | null): ReadonlyMap<string, readonly Definition[]> {
  const groups = new Map<string, Definition[]>();
  for (const [one, meaning] of all) {
    const key = keyOf(one, meaning);
    const group = key === null ? undefined : groups.get(key);
    if (group !== undefined) group.push(one);
    else if (key !== null) groups.set(key, [one]);
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
  const sourced = of.kind === 'entry' && of.role === 'input' && (source !== null || description !== null);
  const reads = new Set(of.reads.flatMap((read) => [read, read.split('.')[0]!]));
  return [{ name, mark, sourced, reads, meaning: (renames) => statementMeaning(statement, renames) }];
}

function ofTable(of: Table): Definition {
  return {
    name: of.name,
    mark: JSON.stringify([of.caption, of.source?.text]),
    sourced: false,
    reads: new Set(),
    meaning: () => tableMeaning(of),
  };
}

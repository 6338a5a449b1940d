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
  const renames = new Map<string, string>();
  const [before, after] = [definitions(old), definitions(now)];
  const [gone, come] = [without(before, after), without(after, before)];
  // The same with its source and description is surer than the same alone.
  const likenesses = [
    likeness(gone, come, (of, meaning) => `${meaning} ${of.mark}`),
    likeness(gone, come, (of, meaning) => (of.sourced ? null : meaning)),
  ];
  const place = (of: Definition) => {
    const meaning = of.meaning(renames);
    for (const its of likenesses) its.place(of, meaning);
  };
  for (const one of [...gone, ...come]) place(one);

  const readers = readersOf(gone);
  const missing = new Map(gone.map((one) => [one, [...one.reads].filter((name) => readers.has(name)).length]));
  /** They mention a name that has another now, and others that may still get one. */
  const partly = new Set<Definition>();
  for (let found = next(likenesses); found.length > 0 || partly.size > 0; found = next(likenesses)) {
    for (const [its, other] of found) {
      renames.set(its.name, other.name);
      missing.delete(its);
      partly.delete(its);
      for (const one of likenesses) one.drop(its, other);
    }
    // What is found makes others alike that mention it: looked at again once all that they mention is known, or nothing more is found.
    for (const [{ name }] of found) {
      for (const reader of readers.get(name)!) {
        const more = missing.get(reader);
        if (more === undefined) continue;
        missing.set(reader, more - 1);
        partly.add(reader);
        if (more > 1) continue;
        partly.delete(reader);
        place(reader);
      }
    }
    if (found.length > 0) continue;
    for (const one of partly) place(one);
    partly.clear();
  }
  return renames;
}

type Found = readonly (readonly [its: Definition, other: Definition])[];

/** What pairs up by the surest likeness that finds anything. */
function next(likenesses: readonly Likeness[]): Found {
  for (const one of likenesses) {
    const found = one.find();
    if (found.length > 0) return found;
  }
  return [];
}

/** By name, who mentions it. */
function readersOf(gone: readonly Definition[]): ReadonlyMap<string, readonly Definition[]> {
  const readers = new Map<string, Definition[]>(gone.map(({ name }) => [name, []]));
  for (const one of gone) for (const name of one.reads) readers.get(name)?.push(one);
  return readers;
}

/** Definitions in groups that have one key. */
interface Likeness {
  /** Puts a definition where its meaning belongs now. */
  readonly place: (of: Definition, meaning: string) => void;
  readonly drop: (its: Definition, other: Definition) => void;
  /** Pairs, in the order of the text, in the groups that changed since the last time and have as many on each side. */
  readonly find: () => Found;
}

type Group = readonly [gone: Set<Definition>, come: Set<Definition>];

function likeness(
  gone: readonly Definition[],
  come: readonly Definition[],
  keyOf: (of: Definition, meaning: string) => string | null,
): Likeness {
  const order = new Map([...gone, ...come].map((one, i) => [one, i]));
  const inOrder = (of: Set<Definition>) => [...of].sort((a, b) => order.get(a)! - order.get(b)!);
  const side = (of: Definition) => (order.get(of)! < gone.length ? 0 : 1);
  const groups = new Map<string, Group>();
  const places = new Map<Definition, Group>();
  const changed = new Set<Group>();
  const leave = (of: Definition) => {
    const group = places.get(of);
    if (group === undefined) return;
    group[side(of)].delete(of);
    places.delete(of);
    changed.add(group);
  };
  return {
    place(of, meaning) {
      leave(of);
      const key = keyOf(of, meaning);
      if (key === null) return;
      const group = groups.get(key) ?? [new Set(), new Set()];
      group[side(of)].add(of);
      groups.set(key, group);
      places.set(of, group);
      changed.add(group);
    },
    drop(its, other) {
      leave(its);
      leave(other);
    },
    find() {
      const even = [...changed].filter(([olds, news]) => olds.size === news.size);
      changed.clear();
      return even.flatMap(([olds, news]) => {
        const others = inOrder(news);
        return inOrder(olds).map((its, i) => [its, others[i]!] as const);
      });
    },
  };
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

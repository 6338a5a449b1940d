// Names where a value is wanted: of the statement, of the rows in sight, entries with their values, functions with their forms, tables.
import { formOf } from '../../language/form.ts';
import { BUILTINS, MATHEMATICS } from '../../language/functions/index.ts';
import { print, printTyped } from '../../language/print.ts';
import type { Definition, Item } from '../../language/program.ts';
import { resultOf } from '../../run/evaluate.ts';
import { library } from '../../run/library.ts';
import type { EntryResult } from '../../run/result.ts';
import { answerText } from '../answer-text.ts';
import { columnHead } from '../column-head.ts';
import { describeReferent } from '../describe-function.ts';
import { ofItem } from '../dimension-of.ts';
import { functionParts } from '../hover/function.ts';
import { described, sourced } from '../hover/part.ts';
import { definedAs, type Referent } from '../referent.ts';
import { type Scope, scopesFrom } from '../scope.ts';
import { type Offer, offer } from './item.ts';
import type { Site } from './site.ts';
import { wantedDimension } from './wanted.ts';

export function valueOffers(site: Site): readonly Offer[] {
  const place = site.places.find((p) => p.kind === 'value');
  if (place?.kind !== 'value') return [];
  const inside = offersInScope(place.scope);
  const hidden = new Set(inside.map(({ label }) => label));
  return [...inside, ...offersOfSheet(site).filter(({ label }) => !hidden.has(label))];
}

/** Parameters, locals and variables, and the columns of rows. */
function offersInScope(scope: Scope): readonly Offer[] {
  return [...scopesFrom(scope)].flatMap((at): readonly Offer[] => {
    if (at.kind === 'row') {
      const { table } = at;
      return [...(table?.columns.values() ?? [])].map((column) => offer('column', column.name, { detail: columnHead(column), rank: 0 }));
    }
    return [...at.names.values()].map(({ kind, name, type, value }) => {
      const detail = value ? `${printTyped(name.name, type)} = ${print(value)}` : printTyped(name.name, type);
      return offer(kind === 'local' ? 'local' : 'parameter', name.name, { detail, rank: 0 });
    });
  });
}

function offersOfSheet(site: Site): readonly Offer[] {
  const { n } = site;
  const own = [...n.module.names].filter(([, defined]) => !isItself(site, defined));
  const used = [...n.module.used];
  const known = new Set([...own, ...used].map(([name]) => name));
  const others = [...library().names].filter(([name]) => !known.has(name));
  const { entries } = resultOf(n.open);
  const fits = entryRank(site);
  const near = ([name, defined]: readonly [string, Definition]) => offerOf(site, name, defined, fits, entries);
  return [
    ...own.flatMap(near),
    ...used.flatMap(near),
    ...BUILTINS.map(({ name }) => functionOffer(site, { kind: 'mathematics', name }, 3)),
    offer('entry', 'pi', { detail: 'number', rank: 3 }),
    offer('entry', 'absolute_zero', { detail: '−273.15 °C', rank: 3 }),
    ...others.flatMap(([name, defined]) => offerOf(site, name, defined, () => 4, entries)),
  ];
}

/** An entry is not used in its own definition; the variable of its root may have its name. */
function isItself({ item, n }: Site, defined: Definition): boolean {
  return defined.kind === 'item' && item?.statement.kind === 'entry' && n.module.names.get(item.statement.name.name) === defined;
}

/** Entries of the dimension that is wanted come first. */
function entryRank(site: Site): (item: Item) => number {
  const wanted = wantedDimension(site);
  return (item) => (wanted !== null && ofItem(item)?.si === wanted.si ? 0.5 : 1);
}

type Entries = ReturnType<typeof resultOf>['entries'];

function offerOf(site: Site, name: string, defined: Definition, rank: (item: Item) => number, entries: Entries): readonly Offer[] {
  if (MATHEMATICS.has(name)) return [];
  if (defined.kind === 'table') {
    const { table } = defined;
    const rows = `${table.rowCount} ${table.rowCount === 1 ? 'row' : 'rows'}`;
    return [offer('table', name, { detail: rows, rank: table.module.kind === 'library' ? 4 : 2 })];
  }
  const { item } = defined;
  if (item.statement.kind === 'function') return [functionOffer(site, definedAs(name, defined), rank(item) === 4 ? 4 : 2)];
  return item.statement.kind === 'entry'
    ? [entryOffer(name, item, item.module === site.n.module ? entries.get(name) : undefined, rank(item))]
    : [];
}

function entryOffer(name: string, { statement: { clauses } }: Item, entry: EntryResult | undefined, rank: number): Offer {
  const detail = (entry && answerText(entry)) ?? '';
  return offer('entry', name, { detail, documentation: [...described(clauses), ...sourced(clauses)], rank });
}

/** The cursor comes to stand between the brackets; where they stand already the name alone is written. */
function functionOffer({ code, replaceAt }: Site, referent: Referent, rank: number): Offer {
  const written = referent.kind === 'function' && referent.item.statement.kind === 'function' ? formOf(referent.item.statement) : null;
  const called = code.charAt(replaceAt.end) === '(';
  return offer('function', referent.name, {
    detail: written ?? describeReferent(referent)?.form ?? '',
    documentation: functionParts(referent).slice(1),
    insert: called ? referent.name : `${referent.name}($1)`,
    snippet: !called,
    rank,
  });
}

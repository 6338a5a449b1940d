// Columns: behind a dot, and behind `least`, `greatest` and `the`.
import type { TableModel } from '../../language/program.ts';
import { resultOf } from '../../run/evaluate.ts';
import { library } from '../../run/library.ts';
import { columnHead } from '../column-head.ts';
import { text } from '../hover/part.ts';
import { resolve } from '../referent.ts';
import { type Offer, offer } from './item.ts';
import type { Place, Site } from './site.ts';

export function columnOffers(site: Site): readonly Offer[] {
  const place = site.places.find((p) => p.kind === 'column');
  if (place?.kind !== 'column') return [];
  if (place.table) return ofTable(place.table, valuesOfRow(site, place));
  return place.of === null && !hasTable(site) ? tablesInSight(site).flatMap(withTable) : [];
}

/** Each with its value in the row that was chosen, or with its head. */
function ofTable(table: TableModel, values: ReadonlyMap<string, string>): readonly Offer[] {
  return [...table.columns.values()].map((column) => {
    const computed = column.item ? ', computed' : '';
    return offer('column', column.name, {
      detail: values.get(column.name) ?? columnHead(column),
      documentation: [text(`a column of \`${table.name}\`${computed}: ${columnHead(column)}`)],
      rank: 0,
    });
  });
}

function valuesOfRow({ n }: Site, place: Extract<Place, { kind: 'column' }>): ReadonlyMap<string, string> {
  const row = place.of?.kind === 'name' ? resolve(n, place.scope, place.of.name) : null;
  const cells = row?.kind === 'entry' ? resultOf(n.open).row(row.name) : [];
  return new Map(cells.map(({ column, value }) => [column, value?.short ?? 'not given']));
}

/** Whether `of` stands behind the cursor: then the table was found, or is unknown. */
function hasTable({ code, replaceAt }: Site): boolean {
  return /^[ \t]+of\b/.test(code.slice(replaceAt.end, replaceAt.end + 20));
}

function tablesInSight({ n }: Site): readonly TableModel[] {
  const definitions = [...n.module.names.values(), ...n.module.used.values(), ...library().names.values()];
  return definitions.flatMap((defined) => (defined.kind === 'table' ? [defined.table] : []));
}

/** Before its table is written, a column is offered with it. */
function withTable(table: TableModel): readonly Offer[] {
  return [...table.columns.values()].map((column) =>
    offer('column', `${column.name} of ${table.name}`, {
      detail: columnHead(column),
      insert: `${column.name} of ${table.name} where $0`,
      snippet: true,
      rank: table.module.kind === 'library' ? 4 : 1,
    }),
  );
}

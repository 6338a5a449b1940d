// Where only one kind of name may stand: tables, instruments, entries of a range, names that another sheet defines, files, sources.
import { SOURCE_KINDS } from '../../language/token.ts';
import { resultOf } from '../../run/evaluate.ts';
import { resolvePath } from '../../run/files.ts';
import { library } from '../../run/library.ts';
import { answerText } from '../answer-text.ts';
import { instrumentParts } from '../hover/instrument.ts';
import { type Offer, offer } from './item.ts';
import type { Site } from './site.ts';

export function tableOffers({ n, places }: Site): readonly Offer[] {
  if (!places.some(({ kind }) => kind === 'table')) return [];
  const definitions = new Map([...library().names, ...n.module.used, ...n.module.names]);
  return [...definitions].flatMap(([name, defined]) => {
    if (defined.kind !== 'table') return [];
    const columns = [...defined.table.columns.keys()].join(', ');
    return [offer('table', name, { detail: columns, rank: defined.table.module.kind === 'library' ? 4 : 0 })];
  });
}

export function instrumentOffers({ n, places }: Site): readonly Offer[] {
  if (!places.some(({ kind }) => kind === 'instrument')) return [];
  return [...new Map([...n.module.used, ...n.module.names])].flatMap(([name, defined]) => {
    if (defined.kind !== 'item' || defined.item.statement.kind !== 'instrument') return [];
    const documentation = instrumentParts(n.open, defined.item);
    const detail = documentation[0]?.kind === 'code' ? documentation[0].text.replace(/^instrument \S+ ?/, '') : '';
    return [offer('instrument', name, { detail, documentation: documentation.slice(1), rank: 0 })];
  });
}

/** Entries that a range of operation may replace: those with a quantity. */
export function rangeOffers({ n, places }: Site): readonly Offer[] {
  if (!places.some(({ kind }) => kind === 'range')) return [];
  return [...resultOf(n.open).entries.values()].flatMap((entry) => {
    if (entry.value?.kind !== 'quantity') return [];
    return [offer('entry', entry.name, { detail: answerText(entry) ?? '', rank: entry.role === 'input' ? 0 : 1 })];
  });
}

/** What the sheet behind `use "…" for` defines. */
export function usedNameOffers({ n, places }: Site): readonly Offer[] {
  const place = places.find((p) => p.kind === 'used');
  const path = place?.kind === 'used' ? resolvePath('', place.path) : null;
  const used = n.open.loaded.uses.find((u) => u.path === path);
  return [...(used?.module.names ?? [])].map(([name, defined]) => {
    if (defined.kind === 'table') return offer('table', name, { detail: 'table', rank: 0 });
    const { kind } = defined.item.statement;
    return offer(kind === 'function' || kind === 'instrument' ? kind : 'entry', name, { detail: kind, rank: 0 });
  });
}

export function sourceOffers({ places }: Site): readonly Offer[] {
  if (!places.some(({ kind }) => kind === 'source')) return [];
  return SOURCE_KINDS.map((kind) => offer('source', kind, { detail: 'source', insert: `${kind} "$1"$0`, snippet: true, rank: 0 }));
}

/** The sheets among the files of the workspace. */
export function fileOffers({ places }: Site, files: readonly string[]): readonly Offer[] {
  if (!places.some(({ kind }) => kind === 'path')) return [];
  const sheets = files.filter((path) => path.endsWith('.ampwright.md'));
  return sheets.map((path) => offer('file', path, { detail: 'sheet', rank: 0 }));
}

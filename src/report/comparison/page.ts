// Comparisons as one self-contained HTML page, without network and without script.
import type { ComparedSheet, Comparisons } from '../../review/comparisons.ts';
import { headline, sheetLine } from '../../review/headline.ts';
import { type ElementNode, element, type Tag, toHtml, type ViewNode } from '../../view/node.ts';
import { STYLE } from '../../view/style.ts';
import { htmlDocument } from '../page/document.ts';
import { PAGE_STYLE } from '../page/style.ts';
import { type Cell, type Row, type Section, sectionsOf } from './sections.ts';

const COMPARISON_STYLE = `
.aw-compared del { color: var(--aw-fails); text-decoration: line-through; }
.aw-compared ins { color: var(--aw-holds); text-decoration: underline; text-underline-offset: 2px; }
.aw-compared del + ins { margin-left: .3em; }
.aw-compared .aw-register { width: 100%; }
.aw-compared .aw-register th[scope="row"] { width: 19%; }
.aw-compared summary { cursor: pointer; padding: 6px 0; font-weight: 600; }
.aw-compared td { overflow-wrap: anywhere; }
.aw-compared td[data-name="before"], .aw-compared td[data-name="after"] { min-width: 8.5em; }
.aw-compared .aw-lines { white-space: nowrap; color: var(--aw-quiet); }
@media (max-width: 560px) {
  .aw-compared .aw-register th[scope="row"] { width: auto; font-weight: 600; }
  .aw-compared .aw-register td { min-width: 0; }
  .aw-compared .aw-register td:empty { display: none; }
  .aw-compared .aw-register td::before { content: attr(data-name) ": "; color: var(--aw-quiet); }
}
@media print { .aw-compared details > *:not(summary) { display: block; } }
`;

/** What an editor that shows the page turns into links of its own: places of the page, since a view leads nowhere else. */
export interface Links {
  /** To a line (from 1) of the new sheet at a path. */
  line(path: string, line: number): `#${string}`;
  /** What else can be done with the comparison. */
  readonly actions: readonly { readonly title: string; readonly href: `#${string}` }[];
}

/** The page; the same comparisons give the same bytes. */
export function comparisonsPage(comparisons: Comparisons, links: Links | null = null): string {
  return htmlDocument({
    language: 'en',
    title: `What changed: ${comparisons.old} → ${comparisons.new}`,
    style: `${STYLE}${PAGE_STYLE}${COMPARISON_STYLE}`,
    body: toHtml(element('div', { class: 'aw-page' }, comparisonsView(comparisons, links))),
    version: null,
  });
}

/** What the page shows, as a tree: an editor can show it as well. A row's `data-key` is `sheet:old line:new line`, the sheet counted from 0. */
function comparisonsView({ old, new: now, sheets }: Comparisons, links: Links | null = null): ElementNode {
  const changed = sheets.filter(({ change }) => change !== 'same');
  const same = sheets.length - changed.length;
  return element(
    'main',
    { class: 'aw-compared' },
    element('h1', {}, 'What changed in meaning'),
    element('p', {}, element('code', {}, old), ' → ', element('code', {}, now)),
    links !== null && element('p', {}, ...links.actions.map(({ title, href }) => element('a', { href }, title))),
    changed.length === 0 && element('p', {}, 'Nothing: inputs, formulas, results and words are the same.'),
    sheets.map((sheet, i) => sheet.change !== 'same' && sheetView(sheet, i, links)),
    same > 0 && changed.length > 0 && element('p', {}, `${same} more ${same === 1 ? 'sheet' : 'sheets'} without a change in meaning.`),
  );
}

function sheetView(sheet: ComparedSheet, number: number, links: Links | null): ElementNode {
  const { comparison, path, oldPath } = sheet;
  const title = comparison?.new.title ?? sheet.sheet?.title;
  const heading = element('h2', { id: `sheet-${number}` }, title ? [title, ' ('] : null, element('code', {}, path), title ? ')' : null);
  const words = comparison === null ? sheetLine(sheet) : headline(comparison).join(' · ') || 'Small changes';
  return element(
    'section',
    { 'aria-labelledby': `sheet-${number}` },
    heading,
    oldPath !== null && element('p', {}, 'The file was ', element('code', {}, oldPath), '.'),
    element('p', { class: 'aw-summary' }, element('strong', {}, words)),
    comparison !== null &&
      sectionsOf(comparison).map((section) => sectionView(section, number, links && ((line) => links.line(path, line)))),
  );
}

type LineLink = ((line: number) => string) | null;

function sectionView({ title, heads, rows, open }: Section, number: number, link: LineLink): ElementNode {
  const table = element(
    'div',
    { class: 'aw-scroll', role: 'region', 'aria-label': title, tabindex: 0 },
    element(
      'table',
      { class: 'aw-register' },
      element(
        'thead',
        {},
        element(
          'tr',
          {},
          [...heads, 'line'].map((head) => element('th', { scope: 'col' }, head)),
        ),
      ),
      element(
        'tbody',
        {},
        rows.map((row) => rowView(row, heads, number, link)),
      ),
    ),
  );
  if (!open) return element('details', {}, element('summary', {}, `${title} (${rows.length})`), table);
  return element('section', {}, element('h3', {}, title), table);
}

function rowView({ cells, line }: Row, heads: readonly string[], number: number, link: LineLink): ElementNode {
  const [first = [], ...others] = heads.map((_, i) => cells[i] ?? []);
  const to = line.new !== null && link ? element('a', { href: link(line.new) }, `${line.new}`) : `${line.new}`;
  const lines = line.new === null ? `was ${line.old}` : line.old === null || line.old === line.new ? to : [`${line.old} → `, to];
  return element(
    'tr',
    { 'data-key': `${number}:${line.old ?? ''}:${line.new ?? ''}` },
    element('th', { scope: 'row' }, cellView(first)),
    others.map((cell, i) => element('td', { 'data-name': heads[i + 1]! }, cellView(cell))),
    element('td', { class: 'aw-lines', 'data-name': 'line' }, lines),
  );
}

const TAGS = {
  code: ['code'],
  old: ['del'],
  new: ['ins'],
  'old code': ['del', 'code'],
  'new code': ['ins', 'code'],
  strong: ['strong'],
} as const;

function cellView(cell: Cell): readonly ViewNode[] {
  return cell.map(({ kind, text }) => {
    const tags: readonly Tag[] = kind === 'plain' ? [] : TAGS[kind];
    return tags.reduceRight<ViewNode>((inner, tag) => element(tag, {}, inner), text);
  });
}

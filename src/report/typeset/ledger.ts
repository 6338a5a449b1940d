// The ledger of a block on paper: four ruled columns, the values put in below the formula.
import { type ElementNode, textOf, type ViewNode } from '../../view/node.ts';
import { below, type Code, call, EMPTY, joined, named, quoted } from './code.ts';
import type { Writer } from './writer.ts';

/** Letters of a row that is kept on one page; a longer one may be broken. */
const KEPT = 1500;
const COLUMNS = 4;
/** What a choice took: content of the result on screen, of the formula's column on paper. */
export const CHOICE = 'aw-choice';

/** The table of a ledger. */
export function ledgerTable(node: ElementNode, writer: Writer): Code {
  const heads = find(node, 'th').filter((th) => th.attributes.scope === 'col').map((th) => textOf(th)); // biome-ignore format: one step
  const [quantity = '', formula = '', putIn = '', ...others] = heads;
  const rows = find(node, 'tbody').flatMap((tbody) => tbody.children.filter(isElement));
  const head = [quantity, `${formula}, ${putIn[0]?.toLowerCase() ?? ''}${putIn.slice(1)}`, ...others];
  const codes = rows.flatMap((row, i) => (isWide(row) ? wideRow(row, rows[i - 1], writer) : rowOf(row, rows[i + 1], writer)));
  return call('ledger', call('table.header', ...head.map(quoted)), ...codes);
}

function isWide(row: ElementNode): boolean {
  return hasClass(row, 'aw-wide');
}

/** Whether `next` tells the problems of `row`, and both have room on one page: then no page ends between them. */
function isToldBelow(row: ElementNode | undefined, next: ElementNode | undefined): boolean {
  return !!row && !!next && !isWide(row) && hasClass(next, 'aw-problemrow') && textOf(row).length + textOf(next).length <= KEPT;
}

/** A row over all columns: a drawing, a table, problems; problems that stay with their row stand beside its first cell. */
function wideRow(row: ElementNode, before: ElementNode | undefined, writer: Writer): readonly Code[] {
  const beside = isToldBelow(before, row);
  const rule = hasClass(row, 'aw-problemrow') ? 'stroke: (top: none)' : null;
  const fill = beside && before && statusOf(before) ? 'fill: tint-colour' : null;
  const span = named('colspan', String(beside ? COLUMNS - 1 : COLUMNS));
  const kept = hasTable(row) || textOf(row).length > KEPT ? null : WHOLE;
  return [call('table.cell', span, rule, fill, kept, writer.content(row.children.filter(isElement)[0]?.children ?? []))];
}

const WHOLE = 'breakable: false';

function statusOf(row: ElementNode): string | undefined {
  return /aw-is-(\S+)/.exec(row.attributes.class ?? '')?.[1];
}

function rowOf(row: ElementNode, next: ElementNode | undefined, writer: Writer): readonly Code[] {
  const cells = row.children.filter(isElement);
  const kept = textOf(row).length > KEPT ? null : WHOLE;
  const span = isToldBelow(row, next) ? 'rowspan: 2' : null;
  const place = row.attributes.id ? writer.place(row.attributes.id) : EMPTY;
  const of = (name: string) => cells.find((cell) => hasClass(cell, `aw-${name}`));
  const content = (name: string) => writer.content(of(name)?.children ?? []);
  const putIn = of('putin');
  const formulas = below([
    content('formula'),
    putIn ? call('put-in', writer.content(putIn.children)) : EMPTY,
    chosen(of('result'), writer),
    eachRow(of('result'), writer),
  ]);
  const status = statusOf(row);
  const codes = [joined([place, content('quantity')]), formulas, content('result'), content('source')];
  return codes.map((code, i) =>
    call(
      status ? 'decision' : 'table.cell',
      status && i === 0 ? `bar-${status}` : status ? 'none' : null,
      i === 0 ? span : null,
      kept,
      code,
    ),
  );
}

/** What a choice took and what ruled out the rest stands below the formula, where there is room: a table may have many columns. */
function chosen(result: ElementNode | undefined, writer: Writer): Code {
  const found = result?.children.filter(isElement).find((child) => hasClass(child, CHOICE));
  return found ? call('put-in', writer.content(found.children)) : EMPTY;
}

/** The decision on each row of a table unfolds on screen below the result; paper has room for it beside. */
function eachRow(result: ElementNode | undefined, writer: Writer): Code {
  const tables = result ? find(result, 'table').filter((one) => one.attributes.class?.includes('aw-eachrow')) : [];
  return tables.length === 0 ? EMPTY : writer.content(tables);
}

function hasClass(node: ElementNode, name: string): boolean {
  return (node.attributes.class ?? '').split(' ').includes(name);
}

function hasTable(row: ElementNode): boolean {
  return find(row, 'table').length > 0;
}

/** All elements of a tag inside, those inside tables in it left out. */
function find(node: ElementNode, tag: string): readonly ElementNode[] {
  return node.children.filter(isElement).flatMap((child) => (child.tag === tag ? [child] : child.tag === 'table' ? [] : find(child, tag)));
}

function isElement(node: ViewNode): node is ElementNode {
  return typeof node === 'object';
}

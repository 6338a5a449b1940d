// The ledger of a block on paper: four ruled columns, the values put in below the formula.
import { type ElementNode, textOf, type ViewNode } from '../../view/node.ts';
import { below, type Code, call, EMPTY, joined, named, quoted } from './code.ts';
import type { Writer } from './writer.ts';

/** Letters of a row that is kept on one page; a longer one may be broken. */
const KEPT = 1500;
const COLUMNS = 4;

/** The table of a ledger. */
export function ledgerTable(node: ElementNode, writer: Writer): Code {
  const heads = find(node, 'th').filter((th) => th.attributes.scope === 'col').map((th) => textOf(th)); // biome-ignore format: one step
  const [quantity = '', formula = '', putIn = '', ...others] = heads;
  const rows = find(node, 'tbody').flatMap((tbody) => tbody.children.filter(isElement)).map((row) => rowOf(row, writer)); // biome-ignore format: one step
  const head = [quantity, `${formula}, ${putIn[0]?.toLowerCase() ?? ''}${putIn.slice(1)}`, ...others];
  return call('ledger', call('table.header', ...head.map(quoted)), ...rows.flat());
}

function rowOf(row: ElementNode, writer: Writer): readonly Code[] {
  const classes = row.attributes.class ?? '';
  const cells = row.children.filter(isElement);
  const kept = textOf(row).length > KEPT ? null : 'breakable: false';
  if (classes.includes('aw-wide')) {
    const rule = classes.includes('aw-problemrow') ? 'stroke: (top: none)' : null;
    return [
      call('table.cell', named('colspan', String(COLUMNS)), rule, hasTable(row) ? null : kept, writer.content(cells[0]?.children ?? [])),
    ];
  }
  const place = row.attributes.id ? writer.place(row.attributes.id) : EMPTY;
  const of = (name: string) => cells.find((c) => c.attributes.class?.split(' ').includes(`aw-${name}`));
  const content = (name: string) => writer.content(of(name)?.children ?? []);
  const putIn = of('putin');
  const formulas = below([
    content('formula'),
    putIn ? call('put-in', writer.content(putIn.children)) : EMPTY,
    eachRow(of('result'), writer),
  ]);
  const status = /aw-is-(\S+)/.exec(classes)?.[1];
  const codes = [joined([place, content('quantity')]), formulas, content('result'), content('source')];
  return codes.map((code, i) =>
    call(status ? 'decision' : 'table.cell', status && i === 0 ? `bar-${status}` : status ? 'none' : null, kept, code),
  );
}

/** The decision on each row of a table unfolds on screen below the result; paper has room for it beside. */
function eachRow(result: ElementNode | undefined, writer: Writer): Code {
  const tables = result ? find(result, 'table').filter((one) => one.attributes.class?.includes('aw-eachrow')) : [];
  return tables.length === 0 ? EMPTY : writer.content(tables);
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

// Parts that several kinds of row share: formulas, values, links, problems.

import { problemMark } from '../mark.ts';
import { widthOf } from '../math/width.ts';
import type { FormulaParts, FormulaView, LabelView, LinkView, ProblemView, RowView, SourceView, ValueView } from '../model.ts';
import { type Child, type ElementNode, element, textOf, type ViewNode } from '../node.ts';

/** How many columns the ledger has: quantity, formula, values put in, result, source. */
export const COLUMNS = 5;

// Letters: a part with more is set smaller; one with yet more needs two columns, and can be scrolled where there is but one.
const LONG = 25;
const LONGEST = 31;

/** A formula in so many columns; its line may break between the parts. */
export function formula(parts: FormulaParts, columns = 1): ElementNode {
  const widest = widestOf(parts);
  const lines = parts.some((part) => typeof part !== 'string' && part.tag === 'br') ? ' aw-lines' : '';
  const size = widest > LONGEST * columns ? ' aw-longest' : widest > LONG * columns ? ' aw-long' : '';
  const scroll = widest > LONGEST ? { tabindex: 0, role: 'group', 'aria-label': 'formula' } : {};
  const inner = parts.flatMap((part, i) => (i === 0 ? [part] : [element('wbr', {}), part]));
  return element('div', { class: `aw-math${size}${lines}${widest > LONGEST ? ' aw-scrolls' : ''}`, ...scroll }, ...inner);
}

function widestOf(parts: FormulaParts): number {
  return Math.max(0, ...parts.map(widthOf));
}

/** The cells of a formula and of the values put in: side by side, or one below the other where a part of them is too long for one column. */
export function formulaCells(view: FormulaView, name: string): ElementNode[] {
  if (view.putIn === null) return [cell('formula', name, formulaCell(view, 2), 2)];
  const parts = [view.parts, view.putIn, ...view.where.flatMap((local) => [local.parts, local.putIn ?? []])];
  if (Math.max(...parts.map(widestOf)) <= LONGEST)
    return [cell('formula', name, formulaCell(view)), cell('putin', 'Values put in', putInCell(view))];
  const below = element('div', { class: 'aw-putin-below' }, element('span', { class: 'aw-label' }, 'Values put in'), ...putInCell(view, 2));
  return [cell('formula', name, [...formulaCell(view, 2), below], 2)];
}

/** The formula's column: the formula, the call that it stands for, and local definitions. */
export function formulaCell(view: FormulaView, columns = 1): Child[] {
  return [
    formula(view.parts, columns),
    view.call && element('div', { class: 'aw-call' }, formula(view.call, columns)),
    view.where.length > 0 &&
      element(
        'div',
        { class: 'aw-where' },
        element('span', { class: 'aw-label' }, 'with '),
        ...view.where.map((local) => equation(local.symbol, local.parts)),
      ),
  ];
}

/** The column of the values put in. */
function putInCell(view: FormulaView, columns = 1): Child[] {
  return [
    view.putIn && formula(view.putIn, columns),
    view.where.some((local) => local.putIn) &&
      element('div', { class: 'aw-where' }, ...view.where.flatMap((local) => (local.putIn ? [equation(local.symbol, local.putIn)] : []))),
  ];
}

function equation(symbol: ViewNode, parts: FormulaParts): ElementNode {
  return formula([element('math', { displaystyle: 'true' }, symbol, element('mo', { form: 'infix' }, '=')), ...parts]);
}

/** A value with what stands behind its ±. */
export function value(view: ValueView): Child[] {
  return [
    element('span', { class: 'aw-value' }, view.text),
    view.plusMinus && [' ', element('span', { class: 'aw-plusminus' }, view.plusMinus)],
    view.coverage && [' ', element('span', { class: 'aw-coverage' }, `(${view.coverage})`.replaceAll(' ', '\u00A0'))],
  ];
}

/** A result beside what the file has recorded, where that is something else; `now` alone where it is not. */
export function besideRecorded(was: string | null, now: readonly Child[]): Child[] {
  if (was === null) return [...now];
  return [
    element('div', { class: 'aw-was' }, element('span', { class: 'aw-label' }, 'Recorded'), ' ', element('span', { class: 'aw-old' }, was)),
    element('div', { class: 'aw-label' }, 'Now'),
    ...now,
  ];
}

/** In place of a result. */
export const MISSING = element('span', { class: 'aw-missing' }, 'not calculated');

/** A symbol that leads to where its name is defined. */
export function link(name: string, symbol: ViewNode): ElementNode {
  return element('a', { class: 'aw-symbol', href: `#${anchor(name)}`, 'data-name': name, 'aria-label': textOf(symbol) }, inMath(symbol));
}

function inMath(symbol: ViewNode): ViewNode {
  return element('math', {}, symbol);
}

/** The place of a name's row on a page; the row of a choice for its columns. */
export function anchor(name: string): string {
  return `entry-${name}`;
}

/** What something is called by: a link where its row is, its symbol or words where there is none. */
export function label({ text, before, symbol, target }: LabelView): Child {
  if (symbol === null) return text;
  return [
    before,
    before === '' ? null : element('wbr', {}),
    target === null ? element('span', { role: 'math', 'aria-label': textOf(symbol) }, inMath(symbol)) : link(target, symbol),
  ];
}

/** A list of names with their values under a heading; nothing where there are none. */
export function links(heading: string, of: readonly LinkView[]): Child {
  if (of.length === 0) return null;
  const items = of.map((l) =>
    element(
      'li',
      { class: l.symbol === null ? 'aw-statement' : null },
      label(l),
      l.value && element('span', { class: 'aw-figure' }, ` ${l.value}`),
    ),
  );
  return element(
    'div',
    { class: 'aw-list' },
    heading !== '' && element('div', { class: 'aw-label' }, heading),
    element('ul', {}, ...items),
  );
}

/** What unfolds: one line and what belongs to it below, then the rest. Without a rest there is nothing to unfold. */
export function unfolding(key: string, line: readonly Child[], remark: Child, rest: readonly Child[]): Child {
  const summary = [
    element('span', { class: 'aw-line' }, ...line),
    typeof remark === 'string' ? element('div', { class: 'aw-remark' }, remark) : remark,
  ];
  if (rest.every((child) => child === null || child === false)) return element('div', { class: 'aw-plain' }, ...summary);
  return element(
    'details',
    { class: 'aw-details', 'data-key': key },
    element('summary', {}, ...summary),
    element('div', { class: 'aw-inside' }, ...rest),
  );
}

/** The source's column: kind and text, or what else tells where a row comes from. */
export function sourceCell(source: SourceView | null, because: string | null): Child[] {
  return [
    source &&
      element(
        'div',
        {},
        element('span', { class: 'aw-kind' }, source.kind),
        ' ',
        element('span', { class: 'aw-quote' }, ...unbroken(source.text)),
      ),
    because && element('div', { class: 'aw-because' }, ...unbroken(because)),
  ];
}

/** Words whose dates and numbers with hyphens (`IEC 60034-1`) stay on one line. */
export function unbroken(text: string): Child[] {
  return text
    .split(/(?<!\S)(\S*\d-\d\S*)/)
    .map((piece, i) => (i % 2 === 1 && piece.length < 30 ? element('span', { class: 'aw-nowrap' }, piece) : piece));
}

/** The row's head: what it is, and its description. */
export function head(what: Child, row: RowView): ElementNode {
  return element(
    'th',
    { scope: 'row', role: 'rowheader', class: 'aw-quantity' },
    what,
    row.description && element('div', { class: 'aw-description' }, row.description),
  );
}

export function cell(name: string, label: string | null, children: readonly Child[], span = 1): ElementNode {
  const empty = children.every((child) => child === null || child === false || (Array.isArray(child) && child.length === 0));
  const words = label !== null && !empty && element('span', { class: 'aw-celllabel', 'aria-hidden': 'true' }, label);
  return element(
    'td',
    { role: 'cell', class: `aw-${name}${empty ? ' aw-empty' : ''}`, colspan: span > 1 ? span : null },
    words,
    ...children,
  );
}

/** A row over all columns; `key` is that of the statement it shows, null where it belongs to the row above. */
export function wide(name: string, key: string | null, ...children: readonly Child[]): ElementNode {
  return element(
    'tr',
    { role: 'row', class: `aw-wide aw-${name}`, 'data-key': key },
    element('td', { role: 'cell', colspan: COLUMNS }, ...children),
  );
}

/** Problems, each with its mark, its message and what would mend it. */
export function problems(of: readonly ProblemView[]): Child {
  if (of.length === 0) return null;
  return element('div', { class: 'aw-problems' }, ...of.map(problem));
}

function problem(of: ProblemView): ElementNode {
  const mends = of.mends.map((mend) => element('li', {}, ...quoted(mend)));
  return element(
    'div',
    { class: `aw-problem aw-${of.severity}` },
    problemMark(of.severity),
    element(
      'div',
      {},
      element('span', { class: 'aw-severity' }, `${of.severity[0]!.toUpperCase()}${of.severity.slice(1)}, line ${of.line}`),
      element('div', { class: 'aw-message' }, ...quoted(of.message)),
      mends.length > 0 && element('ul', { class: 'aw-mends', 'aria-label': 'Ways to mend it' }, ...mends),
    ),
  );
}

/** A message with what stands between backquotes as code. */
function quoted(message: string): Child[] {
  return message.split('`').map((piece, i) => (i % 2 === 1 ? element('code', {}, piece) : piece));
}

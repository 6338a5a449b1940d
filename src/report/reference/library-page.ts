// The page of one library sheet: its prose, its functions and tables where they stand, and its checks with their results.
import type { FunctionDefinition } from '../../language/ast.ts';
import type { LibrarySheet } from '../../library/index.ts';
import { evaluateSheet, type SheetEvaluation } from '../../run/evaluate.ts';
import type { CellResult, FunctionResult } from '../../run/result.ts';
import type { ProseCell } from '../../sheet/sheet.ts';
import { ledger } from '../../view/ledger.ts';
import { SYMBOLS } from '../../view/math/scope.ts';
import type { CellView } from '../../view/model.ts';
import { escapeText, toHtml } from '../../view/node.ts';
import { functionsOf, toView } from '../../view/to-view.ts';
import { type ProseRenderer, proseRenderer } from '../prose.ts';
import { checksTable } from './checks.ts';
import { dataTable } from './data-table.ts';
import type { ReferencePage } from './frame.ts';
import { libraryFunction } from './library-function.ts';
import { functionPlace, linkNames, type Places, tablePlace } from './places.ts';

/** A library sheet, evaluated, with the page that it becomes. */
export interface EvaluatedLibrarySheet {
  readonly file: string;
  readonly title: string;
  readonly evaluation: SheetEvaluation;
  readonly functions: readonly FunctionDefinition[];
}

const EXAMPLE = 'example_';

export function evaluatedLibrarySheet({ name, text }: LibrarySheet): EvaluatedLibrarySheet {
  const evaluation = evaluateSheet(text);
  const statements = evaluation.result.cells.flatMap((cell) => cell.statements);
  const functions = statements.filter((s): s is FunctionResult => s.kind === 'function').map((s) => s.statement);
  return { file: `${name}.html`, title: evaluation.sheet.frontMatter.title ?? name, evaluation, functions };
}

/** The names that the page explains, each with its place. */
export function placesOnPage({ functions, evaluation }: EvaluatedLibrarySheet): ReadonlyMap<string, string> {
  return new Map([
    ...functions.map((f) => [f.name.name, functionPlace(f.name.name)] as const),
    ...evaluation.tables.map((t) => [t.name, tablePlace(t.name)] as const),
  ]);
}

export function libraryPage(of: EvaluatedLibrarySheet, places: Places): ReferencePage {
  const { file, title, evaluation } = of;
  const { sheet, result } = evaluation;
  const views = new Map(toView(result).cells.map((cell) => [cell.cell, cell]));
  const prose = proseRenderer({ entry: () => null }, title);
  let level = 2;
  const body = sheet.cells.map((cell) => {
    if (cell.kind === 'front matter') return '';
    if (cell.kind === 'calc') return block(result.cells[cell.number]!, views.get(cell.number)!, level);
    const html = proseAndTables(cell, evaluation, { render: (text) => linkNames(prose.render(text), file, places) });
    level = levelBelow(html) ?? level;
    return html;
  });
  return { file, title, part: 'library', body: body.filter((part) => part !== '').join('\n') };

  function block(cell: CellResult, view: CellView, under: number): string {
    const context = { formula: { values: SYMBOLS, functions: functionsOf(result) }, level: under, file, places };
    const functions = cell.statements.flatMap((s) =>
      s.kind === 'function' ? [libraryFunction(s.statement, { ...context, example: result.entries.get(EXAMPLE + s.name) })] : [],
    );
    return [...functions, ...otherRows(view)].join('\n');
  }
}

/** What a block has beside functions and their examples: values that the functions use, then requirements that check them. */
function otherRows(view: CellView): readonly string[] {
  const rows = view.rows.filter((row) => row.kind !== 'function' && !(row.kind === 'entry' && row.name.startsWith(EXAMPLE)));
  const checks = rows.filter((row) => row.kind === 'requirement');
  const values = rows.filter((row) => row.kind !== 'requirement').map((row) => ({ ...row, reads: [], usedBy: [] }));
  return [
    ...(values.length > 0 ? [toHtml(ledger({ ...view, rows: values }))] : []),
    ...(checks.length > 0 ? [toHtml(checksTable(checks))] : []),
  ];
}

/** A prose cell; its tables are made from what was read, with the column heads and the source in view. */
function proseAndTables(cell: ProseCell, { sheet, tables }: SheetEvaluation, prose: Pick<ProseRenderer, 'render'>): string {
  const own = tables.filter((t) => t.at.start >= cell.at.start && t.at.end <= cell.at.end);
  const out: string[] = [];
  let from = cell.at.start;
  for (const table of own) {
    out.push(prose.render(sheet.text.slice(from, table.at.start)), dataTable(table));
    from = table.at.end;
  }
  out.push(prose.render(sheet.text.slice(from, cell.at.end)));
  return out.join('\n');
}

/** The level for headings under the last heading of a piece of the page; null where it has none. */
function levelBelow(html: string): number | null {
  const levels = [...html.matchAll(/<h([2-5])[ >]/g)].map((m) => Number(m[1]));
  return levels.length === 0 ? null : levels.at(-1)! + 1;
}

/** Functions of a page as a list with what each gives. */
export function functionIndex({ file, functions }: EvaluatedLibrarySheet): string {
  const items = functions.map(({ name, clauses }) => {
    const link = `<a href="${file}#${functionPlace(name.name)}"><code>${escapeText(name.name)}</code></a>`;
    return `<div><dt>${link}</dt><dd>${escapeText(clauses.description?.value ?? '')}</dd></div>`;
  });
  return `<dl class="aw-list-of-functions">${items.join('\n')}</dl>`;
}

// The outline: every statement of a block, and the tables of the prose with their columns.
import { formOf } from '../language/form.ts';
import { printTrace } from '../language/print.ts';
import { resultOf } from '../run/evaluate.ts';
import { labelOf } from '../run/module.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import type { StatementResult } from '../run/result.ts';
import type { Table } from '../sheet/table.ts';
import { type Span, span } from '../text/span.ts';
import { answerText } from './answer-text.ts';
import type { TextId } from './location.ts';
import { headName } from './referent.ts';

export type SymbolKind = 'input' | 'computed' | 'table' | 'column' | Exclude<StatementResult['kind'], 'entry' | 'unreadable'>;

/** `at` is the whole statement or table, `nameAt` a part of it; `detail` may be empty. */
export interface OutlineSymbol {
  readonly kind: SymbolKind;
  readonly name: string;
  readonly detail: string;
  readonly at: Span;
  readonly nameAt: Span;
  readonly children: readonly OutlineSymbol[];
}

/** The symbols of a block, or of the prose, in order. */
export function symbols(open: OpenSheet, text: TextId): readonly OutlineSymbol[] {
  switch (text.kind) {
    case 'block':
      return (resultOf(open).cells[text.number]?.statements ?? []).flatMap(symbolOf);
    case 'sheet': {
      const { sheet } = open.loaded;
      const linked = sheet.csvTables.map(({ name, nameAt, at, path }) => ({ ...TABLE, name, nameAt, at, detail: path ?? '' }));
      return [...sheet.tables.map((table) => tableSymbol(sheet.text, table)), ...linked].sort((a, b) => a.at.start - b.at.start);
    }
    case 'file':
    case 'library':
      return [];
    default:
      return text satisfies never;
  }
}

const TABLE = { kind: 'table', children: [] } as const;

function tableSymbol(text: string, table: Table): OutlineSymbol {
  const children = table.columns.map((column): OutlineSymbol => {
    const { type, at, name } = column;
    const detail = type.kind === 'number' ? type.unit.text : type.kind;
    return { kind: 'column', name, detail, at, nameAt: headName(text, column, name), children: [] };
  });
  return {
    ...TABLE,
    name: table.name,
    detail: `${table.rowCount} ${table.rowCount === 1 ? 'row' : 'rows'}`,
    at: table.at,
    nameAt: table.nameAt,
    children,
  };
}

/** A line that could not be read is listed by the name that it would have. */
function symbolOf(result: StatementResult): readonly OutlineSymbol[] {
  const name = nameOf(result);
  if (name === null) return [];
  const { at } = result.statement;
  const kind =
    result.kind === 'entry' ? (result.role === 'input' ? 'input' : 'computed') : result.kind === 'unreadable' ? 'computed' : result.kind;
  return [{ kind, name: name.text, detail: answerText(result) ?? '', at, nameAt: name.at, children: [] }];
}

function nameOf({ statement }: StatementResult): { readonly text: string; readonly at: Span } | null {
  switch (statement.kind) {
    case 'entry':
    case 'instrument':
      return named(statement.name.name, statement.name.at);
    case 'function':
      return named(formOf(statement), statement.name.at);
    case 'unreadable':
      return statement.name === null ? null : named(statement.name.name, statement.name.at);
    case 'column':
      return named(labelOf(statement), span(statement.table.at.start, statement.column.at.end));
    case 'requirement':
      return named(labelOf(statement), statement.at);
    case 'curve':
    case 'tabulation': {
      const word = statement.kind === 'curve' ? 'curve' : 'tabulate';
      return named(`${word} ${statement.traces.map(printTrace).join(', ')}`, statement.at);
    }
    case 'action':
      return named(statement.text.value, statement.text.at);
    case 'use':
      return named(`use ${statement.path.value}`, statement.path.at);
    default:
      return statement satisfies never;
  }
}

/** An editor shows no symbol without a name. */
function named(text: string, at: Span) {
  return text.trim() === '' ? null : { text, at };
}

// Whole files as they are read: every cell, table, value and problem, approved in the file beside each (UPDATE=1 rewrites it).
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import type { TableColumn } from '../../src/sheet/table.ts';
import type { TableCaption } from '../../src/sheet/table-caption.ts';
import { positionAt } from '../../src/text/lines.ts';
import type { Span } from '../../src/text/span.ts';
import { golden } from '../support/golden.ts';

const folder = new URL('./fixtures/', import.meta.url);

function columnLine({ name, broken, type, cells }: TableColumn): string {
  return `${name}, ${broken ? 'broken' : type.kind}: ${cells.map((cell) => cell.value ?? String(cell.value)).join(', ')}`;
}

function report(sheet: Sheet): string {
  const place = ({ start, end }: Span) =>
    [start, end]
      .map((at) => positionAt(sheet.lines, at))
      .map((p) => `${p.line + 1}:${p.column + 1}`)
      .join('-');
  const headline = ({ at, name, caption, path, source }: TableCaption) =>
    `${place(at)} ${name}: ${caption}${path ? ` in ${path}` : ''}${source ? ` from ${source.kind} "${source.text}"` : ''}`;
  const { places: _, signatures, ...front } = sheet.frontMatter;
  const given = Object.entries(front).filter(([, value]) => value !== null);
  const parts: Readonly<Record<string, readonly string[]>> = {
    cells: sheet.cells.map((cell) => {
      const calc =
        cell.kind === 'calc'
          ? ` ${cell.number}${cell.closed ? '' : ', not closed'}, ${cell.results ? `${cell.results.rows?.length ?? 'unreadable'} results` : 'no results'}`
          : '';
      return `${place(cell.at)} ${cell.kind}${calc}${cell.kind === 'prose' && cell.conflict ? ', conflict' : ''}`;
    }),
    'front matter': [
      ...given.map(([key, value]) => `${key}: ${JSON.stringify(value)}`),
      ...signatures.map(({ at, ...entry }) => `${place(at)} ${JSON.stringify(entry)}`),
    ],
    tables: [
      ...sheet.tables.flatMap((table) => [
        headline(table),
        ...table.columns.map((column) => `  ${place(column.at)} ${columnLine(column)}`),
      ]),
      ...sheet.csvTables.map(headline),
    ],
    values: sheet.values.map((v) => `${place(v.at)} ${v.name}${v.column ? `.${v.column}` : ''}: ${v.text}`),
    problems: sheet.problems.map((p) => `${place(p.at)} ${p.severity} ${p.code}: ${p.message}`),
  };
  return Object.entries(parts)
    .map(([head, lines]) => `${head}\n${lines.map((line) => `  ${line}\n`).join('')}`)
    .join('\n');
}

describe('a file', () => {
  for (const name of readdirSync(folder).filter((its) => its.endsWith('.md'))) {
    it(`${name} is read as approved, and comes back whole`, () => {
      const text = readFileSync(new URL(name, folder), 'utf8');
      const sheet = readSheet(text);
      assert.equal(sheet.lead + sheet.cells.map((cell) => cell.raw + cell.after).join(''), text);
      golden(new URL(name.replace(/\.md$/, '.txt'), folder).pathname, report(sheet));
    });
  }
});

describe('a long file', () => {
  const check = (unit: string, length: number) =>
    it(`of ${length} characters made of ${JSON.stringify(unit.slice(0, 24))} is read`, () => {
      const text = unit.repeat(Math.ceil(length / unit.length));
      const sheet = readSheet(text);
      assert.equal(
        sheet.cells.reduce((sum, cell) => sum + cell.raw.length + cell.after.length, sheet.lead.length),
        text.length,
      );
    });
  check(readFileSync(new URL('whole.md', folder), 'utf8').replace(/^---[\s\S]*?\n---\n/, ''), 5_000_000);
  const units = [
    '[1](#x) ',
    '<!-- results -->\n',
    '```ampwright\n',
    '<<<<<<< a\n=======\n>>>>>>> b\n',
    'Table t — x\n| a |\n| - |\n',
    '| x ',
    '- ',
    '#',
  ];
  for (const unit of units) check(unit, 500_000);
});

// The library's sheets as sheets: they hold, explain themselves, and name a source for everything.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import type { FunctionDefinition, Statement } from '../../src/language/ast.ts';
import { parse } from '../../src/language/parser.ts';
import { print } from '../../src/language/print.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { inLibrary, library, libraryDefinition } from '../../src/run/library.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { calcCells } from '../../src/sheet/sheet.ts';

const FOLDER = 'src/library';
const sheets = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.ampwright.md'))
  .map((file) => {
    const text = readFileSync(`${FOLDER}/${file}`, 'utf8');
    const sheet = readSheet(text);
    const statements: Statement[] = calcCells(sheet).flatMap((cell) => [...parse(cell.text).statements]);
    const functions = statements.filter((s): s is FunctionDefinition => s.kind === 'function');
    return { file, text, sheet, statements, functions };
  });

describe('the library', () => {
  it('has the sheets that the trade needs', () => {
    assert.ok(sheets.length >= 10);
  });

  for (const { file, text, sheet, statements, functions } of sheets) {
    describe(file, () => {
      it('evaluates without an error or a warning, and every requirement holds', () => {
        const { result } = evaluateSheet(text);
        const found = result.cells.flatMap((cell) => cell.problems.filter((p) => p.severity !== 'note').map((p) => p.message));
        assert.deepEqual(found, []);
        const all = result.cells.flatMap((cell) => cell.statements);
        const failed = all
          .filter((s) => s.kind === 'requirement' && s.status !== 'holds')
          .map((s) => s.kind === 'requirement' && s.condition);
        assert.deepEqual(failed, []);
      });

      it('describes every function and names its source', () => {
        const bare = functions.filter((f) => !f.clauses.description || !f.clauses.source).map((f) => f.name.name);
        assert.deepEqual(bare, []);
      });

      it('gives every limit of a function its reason', () => {
        const silent = functions.filter((f) => f.clauses.needs.some((need) => !need.because)).map((f) => f.name.name);
        assert.deepEqual(silent, []);
      });

      it('shows one example of every function', () => {
        const entries = new Set(statements.flatMap((s) => (s.kind === 'entry' ? [s.name.name] : [])));
        const missing = functions.filter((f) => !entries.has(`example_${f.name.name}`)).map((f) => f.name.name);
        assert.deepEqual(missing, []);
      });

      it('says of every check what it is checked against, or why it must hold', () => {
        const checks = statements.filter((s) => s.kind === 'requirement');
        assert.deepEqual(
          checks.filter((s) => !s.clauses.because).map((s) => print(s.condition)),
          [],
        );
      });

      it('names a source for every table', () => {
        assert.deepEqual(
          sheet.tables.filter((table) => !table.source).map((table) => table.name),
          [],
        );
      });
    });
  }

  it('is asked for a name and gives what its sheets define under it', () => {
    const words = new Set(sheets.flatMap(({ text }) => text.match(/\w+/g) ?? []));
    for (const word of words) assert.equal(inLibrary(word), library().names.has(word), word);
    for (const [name, definition] of library().names) assert.equal(libraryDefinition(name), definition, name);
  });

  it('defines every name once', () => {
    const names = sheets.flatMap(({ sheet, functions }) => [...functions.map((f) => f.name.name), ...sheet.tables.map((t) => t.name)]);
    assert.deepEqual(
      names.filter((name, i) => names.indexOf(name) !== i),
      [],
    );
  });
});

// Readable cases of comparing: `=== title`, the old sheet, `--- new`, the new one, `--- changes`, what a person is told. UPDATE=1 rewrites the last part.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { printComparisons } from '../../src/cli/compared.ts';
import { coloured, plain, type Stream } from '../../src/cli/terminal.ts';
import { COMPARISONS, type ComparedSheet, comparedSheet } from '../../src/review/comparisons.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';

export interface Case {
  readonly title: string;
  readonly old: string;
  readonly new: string;
  readonly changes: string;
}

/** A text without a fence is one calc block. */
export function sheetText(text: string): string {
  return text.includes('```ampwright') ? text : `\`\`\`ampwright\n${text}\n\`\`\`\n`;
}

/** Compares two texts; what comes out fits the published schema. */
export function comparedTexts(old: string, now: string): ComparedSheet {
  const compared = comparedSheet('a.ampwright.md', null, evaluateSheet(sheetText(old)), evaluateSheet(sheetText(now)));
  const read = COMPARISONS.parse(JSON.parse(JSON.stringify({ old: 'old', new: 'new', sheets: [compared] })));
  assert.deepEqual(read.sheets[0], compared);
  return compared;
}

/** What a person at a terminal is told, without the line that says what was compared. */
export function told(compared: ComparedSheet, colour = false): string {
  const lines: string[] = [];
  const stream: Stream = {
    paint: colour ? coloured : plain,
    line: (text = '') => void lines.push(text),
    write: (content) => void lines.push(String(content)),
    writeAll: async (pieces) => {
      for await (const piece of pieces) lines.push(piece);
    },
    isTerminal: false,
    width: 100,
  };
  printComparisons({ old: 'old', new: 'new', sheets: [compared] }, stream);
  return lines.slice(1).join('\n');
}

/** The cases of a fixture file. */
export function readCases(path: string): readonly Case[] {
  return readFileSync(path, 'utf8')
    .split(/^=== /m)
    .slice(1)
    .map((part) => {
      const [, title, old, now, changes] =
        /^(.*)\n([\s\S]*?)\n--- new\n([\s\S]*?)\n--- changes\n([\s\S]*)$/.exec(part) ?? assert.fail(`unreadable case in ${path}: ${part}`);
      return { title: title!, old: old!, new: now!, changes: changes!.trim() };
    });
}

export function writeCases(path: string, cases: readonly Case[]): void {
  writeFileSync(path, cases.map((one) => `=== ${one.title}\n${one.old}\n--- new\n${one.new}\n--- changes\n${one.changes}\n`).join('\n'));
}

const folder = join(import.meta.dirname, 'fixtures');

/** The fixture files, by what they are about. */
export const FILES: readonly { readonly about: string; readonly path: string }[] = readdirSync(folder)
  .filter((name) => name.endsWith('.txt'))
  .sort()
  .map((name) => ({ about: name.replace(/\.txt$/, '').replaceAll('-', ' '), path: join(folder, name) }));

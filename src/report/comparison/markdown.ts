// Comparisons as Markdown for a comment in a pull request: worst first, the rest folded, within the length of a comment.
import type { ComparedSheet, Comparisons } from '../../review/comparisons.ts';
import { headline, sheetLine } from '../../review/headline.ts';
import { codeSpan, plainText } from '../markdown.ts';
import { type Cell, type Section, sectionsOf } from './sections.ts';

/** GitHub takes comments of 65,536 characters; some forges count bytes, and others put words of their own around. */
export const LONGEST_COMMENT = 60_000;

/** Room kept for the closing words. */
const CLOSING = 300;

/** The comment; what does not fit is left out from the end, where the least serious stands, and the last line says so. */
export function comparisonsMarkdown({ old, new: now, sheets }: Comparisons, longest: number = LONGEST_COMMENT): string {
  const changed = sheets.filter(({ change }) => change !== 'same');
  const same = sheets.length - changed.length;
  const blocks = [
    `## What changed in meaning\n\n${codeSpan(old)} → ${codeSpan(now)}\n`,
    ...(changed.length === 0 ? ['Nothing: inputs, formulas, results and words are the same.\n'] : []),
    ...changed.flatMap(sheetBlocks),
    ...(same > 0 && changed.length > 0 ? [`${same} more ${same === 1 ? 'sheet' : 'sheets'} without a change in meaning.\n`] : []),
  ];
  return fitted(blocks, longest);
}

/** A heading with the headline, then a block a section. */
function sheetBlocks(sheet: ComparedSheet): readonly string[] {
  const title = sheet.comparison?.new.title ?? sheet.sheet?.title;
  const name = title ? `${plainText(title)} (${codeSpan(sheet.path)})` : codeSpan(sheet.path);
  if (sheet.comparison === null) return [`### ${name}\n\n${plainText(sheetLine(sheet))}\n`];
  const was = sheet.oldPath === null ? '' : `The file was ${codeSpan(sheet.oldPath)}.\n\n`;
  const phrases = headline(sheet.comparison).map(plainText).join(' · ');
  return [`### ${name}\n\n${was}**${phrases || 'Small changes'}**\n`, ...sectionsOf(sheet.comparison).map(sectionBlock)];
}

function sectionBlock({ title, heads, rows, open }: Section): string {
  const table = [
    `| ${[...heads, 'line'].join(' | ')} |`,
    `| ${[...heads, 'line'].map(() => ':--').join(' | ')} |`,
    ...rows.map(({ cells, line }) => `| ${[...heads.map((_, i) => cellText(cells[i] ?? [])), line.new ?? '–'].join(' | ')} |`),
  ].join('\n');
  if (open) return `#### ${title}\n\n${table}\n`;
  return `<details><summary>${title} (${rows.length})</summary>\n\n${table}\n\n</details>\n`;
}

function cellText(cell: Cell): string {
  return cell
    .map(({ kind, text }) => {
      const inner = text.trim();
      if (inner === '') return text && ' ';
      return `${/^\s/.test(text) ? ' ' : ''}${pieceText(kind, inner)}${/\s$/.test(text) ? ' ' : ''}`;
    })
    .join('')
    .replaceAll('</del><ins>', '</del> <ins>')
    .trim();
}

function pieceText(kind: Cell[number]['kind'], text: string): string {
  switch (kind) {
    case 'plain':
      return plainText(text);
    case 'code':
      return codeSpan(text);
    case 'old code':
      return `<del>${codeSpan(text)}</del>`;
    case 'new code':
      return `<ins>${codeSpan(text)}</ins>`;
    case 'old':
      return `<del>${plainText(text)}</del>`;
    case 'new':
      return `<ins>${plainText(text)}</ins>`;
    case 'strong':
      return `**${plainText(text)}**`;
    default:
      return kind satisfies never;
  }
}

/** As many blocks as fit; of the first that does not, as many rows as fit. */
function fitted(blocks: readonly string[], longest: number): string {
  const taken: string[] = [];
  let room = longest - CLOSING;
  for (const [i, block] of blocks.entries()) {
    if (block.length + 1 <= room) {
      taken.push(block);
      room -= block.length + 1;
      continue;
    }
    const part = cut(block, room - 1);
    if (part !== null) taken.push(part);
    const left = blocks.length - i;
    taken.push(
      `*Cut here: a comment holds ${longest} characters, and ${left} more ${left === 1 ? 'part does' : 'parts do'} not fit. Run \`ampwright compare\` for all of it.*\n`,
    );
    break;
  }
  return taken.join('\n');
}

/** The beginning of a block, whole rows only; null where not even one row fits. */
function cut(block: string, room: number): string | null {
  const closing = block.startsWith('<details>') ? '\n\n</details>\n' : '\n';
  const lines = block.replace(/\n\n<\/details>\n$/, '').split('\n');
  const isRow = (line: string) => line.startsWith('| ');
  const head = lines.findIndex(isRow) + 2;
  let length = closing.length;
  const kept: string[] = [];
  for (const line of lines) {
    length += line.length + 1;
    if (length > room) break;
    kept.push(line);
  }
  return head > 1 && kept.length > head ? kept.join('\n') + closing : null;
}

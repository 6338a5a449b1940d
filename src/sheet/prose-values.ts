// Values in prose: links to an entry whose text is the entry's value (F8).
import { isName, nameSpelling } from '../language/name.ts';
import { lineMap, positionAt } from '../text/lines.ts';
import type { Edit, Problem } from '../text/problem.ts';
import { type Span, span } from '../text/span.ts';
import type { FileLines } from './file-lines.ts';
import { headingSlugs } from './heading-slugs.ts';
import { type FragmentLink, fragmentLinks } from './inline.ts';
import type { Block } from './markdown.ts';
import { escapeLinkText, splitRow, unescapeCell } from './pipe-row.ts';
import { proseProblem } from './problems.ts';

/** A link `[text](#name)` or `[text](#name.column)` in prose that may stand for a value. */
export interface ProseValue {
  /** The name of the entry, in its one spelling (`eta` for `η`). */
  readonly name: string;
  /** The column of a chosen row, as in `[40 A](#K.I_AC3)`. */
  readonly column: string | null;
  /** The link's text without its escapes and without emphasis around it. */
  readonly text: string;
  /** Whether the text has `±`, so that the value is to be written with its uncertainty. */
  readonly withUncertainty: boolean;
  /** Whether a heading of the sheet has this very fragment; if an entry has it as well the link means neither. */
  readonly heading: boolean;
  /** The whole link in the file. */
  readonly at: Span;
  /** The text in the file. */
  readonly textAt: Span;
}

/** The links of the blocks that may be values, in order. Links in code, HTML and link definitions are none. */
export function readProseValues(lines: FileLines, blocks: readonly Block[]): readonly ProseValue[] {
  const values: ProseValue[] = [];
  let slugs: ReadonlySet<string> | null = null;
  const take = (link: FragmentLink, place: (offset: number) => number | null) => {
    slugs ??= headingSlugs(blocks);
    const value = readValue(lines.text, link, place, slugs);
    if (value) values.push(value);
  };
  for (const block of blocks) {
    if (block.kind === 'table') {
      for (let i = block.from; i < block.to; i++) {
        const line = lines.line(i);
        if (!line.includes('](#')) continue;
        for (const cell of splitRow(line, lines.start(i))) {
          for (const link of fragmentLinks(cell.text)) take(link, (offset) => cell.at.start + offset);
        }
      }
    } else if (block.content !== '') {
      const place = placesInBlock(lines, block);
      for (const link of fragmentLinks(block.content)) take(link, place);
    }
  }
  return values;
}

function readValue(
  text: string,
  link: FragmentLink,
  place: (offset: number) => number | null,
  slugs: ReadonlySet<string>,
): ProseValue | null {
  const [name, column = null, ...more] = link.fragment.split('.');
  if (!isName(name!) || (column !== null && !isName(column)) || more.length > 0) return null;
  const [start, end, textStart, textEnd] = [link.start, link.end, link.textStart, link.textEnd].map(place);
  if (start == null || end == null || textStart == null || textEnd == null) return null;
  const written = text.slice(textStart, textEnd);
  // Behind a line end of a quote or a list stands that construct's own mark: the link is then left alone.
  if (/[\r\n][ \t]*[^\w\s±.-]/.test(written)) return null;
  const emphasis = /^([*_]{0,3})(.*?)\1$/s.exec(written)!;
  const from = textStart + emphasis[1]!.length;
  const shown = unescapeCell(emphasis[2]!.replace(/\s+/g, (blanks) => (/[\r\n]/.test(blanks) ? ' ' : blanks)));
  return {
    name: nameSpelling(name!),
    column: column === null ? null : nameSpelling(column),
    text: shown,
    withUncertainty: /±|\+\/-/.test(shown),
    heading: slugs.has(link.fragment),
    at: span(start, end),
    textAt: span(from, from + emphasis[2]!.length),
  };
}

/** Tells where offsets in a block's inline text stand in the file: each of its lines ends a line of the file, but for blanks and a heading's `#`. */
function placesInBlock(lines: FileLines, block: Block): (offset: number) => number | null {
  const map = lineMap(block.content);
  const starts: (number | null)[] = [];
  const startOf = (line: number) => {
    const text = block.content.slice(map.starts[line], map.starts[line + 1]);
    const found = lines.line(block.from + line).lastIndexOf(text.trim());
    return found < 0 ? null : lines.start(block.from + line) + found - (text.length - text.trimStart().length);
  };
  return (offset) => {
    const { line, column } = positionAt(map, offset);
    if (starts[line] === undefined) starts[line] = startOf(line);
    const start = starts[line];
    return start === null || start === undefined ? null : start + column;
  };
}

/** Changes that bring the values' texts up to date; a value that says the same already, or that is a heading's name as well, is left alone. */
export function refreshValues(values: readonly ProseValue[], valueText: (value: ProseValue) => string | null): readonly Edit[] {
  return values.flatMap((value) => {
    const text = value.heading ? null : valueText(value);
    const shown = text?.replace(/[\r\n\v\f\u0085\u2028\u2029]+/g, ' ');
    return shown === undefined || shown === value.text ? [] : [{ at: value.textAt, text: escapeLinkText(shown) }];
  });
}

/** Links that lead nowhere, or to an entry and a heading at once. `known` says whether a value's name is an entry of the sheet. */
export function proseValueProblems(values: readonly ProseValue[], known: (value: ProseValue) => boolean): readonly Problem[] {
  return values.flatMap((value) => {
    const target = value.column === null ? value.name : `${value.name}.${value.column}`;
    if (known(value)) return value.heading ? [proseProblem('value-and-heading', value.at, { target })] : [];
    return value.heading ? [] : [proseProblem('link-leads-nowhere', value.at, { target })];
  });
}

// Front matter as lines of top-level keys: each key with its lines is read by itself, so that a mistake in one leaves the others.
import { type Document, isMap, isNode, isScalar, isSeq, type Node, parseDocument } from 'yaml';
import type { Problem } from '../text/problem.ts';
import { type Span, span } from '../text/span.ts';
import { frontMatterProblem } from './problems.ts';

/** One top-level key with its lines: the key's line and those behind it that begin with a blank, `-`, `]` or `}`. */
export interface Section {
  /** From the start of the key's line to the end of the last line, its line end left out; in the file. */
  readonly at: Span;
}

/** A section as YAML has it. */
export interface Pair {
  readonly key: string;
  readonly keyAt: Span;
  readonly node: Node | null;
  /** Where a node of the section stands in the file, blanks and line ends behind it left out. */
  readonly placeOf: (node: Node | null) => Span | null;
}

/** More than this in one section is refused: no title block has that. */
const MAX_SECTION = 100_000;

/** The sections of the YAML at `code`. Blank lines and comments between them belong to none. */
export function readSections(text: string, code: Span): readonly Section[] {
  const sections: Section[] = [];
  const line = /[^\r\n]*(?:\r\n?|\n|$)/y;
  for (let at = code.start; at < code.end; at = line.lastIndex) {
    line.lastIndex = at;
    line.test(text);
    const end = at + text.slice(at, Math.min(line.lastIndex, code.end)).search(/[\r\n]|$/);
    const first = text[at]!;
    if (end === at || first === '#' || /^[ \t]*$/.test(text.slice(at, end))) continue;
    const last = sections.at(-1);
    if (last && ' \t-]}'.includes(first)) sections[sections.length - 1] = { at: span(last.at.start, end) };
    else sections.push({ at: span(at, end) });
  }
  return sections;
}

/** The key and the value of a section, or null (with a problem) where it is not one `key: value`. */
export function readPair(text: string, { at }: Section, problems: Problem[]): Pair | null {
  const whole = text.slice(at.start, at.end);
  const placeOf = (range: Range) => span(at.start + range[0], at.start + range[0] + whole.slice(range[0], range[1]).trimEnd().length);
  const firstLine: Range = [0, whole.search(/[\r\n]|$/)];
  const document = whole.length > MAX_SECTION ? null : parse(whole);
  const fault = document ? (document.errors[0] ?? document.warnings[0]) : { pos: firstLine, code: 'TOO_LARGE' };
  if (fault) {
    const key = /^[^:]+(?=:)/.exec(whole)?.[0].trimEnd() ?? '';
    const facts = { key: /^\w[\w -]*$/.test(key) ? key : null, because: reason(fault.code, whole) };
    problems.push(frontMatterProblem('front-matter-syntax', placeOf(visible(fault.pos, whole)), facts));
    return null;
  }
  const map = document?.contents;
  const [pair, ...more] = isMap(map) && !map.flow ? map.items : [];
  if (!pair || more.length > 0 || !isScalar(pair.key) || !pair.key.range) {
    problems.push(frontMatterProblem('front-matter-line', placeOf(firstLine), {}));
    return null;
  }
  return {
    key: keyText(pair.key),
    keyAt: placeOf(pair.key.range),
    node: asNode(pair.value),
    placeOf: (node) => (node?.range ? placeOf(node.range) : null),
  };
}

type Range = readonly [number, number, ...number[]];

/** A range that can be seen: inside the text, and up to the end of its line where the fault is only a point. */
function visible([from, to]: Range, whole: string): Range {
  const start = Math.min(from, Math.max(0, whole.length - 1));
  const lineEnd = start + whole.slice(start).search(/[\r\n]|$/);
  return to - start > 1 ? [start, Math.min(to, whole.length)] : [start, Math.max(start + 1, lineEnd)];
}

/** Every scalar is text (YAML's failsafe schema): `revision: 1.0` is "1.0" and no number. Null where the nesting is beyond reading. */
function parse(text: string): Document | null {
  try {
    return parseDocument(text.replace(/\r(?!\n)/g, '\n'), { schema: 'failsafe', prettyErrors: false });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function reason(code: string, whole: string): string {
  if (code === 'TOO_LARGE') return `it is nested too deeply, or longer than ${MAX_SECTION} characters`;
  if (code === 'BLOCK_AS_IMPLICIT_KEY' || code === 'MULTILINE_IMPLICIT_KEY') {
    return whole.includes('\n')
      ? 'its lines do not fit together; a text with `: ` in it stands in quotes'
      : 'a text with `: ` in it stands in quotes';
  }
  if (code === 'MISSING_CHAR') return 'a quotation mark or bracket is missing';
  if (code === 'BAD_INDENT') return 'a bracket is not closed, or a line is not indented far enough';
  if (code === 'TAB_AS_INDENT') return 'indent with spaces, not with tabs';
  if (code === 'TAG_RESOLVE_FAILED') return 'tags (`!name`) are not read here; a text that begins with `!` stands in quotes';
  return 'a text with special characters stands in quotes';
}

/** A value with its places: text, a list or a map of such. */
export type Plain = string | readonly Plain[] | { readonly [key: string]: Plain };

/** The plain value of a node; an alias is reported and read as an empty text. */
export function plainValue(node: Node | null, pair: Pair, problems: Problem[]): Plain {
  if (isScalar(node)) return node.value === null ? '' : String(node.value);
  if (isSeq(node)) return node.items.map((item) => plainValue(asNode(item), pair, problems));
  if (isMap(node)) {
    return Object.fromEntries(node.items.map(({ key, value }) => [keyText(key), plainValue(asNode(value), pair, problems)]));
  }
  if (node) problems.push(frontMatterProblem('front-matter-reference', pair.placeOf(node) ?? pair.keyAt, {}));
  return '';
}

/** The text of a map's key. */
export function keyText(key: unknown): string {
  return isScalar(key) ? String(key.value) : '?';
}

/** A part of a YAML document as a node, if it is one. */
export function asNode(part: unknown): Node | null {
  return isNode(part) ? part : null;
}

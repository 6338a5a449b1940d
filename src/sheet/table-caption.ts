// The line above a table: its name, its caption, its source, and the CSV file where it links to one.

import { isName, nameSpelling } from '../language/name.ts';
import { likelyWords, OTHER_SOURCES } from '../language/other-words.ts';
import { RESERVED, SOURCE_KINDS } from '../language/token.ts';
import type { Problem } from '../text/problem.ts';
import { type Span, span } from '../text/span.ts';
import { tableProblem } from './table-problems.ts';

/** `Table NAME — caption from KIND "text"`, all places in the sheet's file. */
export interface TableCaption {
  readonly name: string;
  readonly nameAt: Span;
  readonly caption: string;
  readonly source: { readonly kind: string; readonly text: string; readonly at: Span } | null;
  /** The CSV file that the caption links to, as written; null for a pipe table. */
  readonly path: string | null;
  /** The whole line. */
  readonly at: Span;
}

const CAPTION = /^ {0,3}Table[ \t]+(\S+)[ \t]+(?:—|–|--|-)([ \t].*)$/;
const SOURCE = /(?:^|[ \t])from[ \t]+(\S+)[ \t]+"((?:[^"\\]|\\["\\])*)"[ \t]*$/;
const LINK = /^\[((?:[^[\]\\]|\\.)*)\]\(([^\s()<>]*\.csv)\)$/i;

/** Whether a line has the form of a caption; numbered tables of ordinary prose (`Table 3 — …`) have not. */
export function looksLikeCaption(line: string): boolean {
  return /^[\p{L}_]/u.test(CAPTION.exec(line)?.[1] ?? '');
}

/** Reads a line that looks like a caption and begins at `offset` in the file; null (with a problem) where its name is none. */
export function readCaption(line: string, offset: number, problems: Problem[]): TableCaption | null {
  const [, written, rest] = CAPTION.exec(line)!;
  const nameStart = offset + line.indexOf(written!, line.indexOf('Table') + 5);
  const nameAt = span(nameStart, nameStart + written!.length);
  const name = nameSpelling(written!);
  if (!isName(written!) || (RESERVED as readonly string[]).includes(name)) {
    const instead = written!.replace(/[^\p{L}\p{N}_]+/gu, '_');
    problems.push(tableProblem('table-name', nameAt, { name: written!, instead: isName(instead) && instead !== written ? instead : null }));
    return null;
  }
  const found = SOURCE.exec(rest!);
  const words = rest!.slice(0, found?.index).trim();
  const link = LINK.exec(words);
  const restStart = offset + line.length - rest!.length;
  const source = found ? readSource(found, restStart, problems) : bareSource(rest!, restStart, problems);
  return {
    name,
    nameAt,
    caption: link ? link[1]! : words,
    source,
    path: link ? link[2]! : null,
    at: span(offset, offset + line.trimEnd().length),
  };
}

/** Reports a source without quotation marks; its words stay in the caption. */
function bareSource(rest: string, restStart: number, problems: Problem[]): null {
  const from = Math.max(rest.lastIndexOf(' from '), rest.lastIndexOf('\tfrom '));
  if (from < 0 || rest.includes('"', from)) return null;
  const [kind = '', ...words] = rest
    .slice(from + 6)
    .trim()
    .split(/[ \t]+/);
  if (words.length === 0 || !SOURCE_KINDS.some((known) => known === kind)) return null;
  const start = rest.indexOf(words[0]!, rest.indexOf(kind, from + 6) + kind.length);
  const at = span(restStart + start, restStart + rest.trimEnd().length);
  problems.push(tableProblem('caption-quotes', at, { kind, text: words.join(' ') }));
  return null;
}

function readSource(found: RegExpExecArray, restStart: number, problems: Problem[]): TableCaption['source'] {
  const [whole, word, text] = found;
  const start = restStart + found.index + whole.indexOf('from');
  const kind = SOURCE_KINDS.find((known) => known === word);
  if (kind === undefined) {
    const wordStart = restStart + found.index + whole.indexOf(word!, whole.indexOf('from') + 4);
    const near = likelyWords(word!, OTHER_SOURCES, SOURCE_KINDS);
    problems.push(tableProblem('caption-source', span(wordStart, wordStart + word!.length), { word: word!, near, kinds: SOURCE_KINDS }));
  }
  const at = span(start, restStart + found.index + whole.trimEnd().length);
  return { kind: kind ?? 'assumption', text: text!.replace(/\\(["\\])/g, '$1'), at };
}

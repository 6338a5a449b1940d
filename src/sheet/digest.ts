// The digest of a sheet and of the files that it uses: what a signature covers (F7).
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { applyEdits } from './edits.ts';
import { fileLines } from './file-lines.ts';
import { frontMatterCode, frontMatterEnd } from './front-matter-lines.ts';
import { readSections } from './yaml-sections.ts';

/** A file that a sheet reads by `use` or a table, with its own digest (`digest` of its text and of what it uses). */
export interface UsedFile {
  /** Written with `/`. */
  readonly path: string;
  readonly digest: string;
}

/**
 * `sha256:` and 64 hexadecimal digits: the SHA-256 of the text in UTF-8, without byte order mark, with CRLF as LF, without the lines of the
 * key `signatures`; then, for each used file in the order of the paths, its path, a NUL character and its digest.
 */
export function digest(text: string, used: readonly UsedFile[] = []): string {
  const hash = sha256.create();
  hash.update(utf8ToBytes(coveredText(text)));
  for (const [path, its] of [...new Map(used.map((file) => [file.path, file.digest]))].sort(([a], [b]) => (a < b ? -1 : 1))) {
    hash.update(utf8ToBytes(`${path}\0${its}`));
  }
  return `sha256:${bytesToHex(hash.digest())}`;
}

/** The part of a file's text that its digest covers. */
function coveredText(text: string): string {
  return withoutSignatures(text)
    .replace(/^\ufeff/, '')
    .replaceAll('\r\n', '\n');
}

/** The text without the lines of the front matter's key `signatures`: the key's line and those behind it that belong to it. */
function withoutSignatures(text: string): string {
  const lines = fileLines(text);
  const end = frontMatterEnd(lines);
  if (end === 0) return text;
  const edits = readSections(text, frontMatterCode(lines, end))
    .filter(({ at }) => isSignatures(text.slice(at.start, at.end)))
    .map(({ at }) => ({
      at: { start: at.start, end: at.end + (/^(?:\r\n?|\n)/.exec(text.slice(at.end, at.end + 2))?.[0].length ?? 0) },
      text: '',
    }));
  return applyEdits(text, edits);
}

/** Whether a section of the front matter is that of the signatures. */
export function isSignatures(section: string): boolean {
  return /^(['"]?)signatures\1[ \t]*:/.test(section);
}

// What concerns the sheet as a whole in a comparison: errors, signatures, the title block, prose.
import type { Comparison, ProblemChange, ProseChange, SignatureChange } from '../../review/comparison.ts';
import { plain, section, strong } from './cells.ts';
import type { Piece, Row, Section } from './sections.ts';

export function errors({ problems }: Comparison): Section | null {
  const rows = problems.filter(({ change }) => change === 'added').map(problemRow); // biome-ignore format: one step
  return section('New errors and warnings', ['kind', 'problem'], rows, true);
}

export function mended({ problems }: Comparison): Section | null {
  const rows = problems.filter(({ change }) => change === 'removed').map(problemRow); // biome-ignore format: one step
  return section('Errors and warnings that are gone', ['kind', 'problem'], rows, false);
}

function problemRow({ change, severity, message, path, line }: ProblemChange): Row {
  const kind = severity === 'error' && change === 'added' ? strong(severity) : plain(severity);
  return { cells: [kind, plain(path === null ? message : `${path}: ${message}`)], line };
}

export function signatures({ signatures: all }: Comparison): Section | null {
  const rows = [...all].sort((a, b) => Number(b.lapsed) - Number(a.lapsed)).map(signatureRow);
  return section('Signatures', ['signature', 'before', 'after'], rows, true);
}

function signatureRow({ role, name, date, state, lapsed, line }: SignatureChange): Row {
  const after = state.new === null ? 'removed' : state.old === 'current' && state.new === 'current' ? 'signed again' : state.new;
  return {
    cells: [plain(`${role}: ${name}, ${date}`), plain(state.old), lapsed ? strong('lapsed: the sheet was changed since') : plain(after)],
    line,
  };
}

export function titleBlock({ frontMatter }: Comparison): Section | null {
  const rows = frontMatter.map(({ field, value, line }) => ({ cells: [plain(field), plain(value.old), plain(value.new)], line }));
  return section('Title block', ['field', 'before', 'after'], rows, false);
}

export function prose({ prose: all }: Comparison): Section | null {
  const rows = all.map(({ heading, words, line }) => ({ cells: [plain(heading ?? '–'), pieces(words)], line }));
  return section('Prose', ['under', 'words'], rows, false);
}

/** Unchanged words are kept as far as they help to find the place; of very long passages, both ends. */
const CONTEXT = 60;
const LONGEST = 600;

function pieces(words: ProseChange['words']): readonly Piece[] {
  return words.map(({ kind, text }, i): Piece => {
    if (kind !== 'same') return { kind: kind === 'removed' ? 'old' : 'new', text: shortened(text, LONGEST / 2, LONGEST / 2) };
    return { kind: 'plain', text: shortened(text, i > 0 ? CONTEXT : 0, i < words.length - 1 ? CONTEXT : 0) };
  });
}

/** Its first and its last characters, whole words only. */
function shortened(text: string, first: number, last: number): string {
  if (text.length <= Math.max(first + last, 2 * CONTEXT)) return text;
  const head = /^.*\s/s.exec(text.slice(0, first))?.[0] ?? '';
  const tail = last === 0 ? '' : text.slice(-last).replace(/^\S*/, '');
  return `${head}…${tail}`;
}

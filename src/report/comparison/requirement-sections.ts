// Requirements in a comparison: criteria and decisions first, margins that only moved apart from them.
import type { Comparison, RequirementChange, Texts } from '../../review/comparison.ts';
import { changedText, code, joined, plain, section, strong } from './cells.ts';
import type { Cell, Row, Section } from './sections.ts';

export function requirements({ requirements: all }: Comparison): Section | null {
  const rows = all.filter((one) => !isMargin(one)).sort((a, b) => weight(a) - weight(b)).map(rowOf); // biome-ignore format: one step
  return section('Requirements', ['decision', 'requirement', 'before', 'after'], rows, true);
}

export function margins({ requirements: all }: Comparison): Section | null {
  const rows = all.filter(isMargin).map((one) => ({
    cells: [code(`${one.force} ${one.condition}`), plain(one.sides!.old), plain(one.sides!.new)],
    line: one.line,
  }));
  return section('Margins that moved', ['requirement', 'before', 'after'], rows, false);
}

/** Nothing but the values of both sides changed. */
function isMargin({ change, written, turned, rows, sides, source, because, description, concession }: RequirementChange): boolean {
  const rest = [written, turned, source, because, description, concession].every((one) => one === null);
  return change === 'changed' && rest && rows.length === 0 && sides !== null;
}

/** The smaller, the more serious. */
function weight({ change, force, turned, status }: RequirementChange): number {
  const place = () => {
    if (change === 'removed') return 2;
    if (turned === 'worse' || (change === 'added' && status.new !== 'holds')) return status.new === 'fails' ? 0 : 1;
    return turned === 'better' ? 5 : change === 'added' ? 4 : 3;
  };
  return place() + (force === 'should' ? 10 : 0);
}

function rowOf(one: RequirementChange): Row {
  const { written, sides, line } = one;
  const criterion =
    written !== null && written.old !== null && written.new !== null ? replaced(written) : code(`${one.force} ${one.condition}`);
  const others = [
    changedText('because', one.because),
    changedText('source', one.source),
    changedText('description', one.description),
    changedText('accepted by', one.concession),
    ...one.rows.map(({ row, status }) => plain(`${row}: ${status.old ?? 'not there'} → ${status.new ?? 'not there'}`)),
  ];
  return { cells: [decision(one), joined([criterion, ...others], '; '), plain(sides?.old ?? null), plain(sides?.new ?? null)], line };
}

/** `holds → fails`, `removed (held)`, `new: holds`. */
function decision({ change, status, turned }: RequirementChange): Cell {
  if (change === 'removed') return strong(`removed (${status.old === 'holds' ? 'held' : status.old})`);
  if (change === 'added') return status.new === 'holds' ? plain('new: holds') : strong(`new: ${status.new}`);
  if (turned === null) return plain(`still ${status.new}`);
  const text = `${status.old} → ${status.new}`;
  return turned === 'worse' ? strong(text) : plain(text);
}

function replaced({ old, new: now }: Texts): Cell {
  return [
    { kind: 'old', text: old! },
    { kind: 'plain', text: ' ' },
    { kind: 'new', text: now! },
  ];
}

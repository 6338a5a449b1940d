// Requirements in a comparison: criteria and decisions first, margins that only moved apart from them.
import type { Comparison, RequirementChange } from '../../review/comparison.ts';
import { changedText, code, joined, plain, section, strong } from './cells.ts';
import type { Cell, Row, Section } from './sections.ts';
import { rewritten } from './wording.ts';

export function requirements({ requirements: all }: Comparison): Section | null {
  const rows = all.filter((one) => !isMargin(one)).sort((a, b) => weight(a) - weight(b)).map(rowOf); // biome-ignore format: one step
  return section('Requirements', ['decision', 'requirement', 'before', 'after'], rows, true);
}

export function margins({ requirements: all }: Comparison): Section | null {
  const rows = all.filter(isMargin).map((one) => ({
    cells: [code(one.criterion), plain(one.sides!.old), plain(one.sides!.new)],
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
  const { change, written, turned, knockOn, sides, line } = one;
  const isBoth = change === 'changed';
  const others = [
    turned !== null && knockOn ? plain('its own line did not change') : [],
    changedText('because', one.because),
    changedText('source', one.source),
    changedText('description', one.description),
    changedText('concession', one.concession),
    ...one.rows.map(({ row, status }) =>
      plain(`${row}: ${status.old === null ? `new, ${status.new}` : `${status.old} → ${status.new ?? 'gone'}`}`),
    ),
  ];
  const criterion = isBoth && written !== null ? rewritten(written) : code(one.criterion);
  return {
    cells: [decision(one), joined([criterion, ...(isBoth ? others : [])], '; '), plain(sides?.old ?? null), plain(sides?.new ?? null)],
    line,
  };
}

/** `holds → fails`, `removed (held)`, `new: holds`. */
function decision({ change, status, turned }: RequirementChange): Cell {
  if (change === 'removed') return strong(`removed (${status.old === 'holds' ? 'held' : status.old})`);
  if (change === 'added') return status.new === 'holds' ? plain('new: holds') : strong(`new: ${status.new}`);
  if (turned === null) return plain(`still ${status.new}`);
  const text = `${status.old} → ${status.new}`;
  return turned === 'worse' ? strong(text) : plain(text);
}

// Entries in a comparison: choices, inputs, formulas, and results that changed although their own line did not.
import type { Comparison, EntryChange } from '../../review/comparison.ts';
import { changedText, code, differenceOf, joined, nameCell, plain, section, strong } from './cells.ts';
import type { Cell, Row, Section } from './sections.ts';
import { rewritten } from './wording.ts';

/** Entries that had a value and are there without one. */
export function lost({ entries }: Comparison): Section | null {
  const rows = entries.filter(isLost).map((one) => entryRow(one, isKnockOn(one) ? plain('its own line did not change') : notes(one)));
  return section('Results that have no value any more', ['entry', 'before', 'after', 'what changed'], rows, true);
}

export function choices({ entries }: Comparison): Section | null {
  const rows = kept(entries).filter((one) => one.role === 'choice').map((one) => entryRow(one, notes(one))); // biome-ignore format: one step
  return section('Choices', ['choice', 'before', 'after', 'what changed'], rows, true);
}

export function inputs({ entries }: Comparison): Section | null {
  const rows = kept(entries)
    .filter((one) => one.role === 'input')
    .map((one) => entryRow(one, joined([difference(one), notes(one)], '; ')));
  return section('Inputs', ['input', 'before', 'after', 'what changed'], rows, true);
}

export function formulas({ entries }: Comparison): Section | null {
  const rows = calculated(entries).filter((one) => !isKnockOn(one)).map((one) => entryRow(one, joined([difference(one), notes(one)], '; '))); // biome-ignore format: one step
  return section('Formulas', ['entry', 'before', 'after', 'what changed'], rows, true);
}

export function results({ entries }: Comparison): Section | null {
  const rows = calculated(entries).filter(isKnockOn).flatMap((one) => [entryRow(one, difference(one)), ...cellRows(one)]); // biome-ignore format: one step
  return section('Results that changed although their own line did not', ['result', 'before', 'after', 'change'], rows, false);
}

function calculated(entries: readonly EntryChange[]): readonly EntryChange[] {
  return kept(entries).filter(({ role }) => role !== 'choice' && role !== 'input');
}

function kept(entries: readonly EntryChange[]): readonly EntryChange[] {
  return entries.filter((one) => !isLost(one));
}

function isLost({ change, value }: EntryChange): boolean {
  return change === 'changed' && value !== null && value.new === null;
}

/** Nothing but the value changed. */
function isKnockOn({ knockOn, oldName, source, because, description }: EntryChange): boolean {
  return knockOn && [oldName, source, because, description].every((one) => one === null);
}

function entryRow({ change, name, oldName, value, line }: EntryChange, note: Cell): Row {
  const side = (text: string | null | undefined, missing: boolean): Cell =>
    missing ? [] : value === null ? [] : text == null ? strong('no value') : plain(text);
  return { cells: [nameCell(name, oldName), side(value?.old, change === 'added'), side(value?.new, change === 'removed'), note], line };
}

function difference(one: EntryChange): Cell {
  return one.change === 'changed' ? plain(differenceOf(one.value)) : plain(one.change === 'added' ? 'new' : 'removed');
}

/** What changed beside the value. */
function notes({ change, role, oldName, written, value, knockOn, source, because, description }: EntryChange): Cell {
  // Of an input, the value says it all, unless it is only written otherwise.
  const formula = written === null || (role === 'input' && value !== null) ? [] : rewritten(written);
  const own = knockOn && (role === 'choice' || oldName !== null) ? plain('its own line did not change') : [];
  const origin = source?.new ? `from ${source.new}` : role === 'input' && change === 'added' ? 'without a source' : null;
  if (change !== 'changed') return joined([formula, plain(origin)], '; ');
  const changed = joined(
    [formula, own, changedText('source', source), changedText('because', because), changedText('description', description)],
    '; ',
  );
  return changed.length === 0 && value === null && oldName !== null ? plain('only its name') : changed;
}

/** The rows of a computed column. */
function cellRows({ name, cells, line }: EntryChange): readonly Row[] {
  return cells.map(({ row, value }) => ({
    cells: [
      joined([code(name), plain(row)], ' of '),
      plain(value.old ?? 'no value'),
      plain(value.new ?? 'no value'),
      plain(differenceOf(value)),
    ],
    line,
  }));
}

// Registers of inputs: by kind of source, the assumptions with their reasons, and the readings with their instruments.
import { SOURCE_KINDS } from '../../language/token.ts';
import { link } from '../../view/ledger/parts.ts';
import type { EntryRow, SheetView } from '../../view/model.ts';
import { type Child, element } from '../../view/node.ts';
import { valueText } from '../../view/sentence.ts';
import { type Register, type RegisterInput, rowsOf, table } from './register.ts';

export const inputs: Register = {
  id: 'inputs',
  title: 'Inputs by kind of source',
  make: ({ view }) => {
    const all = inputsOf({ view });
    const kinds = [...SOURCE_KINDS, null].flatMap((kind) => {
      const rows = all.filter((row) => kindOf(row) === kind);
      return rows.length === 0 ? [] : [table(['Quantity', 'Description', 'Value', 'Source'], rows.map(line), headOf(kind))];
    });
    return kinds.length === 0 ? null : element('div', {}, ...kinds);
  },
};

export const assumptions: Register = {
  id: 'assumptions',
  title: 'Assumptions',
  make: ({ view }) => {
    const lines = rowsOf(view).flatMap(({ row }) => {
      if (row.source?.kind !== 'assumption' || (row.kind !== 'entry' && row.kind !== 'function')) return [];
      const value = row.kind === 'entry' && row.value ? valueText(row.value) : '';
      const name = row.kind === 'entry' ? link(row.name, row.symbol) : row.name;
      return [[name, value, row.source.text, row.because]];
    });
    return lines.length === 0 ? null : table(['Quantity', 'Value', 'Assumption', 'Reason'], lines);
  },
};

export const instruments: Register = {
  id: 'instruments',
  title: 'Instruments',
  make: ({ view }) => {
    const taken = readingsByInstrument(view);
    const lines = rowsOf(view).flatMap(({ row }) => {
      if (row.kind !== 'instrument') return [];
      const dates: Child[] = [
        row.calibrated && element('div', {}, `calibrated ${row.calibrated}`),
        row.due && element('div', {}, `due ${row.due}`),
      ];
      return [
        [
          link(row.name, row.symbol),
          row.bounds ? [...row.bounds] : 'not given',
          row.serial ?? 'not given',
          dates,
          (taken.get(row.name) ?? []).join(', '),
        ],
      ];
    });
    return lines.length === 0 ? null : table(['Instrument', 'Limits', 'Serial number', 'Calibration', 'Readings'], lines);
  },
};

/** The names of the readings by what they read. */
function readingsByInstrument(view: SheetView): ReadonlyMap<string, readonly string[]> {
  const taken = new Map<string, string[]>();
  for (const { row } of rowsOf(view)) {
    if (!('reading' in row) || row.reading === null) continue;
    const name = row.kind === 'column' ? `${row.table}.${row.column}` : row.name;
    for (const target of new Set(row.reads.map((read) => read.target))) {
      if (target === null) continue;
      const known = taken.get(target);
      if (known) known.push(name);
      else taken.set(target, [name]);
    }
  }
  return taken;
}

function inputsOf({ view }: Pick<RegisterInput, 'view'>): EntryRow[] {
  return rowsOf(view).flatMap(({ row }) => (row.kind === 'entry' && row.role === 'input' ? [row] : []));
}

// A reading by an instrument is a measurement even where it does not say so.
function kindOf(row: EntryRow): string | null {
  return row.source?.kind ?? (row.reading === null ? null : 'measurement');
}

function headOf(kind: string | null): string {
  return kind === null ? 'Without a source' : `${kind[0]!.toUpperCase()}${kind.slice(1)}`;
}

function line(row: EntryRow): Child[] {
  const value = row.value ? valueText(row.value) : 'not calculated';
  return [link(row.name, row.symbol), row.description, value, [row.source?.text, row.reading].filter(Boolean).join(', ')];
}

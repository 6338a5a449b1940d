// How a sheet stands, in one line.
import type { SheetView, StatusView } from '../view/model.ts';

/** `3 requirements hold · 1 fails · 2 inputs without a source`. */
export function summaryLine(view: SheetView): string {
  const rows = view.cells.flatMap((cell) => cell.rows);
  const requirements = rows.filter((row) => row.kind === 'requirement');
  const count = (status: StatusView) => requirements.filter((row) => row.status === status).length;
  const bare = rows.filter((row) => row.kind === 'entry' && row.role === 'input' && row.source === null && row.reading === null).length;
  const accepted = requirements.filter((row) => row.concession !== null).length;
  const parts = [
    ...named([
      [count('holds'), 'holds', 'hold'],
      [count('fails'), 'fails', 'fail'],
      [count('undecided'), 'is undecided', 'are undecided'],
      [count('not calculated'), 'is not calculated', 'are not calculated'],
    ]),
    counted(accepted, 'concession', 'concessions'),
    counted(bare, 'input without a source', 'inputs without a source'),
  ].filter((part) => part !== null);
  return requirements.length === 0 ? ['No requirements', ...parts].join(' · ') : parts.join(' · ');
}

/** Counts of requirements, of which the first that is said has the noun. */
function named(counts: readonly (readonly [count: number, one: string, many: string])[]): readonly string[] {
  const said = counts.filter(([count]) => count > 0);
  return said.map(([count, one, many], i) => {
    const noun = i > 0 ? '' : count === 1 ? 'requirement ' : 'requirements ';
    return `${count} ${noun}${count === 1 ? one : many}`;
  });
}

function counted(count: number, one: string, many: string): string | null {
  return count === 0 ? null : `${count} ${count === 1 ? one : many}`;
}

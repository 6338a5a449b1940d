// Results that the file records otherwise than they come out now.

import type { SheetEvaluation } from '../run/evaluate.ts';
import { recordedResults } from '../run/record.ts';
import type { ResultRow } from '../sheet/results-block.ts';
import { calcCells } from '../sheet/sheet.ts';

/** A recorded result and what comes out now; null: there is none. */
export interface OtherResult {
  readonly result: string;
  readonly recorded: string | null;
  readonly now: string | null;
}

/** In the order of the text. Blocks without recorded results have none to compare. */
export function otherResults(evaluation: SheetEvaluation): readonly OtherResult[] {
  const computed = recordedResults(evaluation);
  return calcCells(evaluation.sheet).flatMap(({ number, results }) =>
    results?.rows ? different(results.rows, computed.get(number) ?? []) : [],
  );
}

/** Some of them in words: `I_n 34.40 A → 34.41 A, and 3 more`. */
export function otherResultsText(others: readonly OtherResult[], most = 3): string {
  const named = others.slice(0, most).map(({ result, recorded, now }) => `${result.trim()} ${recorded ?? 'none'} → ${now ?? 'none'}`);
  return [named.join(', '), ...(others.length > most ? [`and ${others.length - most} more`] : [])].join(', ');
}

function different(recorded: readonly ResultRow[], computed: readonly ResultRow[]): readonly OtherResult[] {
  const [before, after] = [byName(recorded), byName(computed)];
  return [...new Set([...after.keys(), ...before.keys()])].flatMap((name): readonly OtherResult[] => {
    const [was, is] = [before.get(name), after.get(name)];
    const result = (is ?? was)!.result;
    if (was === undefined || is === undefined) return [{ result, recorded: was ? whole(was) : null, now: is ? whole(is) : null }];
    if (was.value !== is.value) return [{ result, recorded: was.value || was.note, now: is.value || is.note }];
    return was.note === is.note ? [] : [{ result, recorded: was.note, now: is.note }];
  });
}

/** Rows by what they are of; the second row of one name is another. */
function byName(rows: readonly ResultRow[]): ReadonlyMap<string, ResultRow> {
  const counts = new Map<string, number>();
  return new Map(
    rows.map((row) => {
      const name = row.result.trim();
      counts.set(name, (counts.get(name) ?? 0) + 1);
      return [`${name}\0${counts.get(name)}`, row];
    }),
  );
}

function whole({ value, note }: ResultRow): string {
  return [value, note].filter((text) => text !== '').join(', ');
}

// Readings taken with an instrument whose calibration was overdue on that day.

import type { InstrumentResult } from '../../run/result.ts';
import { dateText } from '../../text/date.ts';
import { type Check, inFile, statements } from '../check.ts';
import { finding } from '../finding.ts';

/** Judged by the day of the reading, never by today: a calibration that lapsed later takes nothing from it. */
export const instruments: Check = (review) => {
  const all = statements(review);
  const byName = new Map(all.filter((s): s is InstrumentResult => s.kind === 'instrument').map((s) => [s.name, s.statement]));
  return all.flatMap((result) => {
    if (result.kind !== 'entry') return [];
    const { reading } = result.statement;
    const due = reading && byName.get(reading.instrument.name)?.due;
    if (!reading?.on || !due || reading.on.days <= due.days) return [];
    const message = `${reading.instrument.name} was due for calibration on ${dateText(due.days)}, before the reading of ${dateText(reading.on.days)}`;
    return [finding('instrument-overdue', 'finding', inFile(review, result, reading.at), message)];
  });
};

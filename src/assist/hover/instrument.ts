// An instrument: its limits, number, calibration, and what was read with it.
import { printBounds } from '../../language/print.ts';
import type { Item } from '../../language/program.ts';
import { resultOf } from '../../run/evaluate.ts';
import type { OpenSheet } from '../../run/open-sheet.ts';
import { dateText } from '../../text/date.ts';
import { code, described, fact, type HoverPart, listed, sourced } from './part.ts';

export function instrumentParts(open: OpenSheet, item: Item): readonly HoverPart[] {
  const { statement } = item;
  if (statement.kind !== 'instrument') return [];
  const { name, bounds, serial, calibrated, due, clauses } = statement;
  return [
    code(`instrument ${name.name}${bounds ? ` ${printBounds(bounds)}` : ''}`),
    ...described(clauses),
    ...fact('serial', serial?.value),
    ...fact('calibrated', calibrated && dateText(calibrated.days)),
    ...fact('due', due && dateText(due.days)),
    ...sourced(clauses),
    ...fact('used by', listed(resultOf(open).usedBy(name.name))),
  ];
}

// The rows that keep a record rather than a value: instruments, actions, used sheets, and lines that could not be read.
import { printBounds } from '../../language/print.ts';

import type { ActionResult, InstrumentResult, UnreadableResult, UseResult } from '../../run/result.ts';
import { dateText } from '../../text/date.ts';
import { literalNodes, plusMinusNodes } from '../math/quantity.ts';
import { symbol } from '../math/symbol.ts';
import { words } from '../math/typeset.ts';
import { math } from '../math.ts';
import type { ActionRow, FormulaParts, InstrumentRow, UnreadableRow, UseRow } from '../model.ts';
import { baseOf, type RowContext } from './context.ts';

export function instrumentRow(of: InstrumentResult, context: RowContext): InstrumentRow {
  const { bounds, serial, calibrated, due } = of.statement;
  return {
    ...baseOf(of, of.name, context),
    kind: 'instrument',
    name: of.name,
    symbol: symbol(of.name),
    bounds: bounds && boundsParts(bounds),
    limits: bounds && printBounds(bounds).trim(),
    serial: serial?.value ?? null,
    calibrated: calibrated && dateText(calibrated.days),
    due: due && dateText(due.days),
  };
}

function boundsParts(bounds: NonNullable<InstrumentResult['statement']['bounds']>): FormulaParts {
  if (bounds.kind === 'plusminus') return [math(plusMinusNodes(bounds))];
  return [math([words('within '), ...literalNodes(bounds.from).nodes, words(' to '), ...literalNodes(bounds.to).nodes])];
}

export function actionRow(of: ActionResult, context: RowContext): ActionRow {
  const { text, by, due } = of.statement;
  return { ...baseOf(of, text.value, context), kind: 'action', text: text.value, by: by?.value ?? null, due: due && dateText(due.days) };
}

export function useRow(of: UseResult, context: RowContext): UseRow {
  const { path, names } = of.statement;
  return { ...baseOf(of, path.value, context), kind: 'use', path: path.value, names: names?.map((n) => n.name) ?? null };
}

export function unreadableRow(of: UnreadableResult, context: RowContext): UnreadableRow {
  const { at, name } = of.statement;
  const written = context.cell.code.slice(at.start, at.end);
  return { ...baseOf(of, written, context), kind: 'unreadable', name: name?.name ?? null, written };
}

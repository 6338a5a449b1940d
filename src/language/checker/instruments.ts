// Instruments, and what a reading by one takes from it: the gain error that all its readings share, and an error of its own (U12).

import { dateText } from '../../text/date.ts';
import { nearSpellings } from '../../text/near.ts';
import type { Span } from '../../text/span.ts';
import type * as ast from '../ast.ts';
import type { Checked, CheckedStatement } from '../checked.ts';
import { nameProblem } from '../problems/names.ts';
import { typeProblem } from '../problems/types.ts';
import { disagreement, elementOf, listOf, typeOfUnit } from '../type.ts';
import { Input, limitsSpread, type Spread } from '../uncertainty/input.ts';
import { type Context, define } from './context.ts';
import { describe, describeChecked } from './describe.ts';
import { finish } from './finish.ts';

/** The rows of a computed column that is read with an instrument: the place of the row's number in the frame, and how many there are. */
export interface RowsRead {
  readonly index: number;
  readonly count: number;
}

/** The reading's value with the instrument's gain (shared) and its own offset. */
export function byInstrument(c: Context, value: Checked, reading: ast.TakenBy, rows: RowsRead | null = null): Checked {
  const { name, at } = reading.instrument;
  const defined = define(c, name);
  if (defined === null) {
    c.problems.push(nameProblem('unknown-instrument', at, { name, near: nearSpellings(name, c.world.namesOf(c.module, 'value')) }));
    return value;
  }
  if (defined.kind !== 'item' || defined.item.statement.kind !== 'instrument') {
    c.problems.push(nameProblem('no-instrument', at, { name }));
    return value;
  }
  const { item } = defined;
  const instrument = defined.item.statement;
  c.reads.add(item);
  if (c.world.signature(item) === null) c.missing.push(item);
  if (instrument.due !== null && reading.on !== null && reading.on.days > instrument.due.days) {
    c.problems.push(
      typeProblem('overdue-instrument', reading.on.at, { name, due: dateText(instrument.due.days), on: dateText(reading.on.days) }),
    );
  }
  if (value.type.is === 'unknown' || instrument.bounds === null) return value;
  const gain = item.checked?.inputs[0] ?? null;
  if (value.kind === 'list') {
    const items = value.items.map((v, i) => readingOf(c, v, gain, instrument.bounds!, `${c.item.label}[${i + 1}]`, at, null));
    return { ...value, type: listOf(elementOf(value.type)), uncertain: true, items };
  }
  return readingOf(c, value, gain, instrument.bounds, c.item.label, at, rows);
}

function readingOf(
  c: Context,
  value: Checked,
  gain: Input | null,
  bounds: ast.Bounds,
  name: string,
  at: Span,
  rows: RowsRead | null,
): Checked {
  const type = elementOf(value.type);
  if (type.is !== 'quantity' || bounds.kind !== 'plusminus') return value;
  const absolute = bounds.parts.filter((p) => !isRelativePart(p));
  for (const part of absolute) {
    const found = typeOfUnit(part.unit);
    if (!found.point && disagreement(found.dimension, type.dimension) === null) continue;
    const words = `the instrument's limit is in ${describe(found, part.unit)}, this reading in ${describeChecked(value)}`;
    c.problems.push(typeProblem('bounds-dimension', at, { words, mends: [] }));
    return value;
  }
  const spread = spreadOf(absolute, bounds.coverage);
  const made = (of: string) => new Input(of, c.item, value.at.start, 0, spread);
  const offsets =
    spread.components[0]!.u === 0
      ? []
      : rows === null
        ? [made(name)]
        : Array.from({ length: rows.count }, (_, i) => made(`${name}[${i + 1}]`));
  c.inputs.push(...offsets);
  return {
    kind: 'reading',
    at: value.at,
    type: value.type,
    display: value.display,
    uncertain: true,
    of: value,
    gain,
    offsets,
    row: rows?.index ?? null,
  };
}

/** Limits, or an expanded uncertainty, that several parts make up together. */
function spreadOf(parts: readonly ast.QuantityLiteral[], coverage: ast.PlusMinus['coverage']): Spread {
  const halfWidth = parts.reduce((sum, p) => sum + Math.abs(p.value), 0);
  return coverage === null
    ? limitsSpread(-halfWidth, halfWidth)
    : { components: [{ u: halfWidth / coverage.k, nu: coverage.nu }], limits: null };
}

/** A part in % or ppm is a gain. */
function isRelativePart(part: ast.QuantityLiteral): boolean {
  return part.unit !== null && (part.unit.text === '%' || part.unit.text === 'ppm');
}

/** An instrument: its gain error is one input shared by all its readings (U12). */
export function checkInstrument(c: Context, node: ast.Instrument): CheckedStatement {
  if (node.bounds?.kind === 'plusminus') {
    const spread = spreadOf(node.bounds.parts.filter(isRelativePart), node.bounds.coverage);
    if (spread.components[0]!.u > 0) c.inputs.push(new Input(`gain of ${node.name.name}`, c.item, node.at.start, 0, spread));
  }
  return finish(c, null, { kind: 'nothing' });
}

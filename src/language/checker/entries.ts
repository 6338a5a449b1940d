// Entries: inputs with their source and instrument, and computed values with their declared unit (T7, T10, U12).

import { dateText } from '../../text/date.ts';
import { nearSpellings } from '../../text/near.ts';
import type { Span } from '../../text/span.ts';
import type * as ast from '../ast.ts';
import type { Checked, CheckedStatement } from '../checked.ts';
import { nameProblem } from '../problems/names.ts';
import { typeProblem } from '../problems/types.ts';
import { disagreement, elementOf, listOf, typeOfUnit } from '../type.ts';
import { Input, limitsSpread } from '../uncertainty/input.ts';
import { type Context, checkExpression, unknown } from './context.ts';
import { declare } from './declared.ts';
import { describe, describeChecked } from './describe.ts';
import { finish } from './finish.ts';
import { checkInputList } from './literals.ts';
import { enclose, withLocals } from './locals.ts';

export function checkEntry(c: Context, node: ast.Entry, sourcesRequired: boolean): CheckedStatement {
  const { result, locals } = withLocals(c, node.clauses.locals, node.value, true, () => {
    const list = node.value.kind === 'list' ? checkInputList(c, node.value, node.name.name) : null;
    return list ?? checkExpression(c, node.value);
  });
  let value = declare(c, result, node.type);
  if (node.reading !== null) value = byInstrument(c, value, node.reading);
  if (value.type.is === 'table') {
    c.problems.push(typeProblem('entry-type', node.value.at, { found: describeChecked(value) }));
    value = unknown(value.at);
  }
  if (isInput(node)) checkSource(c, node, sourcesRequired);
  const body = enclose(value, locals);
  return finish(c, { type: withoutZero(body), display: body.display, uncertain: body.uncertain }, { kind: 'value', value: body });
}

function withoutZero(node: Checked): Checked['type'] {
  return node.type.is === 'quantity' && node.type.zero ? { ...node.type, zero: false } : node.type;
}

/** Whether an entry is an input: made of literals alone (T10). */
export function isInput(node: ast.Entry): boolean {
  return isLiteral(node.value);
}

function isLiteral(node: ast.Expression): boolean {
  switch (node.kind) {
    case 'quantity':
      return node.number !== 'pi';
    case 'date':
    case 'text':
    case 'yesno':
      return true;
    case 'readings':
      return node.of === null;
    case 'list':
      return node.items.every(isLiteral);
    case 'group':
      return isLiteral(node.inner);
    default:
      return false;
  }
}

function checkSource(c: Context, node: ast.Entry, required: boolean): void {
  const { source } = node.clauses;
  if (source === null && node.reading === null) {
    c.problems.push(typeProblem(required ? 'source-required' : 'no-source', node.name.at, { name: node.name.name }));
  }
  const literal = node.value;
  if (source?.kind === 'specification' && literal.kind === 'quantity' && literal.bounds !== null) {
    c.problems.push(typeProblem('specification-range', literal.bounds.at, {}));
  }
}

/** The reading's value with the instrument's gain (shared) and its own offset. */
function byInstrument(c: Context, value: Checked, reading: NonNullable<ast.Entry['reading']>): Checked {
  const { name, at } = reading.instrument;
  const defined = c.world.define(c.module, name);
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
  if (c.world.signature(item) === null) c.missing.add(item);
  if (instrument.due !== null && reading.on !== null && reading.on.days > instrument.due.days) {
    c.problems.push(
      typeProblem('overdue-instrument', reading.on.at, { name, due: dateText(instrument.due.days), on: dateText(reading.on.days) }),
    );
  }
  if (value.type.is === 'unknown' || instrument.bounds === null) return value;
  const gain = item.checked?.inputs[0] ?? null;
  if (value.kind === 'list') {
    const items = value.items.map((v, i) => readingOf(c, v, gain, instrument.bounds!, `${c.item.label}[${i + 1}]`, at));
    return { ...value, type: listOf(elementOf(value.type)), uncertain: true, items };
  }
  return readingOf(c, value, gain, instrument.bounds, c.item.label, at);
}

function readingOf(c: Context, value: Checked, gain: Input | null, bounds: ast.Bounds, name: string, at: Span): Checked {
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
  const halfWidth = absolute.reduce((sum, p) => sum + Math.abs(p.value), 0);
  const { coverage } = bounds;
  const spread =
    coverage === null
      ? limitsSpread(-halfWidth, halfWidth)
      : { components: [{ u: halfWidth / coverage.k, nu: coverage.nu }], limits: null };
  const offset = halfWidth === 0 ? null : new Input(name, c.item, value.at.start, 0, spread);
  if (offset !== null) c.inputs.push(offset);
  return { kind: 'reading', at: value.at, type: value.type, display: value.display, uncertain: true, of: value, gain, offset };
}

/** A part in % or ppm is a gain. */
export function isRelativePart(part: ast.QuantityLiteral): boolean {
  return part.unit !== null && (part.unit.text === '%' || part.unit.text === 'ppm');
}

/** An instrument: its gain error is one input shared by all its readings (U12). */
export function checkInstrument(c: Context, node: ast.Instrument): CheckedStatement {
  if (node.bounds?.kind === 'plusminus') {
    const relative = node.bounds.parts.filter((p) => isRelativePart(p)).reduce((sum, p) => sum + Math.abs(p.value), 0);
    const { coverage } = node.bounds;
    const spread =
      coverage === null ? limitsSpread(-relative, relative) : { components: [{ u: relative / coverage.k, nu: coverage.nu }], limits: null };
    if (relative > 0) c.inputs.push(new Input(`gain of ${node.name.name}`, c.item, node.at.start, 0, spread));
  }
  return finish(c, null, { kind: 'nothing' });
}

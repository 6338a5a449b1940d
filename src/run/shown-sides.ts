// Both sides of a decision as they are shown: in one unit, with the margin in hand and its uncertainty (D1, A6, F1).
import type { Checked } from '../language/checked.ts';
import type { DecidedSides } from '../language/compiler/decision.ts';
import { elementOf } from '../language/type.ts';
import { marginText, percentText, uncertainText } from '../units/number-text.ts';
import { differenceFromSI, differenceUnit } from '../units/quantity.ts';
import { spreadAgain } from './entry-result.ts';
import type { Sides } from './result.ts';
import { show, unitFor } from './shown.ts';
import { writtenNumber } from './written.ts';

/** What was decided: the row of `for each`, and whether at a point of `throughout`, where entries are not as they are elsewhere. */
interface Decided {
  readonly row: number | null;
  readonly atPoint: boolean;
}

/** Both sides in the unit of the first that has one of its own. */
export function shownSides(sides: DecidedSides, digits: number, { row, atPoint }: Decided): Sides {
  const { left, right, leftNode, rightNode, relation, limitIsLeft } = sides;
  const type = elementOf(leftNode.type);
  if (sides.of !== 'quantity' || type.is !== 'quantity') {
    const text = (value: unknown, node: Checked) => show(value, elementOf(node.type), null, { digits });
    return {
      left: text(left, leftNode),
      right: text(right, rightNode),
      relation,
      limitIsLeft,
      slack: sides.slack,
      margin: dayMargin(sides),
      percent: null,
      uncertainty: null,
      expanded: 0,
    };
  }
  const explicit = [leftNode, rightNode].find((n) => n.display !== 'auto' && !isZero(n))?.display;
  const kind = isZero(leftNode) ? elementOf(rightNode.type) : type;
  const unit = unitFor(kind, explicit ?? 'auto', [left, right]);
  const side = (value: unknown, node: Checked) => {
    const spread = node.kind === 'entry' && !atPoint ? spreadAgain(node.item) : undefined;
    return show(value, kind, unit, { digits, written: sameUnit(node, unit) ? writtenNumber(node, value, row) : null, spread });
  };
  const difference = unit === null ? null : differenceUnit(unit);
  const inUnit = (si: number, text: (x: number) => string) =>
    text(differenceFromSI(si, difference)) + (difference === null ? '' : ` ${difference.text}`);
  const { expanded } = sides.combined;
  const point = kind.is === 'quantity' && kind.point;
  return {
    left: side(left, leftNode),
    right: side(right, rightNode),
    relation,
    limitIsLeft,
    slack: sides.slack,
    margin: inUnit(sides.slack, (x) => marginText(x, differenceFromSI(expanded, difference), digits)),
    percent: point || sides.limit === 0 ? null : `${percentText(sides.slack / Math.abs(sides.limit))} %`,
    uncertainty: expanded > 0 ? inUnit(expanded, (x) => uncertainText(0, x).U) : null,
    expanded,
  };
}

function dayMargin(sides: DecidedSides): string {
  return sides.of === 'date' && !Number.isNaN(sides.slack) ? `${Math.round(sides.slack)} d` : '';
}

function isZero(node: Checked): boolean {
  const type = elementOf(node.type);
  return type.is === 'quantity' && type.zero;
}

function sameUnit(node: Checked, unit: ReturnType<typeof unitFor>): boolean {
  if (node.display === 'auto') return false;
  return (node.display?.text ?? '') === (unit?.text ?? '');
}

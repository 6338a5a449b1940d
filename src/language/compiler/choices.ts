// Choices at work: which rows each part of the condition rules out, ties, what is undecided (D4, D5).
import { displayUnit } from '../../units/display-unit.ts';
import { marginText, uncertainText } from '../../units/number-text.ts';
import { differenceFromSI, differenceUnit } from '../../units/quantity.ts';
import type { CheckedChoice } from '../checked.ts';
import { Fault, raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import type { TableModel } from '../program.ts';
import { elementOf } from '../type.ts';
import { best, type Uncertain } from '../uncertainty/dual.ts';
import { same } from './comparisons.ts';
import type { Compiler } from './compiler.ts';
import type { DecidedSides } from './decision.ts';
import type { Evaluate, Frame } from './frame.ts';
import { type CompiledCondition, compileCondition, decided, fitting, rowLabel } from './row-conditions.ts';
import { RowValue } from './values.ts';

/** What a choice found. */
export interface ChoiceFound {
  readonly table: TableModel;
  readonly row: number;
  readonly ruledOut: readonly { readonly condition: string; readonly count: number }[];
  readonly ties: number;
  /** Where the chosen row's condition is undecided: the next row in order that holds with U, -1 where none does. Else null. */
  readonly undecided: number | null;
}

export function compileChoice(k: Compiler, node: CheckedChoice): Evaluate {
  const { table, order } = node;
  const condition = compileCondition(k, node.where);
  const by = node.by === null ? null : k.compile(node.by);
  return (f) => {
    const { rows, counts, last } = fitting(condition, table, f);
    const value = (row: number): number | null => {
      f.locals[condition.row] = row;
      return by === null ? null : orderValue(by, f);
    };
    const ranked = rank(by === null ? rows : rows.filter((r) => value(r) !== null), order, (r) => value(r)!);
    const chosen = ranked[0];
    if (chosen === undefined) {
      const ruledOut = condition.parts.map((p, i) => `${p.text}: ${counts[i]}`).join(', ');
      return raise(
        valueProblem('no-row-left', node.at, {
          table: table.name,
          rows: table.rowCount,
          last: condition.parts[last]?.text ?? '',
          ruledOut,
        }),
      );
    }
    const ties = by === null ? 1 : ranked.filter((r) => same(value(r)!, value(chosen)!)).length;
    if (!f.run.shifting) {
      const undecided =
        condition.parts.some((p) => p.decide !== null) && !decided(condition, chosen, f)
          ? (ranked.find((r) => r !== chosen && decided(condition, r, f)) ?? -1)
          : null;
      if (undecided !== null) {
        const next = undecided === -1 ? null : rowLabel(table, undecided);
        const inHand = undecidedMargin(condition, chosen, f);
        f.run.notes.push(valueProblem('choice-undecided', node.at, { row: rowLabel(table, chosen), inHand, next }));
      }
      f.run.choice = {
        table,
        row: chosen,
        ruledOut: condition.parts.map((p, i) => ({ condition: p.text, count: counts[i]! })),
        ties,
        undecided,
      };
    }
    return new RowValue(table, chosen);
  };
}

function orderValue(by: Evaluate, f: Frame): number | null {
  try {
    return best(by(f) as Uncertain);
  } catch (fault) {
    if (fault instanceof Fault && fault.reason === 'absent') return null;
    throw fault;
  }
}

/** Rows from best to worst; equal ones in table order. */
function rank(rows: readonly number[], order: CheckedChoice['order'], value: (row: number) => number): readonly number[] {
  if (order === 'first') return rows;
  const sign = order === 'least' ? 1 : -1;
  const keyed = rows.map((row) => ({ row, key: value(row) }));
  keyed.sort((a, b) => (same(a.key, b.key) ? a.row - b.row : sign * (a.key - b.key)));
  return keyed.map((r) => r.row);
}

/** `, 0.16 A in hand against U = 0.76 A`, of the part that is undecided. */
function undecidedMargin(condition: CompiledCondition, row: number, f: Frame): string {
  f.locals[condition.row] = row;
  for (const { decide } of condition.parts) {
    const { outcome, sides } = decide?.(f) ?? { outcome: 'holds', sides: null };
    if (outcome !== 'undecided' || sides === null) continue;
    return againstUncertainty(sides);
  }
  return '';
}

/** Margin and U, rounded as those of a requirement (F1), in the unit that one of the sides is shown in. */
function againstUncertainty({ leftNode, rightNode, slack, combined: { expanded } }: DecidedSides): string {
  const type = elementOf(leftNode.type);
  if (type.is !== 'quantity') return '';
  const given = [leftNode, rightNode].map((node) => node.display).find((display) => display !== 'auto');
  const unit = given === undefined ? displayUnit(type.dimension, type.power, false, expanded) : given;
  const shown = unit === null ? null : differenceUnit(unit);
  const behind = shown === null || shown.text === '' ? '' : ` ${shown.text}`;
  const U = differenceFromSI(expanded, shown);
  return `, ${marginText(differenceFromSI(slack, shown), U, 2)}${behind} in hand against U = ${uncertainText(0, U).U}${behind}`;
}

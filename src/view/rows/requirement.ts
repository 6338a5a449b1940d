// The row of a requirement: its condition, both sides, the margin in hand and where the value lies against the limit.
import type { Requirement } from '../../language/ast.ts';
import { print, printRange } from '../../language/print.ts';
import { marginWords } from '../../run/margin-words.ts';
import type { RequirementResult, Sides } from '../../run/result.ts';
import { dateText } from '../../text/date.ts';
import { differenceFromSI } from '../../units/quantity.ts';
import { formulaOf } from '../math/formula.ts';
import { readableText, shownText } from '../math/quantity.ts';
import { RELATIONS } from '../math.ts';
import type { GaugeView, RequirementRow, SidesView } from '../model.ts';
import { baseOf, type RowContext } from './context.ts';
import { valueView } from './value.ts';

export function requirementRow(of: RequirementResult, context: RowContext): RequirementRow {
  const { statement } = of;
  return {
    ...baseOf(of, of.condition, context),
    kind: 'requirement',
    force: of.force,
    status: of.status,
    condition: formulaOf(statement.condition, statement.clauses.locals, context.formula),
    sides: of.sides && sidesOf(of.sides),
    rows: of.rows.map((r) => ({ label: r.label, status: r.status, sides: r.sides && sidesOf(r.sides) })),
    forEach: statement.forEach && forEach(statement.forEach),
    throughout: throughout(of),
    concession: concession(statement),
  };
}

function sidesOf(sides: Sides): SidesView {
  return {
    left: valueView(sides.left),
    right: valueView(sides.right),
    relation: RELATIONS[sides.relation],
    margin:
      marginWords(sides, (margin, percent) => `${readableText(margin)}${percent === null ? '' : ` (${readableText(percent)})`}`) ?? '',
    uncertainty: sides.uncertainty && `U = ${readableText(sides.uncertainty)}`,
    gauge: gaugeOf(sides),
  };
}

function gaugeOf({ left, right, relation, limitIsLeft, expanded }: Sides): GaugeView | null {
  if (left.kind !== 'quantity' || right.kind !== 'quantity') return null;
  if (relation !== '<' && relation !== '<=' && relation !== '>' && relation !== '>=') return null;
  const [value, limit] = limitIsLeft ? [right, left] : [left, right];
  return {
    value: value.value,
    limit: limit.value,
    width: Math.abs(differenceFromSI(expanded, left.unit)),
    allowed: (relation === '<' || relation === '<=') !== limitIsLeft ? 'below' : 'above',
    fromZero: !(left.unit?.point ?? false),
    valueText: shownText(value),
    limitText: shownText(limit),
  };
}

function forEach({ table, where }: NonNullable<Requirement['forEach']>): string {
  return `for each row of ${table.name}${where === null ? '' : ` where ${print(where)}`}`;
}

function throughout(of: RequirementResult): string | null {
  const spans = of.statement.throughout;
  if (spans.length === 0) return null;
  const worst = of.worstAt.map((at) => `${at.name} = ${shownText(at.value)}`).join(', ');
  return `throughout ${spans.map(printRange).join(', ')}${worst === '' ? '' : `; the worst point is ${worst}`}`;
}

function concession({ concession: c }: Requirement): RequirementRow['concession'] {
  return c && { by: c.by.value, until: dateText(c.until.days), because: c.because.value };
}

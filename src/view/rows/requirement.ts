// The row of a requirement: its condition, both sides, the margin in hand and where the value lies against the limit.
import type { Expression, Range, Requirement } from '../../language/ast.ts';
import type { RequirementResult, Sides } from '../../run/result.ts';
import { differenceFromSI } from '../../units/quantity.ts';
import { formulaOf, oneLine } from '../math/formula.ts';
import { readableText, shownText } from '../math/quantity.ts';
import type { Scope } from '../math/scope.ts';
import { isoDate, RELATIONS } from '../math.ts';
import type { GaugeView, RequirementRow, SidesView } from '../model.ts';
import { baseOf, type RowContext } from './context.ts';
import { valueView } from './value.ts';

export function requirementRow(of: RequirementResult, context: RowContext): RequirementRow {
  const { statement } = of;
  const values = knownSides(of, context.formula.values);
  return {
    ...baseOf(of, of.condition, context),
    kind: 'requirement',
    force: of.force,
    status: of.status,
    condition: formulaOf(statement.condition, statement.clauses.locals, { ...context.formula, values }),
    sides: of.sides && sidesOf(of.sides),
    rows: of.rows.map((r) => ({ label: r.label, status: r.status, sides: r.sides && sidesOf(r.sides) })),
    forEach: statement.forEach && forEach(statement.forEach, context),
    throughout: throughout(of, context),
    concession: concession(statement),
  };
}

// A side that is the column of a row (`K.I_AC3`) has the value that the decision found.
function knownSides(of: RequirementResult, values: Scope): Scope {
  const { condition } = of.statement;
  if (condition.kind !== 'comparison' || condition.operands.length !== 2 || of.sides === null || of.statement.forEach !== null)
    return values;
  const [left, right] = condition.operands;
  return (name, column) => {
    if (column !== null && isColumn(left!, name, column)) return { kind: 'value', shown: of.sides!.left };
    if (column !== null && isColumn(right!, name, column)) return { kind: 'value', shown: of.sides!.right };
    return values(name, column);
  };
}

function isColumn(e: Expression, name: string, column: string): boolean {
  return e.kind === 'member' && e.of.kind === 'name' && e.of.name === name && e.column.name === column;
}

function sidesOf(sides: Sides): SidesView {
  return {
    left: valueView(sides.left),
    right: valueView(sides.right),
    relation: RELATIONS[sides.relation],
    margin: marginText(sides),
    uncertainty: sides.uncertainty && `U = ${readableText(sides.uncertainty)}`,
    gauge: gaugeOf(sides),
  };
}

function marginText({ slack, margin, percent }: Sides): string {
  if (margin === '') return '';
  if (slack === 0) return 'exactly at the limit';
  const width = [margin, percent].map((t) => t && readableText(t.replace(/^[-−]/, '')));
  return `${width[0]}${width[1] ? ` (${width[1]})` : ''} ${slack > 0 ? 'in hand' : 'short'}`;
}

function gaugeOf({ left, right, relation, expanded }: Sides): GaugeView | null {
  if (left.kind !== 'quantity' || right.kind !== 'quantity') return null;
  if (relation !== '<' && relation !== '<=' && relation !== '>' && relation !== '>=') return null;
  return {
    value: left.value,
    limit: right.value,
    width: Math.abs(differenceFromSI(expanded, left.unit)),
    allowed: relation === '<' || relation === '<=' ? 'below' : 'above',
    fromZero: !(left.unit?.point ?? false),
    valueText: shownText(left),
    limitText: shownText(right),
  };
}

function forEach(clause: NonNullable<Requirement['forEach']>, context: RowContext): string {
  const where = clause.where && oneLine(context.cell.code.slice(clause.where.at.start, clause.where.at.end));
  return `for each row of ${clause.table.name}${where ? ` where ${where}` : ''}`;
}

function throughout(of: RequirementResult, context: RowContext): string | null {
  const spans = of.statement.throughout;
  if (spans.length === 0) return null;
  const text = (e: Expression) => readableText(oneLine(context.cell.code.slice(e.at.start, e.at.end)));
  const ranges = spans.map((r: Range) => `${r.variable.name} from ${text(r.from)} to ${text(r.to)}`).join(', ');
  const worst = of.worstAt.map((at) => `${at.name} = ${shownText(at.value)}`).join(', ');
  return `throughout ${ranges}${worst === '' ? '' : `; the worst point is ${worst}`}`;
}

function concession({ concession: c }: Requirement): RequirementRow['concession'] {
  return c && { by: c.by.value, until: isoDate(c.until.days), because: c.because.value };
}

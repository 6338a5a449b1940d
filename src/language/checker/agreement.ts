// Whether two values may meet in a sum, a comparison, a list or a choice, and the problem that says why not.
import type { Mend } from '../../text/problem.ts';
import type { Span } from '../../text/span.ts';
import { PLAIN } from '../../units/dimension.ts';
import type { Checked } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { common, disagreement, elementOf, type QuantityType, quantity } from '../type.ts';
import type { Context } from './context.ts';
import { degreesInstead } from './degrees.ts';
import { describeChecked } from './describe.ts';
import { unitText, withUnit } from './unit-mends.ts';

/** How a meeting is worded: "adds V and …", "compares …", "the branches are …". */
export interface Meeting {
  readonly doing: string;
  readonly at: Span;
}

/**
 * The type of two quantities that agree: dimension by R3, kind of power where both have it (W1), the other's type where one is
 * the literal 0 (T5). Null where they do not agree; the problem has been reported. Points agree with points only.
 */
export function meet(c: Context, left: Checked, right: Checked, meeting: Meeting): QuantityType | null {
  const a = elementOf(left.type);
  const b = elementOf(right.type);
  if (a.is !== 'quantity' || b.is !== 'quantity') return null;
  if (a.zero && b.zero) return a;
  if (a.zero || b.zero) {
    const other = a.zero ? b : a;
    if (!other.point) return other;
    c.problems.push(typeProblem('point-zero', (a.zero ? left : right).at, {}));
    return null;
  }
  if (a.point !== b.point && a.dimension.si === b.dimension.si) {
    const words = `${meeting.doing} a point of temperature and a difference; a difference is written in K or degR`;
    c.problems.push(typeProblem('point-arithmetic', right.at, { words, mends: [] }));
    return null;
  }
  const why = disagreement(a.dimension, b.dimension);
  if (why === 'dimension') {
    const hints = [percentHint(left, right, meeting), degreesInstead(left, right.type), degreesInstead(right, left.type)];
    c.problems.push(
      typeProblem('dimension-mismatch', meeting.at, {
        doing: meeting.doing,
        left: describeChecked(left),
        right: describeChecked(right),
        hint: hints.map(({ hint }) => hint).join(''),
        mends: [...hints.flatMap(({ mends }) => mends), ...withUnit(left, unitText(right)), ...withUnit(right, unitText(left))],
      }),
    );
    return null;
  }
  if (why !== null) {
    const mends = [left, right].flatMap(turnMends);
    c.problems.push(typeProblem(why === 'angle' ? 'turns-against-radians' : 'bare-turns', meeting.at, { doing: meeting.doing, mends }));
    return null;
  }
  if (a.power !== null && b.power !== null && a.power !== b.power) {
    c.problems.push(typeProblem('mixed-power', meeting.at, { doing: meeting.doing, first: a.power, second: b.power }));
  }
  return quantity(common(a.dimension, b.dimension), { point: a.point, power: a.power === b.power ? a.power : null });
}

/** `400 V + 5 %`: what was likely meant is 5 % more; of `400 V +- 5 %` also its limits. */
function percentHint(left: Checked, right: Checked, meeting: Meeting): { hint: string; mends: readonly Mend[] } {
  const percent = right.kind === 'constant' && right.display !== null && right.display !== 'auto' && right.display.text === '%';
  const type = elementOf(left.type);
  const less = meeting.doing.startsWith('subtracts');
  if (!percent || type.is !== 'quantity' || type.dimension === PLAIN || right.written === null) return { hint: '', mends: [] };
  if (!less && !meeting.doing.startsWith('adds')) return { hint: '', mends: [] };
  const size = right.written.replace('-', '');
  const negative = size !== right.written;
  const write = `* (1 ${less === negative ? '+' : '-'} ${size} %)`;
  const at = { start: left.at.end, end: right.at.end };
  return {
    hint: `; for ${size} % ${less === negative ? 'more' : 'less'} write \`${write}\`${negative && !less ? `, for limits \`± ${size} %\`` : ''}`,
    mends: [{ title: `Write \`${write}\``, edits: [{ at, text: ` ${write}` }] }],
  };
}

/** The mends that make radians of turns: multiply `pi` by rad where it stands as a bare factor. */
export function turnMends(node: Checked): Mend[] {
  const places: Span[] = [];
  collectPi(node, places);
  return places.slice(0, 1).map((at) => ({ title: 'Write `pi rad`', edits: [{ at: { start: at.end, end: at.end }, text: ' rad' }] }));
}

function collectPi(node: Checked, places: Span[]): void {
  if (node.kind === 'constant' && node.written === 'pi') places.push(node.at);
  if (node.kind === 'product') for (const f of node.factors) collectPi(f.operand, places);
  if (node.kind === 'sum') for (const t of node.terms) collectPi(t.operand, places);
  if (node.kind === 'power') collectPi(node.base, places);
}

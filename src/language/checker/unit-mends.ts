// The mends for a unit that is missing or is another one: the number with the wanted unit, or the declaration with the found one.
import type { Mend } from '../../text/problem.ts';
import { PLAIN } from '../../units/dimension.ts';
import { displayUnit } from '../../units/display-unit.ts';
import type * as ast from '../ast.ts';
import type { Checked, Display } from '../checked.ts';
import { elementOf } from '../type.ts';

/** `34` where amperes are wanted: `34 A`. None where it is no plain number as written. */
export function withUnit(node: Checked, wanted: string): Mend[] {
  const type = elementOf(node.type);
  const isPlain = type.is === 'quantity' && type.dimension === PLAIN && node.display === null;
  if (!isPlain || node.kind !== 'constant' || node.written === null || node.written === 'pi' || wanted === '') return [];
  const at = { start: node.at.end, end: node.at.end };
  return [{ title: `Add the unit: \`${node.written} ${wanted}\``, edits: [{ at, text: ` ${wanted}` }] }];
}

/** `I: V = 2 A`: the declaration in the unit that the value has. */
export function declaredAs(node: Checked, mark: ast.TypeMark): Mend[] {
  const unit = unitText(node);
  if (mark.kind !== 'unit' || node.type.is !== 'quantity' || unit === '') return [];
  return [{ title: `Declare it in \`${unit}\``, edits: [{ at: mark.at, text: unit }] }];
}

/** The unit that a value is shown in; '' for what has none. */
export function unitText({ type, display }: Checked): string {
  const element = elementOf(type);
  if (element.is !== 'quantity' || element.dimension === PLAIN) return '';
  return textOf(display) ?? displayUnit(element.dimension, element.power, element.point, 1).text;
}

function textOf(display: Display): string | null {
  return display === null || display === 'auto' ? null : display.text;
}

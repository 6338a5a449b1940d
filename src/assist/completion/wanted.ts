// Which dimension a value at the cursor should have: of a parameter, of the other side of a comparison or a sum, or as it is declared.
import type { Expression, TypeMark } from '../../language/ast.ts';
import type { Dimension } from '../../units/dimension.ts';
import type { Unit } from '../../units/unit.ts';
import { callAt } from '../call-at.ts';
import { dimensionOf, ofMark } from '../dimension-of.ts';
import { resolveCall } from '../referent.ts';
import type { Scope } from '../scope.ts';
import { walkScoped } from '../scoped-walk.ts';
import { PLACEHOLDER, type Site } from './site.ts';

/** Null where nothing says it. */
export function wantedDimension(site: Site): Dimension | null {
  return ofMark(markOfCursor(site)) ?? (callAt(site.before) ? null : besides(site));
}

/** The unit in which it is written down: a parameter's, or the declared one. */
export function wantedUnit(site: Site): Unit | null {
  const mark = markOfCursor(site);
  const one = mark?.kind === 'list' ? mark.of : mark;
  return one?.kind === 'unit' ? one.unit : null;
}

function markOfCursor(site: Site): TypeMark | null {
  const call = callAt(site.before);
  if (call) return ofParameter(site, call.callee.name, call.name ?? call.argument);
  const statement = site.item?.statement;
  return statement?.kind === 'entry' && isCursor(site, statement.value) ? statement.type : null;
}

function ofParameter({ n }: Site, name: string, parameter: string | number): TypeMark | null {
  const callee = resolveCall(n, name);
  if (callee?.kind !== 'function' || callee.item.statement.kind !== 'function') return null;
  const { parameters } = callee.item.statement;
  const found = typeof parameter === 'number' ? parameters[parameter] : parameters.find((p) => p.name.name === parameter);
  return found?.type ?? null;
}

/** Of what the value is compared with, or added to. */
function besides(site: Site): Dimension | null {
  if (!site.item) return null;
  let found: Dimension | null = null;
  const expression = (node: Expression, scope: Scope) => {
    const operands = node.kind === 'comparison' ? node.operands : node.kind === 'sum' ? node.terms.map((term) => term.operand) : [];
    if (!operands.some((operand) => isCursor(site, operand))) return;
    for (const operand of operands) if (!isCursor(site, operand)) found ??= dimensionOf(site.n, scope, operand);
  };
  walkScoped(site.n, site.item, { expression });
  return found;
}

/** Whether the word at the cursor is this value, or stands directly behind this number. */
function isCursor({ before }: Site, node: Expression): boolean {
  return node.kind === 'name' ? node.name === PLACEHOLDER : node.kind === 'quantity' && node.at.end === before.at(-1)?.at.end;
}

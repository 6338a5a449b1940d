// The dimension that an expression has by its form, as far as it can be told without checking: for what is likely to be written next.
import type { Expression, TypeMark } from '../language/ast.ts';
import type { ColumnModel, Item } from '../language/program.ts';
import { elementOf, type Type } from '../language/type.ts';
import { type Dimension, PLAIN } from '../units/dimension.ts';
import { resolve, resolveCall } from './referent.ts';
import type { Names, Scope } from './scope.ts';
import { tableOf } from './table-of.ts';

/** Null where it can't be told. */
export function dimensionOf(n: Names, scope: Scope, node: Expression): Dimension | null {
  switch (node.kind) {
    case 'quantity':
      return node.unit?.dimension ?? PLAIN;
    case 'name':
      return dimensionOfName(n, scope, node.name);
    case 'member':
      return ofColumn(tableOf(n, scope, node.of)?.columns.get(node.column.name));
    case 'group':
      return dimensionOf(n, scope, node.inner);
    case 'negate':
      return dimensionOf(n, scope, node.operand);
    case 'sum':
      return dimensionOf(n, scope, node.terms[0]!.operand);
    case 'product': {
      const others = node.factors.map(({ operand }) => dimensionOf(n, scope, operand)).filter((d) => d !== PLAIN);
      return others.length === 0 ? PLAIN : others.length === 1 && node.factors.every(({ inverse }) => !inverse) ? others[0]! : null;
    }
    case 'call': {
      const callee = resolveCall(n, node.callee.name);
      return callee?.kind === 'function' && callee.item.statement.kind === 'function' ? ofMark(callee.item.statement.result) : null;
    }
    default:
      return null;
  }
}

function dimensionOfName(n: Names, scope: Scope, name: string): Dimension | null {
  const referent = resolve(n, scope, name);
  switch (referent?.kind) {
    case 'entry':
      return ofItem(referent.item);
    case 'column':
      return ofColumn(referent.table.columns.get(name));
    case 'parameter':
      return referent.binding.type === null ? PLAIN : ofMark(referent.binding.type);
    case 'local':
      return ofMark(referent.binding.type);
    default:
      return null;
  }
}

/** Of the values of an item that has been checked. */
export function ofItem(item: Item): Dimension | null {
  return item.checked === null ? null : ofType(elementOf(item.checked.signature.type));
}

function ofColumn(column: ColumnModel | undefined): Dimension | null {
  if (!column) return null;
  return column.item ? ofItem(column.item) : ofType(column.type);
}

/** Of what stands behind a colon. */
export function ofMark(mark: TypeMark | null): Dimension | null {
  if (mark?.kind === 'list') return ofMark(mark.of);
  return mark?.kind === 'unit' ? mark.unit.dimension : null;
}

const ofType = (type: Type): Dimension | null => (type.is === 'quantity' ? type.dimension : null);

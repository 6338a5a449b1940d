// Where units stand in a statement, and the symbols in each: `W/(m²·K)` has three.
import type * as ast from '../language/ast.ts';
import { type Span, span } from '../text/span.ts';
import { longestSymbol } from '../units/catalogue.ts';
import type { Referent } from './referent.ts';

/** The symbols of the unit that stands at a place of the code. */
export function unitsIn(code: string, at: Span): readonly { readonly at: Span; readonly referent: Referent }[] {
  const found: { at: Span; referent: Referent }[] = [];
  for (let offset = at.start; offset < at.end; ) {
    const unit = longestSymbol(code, offset);
    if (unit && unit.end <= at.end) {
      found.push({ at: span(offset, unit.end), referent: { kind: 'unit', name: unit.symbol.symbol, symbol: unit.symbol } });
      offset = unit.end;
    } else offset++;
  }
  return found;
}

/** Units behind colons, and in an instrument's limits. */
export function unitPlaces(statement: ast.Statement): readonly Span[] {
  return [...marksOf(statement).flatMap(unitOfMark), ...(statement.kind === 'instrument' ? unitsOfBounds(statement.bounds) : [])];
}

/** Units of a literal and of its limits. Those of repeated readings stand with each of them. */
export function unitsOfLiteral(node: ast.QuantityLiteral | ast.Readings): readonly Span[] {
  const own = node.kind === 'quantity' && node.unitAt ? [node.unitAt] : [];
  return [...own, ...unitsOfBounds(node.bounds)];
}

function unitsOfBounds(bounds: ast.Bounds | null): readonly Span[] {
  if (bounds === null) return [];
  return (bounds.kind === 'within' ? [bounds.from, bounds.to] : bounds.parts).flatMap(unitsOfLiteral);
}

function unitOfMark(mark: ast.TypeMark | null): readonly Span[] {
  if (mark?.kind === 'list') return unitOfMark(mark.of);
  return mark?.kind === 'unit' ? [mark.at] : [];
}

function marksOf(statement: ast.Statement): readonly (ast.TypeMark | null)[] {
  const locals = statement.clauses.locals.map((local) => local.type);
  switch (statement.kind) {
    case 'entry':
    case 'column':
      return [statement.type, ...locals];
    case 'function':
      return [statement.result, ...statement.parameters.map((parameter) => parameter.type), ...locals];
    case 'curve':
    case 'tabulation':
      return [...statement.traces.map((trace) => trace.type), ...locals];
    default:
      return locals;
  }
}

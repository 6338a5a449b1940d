// An expression as MathML: names typeset, quotients as fractions, parentheses only where reading needs them.
import type * as ast from '../language/ast.ts';
import type { Shown } from '../run/result.ts';
import { dateText } from '../text/date.ts';
import { joined, negated, product, raised, root, sum } from './math/arithmetic.ts';
import { literalNodes, type Numeral, numeral, plusMinusNodes, shownText } from './math/quantity.ts';
import { type Scope, SYMBOLS } from './math/scope.ts';
import { isSingleLetter, symbol } from './math/symbol.ts';
import {
  APPLIED,
  bound,
  bracketed,
  bracketedParts,
  COMMA,
  followed,
  grouped,
  infix,
  LEVEL,
  led,
  nodesOf,
  oneNode,
  piece,
  type Typeset,
  whole,
  words,
} from './math/typeset.ts';
import { caseLines, isWorded, worded } from './math/worded.ts';
import { element, type ViewNode } from './node.ts';

/** The expression as `math` elements; a line may break between two of them, and does at a `br`. */
export function mathParts(expression: ast.Expression, scope: Scope = SYMBOLS): ViewNode[] {
  let inner = expression;
  while (inner.kind === 'group') inner = inner.inner;
  if (inner.kind === 'if')
    return caseLines(inner, scope, typeset).flatMap((parts, i) => [...(i === 0 ? [] : [element('br', {})]), ...parts.map(math)]);
  return typeset(expression, scope).parts.map(math);
}

/** Nodes as one formula. */
export function math(nodes: readonly ViewNode[]): ViewNode {
  return element('math', { displaystyle: 'true' }, ...nodes);
}

/** Sets an expression. */
export function typeset(e: ast.Expression, scope: Scope): Typeset {
  if (isWorded(e)) return worded(e, scope, typeset);
  switch (e.kind) {
    case 'quantity':
      return fromNumeral(literalNodes(e));
    case 'readings':
      return readings(e, scope);
    case 'date':
      return piece([words(dateText(e.days))], LEVEL.atom);
    case 'text':
      return piece([words(`“${e.value}”`)], LEVEL.atom);
    case 'yesno':
      return piece([words(e.value ? 'yes' : 'no')], LEVEL.atom);
    case 'name':
      return name(e.name, scope, null);
    case 'row':
      return piece([words('row')], LEVEL.atom);
    case 'call':
      return call(e, scope);
    case 'member':
      return member(e, scope, null);
    case 'list':
      return list(e.items.map((item) => typeset(item, scope)));
    case 'negate':
      return negated(typeset(e.operand, scope));
    case 'sum':
      return sum(e.terms.map((t) => ({ minus: t.sign === -1, operand: typeset(t.operand, scope) })));
    case 'product':
      return product(e.factors.map((f) => ({ inverse: f.inverse, operand: typeset(f.operand, scope) })));
    case 'power':
      return power(e, scope);
    case 'squareRoot':
      return root(typeset(e.operand, scope));
    case 'comparison':
      return comparison(e, scope);
    case 'and':
    case 'or':
      return junction(e, scope);
    case 'not':
      return piece([words('not '), ...nodesOf(bound(typeset(e.operand, scope), LEVEL.not))], LEVEL.not);
    case 'group':
      return typeset(e.inner, scope);
    case 'hole':
      return piece([words('…')], LEVEL.atom);
    default:
      return e satisfies never;
  }
}

function fromNumeral(n: Numeral): Typeset {
  return piece(n.nodes, n.compound ? LEVEL.product : LEVEL.atom, n.compound ? 'word' : 'digit', n.negative);
}

/** A shown value as part of a formula; null for what is too large to stand there. */
function shownPiece(shown: Shown): Typeset | null {
  if (shown.kind === 'quantity') return fromNumeral(numeral(shown.number, shown.unit));
  if (shown.kind === 'table' || (shown.kind === 'list' && shown.count > 4)) return null;
  if (shown.kind !== 'list') return piece([words(shown.kind === 'text' ? `“${shown.short}”` : shownText(shown))], LEVEL.atom);
  const items = shown.items.map(shownPiece);
  return items.includes(null) ? null : list(items as Typeset[]);
}

// A name or what it stands for. `exponent` is set into the symbol, so that `U_n^2` has both behind one letter.
function name(spelled: string, scope: Scope, exponent: ViewNode | null): Typeset {
  const meaning = scope(spelled, null);
  const put = meaning === null ? null : meaning.kind === 'value' ? shownPiece(meaning.shown) : typeset(meaning.expression, meaning.scope);
  if (put !== null) return exponent === null ? put : raised(put, exponent);
  if (spelled === 'absolute_zero') return piece([words('absolute zero')], LEVEL.atom);
  return piece([symbol(spelled, exponent)], exponent === null ? LEVEL.atom : LEVEL.power, isSingleLetter(spelled) ? 'letter' : 'word');
}

function member(e: ast.Member, scope: Scope, exponent: ViewNode | null): Typeset {
  const meaning = e.of.kind === 'name' ? scope(e.of.name, e.column.name) : null;
  const put = meaning?.kind === 'value' ? shownPiece(meaning.shown) : null;
  if (put !== null) return exponent === null ? put : raised(put, exponent);
  const of =
    e.of.kind === 'name' && !isSingleLetter(e.of.name)
      ? [functionName(e.of.name)]
      : nodesOf(bound(typeset(e.of, hideValue(scope)), LEVEL.atom));
  return piece(
    [...of, element('mo', { lspace: '0', rspace: '0' }, '.'), symbol(e.column.name, exponent)],
    exponent === null ? LEVEL.atom : LEVEL.power,
  );
}

// `K.I_AC3` must not become `K5.I_AC3`: of a row only the column is put in.
function hideValue(scope: Scope): Scope {
  return (n, column) => {
    const meaning = scope(n, column);
    return meaning?.kind === 'value' ? null : meaning;
  };
}

function list(items: readonly Typeset[]): Typeset {
  const inner = commaed(items);
  return { ...piece([], LEVEL.atom), parts: bracketedParts([], '[', inner, ']') };
}

function commaed(items: readonly Typeset[]): Typeset['parts'] {
  return items.flatMap((item, i) => (i < items.length - 1 ? followed(item.parts, [COMMA]) : item.parts));
}

function readings(e: ast.Readings, scope: Scope): Typeset {
  const of = e.items
    ? list(e.items.map((item) => fromNumeral(literalNodes(item))))
    : e.of
      ? bound(typeset(e.of, scope), LEVEL.atom)
      : piece([words('…')], LEVEL.atom);
  const limits = e.bounds?.kind === 'plusminus' ? plusMinusNodes(e.bounds) : [];
  return { ...of, parts: followed(led([words('readings ')], of.parts), limits), level: LEVEL.whole };
}

// Functions that mathematics writes with signs of its own.
const SIGNS: Readonly<Record<string, (args: readonly Typeset[]) => Typeset | null>> = {
  sqrt: ([x, ...more]) => (x && more.length === 0 ? root(x) : null),
  abs: ([x, ...more]) => (x && more.length === 0 ? piece([element('mrow', {}, ...bracketed('|', nodesOf(x), '|'))], LEVEL.atom) : null),
  hypot: (args) =>
    args.length > 1
      ? root(
          joined(
            args.map((x) => raised(x, element('mn', {}, '2'))),
            infix('+'),
            LEVEL.sum,
          ),
        )
      : null,
};

function call(e: ast.Call, scope: Scope): Typeset {
  const sign = Object.hasOwn(SIGNS, e.callee.name) && e.args.every((a) => a.name === null) ? SIGNS[e.callee.name]! : null;
  const set = sign?.(e.args.map((a) => typeset(a.value, scope)));
  if (set) return set;
  const args = e.args.map((a) => {
    const value = typeset(a.value, scope);
    return a.name === null ? value : { ...value, parts: led([symbol(a.name.name), infix('=')], value.parts) };
  });
  const head = [functionName(e.callee.name), APPLIED];
  return { ...piece([], LEVEL.atom), parts: bracketedParts(head, '(', commaed(args), ')') };
}

/** A function's (or table's) name: upright, as it is written; one that is made like a symbol is set like one. */
export function functionName(written: string): ViewNode {
  if (written === 'log10') return element('msub', {}, element('mi', {}, 'log'), element('mn', {}, '10'));
  if (written === 'uncertainty_of') return element('mi', {}, 'u');
  return isSingleLetter(written) ? symbol(written) : element('mi', { mathvariant: 'normal', 'data-name': written }, written);
}

function power(e: ast.Power, scope: Scope): Typeset {
  const exponent = linear(e.exponent, scope);
  let base = e.base;
  while (base.kind === 'group') base = base.inner;
  if (base.kind === 'name') return name(base.name, scope, exponent);
  if (base.kind === 'member') return member(base, scope, exponent);
  return raised(typeset(base, scope), exponent);
}

// In an exponent a quotient of two numbers stays on its line.
function linear(e: ast.Expression, scope: Scope): ViewNode {
  let inner = e;
  while (inner.kind === 'group') inner = inner.inner;
  if (inner.kind === 'product' && inner.factors.length === 2 && inner.factors[1]!.inverse) {
    const [above, below] = inner.factors.map((f) => bound(typeset(f.operand, scope), LEVEL.power));
    return grouped([...nodesOf(above!), element('mo', { form: 'infix', lspace: '0', rspace: '0' }, '/'), ...nodesOf(below!)]);
  }
  return oneNode(typeset(inner, scope));
}

/** Signs of comparison as mathematics writes them. */
export const RELATIONS: Readonly<Record<ast.Relation, string>> = {
  '<': '<', '<=': '≤', '>': '>', '>=': '≥', '==': '=', '!=': '≠', is: 'is', 'is not': 'is not',
}; // biome-ignore format: a table

function comparison(e: ast.Comparison, scope: Scope): Typeset {
  const parts = e.operands.flatMap((operand, i) => {
    const set = whole(bound(typeset(operand, scope), LEVEL.sum));
    if (i === 0) return set.parts;
    const relation = e.relations[i - 1]!.relation;
    const sign = relation === 'is' || relation === 'is not' ? words(` ${relation} `) : infix(RELATIONS[relation]);
    return led([sign], set.parts);
  });
  return { ...piece([], LEVEL.comparison), parts };
}

function junction(e: ast.Junction, scope: Scope): Typeset {
  const level = LEVEL[e.kind];
  const parts = e.operands.flatMap((operand, i) => {
    const set = whole(bound(typeset(operand, scope), level + 1));
    return i === 0 ? set.parts : led([words(` ${e.kind} `)], set.parts);
  });
  return { ...piece([], level), parts };
}

// The syntax tree back to one line of text in the notation's own spelling: what is printed reads back as the same tree.

import { dateText } from '../text/date.ts';
import type { Bounds, Expression, Identifier, QuantityLiteral, Range, Readings, Trace, TypeMark } from './ast.ts';
import { markText } from './form.ts';
import { superscriptText } from './superscript.ts';

/** An expression on one line: one space around operators and before units, names in their one spelling, `…` for a hole. */
export function print(node: Expression): string {
  switch (node.kind) {
    case 'quantity':
      return withBounds(printLiteral(node), node.bounds);
    case 'readings':
      return withBounds(printReadings(node), node.bounds);
    case 'date':
      return dateText(node.days);
    case 'text':
      return printText(node.value);
    case 'yesno':
      return node.value ? 'yes' : 'no';
    case 'name':
      return node.name;
    case 'row':
      return 'row';
    case 'call':
      return `${node.callee.name}(${node.args.map(({ name, value }) => named(name, value)).join(', ')})`;
    case 'member':
      return `${print(node.of)}.${node.column.name}`;
    case 'list':
      return `[${node.items.map(print).join(', ')}]`;
    case 'negate':
      return `-${print(node.operand)}`;
    case 'sum':
      return node.terms.map(({ sign, operator, operand }) => (operator === null ? '' : sign < 0 ? ' - ' : ' + ') + print(operand)).join('');
    case 'product':
      return node.factors
        .map(({ inverse, operator, operand }) => (operator === null ? '' : inverse ? ' / ' : ' * ') + print(operand))
        .join('');
    case 'power':
      return print(node.base) + (node.superscript ? superscriptText(exponentOf(node.exponent)) : `^${print(node.exponent)}`);
    case 'squareRoot':
      return `√${print(node.operand)}`;
    case 'comparison':
      return node.operands.map((operand, i) => (i === 0 ? '' : ` ${node.relations[i - 1]!.relation} `) + print(operand)).join('');
    case 'and':
    case 'or':
      return node.operands.map(print).join(` ${node.kind} `);
    case 'not':
      return `not ${print(node.operand)}`;
    case 'if':
      return `if ${print(node.condition)} then ${print(node.then)} else ${print(node.otherwise)}`;
    case 'choice': {
      const column = node.column === null ? '' : `${node.column.name} `;
      return `${node.order} ${column}of ${node.table.name}${where(node.where)}`;
    }
    case 'lookUp':
      return `the ${node.column.name} of ${node.table.name}${where(node.where)}`;
    case 'rootOf':
      return `root of ${print(node.equation)} over ${printRange(node.over)}`;
    case 'group':
      return `(${print(node.inner)})`;
    case 'hole':
      return '…';
    default:
      return node satisfies never;
  }
}

/** `x from a to b`. */
export function printRange(range: Range): string {
  return `${range.variable.name} from ${print(range.from)} to ${print(range.to)}`;
}

/** A name with its type, if it has one: `I_n: A`. */
export function printTyped(name: string, type: TypeMark | null): string {
  return type === null ? name : `${name}: ${markText(type)}`;
}

/** A trace of a curve or a tabulation, without its label. */
export function printTrace(trace: Trace): string {
  return printTyped(print(trace.value), trace.type);
}

/** A text as it is written, with its marks and escapes. */
export function printText(value: string): string {
  return `"${value.replace(/["\\]/g, '\\$&')}"`;
}

/** `± (1.5 % + 0.5 mV) (k=2)`, `within 91.3 % to 92.4 %`. */
export function printBounds(bounds: Bounds): string {
  if (bounds.kind === 'within') return `within ${printLiteral(bounds.from)} to ${printLiteral(bounds.to)}`;
  const parts = bounds.parts.map(printLiteral);
  const { coverage } = bounds;
  const factors = coverage === null ? '' : ` (k=${coverage.k}${coverage.nu === null ? '' : `, nu=${coverage.nu}`})`;
  return `± ${parts.length === 1 ? parts[0] : `(${parts.join(' + ')})`}${factors}`;
}

function printLiteral(literal: QuantityLiteral): string {
  return literal.unit === null ? literal.number : `${literal.number} ${literal.unit.text}`;
}

function withBounds(text: string, bounds: Bounds | null): string {
  return bounds === null ? text : `${text} ${printBounds(bounds)}`;
}

function printReadings(node: Readings): string {
  if (node.of !== null) return `readings ${print(node.of)}`;
  return `readings [${(node.items ?? []).map(print).join(', ')}]`;
}

function named(name: Identifier | null, value: Expression): string {
  return name === null ? print(value) : `${name.name} = ${print(value)}`;
}

function where(condition: Expression | null): string {
  return condition === null ? '' : ` where ${print(condition)}`;
}

function exponentOf(exponent: Expression): number {
  return exponent.kind === 'quantity' ? exponent.value : 0;
}

// Whether a requirement only repeats the condition of a choice with no more margin, so that it can't fail (D8).
import type { Relation } from '../ast.ts';
import type { Checked, CheckedChoice, CheckedComparison } from '../checked.ts';
import { sameChecked } from './same.ts';

/**
 * The entry whose choice the condition follows from: every comparison in it is one of the choice's own, on the same column of the
 * chosen row, against the same value times a factor that asks for no more. Null where that is not so, and where a side is uncertain:
 * a choice goes by the best values, so the requirement may still be undecided.
 */
export function followsFrom(condition: Checked): string | null {
  const comparisons = linksOf(condition);
  if (comparisons === null || condition.uncertain) return null;
  const choices = comparisons.map(choiceBehind);
  return choices.every((name) => name !== null) ? (choices[0] ?? null) : null;
}

/** `left relation right`, of one pair in a chain. */
interface Link {
  readonly left: Checked;
  readonly relation: Relation;
  readonly right: Checked;
}

function linksOf(condition: Checked): readonly Link[] | null {
  if (condition.kind === 'comparison') return linksOfChain(condition);
  if (condition.kind !== 'and') return null;
  const parts = condition.operands.map(linksOf);
  return parts.every((part) => part !== null) ? parts.flat() : null;
}

function linksOfChain({ operands, relations }: CheckedComparison): readonly Link[] {
  return relations.map(({ relation }, i) => ({ left: operands[i]!, relation, right: operands[i + 1]! }));
}

const TURNED: Readonly<Record<Relation, Relation>> = {
  '<': '>', '<=': '>=', '>': '<', '>=': '<=', '==': '==', '!=': '!=', is: 'is', 'is not': 'is not',
}; // biome-ignore format: pairs

const turned = ({ left, relation, right }: Link): Link => ({ left: right, relation: TURNED[relation], right: left });

/** The entry whose choice has the comparison among its conditions; null where none has. */
function choiceBehind(link: Link): string | null {
  for (const own of [link, turned(link)]) {
    const cell = own.left;
    if (cell.kind !== 'cell' || cell.row.kind !== 'entry') continue;
    const { item } = cell.row;
    const plan = item.checked?.plan;
    const choice = plan?.kind === 'value' && plan.value.kind === 'choice' ? plan.value : null;
    if (choice !== null && conditionsOn(choice, cell.column.name).some((given) => implies(given, own))) return item.label;
  }
  return null;
}

/** The comparisons of a choice that have this column of the row on their left. */
function conditionsOn(choice: CheckedChoice, column: string): readonly Link[] {
  const links = choice.where.parts.flatMap(({ condition }) => (condition.kind === 'comparison' ? linksOfChain(condition) : []));
  return [...links, ...links.map(turned)].filter(({ left }) => {
    return left.kind === 'cell' && left.row.kind === 'local' && left.row.index === choice.where.row && left.column.name === column;
  });
}

/** Whether `x given` makes `x asked` true, for sides that are not negative. */
function implies(given: Link, asked: Link): boolean {
  const [a, b] = [withoutFactor(given.right), withoutFactor(asked.right)];
  if (a.rest.length !== b.rest.length || !a.rest.every((part, i) => sameFactor(part, b.rest[i]!))) return false;
  const equal = a.factor === b.factor;
  switch (given.relation) {
    case '==':
    case 'is':
      return equal && ['==', 'is', '<=', '>='].includes(asked.relation);
    case '>':
    case '>=':
      return (asked.relation === '>=' || (asked.relation === '>' && (!equal || given.relation === '>'))) && b.factor <= a.factor;
    case '<':
    case '<=':
      return (asked.relation === '<=' || (asked.relation === '<' && (!equal || given.relation === '<'))) && b.factor >= a.factor;
    case '!=':
    case 'is not':
      return equal && asked.relation === given.relation;
  }
}

interface Factor {
  readonly inverse: boolean;
  readonly operand: Checked;
}

const sameFactor = (a: Factor, b: Factor) => a.inverse === b.inverse && sameChecked(a.operand, b.operand);

/** `1.1 * I` as the factor 1.1 and the rest. A constant alone has no factor: it is compared whole, by its size. */
function withoutFactor(node: Checked): { readonly factor: number; readonly rest: readonly Factor[] } {
  if (node.kind === 'constant' && typeof node.value === 'number') return { factor: node.value, rest: [] };
  if (node.kind !== 'product') return { factor: 1, rest: [{ inverse: false, operand: node }] };
  let factor = 1;
  const rest: Factor[] = [];
  for (const part of node.factors) {
    const { operand, inverse } = part;
    if (operand.kind !== 'constant' || typeof operand.value !== 'number') rest.push(part);
    else factor = inverse ? factor / operand.value : factor * operand.value;
  }
  return { factor, rest };
}

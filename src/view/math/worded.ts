// The parts of the notation that are read as words: if, choices, look-ups, roots.
import type * as ast from '../../language/ast.ts';
import { element, type ViewNode } from '../node.ts';
import { hiding, type Scope, type Setter } from './scope.ts';
import { symbol } from './symbol.ts';
import { LEVEL, led, nodesOf, piece, type Typeset, whole, words } from './typeset.ts';

export type Worded = ast.If | ast.Choice | ast.LookUp | ast.RootOf;

export function isWorded(e: ast.Expression): e is Worded {
  return e.kind === 'if' || e.kind === 'choice' || e.kind === 'lookUp' || e.kind === 'rootOf';
}

/** Sets an expression that is read as words. */
export function worded(e: Worded, scope: Scope, set: Setter): Typeset {
  switch (e.kind) {
    case 'if':
      return cases(e, scope, set);
    case 'choice': {
      const what = e.column === null ? [words(e.order)] : [words(`${e.order} `), symbol(e.column.name)];
      return inParts([what, from(e.table.name), ...where(e.where, scope, set)]);
    }
    case 'lookUp':
      return inParts([[words('the '), symbol(e.column.name)], from(e.table.name), ...where(e.where, scope, set)]);
    case 'rootOf': {
      const inside = hiding(scope, [e.over.variable.name]);
      const range = [words(' over '), symbol(e.over.variable.name), words(' from '), ...nodesOf(set(e.over.from, scope))];
      return inParts([
        ...led([words('root of ')], set(e.equation, inside).parts),
        range,
        [words(' to '), ...nodesOf(set(e.over.to, scope))],
      ]);
    }
    default:
      return e satisfies never;
  }
}

function inParts(parts: Typeset['parts']): Typeset {
  return { ...piece([], LEVEL.whole), parts };
}

function from(table: string): readonly ViewNode[] {
  return [words(' of '), element('mi', { mathvariant: 'normal', 'data-name': table }, table)];
}

function where(condition: ast.Expression | null, scope: Scope, set: Setter): Typeset['parts'] {
  return condition === null ? [] : led([words(' where ')], whole(set(condition, scope)).parts);
}

interface Case {
  readonly value: ast.Expression;
  /** Null for what remains. */
  readonly when: ast.Expression | null;
}

// A chain of `else if` is one list of cases.
function casesOf(e: ast.If): Case[] {
  const cases: Case[] = [];
  let rest: ast.Expression = e;
  while (rest.kind === 'if') {
    cases.push({ value: rest.then, when: rest.condition });
    rest = rest.otherwise;
    while (rest.kind === 'group' && rest.inner.kind === 'if') rest = rest.inner;
  }
  return [...cases, { value: rest, when: null }];
}

/** A whole right side of cases: each on a line of its own, which may break. */
export function caseLines(e: ast.If, scope: Scope, set: Setter): Typeset['parts'][] {
  return casesOf(e).map(({ value, when }) => [
    ...set(value, scope).parts,
    ...(when === null ? [[words(' otherwise')]] : led([words(' if ')], whole(set(when, scope)).parts)),
  ]);
}

// Cases inside a formula: a brace with a row for each.
function cases(e: ast.If, scope: Scope, set: Setter): Typeset {
  const lines = casesOf(e).map(({ value, when }) =>
    line(nodesOf(set(value, scope)), when === null ? [words('otherwise')] : [words('if '), ...nodesOf(set(when, scope))]),
  );
  const brace = element('mo', { form: 'prefix' }, '{');
  return piece([element('mrow', {}, brace, element('mtable', { class: 'aw-cases' }, ...lines))], LEVEL.whole);
}

function line(value: readonly ViewNode[], when: readonly ViewNode[]): ViewNode {
  return element('mtr', {}, element('mtd', {}, ...value), element('mtd', {}, ...when));
}

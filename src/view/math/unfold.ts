// The formula behind a call: the function's own, with the arguments of the call in place of its parameters.
import type { Call, Expression, FunctionDefinition, Local } from '../../language/ast.ts';
import { children, walk } from '../../language/walk.ts';
import type { Meaning, Scope } from './scope.ts';

/** The functions that can be looked into, and which of them see the sheet's own entries. */
export interface Functions {
  readonly named: (name: string) => FunctionDefinition | undefined;
  /** Functions that are written in this sheet: names in their formulas are this sheet's (N6). */
  readonly own: ReadonlySet<FunctionDefinition>;
}

/** A function's formula as one call uses it. */
export interface Unfolded {
  readonly body: Expression;
  readonly locals: readonly Local[];
  /** What names mean in the formula, when `outer` says what they mean where the call stands. */
  readonly inside: (outer: Scope) => Scope;
}

/** Formulas with more parts than this are not put in place of a call: they would hide more than they show. */
const LARGEST = 80;
const DEEPEST = 4;

/** The formula behind a call; null where there is none, or where it would be too large or ambiguous. */
export function unfold(call: Call, functions: Functions, depth = 0): Unfolded | null {
  const definition = functions.named(call.callee.name);
  if (!definition || definition.broken || depth > DEEPEST) return null;
  const args = matched(call, definition);
  const locals = definition.clauses.locals;
  if (args === null || isAmbiguous(definition, args, functions) || size(definition.body) > LARGEST) return null;
  const hidden = new Set(locals.map((l) => l.name.name));
  const own = functions.own.has(definition);
  const inside =
    (outer: Scope): Scope =>
    (name, column): Meaning | null => {
      const argument = args.get(name);
      if (argument) return column === null ? { kind: 'expression', expression: argument, scope: outer } : columnOf(argument, column, outer);
      return hidden.has(name) || !own ? null : outer(name, column);
    };
  const again = definition.body.kind === 'call' && locals.length === 0 ? unfold(definition.body, functions, depth + 1) : null;
  if (again) return { ...again, inside: (outer) => again.inside(inside(outer)) };
  return { body: definition.body, locals, inside };
}

function columnOf(argument: Expression, column: string, outer: Scope): Meaning | null {
  return argument.kind === 'name' ? outer(argument.name, column) : null;
}

// Arguments by parameter; null where the call does not fit the function.
function matched(call: Call, definition: FunctionDefinition): ReadonlyMap<string, Expression> | null {
  const parameters = definition.parameters.map((p) => p.name.name);
  const args = new Map<string, Expression>();
  for (const [i, { name, value }] of call.args.entries()) {
    const parameter = name === null ? parameters[i] : name.name;
    if (parameter === undefined || !parameters.includes(parameter) || args.has(parameter)) return null;
    args.set(parameter, value);
  }
  return args.size === parameters.length ? args : null;
}

// A name of the arguments that also means something of the function's own would be read as one and the same.
function isAmbiguous(definition: FunctionDefinition, args: ReadonlyMap<string, Expression>, functions: Functions): boolean {
  const foreign = new Set(definition.clauses.locals.map((l) => l.name.name));
  if (!functions.own.has(definition)) {
    for (const expression of [definition.body, ...definition.clauses.locals.map((l) => l.value)]) {
      for (const name of namesIn(expression)) if (!args.has(name)) foreign.add(name);
    }
  }
  return [...args.values()].some((argument) => [...namesIn(argument)].some((name) => foreign.has(name)));
}

function namesIn(expression: Expression): ReadonlySet<string> {
  const found = new Set<string>();
  walk(expression, (node) => {
    if (node.kind === 'name') found.add(node.name);
  });
  return found;
}

function size(e: Expression): number {
  return children(e).reduce((total, child) => total + size(child), 1);
}

// `with` definitions: in any order among themselves, in the scope of the statement's outermost expression (N5).
import type { Span } from '../../text/span.ts';
import type * as ast from '../ast.ts';
import type { Checked } from '../checked.ts';
import { nameProblem } from '../problems/names.ts';
import { type Context, canNest, checkExpression, failed, type LazyBinding, type Scope, takeLocal, unknown, within } from './context.ts';
import { declare } from './declared.ts';

export type CheckedLocals = readonly { readonly index: number; readonly value: Checked }[];

/** Checks `inside` with the locals in scope, and every local whether used or not. `whole`: the statement's right side. */
export function withLocals<T>(
  c: Context,
  locals: readonly ast.Local[],
  whole: ast.Expression | null,
  warnOfHiding: boolean,
  inside: () => T,
): { result: T; locals: CheckedLocals } {
  c.whole = whole;
  while (c.whole?.kind === 'group') c.whole = c.whole.inner;
  if (locals.length === 0) return { result: inside(), locals: [] };
  const scopes: Scope[] = [...c.scopes];
  const names = new Map<string, LazyBinding>();
  const scope: Scope = { kind: 'with', names };
  scopes.push(scope);
  for (const local of locals) {
    const { name, at } = local.name;
    if (names.has(name)) c.problems.push(nameProblem('defined-twice', at, { name }));
    else names.set(name, { local, scopes, index: takeLocal(c), checked: null, levels: 0 });
    const hidden = warnOfHiding ? c.module.names.get(name) : undefined;
    if (hidden !== undefined) c.problems.push(nameProblem('local-hides', at, { name }));
  }
  const result = within(c, scope, inside);
  const checked = [...names.values()].map((binding) => ({ index: binding.index, value: checkBinding(c, binding) }));
  return { result, locals: checked };
}

/** A use of a `with` name. */
export function checkLocal(c: Context, binding: LazyBinding, node: ast.NameReference): Checked {
  if (c.asked.includes(binding)) {
    const asked = c.asked.map((b) => b.local.name.name);
    return failed(c, nameProblem('local-circle', node.at, { names: [...asked.slice(asked.indexOf(node.name)), node.name] }));
  }
  const value = checkBinding(c, binding);
  if (!canNest(c, binding.levels, node.at)) return unknown(node.at);
  return {
    kind: 'local',
    at: node.at,
    type: value.type,
    display: value.display,
    uncertain: value.uncertain,
    index: binding.index,
    name: node.name,
  };
}

/**
 * Has the `with` of the statement see the variable of a root that is its whole right side. Gives the locals that the equation asks
 * for, once it has been checked: they are worked out anew for each value of the variable.
 */
export function letLocalsSee(c: Context, variable: Scope): () => readonly number[] {
  const scope = c.scopes.at(-1);
  if (scope?.kind !== 'with') return () => [];
  const open = [...scope.names.values()].filter((binding) => binding.checked === null);
  for (const binding of open) binding.scopes = [...c.scopes.slice(0, -1), variable, scope];
  return () => open.filter((binding) => binding.checked !== null).map((binding) => binding.index);
}

/** Forgets what was found of locals, so that they are checked again. */
export function forgetLocals(c: Context, indexes: readonly number[]): void {
  const scope = c.scopes.at(-1);
  if (scope?.kind !== 'with') return;
  for (const binding of scope.names.values()) if (indexes.includes(binding.index)) binding.checked = null;
}

function checkBinding(c: Context, binding: LazyBinding): Checked {
  if (binding.checked !== null) return binding.checked;
  if (c.asked.includes(binding)) return unknown(binding.local.at);
  c.asked.push(binding);
  const before = c.scopes;
  c.scopes = binding.scopes;
  const { local } = binding;
  const { deepest } = c;
  c.deepest = c.level;
  binding.checked = declare(c, checkExpression(c, local.value), local.type);
  binding.levels = c.deepest - c.level;
  c.deepest = Math.max(deepest, c.deepest);
  c.scopes = before;
  c.asked.pop();
  return binding.checked;
}

/** The expression with its locals around it. */
export function enclose(body: Checked, locals: CheckedLocals, at: Span = body.at): Checked {
  if (locals.length === 0) return body;
  return { kind: 'lets', at, type: body.type, display: body.display, uncertain: body.uncertain, locals, body };
}

// Function bodies checked for their argument types: once where all parameters have types, else once a combination (T3, T4, N6).
import type { Problem } from '../../text/problem.ts';
import type { Span } from '../../text/span.ts';
import type * as ast from '../ast.ts';
import type { Display, Instance, Need, NoInstance } from '../checked.ts';
import { print } from '../print.ts';
import { nameProblem } from '../problems/names.ts';
import { typeProblem } from '../problems/types.ts';
import type { Item, KnownInstance } from '../program.ts';
import { type Type, tableBehind, typeKey } from '../type.ts';
import { topParts, walk } from '../walk.ts';
import { type Binding, type Context, checkExpression, contextFor, noteTableOf, takeLocal, within } from './context.ts';
import { declare, displayOfMark } from './declared.ts';
import { withLocals } from './locals.ts';
import { checkCondition } from './logic.ts';

/** How deep functions may call each other. */
const CALL_DEPTH = 200;

/** The instance of a function for these argument types; null where its body has errors (reported) or waits for other items. */
export function instantiate(
  c: Context,
  item: Item,
  types: readonly Type[],
  uncertain: boolean,
  displays: readonly Display[],
  at: Span,
): Instance | null {
  const definition = item.statement as ast.FunctionDefinition;
  const open = definition.parameters.some((p) => hasAny(p.type));
  const key = `${types.map(typeKey).join(',')}${uncertain ? '±' : ''}${open ? displays.map(displayKey).join(',') : ''}`;
  const known = item.instances?.get(key);
  if (known !== undefined && isCurrent(known, types)) return useKnown(c, known.found, at);
  if (c.active.includes(item)) {
    c.problems.push(nameProblem('recursion', at, { names: [...c.active.map((i) => i.label), item.label] }));
    return null;
  }
  if (c.active.length >= CALL_DEPTH) {
    c.problems.push(nameProblem('call-depth', at, { limit: CALL_DEPTH }));
    return null;
  }
  if (c.problems.some(isOfChain)) return null;
  if (open && !c.world.countInstance()) {
    c.problems.push(nameProblem('too-many-instances', at, { limit: 1000 }));
    return null;
  }
  const { instance, inner } = checkBody(c, item, types, uncertain, displays);
  for (const missing of inner.missing) c.missing.push(missing);
  const found = outcome(c, item, instance, inner, open);
  const lasting = inner.missing.length === 0 && !('problem' in found && found.problem !== null && isOfChain(found.problem));
  if (lasting) {
    item.instances ??= new Map();
    item.instances.set(key, { found, types, checks: found.reads.map((read) => read.checked) });
  }
  return useKnown(c, found, at);
}

/** Whether a body would be checked the same again: two sheets may each have a table of one name, and a column may have become another. */
function isCurrent({ found, types, checks }: KnownInstance, now: readonly Type[]): boolean {
  return found.reads.every((read, i) => read.checked === checks[i]) && types.every((type, i) => tableBehind(type) === tableBehind(now[i]!));
}

/** Whether an error is one of how functions call each other, so that it depends on where the chain begins. */
function isOfChain({ code }: Problem): boolean {
  return code === 'call-depth' || code === 'evaluation-depth' || code === 'recursion';
}

/** The sound instance, or why there is none. */
function outcome(c: Context, item: Item, instance: Instance, inner: Context, open: boolean): Instance | NoInstance {
  const none = (problem: Problem | null): NoInstance => ({
    problem,
    reads: [...inner.reads],
    grounds: [...inner.grounds],
    lost: [...new Set(inner.lost)],
  });
  const error = inner.problems.find((p) => p.severity === 'error');
  if (error !== undefined) return none(open ? insideFunction(c, item, error) : null);
  if (instance.body.type.is === 'unknown' || inner.missing.length > 0) return none(null);
  return instance.depth > CALL_DEPTH ? none(nameProblem('call-depth', instance.body.at, { limit: CALL_DEPTH })) : instance;
}

/** The error as it is told at a call, with its place in the body; of functions inside functions the innermost is named. */
function insideFunction(c: Context, item: Item, error: Problem): Problem {
  if (error.code === 'inside-function' || isOfChain(error)) return error;
  const places = item.module === c.module ? [{ at: error.at, label: `in \`${item.label}\``, cell: item.cell }] : [];
  return typeProblem('inside-function', error.at, { name: item.label, message: error.message }, places);
}

function useKnown(c: Context, known: Instance | NoInstance, at: Span): Instance | null {
  for (const read of known.reads) c.reads.add(read);
  for (const ground of known.grounds) c.grounds.add(ground);
  if (!('problem' in known)) return known;
  for (const lost of known.lost) c.lost.push(lost);
  if (known.problem !== null) c.problems.push({ ...known.problem, at });
  return null;
}

/** Checks a body in a context of its own: it sees its parameters, its `with`, and the text that it is written in. */
export function checkBody(
  c: Context,
  item: Item,
  types: readonly Type[],
  uncertain: boolean,
  displays: readonly Display[],
): { instance: Instance; inner: Context } {
  const definition = item.statement as ast.FunctionDefinition;
  const inner = contextFor(c.world, item, c.dispatch, [...c.active, item], c.level);
  const names = new Map<string, Binding>();
  definition.parameters.forEach((parameter, i) => {
    const display = hasAny(parameter.type) ? (displays[i] ?? 'auto') : displayOfMark(parameter.type);
    const { name, at } = parameter.name;
    if (names.has(name)) inner.problems.push(nameProblem('defined-twice', at, { name }));
    names.set(name, { index: takeLocal(inner), type: types[i]!, display, uncertain });
    noteTableOf(inner, types[i]!);
  });
  const { locals: clauseLocals, needs: clauseNeeds } = definition.clauses;
  const { body, needs, locals } = within(inner, { kind: 'names', names }, () => {
    const { result, locals } = withLocals(inner, clauseLocals, definition.body, false, () => ({
      body: declare(inner, checkExpression(inner, definition.body), definition.result),
      needs: clauseNeeds.flatMap(({ condition, because }) =>
        topParts(condition).map((part) => ({
          condition: checkCondition(inner, part, '`needs`'),
          text: print(condition),
          message: because?.value ?? null,
          ...aboutParameter(part, definition, types),
        })),
      ),
    }));
    return { ...result, locals };
  });
  const instance: Instance = {
    item,
    name: definition.name.name,
    parameters: definition.parameters.map((p) => p.name.name),
    locals,
    body,
    needs,
    frameSize: inner.frameSize,
    depth: inner.depth + 1,
    levels: inner.deepest - c.level,
    calls: inner.calls + 1,
    reads: [...inner.reads],
    grounds: [...inner.grounds],
    compiled: null,
  };
  return { instance, inner };
}

/** The parameter that a condition is about, and the unit that tells its value. */
function aboutParameter(
  condition: ast.Expression,
  definition: ast.FunctionDefinition,
  types: readonly Type[],
): Pick<Need, 'parameter' | 'unit'> {
  const parameter = onlyParameter(condition, definition);
  if (parameter === null || types[parameter]!.is !== 'quantity') return { parameter, unit: undefined };
  const display = displayOfMark(definition.parameters[parameter]!.type);
  return { parameter, unit: display === 'auto' ? undefined : display };
}

/** The place of the parameter that a condition reads, if it reads no other name. */
function onlyParameter(condition: ast.Expression, { parameters }: ast.FunctionDefinition): number | null {
  const names = new Set<string>();
  walk(condition, (node) => node.kind === 'name' && names.add(node.name));
  const [name] = names;
  const place = names.size === 1 ? parameters.findIndex((p) => p.name.name === name) : -1;
  return place < 0 ? null : place;
}

function hasAny(mark: ast.TypeMark | null): boolean {
  return mark !== null && (mark.kind === 'any' || (mark.kind === 'list' && hasAny(mark.of)));
}

function displayKey(display: Display): string {
  return display === null ? '' : display === 'auto' ? 'auto' : display.text;
}

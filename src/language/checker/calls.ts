// Calls: arguments by place and by name (P8), of the mathematics or of a function of a sheet, mapped over lists (T3).

import { nearSpellings } from '../../text/near.ts';
import type * as ast from '../ast.ts';
import type { Checked, CheckedStatement } from '../checked.ts';
import { formOf } from '../form.ts';
import type { Builtin } from '../functions/builtin.ts';
import { BUILTINS, findBuiltin } from '../functions/index.ts';
import { likelyWords, OTHER_FUNCTIONS } from '../other-words.ts';
import { nameProblem } from '../problems/names.ts';
import { typeProblem } from '../problems/types.ts';
import type { Item } from '../program.ts';
import { elementOf, listOf, type Type } from '../type.ts';
import { type Context, canNest, checkExpression, define, failed, unknown } from './context.ts';
import { describe } from './describe.ts';
import { countCalls } from './effort.ts';
import { instantiate } from './instances.ts';
import { findLocal, readItem } from './names.ts';
import { passes } from './passing.ts';

export function checkCall(c: Context, node: ast.Call): Checked {
  const { name } = node.callee;
  const defined = define(c, name);
  const own = defined?.kind === 'item' && defined.item.statement.kind === 'function' ? defined.item : null;
  const builtin = findBuiltin(name);
  if (builtin !== undefined) return checkBuiltin(c, node, builtin);
  if (own !== null && findLocal(c, name) === null) return checkFunctionCall(c, node, own);
  for (const argument of node.args) checkExpression(c, argument.value);
  if (findLocal(c, name) === null && defined?.kind === 'item' && defined.item.statement.kind === 'unreadable') {
    readItem(c, defined.item);
    return unknown(node.at);
  }
  if (defined !== null || findLocal(c, name) !== null) return failed(c, nameProblem('no-function', node.callee.at, { name }));
  const known = [...c.world.namesOf(c.module, 'function'), ...BUILTINS.map((b) => b.name)];
  return failed(c, nameProblem('unknown-function', node.callee.at, { name, near: likelyWords(name, OTHER_FUNCTIONS, known) }));
}

function checkBuiltin(c: Context, node: ast.Call, builtin: Builtin): Checked {
  const ordered = orderArguments(c, node, {
    name: builtin.name,
    form: builtin.form,
    parameters: builtin.parameters.map((p) => p.name),
    least: builtin.least,
    most: builtin.most,
  });
  const args = ordered?.map((a) => checkExpression(c, a.value)) ?? [];
  if (ordered === null || args.some((a) => elementOf(a.type).is === 'unknown')) return unknown(node.at);
  const result = builtin.check({ c, args, at: node.at, name: builtin.name });
  if (result === null) return unknown(node.at);
  const uncertain = builtin.makesUncertain ? true : builtin.endsUncertainty ? false : args.some((a) => a.uncertain);
  return { kind: 'builtin', at: node.at, type: result.type, display: result.display, uncertain, builtin, args, mapped: result.mapped };
}

function checkFunctionCall(c: Context, node: ast.Call, item: Item): Checked {
  const definition = item.statement as ast.FunctionDefinition;
  const form = formOf(definition);
  const names = definition.parameters.map((p) => p.name.name);
  const ordered = orderArguments(c, node, { name: definition.name.name, form, parameters: names, least: names.length, most: names.length });
  const signature = readItem(c, item);
  const args = ordered?.map((a) => checkExpression(c, a.value)) ?? [];
  if (item.checked?.failed) noteCauses(c, item.checked);
  if (ordered === null || signature === null || item.checked?.failed || args.some((a) => a.type.is === 'unknown')) return unknown(node.at);
  const types: Type[] = [];
  const mapped: boolean[] = [];
  for (let i = 0; i < args.length; i++) {
    const parameter = definition.parameters[i]!;
    const passed = passes(c, args[i]!, parameter.type, { name: definition.name.name, parameter: parameter.name.name });
    if (passed === null) return unknown(node.at);
    types.push(passed.type);
    mapped.push(passed.mapped);
  }
  const instance = instantiate(
    c,
    item,
    types,
    args.some((a) => a.uncertain),
    args.map((a) => a.display),
    node.at,
  );
  if (instance === null) return unknown(node.at);
  const isMapped = mapped.some(Boolean);
  const { body } = instance;
  if (isMapped && body.type.is === 'list') {
    return failed(
      c,
      typeProblem('different-kinds', node.at, {
        doing: "a function that gives a list can't be called with",
        left: describe(body.type),
        right: 'a list for a single value',
      }),
    );
  }
  c.depth = Math.max(c.depth, instance.depth);
  if (!canNest(c, instance.levels, node.at)) return unknown(node.at);
  if (!countCalls(c, instance.calls, node.at)) return unknown(node.at);
  const type = isMapped ? listOf(body.type) : body.type;
  return { kind: 'call', at: node.at, type, display: body.display, uncertain: body.uncertain, instance, args, mapped };
}

/** A function without value is no cause that a reader could mend: what it lacks is noted beside it. */
function noteCauses(c: Context, failed: CheckedStatement): void {
  for (const lost of failed.lost) c.lost.push(lost);
  for (const read of failed.reads) if (read.checked?.failed && read.statement.kind !== 'function') c.reads.add(read);
}

interface Callee {
  readonly name: string;
  readonly form: string;
  readonly parameters: readonly string[];
  readonly least: number;
  readonly most: number;
}

/** The arguments in the order of the parameters; null where they do not fit (reported). */
function orderArguments(c: Context, node: ast.Call, callee: Callee): readonly ast.Argument[] | null {
  const placed: (ast.Argument | undefined)[] = [];
  let named = false;
  let sane = true;
  const report = (problem: ReturnType<typeof typeProblem>) => {
    c.problems.push(problem);
    sane = false;
  };
  for (const argument of node.args) {
    if (argument.name === null) {
      if (named) report(typeProblem('argument-order', argument.at, {}));
      placed.push(argument);
      continue;
    }
    named = true;
    const { name, at } = argument.name;
    const place = callee.parameters.indexOf(name);
    if (place === -1)
      report(
        typeProblem('argument-unknown', at, {
          name: callee.name,
          parameter: name,
          form: callee.form,
          near: nearSpellings(name, callee.parameters),
        }),
      );
    else if (placed[place] !== undefined) report(typeProblem('argument-twice', at, { name: callee.name, parameter: name }));
    else placed[place] = argument;
  }
  if (!sane) return null;
  if (placed.length > callee.most || (!named && placed.length < callee.least)) {
    const { least, most } = callee;
    const wanted =
      most === least
        ? `${least} argument${least === 1 ? '' : 's'}`
        : most === Number.POSITIVE_INFINITY
          ? `at least ${least}`
          : `${least} to ${most} arguments`;
    c.problems.push(typeProblem('argument-count', node.at, { name: callee.name, form: callee.form, wanted, found: node.args.length }));
    return null;
  }
  for (let i = 0; i < Math.max(callee.least, placed.length); i++) {
    if (placed[i] !== undefined) continue;
    c.problems.push(
      typeProblem('argument-missing', node.at, { name: callee.name, parameter: callee.parameters[i] ?? `${i + 1}`, form: callee.form }),
    );
    return null;
  }
  return placed as ast.Argument[];
}

// Calls: of the mathematics, and of functions of sheets with their `needs` (N7), mapped over lists where arguments are.

import { insideSentence, type Problem } from '../../text/problem.ts';
import { fromSI } from '../../units/quantity.ts';
import type { CheckedBuiltin, CheckedCall, Instance, Need } from '../checked.ts';
import { Fault, RefusedArgument, raise } from '../fault.ts';
import type { CallSite } from '../functions/builtin.ts';
import { isWhole } from '../functions/extremes.ts';
import { valueProblem } from '../problems/values.ts';
import { best, Dual, type Uncertain } from '../uncertainty/dual.ts';
import { broadcast } from './broadcast.ts';
import { type Compiler, freshFrame } from './compiler.ts';
import type { Evaluate, Frame, Run } from './frame.ts';
import { defineLets } from './values.ts';

export function compileBuiltin(k: Compiler, node: CheckedBuiltin): Evaluate {
  const { builtin, at } = node;
  const args = node.args.map(k.compile);
  const again = k.inFunction ? null : (i: number, f: Frame, run: Run) => args[i]!(freshFrame(k, f, run));
  const site: CallSite = { at, name: builtin.name, args: node.args, again };
  if (builtin.ofList !== undefined && isWhole(node.args)) {
    const over = builtin.ofList(site);
    return (f) =>
      over(
        args.map((a) => a(f)),
        f,
      );
  }
  if (builtin.run.kind === 'whole') {
    const evaluate = builtin.run.evaluate(site);
    return (f) =>
      evaluate(
        args.map((a) => a(f)),
        f,
      );
  }
  const uncertain = node.args.some((a) => a.uncertain);
  if (node.mapped.some(Boolean)) {
    const scalar = builtin.run.dual(site);
    return broadcast(args, node.mapped, at, (values, f) => scalar(values as Uncertain[], f));
  }
  if (uncertain) {
    const scalar = builtin.run.dual(site);
    return (f) =>
      scalar(
        args.map((a) => a(f) as Uncertain),
        f,
      );
  }
  const plain = builtin.run.plain(site);
  const [a, b] = args as [Evaluate<number>, Evaluate<number>];
  if (args.length === 1) return (f) => plain(a(f));
  if (args.length === 2) return (f) => plain(a(f), b(f));
  return (f) => plain(...args.map((x) => x(f) as number));
}

export function compileCall(k: Compiler, node: CheckedCall): Evaluate {
  const { instance, at } = node;
  const args = node.args.map(k.compile);
  const call = (values: readonly unknown[], frame: Frame): unknown => {
    instance.compiled ??= compileInstance(instance, k.forBody());
    const locals = new Array<unknown>(instance.frameSize);
    for (let i = 0; i < values.length; i++) locals[i] = values[i];
    const { notes } = frame.run;
    const before = notes.length;
    try {
      const value = instance.compiled({ locals, run: frame.run });
      for (let i = before; i < notes.length; i++) notes[i] = noteAtCall(notes[i]!, instance, at);
      return value;
    } catch (fault) {
      return atCall(fault, node, frame);
    }
  };
  if (node.mapped.some(Boolean)) return broadcast(args, node.mapped, at, call);
  return (f) =>
    call(
      args.map((a) => a(f)),
      f,
    );
}

/** The body behind its `needs`, in a frame of its own. */
function compileInstance(instance: Instance, k: Compiler): Evaluate {
  defineLets(k, instance.locals);
  const body = k.compile(instance.body);
  const needs = instance.needs.map((n) => ({ ...n, holds: k.compile(n.condition) as Evaluate<boolean> }));
  if (needs.length === 0) return body;
  return (f) => {
    for (const need of needs) {
      if (!withoutNotes(need.holds, f))
        throw new RefusedArgument(
          valueProblem('needs-failed', instance.body.at, {
            name: instance.name,
            message: need.message ?? `needs ${need.text}`,
            found: foundText(need, instance, f),
          }),
          need.parameter,
        );
    }
    return body(f);
  };
}

/** `eta = 92`, of the parameter that a condition is about. */
function foundText({ parameter, unit }: Need, { parameters }: Instance, f: Frame): string {
  const value = parameter === null || unit === undefined ? null : f.locals[parameter];
  if (parameter === null || unit === undefined || (typeof value !== 'number' && !(value instanceof Dual))) return '';
  const number = Number(fromSI(best(value), unit).toPrecision(4));
  return `${parameters[parameter]} = ${number}${unit === null ? '' : ` ${unit.text}`}`.trimEnd();
}

/** `needs` is decided on values, not on U (N7). */
function withoutNotes(holds: Evaluate<boolean>, f: Frame): boolean {
  const { notes } = f.run;
  const before = notes.length;
  const result = holds(f);
  notes.length = before;
  return result;
}

/** What a body notes is told at the call; the function's name once. */
function noteAtCall(note: Problem, instance: Instance, at: CheckedCall['at']): Problem {
  if (note.facts['in'] !== undefined) return { ...note, at };
  const message = `In \`${instance.name}\`: ${insideSentence(note.message)}`;
  return { ...note, at, message, facts: { ...note.facts, in: instance.name }, mends: [], places: [] };
}

/** What goes wrong in a body is reported at the call, with the place in the body beside it. */
function atCall(fault: unknown, { instance, at, args }: CheckedCall, frame: Frame): never {
  if (!(fault instanceof Fault)) throw fault;
  if (fault instanceof RefusedArgument) return atArgument(fault, args, at);
  if (fault.reason === 'absent') return raise(valueProblem('inside-call', at, { name: instance.name, message: 'an empty cell' }));
  const { problem } = fault;
  if (problem === null) throw fault;
  if (problem.code === 'needs-failed' || problem.code === 'inside-call') throw new Fault('error', { ...problem, at });
  const sameText = instance.item.module === frame.run.item.module;
  const places = sameText ? [{ at: problem.at, label: `in \`${instance.name}\``, cell: instance.item.cell }] : [];
  return raise(valueProblem('inside-call', at, { name: instance.name, message: problem.message }, places));
}

/** What a function refuses is reported on the argument, where its condition is about one; in a function, on the argument that it was given. */
function atArgument({ problem, parameter }: RefusedArgument, args: CheckedCall['args'], at: CheckedCall['at']): never {
  const argument = parameter === null ? undefined : args[parameter];
  throw new RefusedArgument({ ...problem!, at: argument?.at ?? at }, argument?.kind === 'local' ? argument.index : null);
}

// Decisions: a condition compiled to holds, fails or undecided, also where it is given by a name.
import type { Span } from '../../text/span.ts';
import type { Relation } from '../ast.ts';
import type { Checked, CheckedCall, CheckedIf, CheckedLets, CheckedLocal } from '../checked.ts';
import { Fault } from '../fault.ts';
import type { Item } from '../program.ts';
import { type Compiler, forgetLets } from './compiler.ts';
import { compileComparisonDecision } from './decided-comparisons.ts';
import { combinedOutcome, type Decide, type Decision, type Decisions, type Fresh, greater, type Outcome, smaller } from './decision.ts';
import type { Evaluate, Frame } from './frame.ts';
import { defineLets, type RowValue } from './values.ts';

/** Compiles a condition for deciding. */
export function compileDecision(k: Compiler, node: Checked, fresh: Fresh): Decide {
  switch (node.kind) {
    case 'and':
    case 'or':
      return junction(
        node.kind,
        node.operands.map((o) => compileDecision(k, o, fresh)),
      );
    case 'not':
      return negation(compileDecision(k, node.operand, fresh));
    case 'comparison':
      return compileComparisonDecision(k, node, fresh);
    case 'if':
      return branches(k, node, fresh);
    case 'lets':
      return behindLets(k, node, fresh);
    case 'local':
      return local(k, node, fresh);
    case 'call':
      return node.uncertain && !node.mapped.some(Boolean) ? ofBody(k, node, fresh) : yesNo(k.compile(node));
    case 'entry':
      return named(k.compile(node), node.at, node.item, (decisions) => decisions[0]);
    case 'column':
      return named(k.compile(node), node.at, node.column.item, everyOne);
    case 'cell': {
      const row = k.compile(node.row);
      return named(k.compile(node), node.at, node.column.item, (decisions, f) => decisions[(row(f) as RowValue).index]);
    }
    default:
      return yesNo(k.compile(node));
  }
}

/** Kleene's and/or, left to right, stopping where the rest can't change it (D2, P6). */
function junction(kind: 'and' | 'or', parts: readonly Decide[]): Decide {
  const stop: Outcome = kind === 'and' ? 'fails' : 'holds';
  return (f) => {
    const decided: Decision[] = [];
    for (const part of parts) {
      const decision = part(f);
      decided.push(decision);
      if (decision.outcome === stop) return decision;
    }
    return kind === 'and' ? combinedOutcome(decided, 'holds', smaller) : combinedOutcome(decided, 'fails', greater);
  };
}

const OPPOSITE: Readonly<Record<Relation, Relation>> = {
  '<': '>=', '<=': '>', '>': '<=', '>=': '<', '==': '!=', '!=': '==', is: 'is not', 'is not': 'is',
}; // biome-ignore format: pairs

function negation(part: Decide): Decide {
  return (f) => {
    const { outcome, sides } = part(f);
    return {
      outcome: outcome === 'holds' ? 'fails' : outcome === 'fails' ? 'holds' : outcome,
      sides: sides === null ? null : { ...sides, slack: -sides.slack, relation: OPPOSITE[sides.relation] },
    };
  };
}

/** What is a plain yes or no; of a list every element. */
function yesNo(value: Evaluate): Decide {
  return (f) => {
    const found = value(f);
    const all = Array.isArray(found) ? found.every(Boolean) : found === true;
    return { outcome: all ? 'holds' : 'fails', sides: null };
  };
}

/**
 * A yes or no that an entry or a computed column has: decided when it was evaluated, and read here with its sides. On its best value
 * alone its uncertainty would be lost.
 */
function named(value: Evaluate, at: Span, item: Item | null, pick: (all: Decisions, f: Frame) => Decision | undefined): Decide {
  const onValue = yesNo(value);
  return (f) => {
    const plain = onValue(f);
    const decided = item?.slot.decisions && pick(item.slot.decisions, f);
    return decided ? { ...decided, sides: decided.sides && { ...decided.sides, at } } : plain;
  };
}

function everyOne(decisions: Decisions): Decision {
  const all = decisions.flatMap((d) => d ?? []);
  const failed = all.filter((d) => d.outcome === 'fails');
  return failed.length > 0 ? combinedOutcome(failed, 'fails', smaller) : combinedOutcome(all, 'holds', smaller);
}

/** Where the condition is undecided, both branches must agree. */
function branches(k: Compiler, node: CheckedIf, fresh: Fresh): Decide {
  const value = k.compile(node);
  const [condition, then, otherwise] = [node.condition, node.then, node.otherwise].map((part) => compileDecision(k, part, fresh));
  return (f) => {
    const { outcome, sides } = condition!(f);
    if (outcome === 'holds') return then!(f);
    if (outcome === 'fails') return otherwise!(f);
    value(f);
    const [a, b] = [whereDefined(then!, f), whereDefined(otherwise!, f)];
    return a !== null && a.outcome === b?.outcome ? a : { outcome: 'undecided', sides };
  };
}

function whereDefined(decide: Decide, f: Frame): Decision | null {
  try {
    return decide(f);
  } catch (fault) {
    if (fault instanceof Fault) return null;
    throw fault;
  }
}

function behindLets(k: Compiler, node: CheckedLets, fresh: Fresh): Decide {
  const indexes = defineLets(k, node.locals);
  const body = compileDecision(k, node.body, fresh);
  return (f) => {
    forgetLets(k, indexes, f);
    return body(f);
  };
}

/** A `with` name is decided once in a frame, however often it is read. */
function local(k: Compiler, node: CheckedLocal, fresh: Fresh): Decide {
  const definition = k.lets[node.index];
  if (definition === undefined || !node.uncertain) return yesNo(k.compile(node));
  let decide: Decide | null = null;
  return (f) => {
    if (definition.decided?.frame === f) return definition.decided.decision;
    decide ??= compileDecision(k, definition.value, fresh);
    const decision = decide(f);
    definition.decided = { frame: f, decision };
    return decision;
  };
}

/** The call is made first, so that what goes wrong in it is told as at any call. */
function ofBody(k: Compiler, node: CheckedCall, fresh: Fresh): Decide {
  const { instance, at } = node;
  const value = k.compile(node);
  const args = node.args.map(k.compile);
  const inner = k.forBody();
  defineLets(inner, instance.locals);
  const frameFor = (caller: Frame): Frame => {
    const locals = new Array<unknown>(instance.frameSize);
    for (let i = 0; i < args.length; i++) locals[i] = args[i]!(caller);
    return { locals, run: caller.run };
  };
  let caller: Frame | null = null;
  let decide: Decide | null = null;
  return (f) => {
    const { met } = f.run;
    value(f);
    f.run.met = met;
    caller = f;
    decide ??= compileDecision(inner, instance.body, (_, run) => frameFor(fresh(caller!, run)));
    const { outcome, sides } = decide(frameFor(f));
    return { outcome, sides: sides && { ...sides, at } };
  };
}

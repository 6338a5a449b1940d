// What the files of the compiler share: compiling a checked expression, and the `with` names of the frame at hand.
import type { Checked } from '../checked.ts';
import type { Decision } from './decision.ts';
import type { Evaluate, Frame, Run } from './frame.ts';

/** A `with` name: its code, its expression, and what was decided of it in the frame at hand. */
export interface Let {
  readonly code: Evaluate;
  readonly value: Checked;
  decided: { readonly frame: Frame; readonly decision: Decision } | null;
}

export interface Compiler {
  readonly compile: (node: Checked) => Evaluate;
  /** The `with` names of this frame, by their place in it: evaluated when first used. */
  readonly lets: (Let | undefined)[];
  /** Whether it is the body of a function: what its parameters hold can't be worked out anew there. */
  readonly inFunction: boolean;
  /** A compiler for the body of a function that is called here. */
  readonly forBody: () => Compiler;
}

/** The frame in another run, with what was worked out of its `with` names forgotten. */
export function freshFrame(k: Compiler, frame: Frame, run: Run): Frame {
  const locals = [...frame.locals];
  k.lets.forEach((_, index) => {
    locals[index] = undefined;
  });
  return { locals, run };
}

/** Forgets what was worked out of `with` names. */
export function forgetLets(k: Compiler, indexes: readonly number[], frame: Frame): void {
  for (const index of indexes) {
    frame.locals[index] = undefined;
    k.lets[index]!.decided = null;
  }
}

/** Compiles an expression that is known to give exact numbers. */
export function compileNumber(k: Compiler, node: Checked): Evaluate<number> {
  return k.compile(node) as Evaluate<number>;
}

/** Compiles a condition. */
export function compileYesNo(k: Compiler, node: Checked): Evaluate<boolean> {
  return k.compile(node) as Evaluate<boolean>;
}

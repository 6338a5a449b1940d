// A value that does not exist: thrown inside evaluation, caught at the statement (or the cell of a column) that has no value.
import type { Problem } from '../text/problem.ts';
import type { Span } from '../text/span.ts';

/**
 * No Error, so that raising one costs no stack trace. `reason`: 'error' is reported where it happened; 'absent' is an empty
 * cell, which rules a row out in `where` (T8); 'not calculated' comes from a name without value and is not reported again.
 */
export class Fault {
  constructor(
    readonly reason: 'error' | 'absent' | 'not calculated',
    readonly problem: Problem | null,
    /** For 'not calculated': the name of what has no value. */
    readonly needs: string | null = null,
  ) {}
}

/** An empty cell of a row (from 0), read at a place of the code. */
export class AbsentCell extends Fault {
  constructor(
    readonly table: string,
    readonly column: string,
    readonly row: number,
    readonly at: Span,
  ) {
    super('absent', null);
  }
}

/** An argument of a call that a function refuses (N7). `parameter` (from 0) is the one that the condition is about; null for several. */
export class RefusedArgument extends Fault {
  constructor(
    problem: Problem,
    readonly parameter: number | null,
  ) {
    super('error', problem);
  }
}

/** Throws the fault of a problem. */
export function raise(problem: Problem): never {
  throw new Fault('error', problem);
}

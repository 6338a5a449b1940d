// What a function of the mathematics is: its form and source, how it is checked, how it is evaluated.
import type { Span } from '../../text/span.ts';
import type { Checked, Display } from '../checked.ts';
import type { Context } from '../checker/context.ts';
import type { Frame, Run } from '../compiler/frame.ts';
import type { Type } from '../type.ts';
import { chain, type Dual, type Uncertain } from '../uncertainty/dual.ts';

/** A call as its check sees it. */
export interface CallCheck {
  readonly c: Context;
  readonly args: readonly Checked[];
  readonly at: Span;
  readonly name: string;
}

export interface CallResult {
  readonly type: Type;
  readonly display: Display;
  /** For each argument whether it is a list over which the call is mapped. */
  readonly mapped: readonly boolean[];
}

/** A call as its evaluation sees it. */
export interface CallSite {
  readonly at: Span;
  readonly name: string;
  readonly args: readonly Checked[];
  /** The value of an argument worked out anew in another run; null in a function, where its parameters stand fast. */
  readonly again: ((argument: number, frame: Frame, run: Run) => unknown) | null;
}

/** Evaluated on single values, element by element where arguments are lists. */
export interface Scalar {
  readonly kind: 'scalar';
  /** On exact numbers. */
  readonly plain: (site: CallSite) => (...args: number[]) => number;
  /** On a single uncertain argument, or on several. */
  readonly dual: (site: CallSite) => (args: readonly Uncertain[], frame: Frame) => Uncertain;
}

/** Evaluated on its arguments as they are. */
export interface Whole {
  readonly kind: 'whole';
  readonly evaluate: (site: CallSite) => (args: readonly unknown[], frame: Frame) => unknown;
}

export interface Builtin {
  readonly name: string;
  readonly form: string;
  readonly parameters: readonly { readonly name: string; readonly takes: string }[];
  /** Least and most number of arguments. */
  readonly least: number;
  readonly most: number;
  /** What it gives, in one line. */
  readonly description: string;
  readonly formula: string;
  readonly source: string;
  readonly example: string;
  /** The result has an uncertainty of its own, whatever the arguments (U10). */
  readonly makesUncertain?: boolean;
  /** The result is exact, whatever the arguments (U8). */
  readonly endsUncertainty?: boolean;
  readonly check: (call: CallCheck) => CallResult | null;
  readonly run: Scalar | Whole;
  /** For functions that go over a list when it is their one argument (T2). */
  readonly ofList?: Whole['evaluate'];
}

/** A scalar function of one argument from its value, derivative and domain. `undefinedAt` raises where there is no value. */
export function unary(
  value: (x: number) => number,
  slope: (x: number, y: number) => number,
  undefinedAt?: (x: number, site: CallSite) => void,
  kinkAt?: (x: Dual) => boolean,
): Scalar {
  return {
    kind: 'scalar',
    plain: (site) =>
      undefinedAt === undefined
        ? value
        : (x) => {
            undefinedAt(x, site);
            return value(x);
          },
    dual:
      (site) =>
      ([x]) => {
        if (typeof x === 'number') {
          undefinedAt?.(x, site);
          return value(x);
        }
        undefinedAt?.(x!.value, site);
        const y = value(x!.value);
        return chain(x!, y, slope(x!.value, y), kinkAt?.(x!) ?? false);
      },
  };
}

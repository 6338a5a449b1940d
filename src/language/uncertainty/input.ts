// Uncertain inputs: the variables that results are differentiated by (U1), each with its components and limits.
import { Dual } from './dual.ts';

/** One component of a standard uncertainty, in coherent SI. `nu`: degrees of freedom, null where infinite (type B). */
export interface Component {
  readonly u: number;
  readonly nu: number | null;
}

/** What is known of an input's spread. Deviations are from its value: `low` ≤ 0 ≤ `high`. */
export interface Spread {
  readonly components: readonly Component[];
  /** Null where any component is no plain limit. */
  readonly limits: { readonly low: number; readonly high: number } | null;
}

/** Where an input stands: its text and the calc cell in it; -1 for the cells of tables. */
export interface Origin {
  readonly module: { readonly id: number };
  readonly cell: number;
}

/** One independent variable. Its place in the text orders sums, so that results do not depend on the order of editing. */
export class Input {
  private static made = 0;
  /** Orders gradients; says nothing else. */
  readonly id = Input.made++;
  /** The value that evaluation takes: the input's own, or a shifted one while a result is evaluated by shifting (U6). */
  current: Dual;
  /** Standard uncertainty of all components together. */
  readonly u: number;

  constructor(
    /** For the budget: `U_n`, `xs[3]`, `gain of DMM_7`. */
    readonly name: string,
    readonly origin: Origin,
    /** Offset in the cell; for the cells of tables their number in the order of tables, rows and columns. */
    readonly offset: number,
    readonly nominal: number,
    readonly spread: Spread,
  ) {
    this.u = Math.sqrt(spread.components.reduce((sum, c) => sum + c.u * c.u, 0));
    this.current = new Dual(nominal, [this], [1], false);
  }

  /** Moves the input by `by` for evaluation by shifting; 0 puts it back. */
  shift(by: number): void {
    this.current = new Dual(this.nominal + by, [this], [1], false);
  }
}

/** Text order of two inputs. */
export function inTextOrder(a: Input, b: Input): number {
  return a.origin.module.id - b.origin.module.id || a.origin.cell - b.origin.cell || a.offset - b.offset || a.id - b.id;
}

/** The spread of plain limits −low … high about a value: rectangular over the whole width (JCGM 100, 4.3.7, 4.3.8). */
export function limitsSpread(low: number, high: number): Spread {
  return { components: [{ u: (high - low) / Math.sqrt(12), nu: null }], limits: { low, high } };
}

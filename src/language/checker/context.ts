// What the checker carries while it reads one statement: where it stands, what is in scope, what it has found.
import type { Problem } from '../../text/problem.ts';
import type { Span } from '../../text/span.ts';
import type { Expression, Local } from '../ast.ts';
import type { Checked, Display, Instance, Signature } from '../checked.ts';
import { nameProblem } from '../problems/names.ts';
import type { Definition, Ground, Item, Module, TableModel } from '../program.ts';
import { type Type, UNKNOWN } from '../type.ts';
import type { Input } from '../uncertainty/input.ts';

/** A parameter, the variable of `over`, or a `with` name that has been checked. */
export interface Binding {
  readonly index: number;
  readonly type: Type;
  readonly display: Display;
  readonly uncertain: boolean;
}

/** A `with` name: checked when first met, in the scope in which the `with` stands (N5). */
export interface LazyBinding {
  readonly local: Local;
  scopes: readonly Scope[];
  readonly index: number;
  checked: Checked | null;
  /** How deep it is nested itself, once it has been checked. */
  levels: number;
}

export type Scope =
  | { readonly kind: 'names'; readonly names: Map<string, Binding> }
  | { readonly kind: 'with'; readonly names: Map<string, LazyBinding> }
  | { readonly kind: 'row'; readonly table: TableModel; readonly index: number };

/** Asks of the program that a check may make. */
export interface World {
  /** What a name means in a module (sheet, used, library); null where nothing. */
  define(module: Module, name: string): Definition | null;
  /** Names for "did you mean". */
  namesOf(module: Module, of: 'value' | 'function' | 'table'): Iterable<string>;
  /** What others see of an item: null where it has not been checked yet. */
  signature(item: Item): Signature | null;
  /** Whether the library defines the name. */
  inLibrary(name: string): boolean;
  /** Counts one more checked body of a function of `any`; false past the limit (T4). */
  countInstance(): boolean;
}

export interface Context {
  readonly world: World;
  /** The checker of any expression, handed in so that the files of the checker need not know each other. */
  readonly dispatch: (c: Context, node: Expression) => Checked;
  readonly item: Item;
  readonly module: Module;
  readonly problems: Problem[];
  readonly reads: Set<Item>;
  /** Tables of the sheet and used sheets that names have led to. */
  readonly grounds: Set<Ground>;
  /** Tables and columns that it reads and that could not be read from the file: reported there, unknown here. */
  readonly lost: string[];
  /** Items whose signature was needed and is not known yet: the check is to be made again after theirs. */
  readonly missing: Item[];
  readonly inputs: Input[];
  scopes: readonly Scope[];
  /** The whole right side; where it is a root, `with` sees its variable (N5). */
  whole: Expression | null;
  /** Locals taken so far in this frame. */
  frameSize: number;
  /** Functions whose `any` bodies are being checked, outermost first. */
  readonly active: readonly Item[];
  /** `with` names that are being checked, each because of the one before it. */
  readonly asked: LazyBinding[];
  /** Greatest depth of the functions called. */
  depth: number;
  /** How deep the place that is being checked is nested: in expressions, and in the functions and `with` names that lead to it. */
  level: number;
  /** The deepest level that evaluation reaches. */
  deepest: number;
  /** What one evaluation asks for inside itself: calls of functions, with all that they call, as often as roots call them. */
  calls: number;
  readonly instances: Instance[];
}

/** A fresh context for an item. */
export function contextFor(world: World, item: Item, dispatch: Context['dispatch'], active: readonly Item[] = [], level = 0): Context {
  return {
    world,
    dispatch,
    item,
    module: item.module,
    problems: [],
    reads: new Set(),
    grounds: new Set(),
    lost: [],
    missing: [],
    inputs: [],
    scopes: [],
    whole: null,
    frameSize: 0,
    active,
    asked: [],
    depth: 0,
    level,
    deepest: level,
    calls: 0,
    instances: [],
  };
}

/** What a name means where the statement stands; null where nothing. */
export function define(c: Context, name: string): Definition | null {
  const found = c.world.define(c.module, name);
  if (found?.kind === 'table') noteTable(c, found.table);
  else if (found?.item.module.kind === 'used') c.grounds.add(found.item.module);
  return found;
}

function noteTable(c: Context, table: TableModel): void {
  if (table.module.kind !== 'library') c.grounds.add(table.module.kind === 'used' ? table.module : table);
}

/** Notes the table whose rows a value of this type is or holds. */
export function noteTableOf(c: Context, type: Type): void {
  if (type.is === 'list') noteTableOf(c, type.of);
  else if (type.is === 'row' || type.is === 'table') noteTable(c, type.table);
}

/** Runs `check` with another scope inside. */
export function within<T>(c: Context, scope: Scope, check: () => T): T {
  const before = c.scopes;
  c.scopes = [...before, scope];
  const result = check();
  c.scopes = before;
  return result;
}

/** Takes the next place in the frame. */
export function takeLocal(c: Context): number {
  return c.frameSize++;
}

/** An expression of which nothing is known; never reported again. */
export function unknown(at: Span): Checked {
  return { kind: 'constant', at, type: UNKNOWN, display: null, uncertain: false, value: 0, written: null };
}

/** Reports a problem and gives the unknown expression in its stead. */
export function failed(c: Context, problem: Problem): Checked {
  c.problems.push(problem);
  return unknown(problem.at);
}

/** How deep evaluation may be nested, functions and `with` names counted in: so much every stage has room for on its stack. */
const MOST_LEVELS = 600;

/** Notes that evaluation nests so many levels deeper at the present place; false (reported once a statement) where that is too deep. */
export function canNest(c: Context, levels: number, at: Span): boolean {
  c.deepest = Math.max(c.deepest, c.level + levels);
  if (c.level + levels <= MOST_LEVELS) return true;
  const isTold = c.problems.some(({ code }) => code === 'evaluation-depth');
  if (!isTold) c.problems.push(nameProblem('evaluation-depth', at, { limit: MOST_LEVELS }));
  return false;
}

/** Checks any expression in the present scope. */
export function checkExpression(c: Context, node: Expression): Checked {
  if (!canNest(c, 1, node.at)) return unknown(node.at);
  c.level++;
  const checked = c.dispatch(c, node);
  c.level--;
  return checked;
}

// Types of values: quantity, date, text, yes/no, list, table, row; and when two of them agree.
import { type Dimension, dimension as internDimension, isRate, PLAIN } from '../units/dimension.ts';
import { ZERO } from '../units/rational.ts';
import type { PowerKind, Unit } from '../units/unit.ts';
import type { TableModel } from './program.ts';

/** A number with a dimension. `point`: a point on a temperature scale (A1). `zero`: the literal `0`, which takes any dimension (T5). */
export interface QuantityType {
  readonly is: 'quantity';
  readonly dimension: Dimension;
  readonly point: boolean;
  readonly power: PowerKind | null;
  readonly zero: boolean;
}

export interface ListType {
  readonly is: 'list';
  readonly of: Type;
}

export interface TableType {
  readonly is: 'table';
  readonly table: TableModel;
}

export interface RowType {
  readonly is: 'row';
  readonly table: TableModel;
}

/** `unknown` stands for what could not be typed; it agrees with everything and is never reported twice. */
export type Type = QuantityType | { readonly is: 'date' | 'text' | 'yesno' | 'unknown' } | ListType | TableType | RowType;

export const DATE: Type = { is: 'date' };
export const TEXT: Type = { is: 'text' };
export const YESNO: Type = { is: 'yesno' };
export const UNKNOWN: Type = { is: 'unknown' };
export const NUMBER: QuantityType = { is: 'quantity', dimension: PLAIN, point: false, power: null, zero: false };

/** A quantity type of a dimension; neither point nor kind of power unless said. */
export function quantity(dimension: Dimension, extra: { point?: boolean; power?: PowerKind | null; zero?: boolean } = {}): QuantityType {
  return { is: 'quantity', dimension, point: extra.point ?? false, power: extra.power ?? null, zero: extra.zero ?? false };
}

/** The type of a value in this unit; null is the plain number. */
export function typeOfUnit(unit: Unit | null): QuantityType {
  return unit === null ? NUMBER : quantity(unit.dimension, { point: unit.point, power: unit.power });
}

export function listOf(of: Type): ListType {
  return { is: 'list', of };
}

/** The type of one element of a list, or the type itself. */
export function elementOf(type: Type): Type {
  return type.is === 'list' ? type.of : type;
}

/** The table of a row, of a table, or of a list of rows; null for other types. */
export function tableBehind(type: Type): TableModel | null {
  const element = elementOf(type);
  return element.is === 'table' || element.is === 'row' ? element.table : null;
}

/** A text that is equal for equal types, for memoising; tables of one name in different sheets may share it. */
export function typeKey(type: Type): string {
  switch (type.is) {
    case 'quantity':
      return `q${type.dimension.id}${type.point ? 'p' : ''}${type.power ?? ''}${type.zero ? '0' : ''}`;
    case 'list':
      return `[${typeKey(type.of)}]`;
    case 'table':
    case 'row':
      return `${type.is}:${type.table.module.id}:${type.table.name}`;
    default:
      return type.is;
  }
}

/** Why two dimensions do not agree. */
export type Disagreement =
  /** The SI parts differ. */
  | 'dimension'
  /** Angle in radians on one side, cycles or turns without radians on the other (R1). */
  | 'angle'
  /** A count of turns that nothing turns into radians (R2). */
  | 'turns';

/** Whether two dimensions may be added, compared or declared as one another (R1, R2); null where they may. Symmetric. */
export function disagreement(a: Dimension, b: Dimension): Disagreement | null {
  if (a === b) return null;
  if (a.si !== b.si) return 'dimension';
  if (isRate(a)) {
    const radians = [a, b].filter((d) => d.rad.num !== 0).length;
    const turns = (d: Dimension) => d.rad.num === 0 && (d.cycle.num !== 0 || d.turn.num !== 0);
    return radians === 1 && (turns(a) || turns(b)) ? 'angle' : null;
  }
  const sameTurns = a.turn.num === b.turn.num && a.turn.den === b.turn.den;
  const bare = (d: Dimension) => d.turn.num !== 0 && d.rad.num === 0;
  return !sameTurns && (bare(a) || bare(b)) ? 'turns' : null;
}

/** The dimension of a sum, a choice between or a list of two that agree: each count where both have it (R3). */
export function common(a: Dimension, b: Dimension): Dimension {
  if (a === b) return a;
  return internDimension(
    a.exponents.map((e, i) => {
      const other = b.exponents[i]!;
      return e.num === other.num && e.den === other.den ? e : ZERO;
    }),
  );
}

/** Whether an angle may be taken from it: radians, or a plain number without cycles or turns (R3). */
export function isAngle(d: Dimension): boolean {
  return d.si === PLAIN && (d.rad.num !== 0 || (d.cycle.num === 0 && d.turn.num === 0));
}

// The text of a cell as a value: a number in the head's unit, perhaps with `±`; a date; a text; or nothing (T8).
import { daysOf } from '../text/date.ts';
import { differenceToSI, toSI } from '../units/quantity.ts';
import { unitOf } from '../units/read-unit.ts';
import type { Unit } from '../units/unit.ts';
import type { Cell, ColumnType } from './table.ts';

/** Why a cell could not be read, and what to write instead where that is clear. */
export interface CellFault {
  readonly because: string;
  readonly instead: string | null;
}

export type CellValue = Pick<Cell, 'value' | 'bounds'>;

const ABSENT: CellValue = { value: null, bounds: null };
const NUMBER = /^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?$/;
const PERCENT = unitOf('%');

/** The value of a cell's text (escapes undone, no blanks around it), or why there is none. */
export function readCell(text: string, type: ColumnType): CellValue | CellFault {
  if (text === '' || text === '–') return ABSENT;
  switch (type.kind) {
    case 'text':
      return { value: text, bounds: null };
    case 'date':
      return readDate(text);
    case 'number':
      return readNumber(text, type.unit);
  }
}

function readDate(text: string): CellValue | CellFault {
  const parts = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text);
  if (!parts) return fault(`\`${text}\` is no date as in \`2026-09-14\``);
  const [year, month, day] = parts.slice(1) as [string, string, string];
  const days = daysOf(Number(year), Number(month), Number(day));
  if (days === null) return fault(`there is no date ${text}`);
  const padded = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return padded === text ? { value: days, bounds: null } : fault('a date has two digits each for month and day', padded);
}

function readNumber(text: string, unit: Unit): CellValue | CellFault {
  if (NUMBER.test(text)) return readPlainNumber(text, text, unit);
  const sign = /±|\+\/-/.exec(text);
  const written = plain(sign ? text.slice(0, sign.index) : text);
  if (!NUMBER.test(written)) return numberFault(text, written, unit);
  const number = readPlainNumber(text, written, unit);
  if ('because' in number || !sign) return number;
  const { value } = number;
  const halfWidth = readHalfWidth(plain(text.slice(sign.index + sign[0].length)), value, unit);
  return typeof halfWidth === 'number' ? { value, bounds: { halfWidth } } : halfWidth;
}

/** The number that is written in the cell `text`. */
function readPlainNumber(text: string, written: string, unit: Unit): { value: number; bounds: null } | CellFault {
  const value = toSI(written, unit);
  if (!Number.isFinite(value) || (value === 0 && /[1-9]/.test(written.split(/e/i)[0]!) && unit.offset === 0)) {
    return fault(`\`${text}\` is outside the range of numbers that can be calculated with`);
  }
  return { value, bounds: null };
}

/** In percent it is relative to the value, unless the column is itself in % or ppm: then it is absolute (L11). */
function readHalfWidth(written: string, value: number, unit: Unit): number | CellFault {
  const percent = written.endsWith('%');
  const number = percent ? plain(written.slice(0, -1)) : written;
  if (!NUMBER.test(number)) return fault(`\`${written}\` behind ± is neither a number nor a number with %`);
  if (number.startsWith('-')) return fault('a half-width is not negative', null);
  if (percent && unit.point) return fault('a point of temperature has no percent; give the half-width as a difference');
  const width = differenceToSI(number, percent ? PERCENT : unit);
  const relative = percent && unit.text !== '%' && unit.text !== 'ppm';
  const halfWidth = relative ? Math.abs(value) * width : width;
  return Number.isFinite(halfWidth) ? halfWidth : fault(`\`${written}\` is too large`);
}

/** Without blanks around it, and with the plain minus sign. */
function plain(written: string): string {
  return written.trim().replaceAll('−', '-');
}

function numberFault(text: string, written: string, unit: Unit): CellFault {
  const rest = text.slice(text.search(/±|\+\/-|$/));
  const instead = (number: string) => (NUMBER.test(number) ? [number, rest].filter((part) => part !== '').join(' ') : null);
  if (written === '') return fault('a number is missing in front of ±');
  if (/\d,\d/.test(written)) {
    const thousands = /^-?[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(written) && !/^-?\d+,\d{3}$/.test(written);
    return fault('the decimal sign is a point', instead(written.replaceAll(',', thousands ? '' : '.')));
  }
  if (/^-?\d[\d \u00a0\u2009\u202f_']*(?:\.\d+)?(?<=\d)$/.test(written)) {
    return fault(
      'a number has no spaces, marks or leading zeros in it',
      instead(written.replace(/[^-\d.]/g, '').replace(/^(-?)0+(?=\d)/, '$1')),
    );
  }
  if (/^-?\.\d+$|^-?\d+\.$/.test(written)) {
    return fault('a decimal point has digits on both sides', instead(written.replace(/^(-?)\./, '$10.').replace(/\.$/, '')));
  }
  const behind = /^(-?\d+(?:\.\d+)?(?:[eE][-+]?\d+)?)(\D.*)$/.exec(written);
  if (behind) {
    const head = unit.text === '' ? 'no unit' : `the unit \`${unit.text}\``;
    return fault(
      `the head gives the column ${head}, so a cell holds the number alone`,
      behind[2]!.trim() === unit.text ? instead(behind[1]!) : null,
    );
  }
  return fault(`\`${text}\` is no number; leave the cell empty, or write –, where the value is not given`);
}

function fault(because: string, instead: string | null = null): CellFault {
  return { because, instead };
}

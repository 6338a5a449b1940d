// The unit behind a number, behind `pi` and behind a colon (L1 to L3, L6, L9).
import { span } from '../../text/span.ts';
import { toSI } from '../../units/quantity.ts';
import { readUnit, type UnitFault, unitOf } from '../../units/read-unit.ts';
import { PLAIN_UNIT } from '../../units/unit.ts';
import { lexingProblem } from '../problems/lexing.ts';
import { behindBlanks, readBlanks } from './blanks.ts';
import { characterAt, isNamePart } from './characters.ts';
import { type Scan, take } from './scan.ts';

const RAD = unitOf('rad');

/** Takes a number that ends at `end`, with the unit that follows it if there is one. `number` is its text, mended. */
export function takeNumber(scan: Scan, end: number, number: string): boolean {
  const from = behindBlanks(scan.text, end);
  const reading = readUnit(scan.text, from);
  if (reading === null) {
    take(scan, end, { kind: 'number', text: number });
    return true;
  }
  reportFaults(scan, reading.faults);
  const at = take(scan, reading.end, { kind: 'quantity', text: number, unit: reading.unit, unitAt: span(from, reading.end) });
  if (Number.isFinite(Number(number)) && !Number.isFinite(toSI(number, reading.unit))) {
    scan.problems.push(lexingProblem('number-out-of-range', at, { number: scan.text.slice(at.start, at.end) }));
  }
  return true;
}

/** Whether `1/` and a unit begin at `at`: a reciprocal unit (L6). */
export function beginsReciprocal(text: string, at: number): boolean {
  return text.startsWith('1/', at) && readUnit(text, at) !== null;
}

/** Takes `pi` up to `end`, with `rad` or `rad/…` behind it: no other unit may follow (L9, R2). */
export function takePi(scan: Scan, end: number): boolean {
  const from = behindBlanks(scan.text, end);
  const reading = scan.text.startsWith('rad', from) && from > end ? readUnit(scan.text, from) : null;
  if (reading === null) {
    take(scan, end, { kind: 'number', text: 'pi' });
    return true;
  }
  const [first, ...rest] = reading.unit.parts;
  const fits = first!.symbol === RAD.parts[0]!.symbol && first!.power.num === 1 && rest.every((part) => part.power.num < 0);
  const unitEnd = fits ? reading.end : from + 'rad'.length;
  const unit = fits ? reading.unit : RAD;
  if (fits) reportFaults(scan, reading.faults);
  take(scan, unitEnd, { kind: 'quantity', text: 'pi', unit, unitAt: span(from, unitEnd) });
  return true;
}

/** Behind a colon, or a colon and `[`: a unit, or `1` for the plain number. What is neither is left to the next reader. */
export function readUnitBehindColon(scan: Scan): void {
  readBlanks(scan);
  if (scan.text[scan.at] === '[') {
    take(scan, scan.at + 1, { kind: 'punctuation', mark: '[' });
    readBlanks(scan);
  }
  const reading = readUnit(scan.text, scan.at);
  if (reading !== null) {
    reportFaults(scan, reading.faults, false);
    take(scan, reading.end, { kind: 'unit', unit: reading.unit });
  } else if (
    scan.text[scan.at] === '1' &&
    !/[\d.,/]/.test(scan.text[scan.at + 1] ?? '') &&
    !isNamePart(characterAt(scan.text, scan.at + 1))
  ) {
    take(scan, scan.at + 1, { kind: 'unit', unit: PLAIN_UNIT });
  }
}

/** `value`: behind a number, where what follows a unit may be an operator and a name. */
function reportFaults(scan: Scan, faults: readonly UnitFault[], value = true): void {
  for (const fault of faults) {
    const { start, end } = fault.at;
    const written = scan.text.slice(start, end);
    if (fault.kind === 'exponent') scan.problems.push(lexingProblem('unit-power', fault.at, { power: written }));
    else if (fault.kind === 'size') scan.problems.push(lexingProblem('unit-size', fault.at, { unit: written }));
    else {
      const sign = fault.joined.start - 1;
      const apart = `${scan.text.slice(start, sign)} ${scan.text[sign]} ${scan.text.slice(sign + 1, end)}`;
      scan.problems.push(lexingProblem('second-solidus', fault.at, { forms: fault.forms, apart: value ? apart : null }));
    }
  }
}

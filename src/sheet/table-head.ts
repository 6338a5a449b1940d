// The head of a column: `name` for texts, `name / unit` for numbers, `name / date` for dates (as ISO 80000 heads its tables).
import { isName, nameSpelling } from '../language/name.ts';
import type { Problem } from '../text/problem.ts';
import { type Span, span } from '../text/span.ts';
import { parseUnit, readUnit } from '../units/read-unit.ts';
import { suggestUnits } from '../units/suggest-unit.ts';
import { PLAIN_UNIT, type Unit } from '../units/unit.ts';
import type { ColumnType } from './table.ts';
import { tableProblem } from './table-problems.ts';

/** What a head says. `type` is null where its unit could not be read. */
export interface Head {
  readonly name: string;
  readonly at: Span;
  readonly type: ColumnType | null;
}

/** Reads a head whose text (escapes undone) stands at `at`; null (with a problem) where it names nothing. */
export function readHead(text: string, at: Span, problems: Problem[]): Head | null {
  const slash = text.indexOf('/');
  const written = (slash < 0 ? text : text.slice(0, slash)).trim();
  if (!isName(written)) {
    problems.push(tableProblem('column-name', at, { name: written, instead: headMeant(text, written) }));
    return null;
  }
  const name = nameSpelling(written);
  if (slash < 0) return { name, at, type: { kind: 'text' } };
  const quality = text.slice(slash + 1).trim();
  if (quality === 'date') return { name, at, type: { kind: 'date' } };
  const unit = readHeadUnit(quality);
  if (unit) return { name, at, type: { kind: 'number', unit } };
  // Escapes are rare in heads: the unit stands at the head's end as it is written.
  const place = quality === '' ? at : span(at.end - quality.length, at.end);
  problems.push(tableProblem('column-unit', place, { unit: quality, near: unitsMeant(quality) }));
  return { name, at, type: null };
}

/** `I_n / A` for `I_n (A)`, `I_n [A]` and `I_n, A`; else the words before a solidus joined to a name. */
function headMeant(text: string, written: string): string | null {
  const [name = '', unit = '', ...more] = text.split(/[\s()[\],]+/).filter((word) => word !== '');
  if (/[([,]/.test(written) && more.length === 0 && isName(name) && readHeadUnit(unit)) return writeHead(nameSpelling(name), unit);
  const joined = written.replace(/[^\p{L}\p{N}_]+/gu, '_');
  return isName(joined) ? joined + text.slice(written.length) : null;
}

function readHeadUnit(written: string): Unit | null {
  const inner = /^\((.*)\)$/.exec(written)?.[1]?.trim();
  return written === '1' ? PLAIN_UNIT : (parseUnit(written) ?? (inner === undefined ? null : parseUnit(inner)));
}

function unitsMeant(written: string): readonly string[] {
  const reading = readUnit(written, 0);
  const solidus = reading?.end === written.length ? reading.faults.find((fault) => fault.kind === 'solidus') : undefined;
  if (solidus) return solidus.forms;
  const apart = /^(\S+) (\S+)$/.exec(written);
  const joined = apart && parseUnit(`${apart[1]}·${apart[2]}`);
  return joined ? [joined.text] : suggestUnits(written);
}

/** A head as `readHead` reads it: `I_n / A`, `alpha / (1/K)`, `n / 1`. */
export function writeHead(name: string, unit: string): string {
  return `${name} / ${unit === '' ? '1' : unit.includes('/') ? `(${unit})` : unit}`;
}

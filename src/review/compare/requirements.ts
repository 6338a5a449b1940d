// Requirements that changed: criteria that were loosened or dropped, decisions that turned, margins that shrank.
import { printRange } from '../../language/print.ts';
import { marginWords, shortest } from '../../run/margin-words.ts';
import { sidesText } from '../../run/record.ts';
import type { RequirementResult, Sides, Status } from '../../run/result.ts';
import { dateText } from '../../text/date.ts';
import type { RequirementChange } from '../comparison.ts';
import { clauseChanges, localsText } from './clauses.ts';
import { CRITERIA } from './criteria.ts';
import { sameMeaning } from './meaning.ts';
import { pairByLikeness } from './pairing.ts';
import { changeOf, linesOf, oneLine, type Pair, type Side, textsOf } from './side.ts';
import { sameValue } from './values.ts';

export function compareRequirements(pair: Pair): readonly RequirementChange[] {
  return pairByLikeness(requirements(pair.old), requirements(pair.new), CRITERIA, pair.renames).flatMap(([old, now]) => {
    const change = requirementChange(pair, old, now);
    return change === null ? [] : [change];
  });
}

function requirementChange(pair: Pair, old: RequirementResult | null, now: RequirementResult | null): RequirementChange | null {
  const own = old !== null && now !== null && old.force === now.force && sameMeaning(old.statement, now.statement, pair.renames);
  const decided = old !== null && now !== null && sameDecision(old, now);
  const rows = old !== null && now !== null ? turnedRows(old, now) : [];
  const clauses = clauseChanges(old?.statement, now?.statement);
  const concession = textsOf(old && concessionText(old), now && concessionText(now));
  if (own && decided && rows.length === 0 && [...Object.values(clauses), concession].every((one) => one === null)) return null;
  return {
    change: changeOf(old, now),
    line: linesOf(pair, old, now),
    criterion: now ? writtenText(now, pair.new) : writtenText(old!, pair.old),
    force: (now ?? old)!.force,
    written: own ? null : textsOf(old && writtenText(old, pair.old), now && writtenText(now, pair.new)),
    status: { old: old?.status ?? null, new: now?.status ?? null },
    turned: old === null || now === null ? null : turn(old.status, now.status),
    sides: decided ? null : textsOf(old && decidedText(old.sides), now && decidedText(now.sides)),
    rows,
    ...clauses,
    concession,
    knockOn: own && !decided,
  };
}

/** The better, the lower. */
const RANK: Readonly<Record<Status, number>> = { holds: 0, undecided: 1, 'not calculated': 2, fails: 3 };

function turn(old: Status, now: Status): 'worse' | 'better' | null {
  return old === now ? null : RANK[now] > RANK[old] ? 'worse' : 'better';
}

function sameDecision(old: RequirementResult, now: RequirementResult): boolean {
  if (old.status !== now.status || (old.sides === null) !== (now.sides === null)) return false;
  if (old.sides === null || now.sides === null) return true;
  const { left, right, uncertainty } = now.sides;
  return sameValue(old.sides.left, left) && sameValue(old.sides.right, right) && old.sides.uncertainty === uncertainty;
}

function turnedRows(old: RequirementResult, now: RequirementResult): RequirementChange['rows'] {
  const before = new Map(old.rows.map(({ label, status }) => [label, status]));
  const after = new Map(now.rows.map(({ label, status }) => [label, status]));
  return [...new Set([...after.keys(), ...before.keys()])].flatMap((row) => {
    const status = { old: before.get(row) ?? null, new: after.get(row) ?? null };
    return status.old === status.new || (status.old === null && status.new === 'holds') ? [] : [{ row, status }];
  });
}

/** `34.40 A ≤ 40 A, 14 % in hand`. */
function decidedText(sides: Sides | null): string | null {
  return sides && [sidesText(sides), marginWords(sides, shortest)].filter((part) => part !== null).join(', ');
}

/** `shall I_n <= K.I_AC3 for each motors throughout U_0 from 104.5 V to 115.5 V`. */
function writtenText(of: RequirementResult, side: Side): string {
  const { statement, force, condition } = of;
  if (statement.broken) return side.textOf(of);
  const { forEach, throughout, clauses } = statement;
  const each = forEach === null ? '' : ` ${oneLine(eachText(of, side))}`;
  const range = throughout.length === 0 ? '' : ` throughout ${throughout.map(printRange).join(', ')}`;
  return `${force} ${condition}${each}${range}${localsText(clauses)}`;
}

/** `for each motors where …`, as it stands. */
function eachText({ cell, statement }: RequirementResult, { evaluation }: Side): string {
  const { start, end } = statement.forEach!.at;
  return evaluation.result.cells[cell]!.code.slice(start, end);
}

/** `R. Osei, maintenance, until 2027-03-31 because "…"`. */
function concessionText({ statement: { concession } }: RequirementResult): string | null {
  return concession && oneLine(`${concession.by.value} until ${dateText(concession.until.days)} because "${concession.because.value}"`);
}

function requirements({ statements }: Side): readonly RequirementResult[] {
  return statements.filter((of) => of.kind === 'requirement');
}

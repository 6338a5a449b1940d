// The sample in review: two revisions of a sheet, and what their comparison tells, committed beside them.
// UPDATE=1 records and signs both anew, as their persons would have, and writes the comparison.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { version } from '../../package.json';
import { comparisonsMarkdown } from '../../src/report/comparison/markdown.ts';
import { compareSheets } from '../../src/review/compare.ts';
import { comparedSheet } from '../../src/review/comparisons.ts';
import { verifySheet } from '../../src/review/verify.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { recordSheet } from '../../src/run/record.ts';
import { signatureStates } from '../../src/sheet/signatures.ts';
import type { SignatureEntry } from '../../src/sheet/with-signature.ts';
import { withSignature } from '../../src/sheet/with-signature.ts';
import { daysOf } from '../../src/text/date.ts';
import { golden } from '../support/golden.ts';

const folder = join(import.meta.dirname, '../../samples/review');
const A = join(folder, 'dust-fan-a.ampwright.md');
const B = join(folder, 'dust-fan-b.ampwright.md');
const read = (path: string) => readFileSync(path, 'utf8');
const evaluated = (path: string) => evaluateSheet(read(path));

type Person = Pick<SignatureEntry, 'role' | 'name' | 'date'>;
const PREPARED_A: Person = { role: 'prepared', name: 'R. Osei', date: '2026-06-12' };
const CHECKED_A: Person = { role: 'checked', name: 'M. Hale', date: '2026-06-15' };
const PREPARED_B: Person = { role: 'prepared', name: 'R. Osei', date: '2026-11-20' };

/** Signs a text whose results are recorded; signatures are no part of what a signature covers. */
const sign = (text: string, person: Person, covers = evaluateSheet(text).digest) => withSignature(text, { ...person, covers, version })!;

function renew(): void {
  const a = recordSheet(evaluated(A));
  const { digest } = evaluateSheet(a);
  writeFileSync(A, sign(sign(a, PREPARED_A), CHECKED_A));
  writeFileSync(B, sign(sign(recordSheet(evaluated(B)), PREPARED_B), CHECKED_A, digest));
}

describe('the sample in review', () => {
  before(() => {
    if (process.env['UPDATE'] === '1') renew();
  });

  it('is recorded in both revisions, and reads without an error', () => {
    for (const path of [A, B]) {
      assert.equal(recordSheet(evaluated(path)), read(path));
      assert.deepEqual(
        evaluated(path).problems.filter(({ problem }) => problem.severity === 'error'),
        [],
      );
    }
  });

  it('revision A is prepared and checked; in revision B nobody has checked what changed', () => {
    const states = (path: string) =>
      signatureStates(evaluated(path).sheet.frontMatter.signatures, evaluated(path).digest).map(
        ({ signature, state }) => `${signature.role}: ${state}`,
      );
    assert.deepEqual(states(A), ['prepared: current', 'checked: current']);
    assert.deepEqual(states(B), ['prepared: current', 'checked: out of date']);
  });

  it('the comparison committed beside them is what comes out', () => {
    const compared = comparedSheet('dust-fan-b.ampwright.md', null, evaluated(A), evaluated(B));
    golden(
      join(folder, 'what-changed.md'),
      comparisonsMarkdown({ old: 'dust-fan-a.ampwright.md', new: 'dust-fan-b.ampwright.md', sheets: [compared] }),
    );
  });

  it('tells the story: a longer run, found on site, and types that the new edition rates lower', () => {
    const { requirements, signatures, entries, tables } = compareSheets(evaluated(A), evaluated(B));
    const [coil] = requirements.filter(({ turned }) => turned === 'worse');
    assert.deepEqual([coil!.status, coil!.knockOn], [{ old: 'holds', new: 'fails' }, true]);
    assert.match(coil!.concession!.new!, /^M\. Hale, plant electrical until 2027-04-30/);
    assert.deepEqual(
      requirements.filter(({ change }) => change === 'added').map(({ criterion, status }) => [criterion, status.new]),
      [['should I_run <= I_plate', 'fails']],
    );
    assert.deepEqual(
      requirements.filter(({ written }) => written?.old).map(({ written }) => written),
      [{ old: 'should K.I_AC3 <= 1.3 * I_n', new: 'should K.I_AC3 <= 2 * I_n' }],
    );
    assert.deepEqual(
      signatures.filter(({ lapsed }) => lapsed).map(({ role }) => role),
      ['checked'],
    );
    assert.deepEqual(
      entries.filter(({ oldName }) => oldName !== null).map(({ oldName, name }) => [oldName, name]),
      [['P', 'P_n']],
    );
    const choice = entries.find(({ role }) => role === 'choice')!;
    assert.deepEqual([choice.value!.old, choice.value!.new, choice.knockOn], ['K5', 'K6', true]);
    assert.deepEqual(
      tables.flatMap(({ cells }) => cells).map(({ row, value }) => [row, value.old, value.new]),
      [
        ['K5', '50 A', '40 A'],
        ['K6', '63 A', '50 A'],
      ],
    );
    assert.deepEqual(
      entries.filter(({ knockOn, role }) => knockOn && role !== 'choice').map(({ name }) => name),
      ['U_low'],
    );
  });

  it('verifying revision B finds what a person must settle before it is issued', () => {
    const found = verifySheet({ version: '1.0.0', evaluation: evaluated(B), on: daysOf(2026, 12, 1)!, require: ['checked'] });
    assert.deepEqual(
      found.filter(({ level }) => level === 'finding').map(({ code }) => code),
      ['signature-out-of-date'],
    );
    const later = verifySheet({ version: '1.0.0', evaluation: evaluated(B), on: daysOf(2027, 5, 1)!, require: [] });
    assert.ok(later.some(({ code }) => code === 'concession-run-out'));
  });
});

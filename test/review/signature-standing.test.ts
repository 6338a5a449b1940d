// What the signatures of a sheet are worth: other versions, own work, and what changed since.
import assert from 'node:assert/strict';
import { type FindCovered, signatureStandings } from '../../src/review/signature-standing.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { recordSheet } from '../../src/run/record.ts';
import { signSheet } from '../../src/sheet/signatures.ts';
import { withSignature } from '../../src/sheet/with-signature.ts';

const SHEET = recordSheet(
  evaluateSheet('---\nampwright: 1\n---\n\n# M\n\n```ampwright\nI = 30 A from plate "M"\nx = 2 * I\ny = 3 * I\nshall x <= 70 A\n```\n'),
);

describe('the standing of signatures', () => {
  const entry = { role: 'prepared', name: 'R. Osei', date: '2026-11-20', version: '1.0.0' };
  const signed = (text: string, more: Partial<typeof entry> = {}) => signSheet(text, { ...entry, ...more })!;
  const standings = (text: string, covered?: FindCovered, version = '1.0.0') =>
    signatureStandings({ evaluation: evaluateSheet(text), version, covered });

  it('of one that covers the sheet: nothing is said', () => {
    const [one] = standings(signed(SHEET));
    assert.deepEqual({ ...one, signature: null }, { signature: null, state: 'current', since: null, otherResults: null, ownWork: false });
  });

  describe('given with another version', () => {
    /** As that version recorded it. */
    const before = SHEET.replace('| x | 60.00 A', '| x | 60.01 A')
      .replace('holds, 14 % in hand', 'fails')
      .replace('60.00 A ≤', '60.01 A ≤');
    const others = 'x 60.01 A → 60.00 A, shall x <= 70 A 60.01 A ≤ 70 A → 60.00 A ≤ 70 A';

    it('that gave the same results: nothing is said', () =>
      assert.equal(standings(signed(SHEET), undefined, '1.1.0')[0]!.otherResults, null));

    it('that gave other results: which', () => assert.equal(standings(signed(before), undefined, '1.1.0')[0]!.otherResults, others));

    it('of the sheet that it covered, where that was found', () => {
      const text = signed(before);
      const now = recordSheet(evaluateSheet(text.replace('I = 30 A', 'I = 31 A')));
      const [one] = standings(now, () => ({ evaluation: evaluateSheet(text), revision: 'r' }), '1.1.0');
      assert.equal(one!.state, 'out of date');
      assert.equal(one!.otherResults, others);
    });

    it('the same version with results that were changed by hand: that is another finding', () =>
      assert.equal(standings(signed(before))[0]!.otherResults, null));

    it('of many, some are named', () => {
      const text = recordSheet(
        evaluateSheet(`\`\`\`ampwright\n${Array.from({ length: 9 }, (_, i) => `x_${i} = ${i} A + 1 A`).join('\n')}\n\`\`\`\n`),
      );
      const [one] = standings(signed(text.replaceAll('.000 A', '.001 A')), undefined, '1.1.0');
      assert.match(one!.otherResults!, /^x_0 1\.001 A → 1\.000 A, x_1 .*, x_2 .* → 3\.000 A, and 6 more$/);
    });
  });

  describe('of a check', () => {
    const check = (title: string, role: string, name: string, own: boolean) =>
      it(title, () => {
        const [, second] = standings(signed(signed(SHEET), { role, name }));
        assert.equal(second!.ownWork, own);
      });
    check('by another person', 'checked', 'M. Okafor', false);
    check('by who prepared the sheet', 'checked', 'R. Osei', true);
    check('by the same name in capitals and full width', 'Checked', 'R.\u3000OSEＩ', true);
    check('an approval by who prepared the sheet', 'approved', 'R. Osei', true);
    check('another role of who prepared it', 'witnessed', 'R. Osei', false);
  });

  describe('of one that lapsed', () => {
    const text = signed(SHEET);
    const now = text.replace('I = 30 A', 'I = 40 A');
    const since = (covered?: FindCovered, changed = now) => standings(changed, covered)[0]!.since;
    const at =
      (revision: string): FindCovered =>
      () => ({ evaluation: evaluateSheet(text), revision });

    it('what changed, where the revision is found', () =>
      assert.equal(
        since(at('1a2b3c4d5e of 2026-11-20')),
        'it covers 1a2b3c4d5e of 2026-11-20; since then: 1 requirement now fails, 1 input changed, 2 results changed with them',
      ));

    it('that nothing changed in meaning', () =>
      assert.equal(
        since(at('r'), text.replace('2 * I', '2*I')),
        'it covers r, and since then nothing changed in meaning, only how it is written',
      ));

    it('why it can’t be told', () =>
      assert.equal(
        since(() => ({ because: 'git was not found' })),
        "the sheet, or a file that it uses, was changed since; what changed can't be told: git was not found",
      ));

    it('no more than that, where nobody can look', () => assert.equal(since(), 'the sheet, or a file that it uses, was changed since'));

    it('that it covered nothing at all', () => {
      const empty = withSignature(SHEET, { ...entry, covers: 'sha256:…' })!;
      assert.equal(
        since(() => assert.fail('there is nothing to look for'), empty),
        'it covers nothing, its digest was never filled in',
      );
    });
  });
});

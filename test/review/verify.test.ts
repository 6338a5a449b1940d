// What verifying a sheet finds, and how serious it is.
import assert from 'node:assert/strict';
import { verifySheet } from '../../src/review/verify.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { recordSheet } from '../../src/run/record.ts';
import { signSheet } from '../../src/sheet/signatures.ts';
import { daysOf } from '../../src/text/date.ts';

const ON = daysOf(2026, 12, 1)!;
const sheet = (code: string, front = '') => `${front === '' ? '' : `---\n${front}\n---\n\n`}# Sheet\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`;
const recorded = (text: string) => recordSheet(evaluateSheet(text));

/** `level code: the text at its place`, in the order of the findings. */
function found(text: string, require: readonly string[] = []): readonly string[] {
  const findings = verifySheet({ evaluation: evaluateSheet(text), version: '1.0.0', on: ON, require });
  return findings.map(({ level, code, at }) => `${level} ${code}: ${text.slice(at.start, at.end).split('\n')[0]}`);
}

describe('verifying a sheet', () => {
  /** The sheet is recorded first, so that only what is in the code is found. */
  const check = (name: string, code: string, expected: readonly string[], front = '') =>
    it(name, () => assert.deepEqual(found(recorded(sheet(code, front))), expected));

  check('finds nothing where all holds', 'I = 30 A from plate "M"\nshall I <= 40 A', []);

  describe('requirements', () => {
    const input = 'I = 41 A ± 0.5 A from plate "M"\n';
    check('a `shall` that fails needs a person', `${input}shall I <= 40 A`, ['finding requirement-fails: shall I <= 40 A']);
    check('so does one that is undecided', `${input}shall I <= 41.2 A`, ['finding requirement-undecided: shall I <= 41.2 A']);
    check('a `should` that fails is a note only', `${input}should I <= 40 A`, ['note requirement-fails: should I <= 40 A']);
    check('an error is an error, and what needs it is found too', 'x = y\nshall x <= 1', [
      'error unknown-name: y',
      'finding requirement-not-calculated: shall x <= 1',
    ]);
  });

  describe('concessions', () => {
    const fails = (until: string) =>
      `I = 41 A from plate "M"\nshall I <= 40 A accepted by "chief engineer, A. Mensah" until ${until} because "new set is ordered"`;
    const line = (until: string) => fails(until).split('\n')[1];
    check('on its last day a concession counts', fails('2026-12-01'), [`note requirement-fails: ${line('2026-12-01')}`]);
    check('the day after it has run out', fails('2026-11-30'), [
      `finding requirement-fails: ${line('2026-11-30')}`,
      'finding concession-run-out: accepted by "chief engineer, A. Mensah" until 2026-11-30 because "new set is ordered"',
    ]);
    check('of a requirement that holds it says nothing', fails('2026-11-30').replace('41 A', '39 A'), []);
  });

  describe('sources', () => {
    check('an input without source needs a person', 'I = 41 A', ['finding no-source: I']);
    check('and is an error where the sheet asks for sources', 'I = 41 A', ['error source-required: I'], 'ampwright: 1\nsources: required');
  });

  describe('instruments', () => {
    const read = (on: string) => `instrument M ± 1 % serial "B41" calibrated 2026-03-01 due 2026-10-01\nU = 12.4 mV by M on ${on}`;
    check('a reading on the day that the calibration is due is good', read('2026-10-01'), []);
    check('a reading after it needs a person', read('2026-10-02'), ['finding overdue-instrument: 2026-10-02']);
  });

  describe('what is recorded', () => {
    const text = sheet('I = 41 A from plate "M"\nx = 2 * I').replace('# Sheet\n', '# Sheet\n\nIt takes [82.00 A](#x).\n');

    it('results that are not there', () => assert.deepEqual(found(text), ['finding results-not-recorded: ```ampwright']));

    it('results that were changed by hand', () =>
      assert.deepEqual(found(recorded(text).replace('| x | 82.00 A', '| x | 83.00 A')), ['finding results-stale: <!-- results -->']));

    it('results that nobody recorded after an edit, and values in prose', () =>
      assert.deepEqual(found(recorded(text).replace('I = 41 A', 'I = 42 A')), [
        'finding value-stale: 82.00 A',
        'finding results-stale: <!-- results -->',
      ]));
  });

  describe('signatures', () => {
    const text = recorded(sheet('I = 30 A from plate "M"', 'ampwright: 1'));
    const signed = signSheet(text, { role: 'prepared', name: 'R. Osei', date: '2026-11-20', version: '1.0.0' })!;

    it('one that covers the text is good', () => assert.deepEqual(found(signed, ['prepared']), []));

    it('one that covers another text is out of date', () => {
      const changed = signed.replace('I = 30 A', 'I = 31 A');
      assert.deepEqual(found(changed, ['prepared']), [`finding signature-out-of-date: ${/- (role: prepared)/.exec(signed)![1]}`]);
    });

    it('a role that has not signed is missing', () => assert.deepEqual(found(signed, ['checked']), ['finding signature-missing: ']));
  });
});

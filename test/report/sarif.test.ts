// SARIF logs against the schema of SARIF 2.1.0, and what services make of them.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import Ajv from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import type { Log } from 'sarif';
import { sarifLog } from '../../src/report/sarif.ts';
import { notASheet, type Verification } from '../../src/review/verification.ts';
import { MANY, MIXED, SOUND, verified } from '../support/verified.ts';

const schema = createRequire(import.meta.url)('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json');
const ajv = new Ajv({ allErrors: true, strict: false, unicodeRegExp: false });
addFormats(ajv as never);
const isSarif = ajv.compile(schema);

function log(...verifications: readonly Verification[]): Log {
  const written: Log = JSON.parse(sarifLog(verifications, '1.0.0', (file) => (file.startsWith('/') ? null : file)));
  assert.ok(isSarif(written) as boolean, JSON.stringify(isSarif.errors, null, 2));
  return written;
}

const results = (of: Log) => of.runs[0]!.results!;

describe('SARIF log', () => {
  it('is valid SARIF 2.1.0, with findings and without', () => {
    for (const verifications of [[], [SOUND], [MIXED, MANY], [notASheet('bytes.ampwright.md', 'byte 3 is not UTF-8')]])
      log(...verifications);
  });

  it('the schema is not one that takes anything', () => {
    assert.equal(isSarif({ version: '2.1.0', runs: [{ tool: { driver: {} } }] }), false);
    assert.equal(isSarif({ version: '2.0.0', runs: [] }), false);
  });

  it('has the level, the rule and the exact place of each finding', () => {
    const written = log(MIXED);
    const { rules } = written.runs[0]!.tool.driver;
    const found = results(written).find(({ ruleId }) => ruleId === 'requirement-fails')!;
    assert.equal(found.level, 'warning');
    assert.equal(rules![found.ruleIndex!]!.id, 'requirement-fails');
    assert.match(found.message.text!, /^shall I_n <= 30 A: fails, 41\.0 A/);
    assert.deepEqual(found.locations![0]!.physicalLocation!.region, { startLine: 6, startColumn: 1, endLine: 6, endColumn: 43 });
    assert.deepEqual(new Set(results(written).map(({ level }) => level)), new Set(['error', 'warning', 'note']));
  });

  it('names files relative to the root of the sources, as an address', () => {
    const uri = (path: string) => results(log(verified(path, 'x = 1 V + 1 A')))[0]!.locations![0]!.physicalLocation!.artifactLocation;
    assert.deepEqual(uri('calculations/kiln & drum/Ü #1.ampwright.md'), {
      uri: 'calculations/kiln%20%26%20drum/%C3%9C%20%231.ampwright.md',
      uriBaseId: '%SRCROOT%',
    });
    assert.deepEqual(uri('/elsewhere/a.ampwright.md'), { uri: '/elsewhere/a.ampwright.md' });
  });

  it('a finding keeps its fingerprint when lines move and values change, and each has its own', () => {
    const prints = (code: string) =>
      results(log(verified('a.ampwright.md', code))).map(
        ({ ruleId, partialFingerprints }) => `${ruleId} ${partialFingerprints!['ampwrightFinding/v1']}`,
      );
    const before = prints('I = 41 A\nshall I <= 40 A\nshall I <= 30 A');
    const after = prints('# a comment\n\nI = 47 A\nshall I <= 40 A\nshall I <= 30 A');
    const failing = (all: readonly string[]) => all.filter((print) => print.startsWith('requirement-fails'));
    assert.deepEqual(failing(after), failing(before));
    assert.equal(failing(before).length, 2);
    const many = results(log(MANY)).map(({ partialFingerprints }) => partialFingerprints!['ampwrightFinding/v1']);
    assert.equal(new Set(many).size, many.length);
    const twice = prints('shall 2 <= 1\nshall 2 <= 1').filter((print) => print.startsWith('requirement-fails'));
    assert.equal(new Set(twice).size, 2);
  });
});

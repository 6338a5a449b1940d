// Findings as JUnit XML, the form in which CI services read test results: a suite a sheet, a case a requirement.
import { meaningOf } from '../review/codes.ts';
import type { Criterion, PlacedFinding, Verification } from '../review/verification.ts';
import { type XmlElement, xml, xmlDocument } from './xml.ts';

/** The document's text. It holds no times: verifying takes none from a clock. */
export function junitXml(verifications: readonly Verification[]): string {
  const suites = verifications.map(suite);
  const sum = (key: string) => suites.reduce((total, { attributes }) => total + Number(attributes[key]), 0);
  const counts = { tests: sum('tests'), failures: sum('failures'), errors: sum('errors') };
  return xmlDocument(xml('testsuites', { name: 'ampwright verify', ...counts }, ...suites));
}

/** One case for the sheet as a whole, one for each requirement, one for each further code that was found. */
function suite({ sheet, criteria, findings }: Verification): XmlElement {
  const rest = new Set(findings);
  const take = (belongs: (finding: PlacedFinding) => boolean) => {
    const taken = [...rest].filter(belongs);
    for (const one of taken) rest.delete(one);
    return taken;
  };
  const name = unique();
  const whole = testCase(
    sheet,
    name('the sheet has no errors'),
    take(({ level }) => level === 'error'),
  );
  const required = criteria.map((criterion) =>
    testCase(
      sheet,
      name(criterion.text),
      take((finding) => isOf(finding, criterion)),
    ),
  );
  const codes = [...new Set([...rest].map(({ code }) => code))];
  const others = codes.map((code) =>
    testCase(
      sheet,
      name(meaningOf(code)),
      take((finding) => finding.code === code),
    ),
  );
  const cases = [whole, ...required, ...others];
  const count = (outcome: string) =>
    cases.filter(({ children }) => children.some((c) => typeof c !== 'string' && c.name === outcome)).length;
  return xml('testsuite', { name: sheet, tests: cases.length, failures: count('failure'), errors: count('error') }, ...cases);
}

function isOf({ code, path, line, column }: PlacedFinding, criterion: Criterion): boolean {
  return code.startsWith('requirement-') && path === null && line === criterion.line && column === criterion.column;
}

/** What fails a case is its failure; notes alone leave it passed and are printed with it. */
function testCase(sheet: string, name: string, findings: readonly PlacedFinding[]): XmlElement {
  const serious = findings.filter(({ level }) => level !== 'note');
  const notes = findings.filter(({ level }) => level === 'note');
  const outcome = serious.some(({ level }) => level === 'error') ? 'error' : 'failure';
  const [first] = serious;
  return xml(
    'testcase',
    { name, classname: sheet },
    ...(first ? [xml(outcome, { message: first.message, type: first.code }, lines(sheet, serious))] : []),
    ...(notes.length > 0 ? [xml('system-out', {}, lines(sheet, notes))] : []),
  );
}

function lines(sheet: string, findings: readonly PlacedFinding[]): string {
  return findings.map(({ path, line, column, message }) => `${path ?? sheet}:${line}:${column}: ${message}`).join('\n');
}

/** Services tell the cases of a suite apart by name: the second of two gets a number. */
function unique(): (name: string) => string {
  const seen = new Map<string, number>();
  return (name) => {
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return count === 1 ? name : `${name} (${count})`;
  };
}

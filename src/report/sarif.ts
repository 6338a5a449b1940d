// Findings as a SARIF 2.1.0 log (OASIS standard), for services that show findings of tools beside the code.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Log, ReportingDescriptor, Result } from 'sarif';
import { meaningOf } from '../review/codes.ts';
import type { Level } from '../review/finding.ts';
import type { PlacedFinding, Verification } from '../review/verification.ts';

const SCHEMA = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';
const ROOT = '%SRCROOT%';
const LEVELS: Readonly<Record<Level, Result.level>> = { error: 'error', finding: 'warning', note: 'note' };

/** Where a file lies: relative to the root of the sources and written with `/`; null for a file outside. */
export type PathInSources = (file: string) => string | null;

/** The log's text. A file outside the sources is named as it was given. */
export function sarifLog(verifications: readonly Verification[], version: string, pathInSources: PathInSources): string {
  const found = verifications.flatMap(({ sheet, findings }) =>
    findings.map((finding) => {
      const file = finding.path ?? sheet;
      return { finding, file, inside: pathInSources(file) };
    }),
  );
  const codes = [...new Set(found.map(({ finding }) => finding.code))].sort();
  const fingerprints = new Map<string, number>();
  const log: Log = {
    $schema: SCHEMA,
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'Ampwright', version, rules: codes.map(rule) } },
        columnKind: 'utf16CodeUnits',
        originalUriBaseIds: { [ROOT]: { description: { text: 'The root of the repository, or of the workspace' } } },
        results: found.map(({ finding, file, inside }) => ({
          ruleId: finding.code,
          ruleIndex: codes.indexOf(finding.code),
          level: LEVELS[finding.level],
          message: { text: finding.message },
          locations: [{ physicalLocation: { artifactLocation: location(file, inside), region: region(finding) } }],
          partialFingerprints: { 'ampwrightFinding/v1': fingerprint(finding, inside ?? file, fingerprints) },
        })),
      },
    ],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}

function rule(code: string): ReportingDescriptor {
  return { id: code, shortDescription: { text: meaningOf(code) } };
}

function location(file: string, inside: string | null) {
  const path = (inside ?? file.replaceAll('\\', '/')).split('/').map(encodeURIComponent).join('/');
  return inside === null ? { uri: path } : { uri: path, uriBaseId: ROOT };
}

function region({ line, column, endLine, endColumn }: PlacedFinding) {
  return { startLine: line, startColumn: column, endLine, endColumn };
}

/** The same after edits elsewhere in the file: made of code, path and what stands at the place, never of the line's number or of values. */
function fingerprint({ code, quote }: PlacedFinding, path: string, seen: Map<string, number>): string {
  const what = [code, path, quote].join('\0');
  const count = seen.get(what) ?? 0;
  seen.set(what, count + 1);
  return bytesToHex(sha256(utf8ToBytes(`${what}\0${count}`))).slice(0, 32);
}

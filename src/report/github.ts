// Findings for GitHub Actions: annotations beside the lines, within the limits of a step, and a summary of the job with the rest.
import { meaningOf } from '../review/codes.ts';
import type { Level } from '../review/finding.ts';
import { type Verification, worstLevel } from '../review/verification.ts';
import { type FiledFinding, worstFirst } from '../review/worst-first.ts';
import { visible } from '../text/visible.ts';
import { pipeTable, plainText } from './markdown.ts';
import type { PathInSources } from './sarif.ts';

/** GitHub shows this many annotations of a kind for a step and drops the rest without a word. */
const MOST_ANNOTATIONS = 10;

/** GitHub refuses a longer summary of a step; in bytes, with room for what other commands of the step write. */
const LONGEST_SUMMARY = 900 * 1024;

const KINDS: Readonly<Record<Level, string>> = { error: 'error', finding: 'warning', note: 'notice' };

/** Workflow commands, a line each, worst first; what is beyond the limit of its kind is printed as plain lines. */
export function githubAnnotations(verifications: readonly Verification[], pathInSources: PathInSources): string {
  const shown = new Map<Level, number>();
  const left: string[] = [];
  const commands: string[] = [];
  for (const finding of worstFirst(verifications)) {
    const count = shown.get(finding.level) ?? 0;
    shown.set(finding.level, count + 1);
    if (count < MOST_ANNOTATIONS) commands.push(command(finding, pathInSources(finding.file) ?? finding.file));
    else left.push(`${finding.level}: ${visible(finding.file)}:${finding.line}:${finding.column}: ${visible(finding.message)}`);
  }
  const group =
    left.length === 0
      ? []
      : [`::group::${left.length} more, beyond the ${MOST_ANNOTATIONS} of a kind that are annotated`, ...left, '::endgroup::'];
  return [...commands, ...group].map((line) => `${line}\n`).join('');
}

/** `::warning file=…,line=…,title=…::message`; columns count only where a place lies on one line. */
function command({ level, code, message, line, column, endLine, endColumn }: FiledFinding, file: string): string {
  const columns = line === endLine && endColumn > column ? { col: column, endColumn } : {};
  const properties = { file, line, endLine, ...columns, title: meaningOf(code) };
  const written = Object.entries(properties).map(([key, value]) => `${key}=${escapeProperty(String(value))}`);
  return `::${KINDS[level]} ${written.join(',')}::${escapeData(message)}`;
}

function escapeData(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function escapeProperty(text: string): string {
  return escapeData(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}

/** The job's summary in Markdown: a table of sheets, those with findings first, then every finding, as far as GitHub takes them. */
export function githubSummary(verifications: readonly Verification[], longest: number = LONGEST_SUMMARY): string {
  const findings = worstFirst(verifications);
  const count = (level: Level) => findings.filter((finding) => finding.level === level).length;
  const standing = verifications.filter((v) => worstLevel(v) === null).length;
  const head = `## Calculation sheets\n\n${standing} of ${verifications.length} sheets stand · ${count('error')} errors · ${count('finding')} findings · ${count('note')} notes\n`;
  const sheets = [...verifications].sort((a, b) => rank(a) - rank(b)).map(sheetRow);
  const rows = findings.map((f) => [f.level, `${plainText(f.file)}:${f.line}`, `${plainText(f.message)} (${plainText(f.code)})`]);
  let room = longest - bytes(head) - 1024;
  const take = (wanted: readonly (readonly string[])[]) =>
    wanted.filter((row) => {
      room -= bytes(row.join(' | ')) + 6;
      return room > 0;
    });
  const [shownFindings, shownSheets] = [take(rows), take(sheets)];
  return [
    head,
    ...(rows.length > 0 ? pipeTable(['level', 'place', 'finding'], shownFindings) : []),
    ...leftOut(rows.length - shownFindings.length, 'findings'),
    '',
    ...pipeTable(['sheet', 'hold', 'fail', 'undecided', 'not calculated', 'findings'], shownSheets),
    ...leftOut(sheets.length - shownSheets.length, 'sheets'),
    '',
  ].join('\n');
}

function leftOut(count: number, what: string): readonly string[] {
  return count === 0 ? [] : ['', `${count} more ${what} are left out here: a summary is limited in length.`];
}

function rank(verification: Verification): number {
  const worst = worstLevel(verification);
  return worst === 'error' ? 0 : worst === 'finding' ? 1 : 2;
}

function sheetRow({ sheet, requirements: r, findings }: Verification): readonly string[] {
  const counted = findings.filter(({ level }) => level !== 'note').length;
  return [plainText(sheet), ...[r.holds, r.fails, r.undecided, r['not calculated'], counted].map(String)];
}

function bytes(text: string): number {
  return [...text].reduce((sum, c) => sum + (c < '\u0080' ? 1 : c < '\u0800' ? 2 : c.length === 1 ? 3 : 4), 0);
}

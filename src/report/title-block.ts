// The title block: the data fields of ISO 7200:2004, the digest and the version that computed the sheet.
import { type SignatureStanding, signatureStandings } from '../review/signature-standing.ts';
import type { FrontMatter } from '../sheet/front-matter.ts';
import { type Child, type ElementNode, element } from '../view/node.ts';
import { digestCode } from './digest-code.ts';
import type { ReportInput } from './input.ts';

export interface TitleBlockInput {
  readonly front: FrontMatter;
  /** `sha256:` and 64 hexadecimal digits. */
  readonly digest: string;
  readonly version: string;
  readonly signatures: readonly SignatureLine[];
}

export function titleBlockInput({ covered, version, ...evaluation }: ReportInput): TitleBlockInput {
  const signatures = signatureStandings({ evaluation, version, covered }).map(signatureLine);
  return { front: evaluation.sheet.frontMatter, digest: evaluation.digest, version, signatures };
}

/** What the page calls a sheet that has no title. */
export const UNTITLED = 'Calculation sheet without a title';

/** What the page calls a sheet that does not say its type. */
export const DOCUMENT_TYPE = 'Calculation sheet';

export const NOT_GIVEN = 'not given';
export const DIGEST_HEAD = 'Digest of the sheet and of the files it uses';
export const VERSION_HEAD = 'Computed with';
export const NO_SIGNATURES = 'No signatures.';

export function titleBlock({ front, digest, version, signatures: lines }: TitleBlockInput): ElementNode {
  return element(
    'header',
    { class: 'aw-titleblock' },
    element(
      'div',
      { class: 'aw-title' },
      element(
        'div',
        {},
        element('p', { class: 'aw-doctype' }, front.type ?? DOCUMENT_TYPE),
        element('h1', {}, front.title ?? UNTITLED),
        front.codes.length > 0 && element('p', { class: 'aw-codes' }, codesText(front)),
      ),
      digestCode(digest, CODE_SIZE),
    ),
    element(
      'dl',
      { class: 'aw-fields' },
      ...titleFields(front).map(([name, value]) => field(name, name === ISSUED ? dated(value) : value)),
    ),
    signatures(lines),
    element(
      'dl',
      { class: 'aw-fields aw-digest' },
      field(DIGEST_HEAD, element('code', {}, digest)),
      field(VERSION_HEAD, `Ampwright ${version}`),
    ),
  );
}

/** Pixels. */
const CODE_SIZE = 92;
const ISSUED = 'Date of issue';

/** The field that counts sheets: a page is one, paper has many. */
export const SHEET_FIELD = 'Sheet';

/** `Follows IEC 60947-4-1; NEMA MG 1`. */
export function codesText(front: FrontMatter): string {
  return `Follows ${front.codes.join('; ')}`;
}

/** The data fields under their names; null: not given. Fields that few sheets have stand there only where they are given. */
export function titleFields(front: FrontMatter): readonly (readonly [name: string, value: string | null])[] {
  return [
    ['Legal owner', front.owner],
    ['Identification number', front.number],
    ['Revision', front.revision],
    [ISSUED, front.issued],
    ['Document status', front.status],
    [SHEET_FIELD, '1 of 1'],
    ['Language', front.language ?? 'en'],
    ...(front.department ? ([['Responsible department', front.department]] as const) : []),
    ...(front.reference ? ([['Technical reference', front.reference]] as const) : []),
  ];
}

function dated(day: string | null): Child {
  return day && element('time', { datetime: day }, day);
}

function field(name: string, value: Child): ElementNode {
  return element('div', {}, element('dt', {}, name), element('dd', {}, value ?? element('span', { class: 'aw-missing' }, NOT_GIVEN)));
}

export const SIGNATURES_HEAD = 'Signatures';
export const SIGNATURE_HEADS = ['Role', 'Name', 'Date', 'State'] as const;

export interface SignatureLine {
  readonly role: string;
  readonly name: string;
  readonly date: string;
  readonly lapsed: boolean;
  /** What the signature is worth now. */
  readonly state: string;
}

/** A signature as it stands: the digest that it covers decides, and what speaks against it is said beside it. */
function signatureLine({ signature, state, since, otherResults, ownWork }: SignatureStanding): SignatureLine {
  const { role, name, date, version } = signature;
  const remarks = [
    since === null ? 'covers this sheet' : `out of date: ${since}`,
    otherResults && `version ${version} gave other results: ${otherResults}`,
    ownWork && 'the same person prepared the sheet',
  ];
  return { role, name, date, lapsed: state === 'out of date', state: remarks.filter(Boolean).join('; ') };
}

function signatures(lines: readonly SignatureLine[]): Child {
  if (lines.length === 0) return element('p', { class: 'aw-nosignature' }, NO_SIGNATURES);
  const rows = lines.map(({ role, name, date, lapsed, state }) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, role),
      element('td', {}, name),
      element('td', {}, element('time', { datetime: date }, date)),
      element('td', { class: lapsed ? 'aw-lapsed' : null }, state),
    ),
  );
  return element(
    'table',
    { class: 'aw-register aw-signatures' },
    element('caption', {}, SIGNATURES_HEAD),
    element('thead', {}, element('tr', {}, ...SIGNATURE_HEADS.map((h) => element('th', { scope: 'col' }, h)))),
    element('tbody', {}, ...rows),
  );
}

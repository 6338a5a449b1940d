// The title block: the data fields of ISO 7200:2004, the digest and the version that computed the sheet.
import type { FrontMatter } from '../../sheet/front-matter.ts';
import { signatureStates } from '../../sheet/signatures.ts';
import { type Child, type ElementNode, element } from '../../view/node.ts';

export interface TitleBlockInput {
  readonly front: FrontMatter;
  /** `sha256:` and 64 hexadecimal digits. */
  readonly digest: string;
  readonly version: string;
}

/** What the page calls a sheet that has no title. */
export const UNTITLED = 'Calculation sheet without a title';

export function titleBlock({ front, digest, version }: TitleBlockInput): ElementNode {
  return element(
    'header',
    { class: 'aw-titleblock' },
    element(
      'div',
      { class: 'aw-title' },
      element('p', { class: 'aw-doctype' }, front.type ?? 'Calculation sheet'),
      element('h1', {}, front.title ?? UNTITLED),
      front.codes.length > 0 && element('p', { class: 'aw-codes' }, `Follows ${front.codes.join('; ')}`),
    ),
    element('dl', { class: 'aw-fields' }, ...fields(front)),
    signatures(front, digest),
    element(
      'dl',
      { class: 'aw-fields aw-digest' },
      field('Digest of the sheet and of the files it uses', element('code', {}, digest)),
      field('Computed with', `Ampwright ${version}`),
    ),
  );
}

function fields(front: FrontMatter): ElementNode[] {
  return [
    field('Legal owner', front.owner),
    field('Identification number', front.number),
    field('Revision', front.revision),
    field('Date of issue', front.issued && element('time', { datetime: front.issued }, front.issued)),
    field('Document status', front.status),
    field('Sheet', '1 of 1'),
    field('Language', front.language ?? 'en'),
    ...(front.department ? [field('Responsible department', front.department)] : []),
    ...(front.reference ? [field('Technical reference', front.reference)] : []),
  ];
}

function field(name: string, value: Child): ElementNode {
  return element('div', {}, element('dt', {}, name), element('dd', {}, value ?? element('span', { class: 'aw-missing' }, 'not given')));
}

// The digest that each signature covers decides whether it still stands.
function signatures(front: FrontMatter, digest: string): Child {
  if (front.signatures.length === 0) return element('p', { class: 'aw-nosignature' }, 'No signatures.');
  const rows = signatureStates(front.signatures, digest).map(({ signature, state }) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, signature.role),
      element('td', {}, signature.name),
      element('td', {}, element('time', { datetime: signature.date }, signature.date)),
      element(
        'td',
        { class: state === 'current' ? null : 'aw-lapsed' },
        state === 'current' ? 'covers this sheet' : 'out of date: the sheet has changed since',
      ),
    ),
  );
  return element(
    'table',
    { class: 'aw-register aw-signatures' },
    element('caption', {}, 'Signatures'),
    element('thead', {}, element('tr', {}, ...['Role', 'Name', 'Date', 'State'].map((h) => element('th', { scope: 'col' }, h)))),
    element('tbody', {}, ...rows),
  );
}

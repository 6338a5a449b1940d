// The title block on paper: the fields of ISO 7200, the signatures, the digest in digits and as a code.
import { digestCode } from '../digest-code.ts';
import {
  codesText,
  DIGEST_HEAD,
  DOCUMENT_TYPE,
  NO_SIGNATURES,
  NOT_GIVEN,
  SHEET_FIELD,
  SIGNATURE_HEADS,
  SIGNATURES_HEAD,
  type SignatureLine,
  type TitleBlockInput,
  titleFields,
  UNTITLED,
  VERSION_HEAD,
} from '../title-block.ts';
import { array, type Code, call, EMPTY, named, quoted, words } from './code.ts';
import { drawing } from './drawing.ts';
import { table } from './table.ts';

export function titleBlock({ front, digest, version, signatures: lines }: TitleBlockInput): Code {
  const fields = titleFields(front).map(([name, value]) => field(name, name === SHEET_FIELD ? 'sheet-count()' : value && words(value)));
  return call(
    'title-block',
    named('type', words(front.type ?? DOCUMENT_TYPE)),
    named('title', words(front.title ?? UNTITLED)),
    named('follows', front.codes.length > 0 ? words(codesText(front)) : EMPTY),
    named('code', drawing(digestCode(digest, CODE_SIZE))),
    named('fields', array(fields)),
    named('signatures', signatures(lines)),
    named('digest', field(DIGEST_HEAD, call('mono', words(digest)))),
    named('version', field(VERSION_HEAD, quoted(`Ampwright ${version}`))),
  );
}

/** Pixels; on paper the drawing has a size of its own. */
const CODE_SIZE = 92;

function field(name: string, value: Code | null): Code {
  return call('field', quoted(name), value ?? call('quiet', quoted(NOT_GIVEN)));
}

function signatures(lines: readonly SignatureLine[]): Code {
  if (lines.length === 0) return quoted(NO_SIGNATURES);
  const cell = (text: string) => ({ text, code: words(text) });
  return table('slim', {
    caption: quoted(SIGNATURES_HEAD),
    heads: SIGNATURE_HEADS.map(cell),
    lines: lines.map(({ role, name, date, lapsed, state }) => [
      ...[role, name, date].map(cell),
      lapsed ? { text: state, code: call('undecided', call('strong', words(state))) } : cell(state),
    ]),
  });
}

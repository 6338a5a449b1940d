// The audit sheet as one source text for Typst: the same parts in the same words as the page. It names no file and no package.
import { shortened } from '../../text/shortened.ts';
import { type AuditSheet, auditSheet, CALCULATION, REGISTER_PART, type Section } from '../audit-sheet.ts';
import { bodyParts, proseLinks } from '../body.ts';
import type { ReportInput } from '../input.ts';
import { proseRenderer } from '../prose.ts';
import { titleBlockInput } from '../title-block.ts';
import { below, type Code, call, joined, named, quoted, words } from './code.ts';
import { contentWriter } from './content.ts';
import { PREAMBLE } from './preamble.ts';
import { prose } from './prose.ts';
import { titleBlock } from './title-block.ts';
import type { Writer } from './writer.ts';

/** Sizes of paper: ISO 216 and ANSI/ASME Y14.1. */
export const PAPERS = ['a4', 'letter'] as const;
export type Paper = (typeof PAPERS)[number];

const NAMES: Readonly<Record<Paper, string>> = { a4: 'a4', letter: 'us-letter' };

/** The source of a sheet's document; the same input gives the same text. */
export function typesetSource(input: ReportInput, paper: Paper): string {
  const audit = auditSheet(input);
  const writer = contentWriter();
  const parts = [
    titleBlock(titleBlockInput(input)),
    writer.content([audit.summary]),
    call('contents', ...audit.contents.map(({ id, title }) => `(${quoted(id)}, ${quoted(title)})`)),
    writer.place(CALCULATION.id),
    body(input, audit, writer),
    call('part', joined([writer.place(REGISTER_PART.id), quoted(REGISTER_PART.title)])),
    ...[...audit.registers, ...audit.words].map((part) => section(part, writer)),
    call('closing', writer.content([audit.closing])),
  ];
  const places = [...writer.places].map((id) => `${quoted(id)}: none`).join(', ');
  return [
    `#let places = (${places === '' ? ':' : places})`,
    PREAMBLE,
    `#${documentCode(input, audit)}`,
    `#${pageCode(input, audit, paper)}`,
    `#set text(lang: ${quoted(/^[a-z]{2,3}(?=$|-)/i.exec(audit.language)?.[0].toLowerCase() ?? 'en')})`,
    ...parts.map((part) => `#${part}\n`),
  ].join('\n');
}

function documentCode({ sheet, digest }: ReportInput, audit: AuditSheet): Code {
  const { owner, issued, signatures, type } = sheet.frontMatter;
  const [year, month, day] = (issued ?? newest(signatures.map(({ date }) => date)) ?? UNDATED).split('-').map(Number);
  return `set ${call(
    'document',
    named('title', quoted(audit.running)),
    owner ? named('author', quoted(owner)) : null,
    type ? named('description', quoted(type)) : null,
    named('keywords', quoted(digest)),
    named('date', call('datetime', named('year', String(year)), named('month', String(month)), named('day', String(day)))),
  )}`;
}

/** PDF/A wants a date. A sheet that has none says so in its title block; no clock is asked, so that the bytes stay the same. */
const UNDATED = '1970-01-01';

function newest(dates: readonly string[]): string | null {
  return [...dates].sort().at(-1) ?? null;
}

/** Letters of the running head. */
const HEAD = 110;
const DIGITS = 16;

function pageCode({ digest, version }: ReportInput, audit: AuditSheet, paper: Paper): Code {
  return `set ${call(
    'page',
    named('paper', quoted(NAMES[paper])),
    'margin: (left: 20mm, right: 15mm, top: 21mm, bottom: 20mm)',
    named('header', call('page-head', words(shortened(audit.running, HEAD)))),
    named('footer', call('page-foot', quoted(`${digest.slice(0, 'sha256:'.length + DIGITS)}… · Ampwright ${version}`))),
  )}`;
}

function body(input: ReportInput, audit: AuditSheet, writer: Writer): Code {
  const markdown = proseRenderer(proseLinks(input), input.sheet.frontMatter.title);
  const codes = bodyParts(input, audit.view).map((part) => {
    switch (part.kind) {
      case 'prose':
        return prose(markdown.tokens(part.markdown), writer);
      case 'conflict':
        return call('listing', ...part.text.split('\n').map(words));
      case 'block':
        return writer.content([part.section]);
      default:
        return part satisfies never;
    }
  });
  return below(codes);
}

function section({ id, title, content }: Section, writer: Writer): Code {
  return below([call('heading', 'level: 3', joined([writer.place(id), quoted(title)])), writer.content(content)]);
}

// The audit sheet: one self-contained HTML page that explains itself, without network and without script.
import { type ElementNode, element, toHtml } from '../view/node.ts';
import { STYLE } from '../view/style.ts';
import { auditSheet, CALCULATION, type Place, REGISTER_PART, type Section } from './audit-sheet.ts';
import type { ReportInput } from './input.ts';
import { body } from './page/body.ts';
import { htmlDocument } from './page/document.ts';
import { PAGE_STYLE, paper } from './page/style.ts';
import { titleBlock, titleBlockInput } from './title-block.ts';

/** The page of a sheet; the same input gives the same bytes. */
export function auditPage(input: ReportInput): string {
  const audit = auditSheet(input);
  return htmlDocument({
    language: audit.language,
    title: audit.running,
    style: `${STYLE}${PAGE_STYLE}${paper(audit.running)}`,
    version: input.version,
    body: `<div class="aw-page">
${toHtml(titleBlock(titleBlockInput(input)))}
${toHtml(audit.summary)}
${toHtml(contents(audit.contents))}
<main>
<div class="aw-prose" id="${CALCULATION.id}">
${body(input, audit.view)}
</div>
<h2 class="aw-part" id="${REGISTER_PART.id}">${REGISTER_PART.title}</h2>
${audit.registers.map((r) => toHtml(section('aw-registersection', r))).join('\n')}
${audit.words.map((w) => toHtml(section('aw-words', w))).join('\n')}
</main>
${toHtml(element('footer', {}, audit.closing))}
</div>`,
  });
}

function section(name: string, { id, title, content }: Section): ElementNode {
  const head = element('h3', { id: `${id}-title` }, title);
  return element('section', { class: name, id, 'aria-labelledby': `${id}-title` }, head, ...content);
}

function contents(places: readonly Place[]): ElementNode {
  const items = places.map(({ id, title }) => element('li', {}, element('a', { href: `#${id}` }, title)));
  return element('nav', { class: 'aw-contents', 'aria-label': 'Contents' }, element('ol', {}, ...items));
}

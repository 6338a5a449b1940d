// What all pages of the reference have in common: title, way to the other pages, style.
import { escapeText } from '../../view/node.ts';
import { STYLE } from '../../view/style.ts';
import { htmlDocument } from '../page/document.ts';
import { PAGE_STYLE, paper } from '../page/style.ts';
import { REFERENCE_STYLE } from './style.ts';

/** One page of the reference, before its frame is put around it. */
export interface ReferencePage {
  /** Such as `motors.html`. */
  readonly file: string;
  readonly title: string;
  /** Where it stands in the list of pages. */
  readonly part: 'library' | 'notation' | null;
  /** HTML. */
  readonly body: string;
}

/** The whole page as HTML, with the list of all pages. */
export function framed(page: ReferencePage, pages: readonly ReferencePage[], version: string): string {
  const head = page.file === 'index.html' ? page.title : `${page.title} · Ampwright reference`;
  return htmlDocument({
    language: 'en',
    title: head,
    style: `${STYLE}${PAGE_STYLE}${REFERENCE_STYLE}${paper(head)}`,
    version,
    body: `<div class="aw-page">
<nav class="aw-pages" aria-label="Pages of the reference">
${list('Trade library', 'library', page, pages)}
${list('Notation', 'notation', page, pages)}
</nav>
<main>
<h1>${escapeText(page.title)}</h1>
<div class="aw-prose">
${page.body}
</div>
</main>
<footer><p>Ampwright ${escapeText(version)}. Check every result against the code that applies where the machine stands; the decision is a competent, where required a licensed, person’s.</p></footer>
</div>`,
  });
}

function list(title: string, part: ReferencePage['part'], here: ReferencePage, pages: readonly ReferencePage[]): string {
  const links = pages
    .filter((p) => p.part === part)
    .map((p) => `<li><a href="${p.file}"${p === here ? ' aria-current="page"' : ''}>${escapeText(p.title)}</a></li>`);
  const head = part === 'library' ? `<a href="index.html"${here.file === 'index.html' ? ' aria-current="page"' : ''}>${title}</a>` : title;
  return `<div><span class="aw-partname">${head}</span><ul>${links.join('')}</ul></div>`;
}

// The page's own style: the title block, prose, registers, and what paper needs.

export const PAGE_STYLE = `
:root { color-scheme: light dark; }
body { margin: 0; background: #fff; }
.aw-page {
  max-width: 1080px; margin: 0 auto; padding: 28px 28px 60px; background: var(--aw-paper); color: var(--aw-ink);
  font-family: var(--aw-sans); font-size: 15px; line-height: 1.55;
}
.aw-page h1, .aw-page h2, .aw-page h3, .aw-page h4, .aw-page h5, .aw-page h6 { line-height: 1.25; font-weight: 600; text-wrap: balance; }
.aw-page h1 { margin: 2px 0 4px; font-size: 26px; letter-spacing: -.005em; }
.aw-page h2 { margin: 36px 0 10px; font-size: 19px; }
.aw-page h3 { margin: 26px 0 8px; font-size: 16px; }
.aw-page h4, .aw-page h5, .aw-page h6 { margin: 20px 0 6px; font-size: 15px; }
.aw-prose > :is(p, ul, ol, dl, pre, blockquote), .aw-words :is(p, ul) { margin: 0 0 12px; }
.aw-prose > p, .aw-prose > ul, .aw-prose > ol, .aw-words p, .aw-words li { max-width: 74ch; }
.aw-page a { color: var(--aw-link); text-underline-offset: 2px; }
.aw-page a.aw-symbol { color: var(--aw-ink); text-decoration: none; }
.aw-page a:focus-visible, .aw-page summary:focus-visible { outline: 2px solid var(--aw-focus); outline-offset: 2px; }
.aw-page code, .aw-page pre { font-family: var(--aw-mono); font-size: .88em; }
.aw-page pre code { font-size: inherit; }
.aw-page pre { padding: 10px 12px; border: 1px solid var(--aw-rule); overflow-x: auto; }
.aw-page blockquote { padding-left: 14px; border-left: 3px solid var(--aw-rule); color: var(--aw-quiet); }
.aw-block { margin: 14px 0 22px; }
.aw-titleblock { border: 2px solid var(--aw-heavy); margin-bottom: 18px; }
.aw-title { display: flex; justify-content: space-between; gap: 16px; padding: 12px 16px 10px; }
.aw-title > div { min-width: 0; overflow-wrap: anywhere; }
.aw-digestcode { flex: none; width: 92px; height: 92px; margin: -4px -8px -4px 0; }
.aw-title p { margin: 0; color: var(--aw-quiet); font-size: 13px; }
.aw-page .aw-fields { display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: 0; margin: 0; border-top: 1px solid var(--aw-heavy); overflow: hidden; }
.aw-fields > div { padding: 6px 16px 7px; border-left: 1px solid var(--aw-rule); border-bottom: 1px solid var(--aw-rule); margin: 0 0 -1px -1px; }
.aw-fields dt { color: var(--aw-quiet); font-size: 11.5px; }
.aw-fields dd { margin: 0; overflow-wrap: anywhere; }
.aw-page .aw-digest { grid-template-columns: 1fr auto; }
.aw-nosignature { padding: 7px 16px; border-top: 1px solid var(--aw-heavy); }
.aw-page .aw-nosignature { margin: 0; color: var(--aw-quiet); font-size: 13.5px; }
.aw-summary { padding: 10px 16px; border-left: 4px solid var(--aw-heavy); background: var(--aw-tint); }
.aw-page .aw-summary p { margin: 0; }
.aw-contents { columns: 2 260px; margin: 14px 0 8px; font-size: 14px; }
.aw-page h2.aw-part { margin-top: 56px; padding-top: 14px; border-top: 2px solid var(--aw-heavy); font-size: 22px; }
.aw-contents ol { list-style: none; margin: 0; padding: 0; }
.aw-contents li { break-inside: avoid; }
.aw-contents a { display: inline-block; padding: 2px 0; min-height: 24px; }
.aw-register, .aw-scroll > table { width: 100%; border-collapse: collapse; margin: 0 0 18px; font-size: 13.5px; line-height: 1.45; border-top: 2px solid var(--aw-heavy); border-bottom: 2px solid var(--aw-heavy); font-variant-numeric: tabular-nums lining-nums; }
.aw-scroll > table { width: auto; min-width: 40%; }
.aw-register caption { text-align: left; padding: 4px 0; font-weight: 600; }
.aw-register th, .aw-register td, .aw-scroll > table :is(th, td) { padding: 5px 10px; border-top: 1px solid var(--aw-rule); text-align: left; vertical-align: baseline; font-weight: 400; overflow-wrap: anywhere; }
.aw-register th + td, .aw-register td + td { border-left: 1px solid var(--aw-rule); }
.aw-register thead th, .aw-scroll > table thead th { border-top: 0; border-bottom: 1px solid var(--aw-heavy); color: var(--aw-quiet); font-size: 12px; font-weight: 600; overflow-wrap: normal; }
.aw-page .aw-signatures { margin: 0; border: 0; border-top: 1px solid var(--aw-heavy); }
.aw-signatures time { white-space: nowrap; }
@media (min-width: 561px) { .aw-signatures td:nth-child(2) { min-width: 9em; } }
.aw-signatures caption { padding: 6px 16px 0; color: var(--aw-quiet); font-size: 11.5px; font-weight: 400; }
.aw-signatures th, .aw-signatures td { padding: 4px 16px; }
.aw-lapsed { color: var(--aw-undecided); font-weight: 600; }
.aw-register th[scope="row"] { min-width: 11em; }
.aw-register math { font-size: 1.04em; }
#register-inputs table, #register-functions table { table-layout: fixed; }
#register-inputs th:nth-child(1), #register-inputs th:nth-child(3) { width: 21%; }
#register-inputs th:nth-child(2) { width: 26%; }
#register-functions thead th:nth-child(1), #register-functions thead th:nth-child(4) { width: 21%; }
.aw-units { color: var(--aw-quiet); font-size: .92em; }
.aw-scroll { overflow-x: auto; margin: 0 0 18px; }
.aw-scroll:focus-visible, .aw-page pre:focus-visible { outline: 2px solid var(--aw-focus); outline-offset: 2px; }
.aw-page .aw-scroll > table { margin: 0; }
.aw-page .aw-scroll > table :is(th, td) { overflow-wrap: normal; }
.aw-register .aw-status, .aw-register .aw-force { white-space: nowrap; }
.aw-page footer { margin-top: 40px; padding-top: 10px; border-top: 1px solid var(--aw-heavy); color: var(--aw-quiet); font-size: 13px; }
@media (prefers-color-scheme: dark) { body { background: #171a1d; } }
body[class*="vscode-"] { background: var(--vscode-editor-background); }
@media screen and (max-width: 760px) {
  .aw-page { padding: 14px 14px 40px; }
  .aw-page .aw-digest { grid-template-columns: 1fr; }
  .aw-register thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .aw-register, .aw-register tbody, .aw-register tr, .aw-register th, .aw-register td, .aw-register caption { display: block; }
  .aw-register tr { padding: 6px 0; border-top: 1px solid var(--aw-rule); }
  .aw-register th, .aw-register td, .aw-register th + td, .aw-register td + td { padding: 1px 4px; border: 0; }
  .aw-register.aw-signatures :is(th, td) { padding: 1px 16px; }
}
@media print {
  body { background: #fff; }
  .aw-page { max-width: none; padding: 0; font-size: 9.5pt; }
  .aw-page h1 { font-size: 17pt; }
  .aw-page h2 { font-size: 13pt; margin-top: 20pt; }
  .aw-page h2.aw-part { break-before: page; margin-top: 0; font-size: 15pt; }
  .aw-page h3 { font-size: 11pt; }
  .aw-page h2, .aw-page h3, .aw-page h4, .aw-register caption { break-after: avoid; }
  .aw-register, .aw-scroll > table { font-size: 8.5pt; }
  .aw-scroll { overflow: visible; }
  .aw-page .aw-scroll > table :is(th, td) { padding: 2px 4px; overflow-wrap: anywhere; white-space: normal; font-size: 7.5pt; }
  .aw-register tr, .aw-titleblock, .aw-summary { break-inside: avoid; }
  .aw-register thead { break-after: avoid; }
  .aw-register tbody tr:first-child { break-before: avoid; }
  .aw-contents { break-after: avoid; }
  .aw-page a { color: inherit; text-decoration: none; }
  .aw-prose a[href^="http"]::after { content: " (" attr(href) ")"; overflow-wrap: anywhere; }
}
`;

/** Margins, page numbers and a running head for paper; A4 and Letter alike. */
export function paper(head: string): string {
  return `
@page {
  margin: 18mm 15mm 18mm;
  @top-left { content: ${cssText(head)}; font: 8pt sans-serif; color: #3d454c; }
  @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif; color: #3d454c; }
}`;
}

/** A text as a CSS string: everything but plain letters and digits is escaped, so that no text can end it. */
export function cssText(text: string): string {
  const escaped = [...text].map((c) => (/[A-Za-z0-9 ]/.test(c) ? c : `\\${c.codePointAt(0)!.toString(16).padStart(6, '0')}`));
  return `"${escaped.join('')}"`;
}

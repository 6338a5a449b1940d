// The style of the reference's own parts: the way to the other pages, functions, tables.

export const REFERENCE_STYLE = `
.aw-pages { border-top: 2px solid var(--aw-heavy); border-bottom: 1px solid var(--aw-rule); margin-bottom: 22px; padding: 8px 0; font-size: 13.5px; }
.aw-pages > div { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 14px; }
.aw-partname { flex: none; width: 8em; font-weight: 600; }
.aw-pages ul { display: flex; flex-wrap: wrap; gap: 0 14px; margin: 0; padding: 0; list-style: none; flex: 1; min-width: 0; }
.aw-pages a { display: inline-block; min-height: 24px; }
.aw-pages a[aria-current] { color: var(--aw-ink); text-decoration: none; border-bottom: 2px solid currentColor; }
.aw-functionsection { margin: 22px 0 26px; scroll-margin-top: 12px; }
.aw-functionsection :is(h2, h3, h4, h5) { margin: 0 0 4px; font-size: 15px; font-weight: 400; overflow-wrap: anywhere; }
.aw-functionsection :is(h2, h3, h4, h5) code { font-size: 14px; }
.aw-functionsection :is(h2, h3, h4, h5) .aw-name { font-weight: 700; }
.aw-functionsection > p { margin: 0 0 8px; max-width: 74ch; }
.aw-functionsection:target, .aw-tablesection:target { outline: 2px solid var(--aw-focus); outline-offset: 6px; }
.aw-page .aw-facts { table-layout: fixed; margin: 0; }
.aw-page .aw-facts th[scope="row"] { width: 8.5em; min-width: 0; color: var(--aw-quiet); font-size: 12px; font-weight: 600; }
.aw-page .aw-facts ul { margin: 0; padding: 0; list-style: none; }
.aw-facts td code, .aw-checks code { overflow-wrap: anywhere; }
.aw-facts li { margin: 0 0 2px; }
.aw-facts .aw-parameters li { display: inline-block; margin-right: 22px; }
.aw-facts .aw-unit { color: var(--aw-quiet); }
.aw-facts .aw-need { display: grid; grid-template-columns: minmax(9em, 15em) 1fr; gap: 2px 14px; align-items: baseline; }
.aw-facts .aw-result { font-weight: 600; font-variant-numeric: tabular-nums lining-nums; }
.aw-plainformula { font-family: var(--aw-maths); font-size: 1.08em; }
.aw-tablesection { margin: 20px 0 24px; }
.aw-page .aw-tablesection > p { margin: 0 0 6px; }
.aw-tablesection .aw-scroll > table td { font-variant-numeric: tabular-nums lining-nums; }
.aw-tablesection .aw-number { text-align: right; }
.aw-checks { margin: 18px 0 0; }
.aw-page .aw-tablesection .aw-scroll > table { min-width: 0; }
.aw-checks table { table-layout: fixed; }
.aw-checks thead th:nth-child(2) { width: 44%; }
.aw-checks thead th:nth-child(3) { width: 22%; }
.aw-list-of-functions { columns: 2 320px; column-gap: 36px; margin: 6px 0 8px; font-size: 14px; }
.aw-list-of-functions div { break-inside: avoid; padding: 3px 0; }
.aw-list-of-functions dt a { display: inline-block; min-height: 24px; }
.aw-list-of-functions dd { margin: 0; color: var(--aw-quiet); font-size: 13px; }
@media screen and (max-width: 760px) {
  .aw-page .aw-facts th[scope="row"] { width: auto; padding-top: 6px; }
  .aw-facts .aw-need { grid-template-columns: 1fr; margin-bottom: 6px; }
  .aw-partname { width: 100%; }
}
@media print {
  .aw-pages { display: none; }
  .aw-functionsection { break-inside: avoid; }
  .aw-tablesection .aw-scroll { overflow: visible; }
}
`;

// What stands in the cells: symbols, formulas, values, status, problems, what unfolds.

export const PARTS = `
.aw-ledger math, .aw-page math { font-family: var(--aw-maths); font-size: 1.12em; font-weight: 400; line-height: normal; }
.aw-ledger .aw-symbol math { font-size: 1.22em; }
.aw-symbol { color: var(--aw-ink); text-decoration: none; border-bottom: 1px solid transparent; }
.aw-symbol:hover { color: var(--aw-link); border-bottom-color: currentColor; }
.aw-ledger a:focus-visible, .aw-ledger summary:focus-visible, .aw-ledger [tabindex]:focus-visible { outline: 2px solid var(--aw-focus); outline-offset: 2px; }
.aw-description { margin-top: 1px; color: var(--aw-quiet); }
.aw-math { max-width: 100%; padding: 1px 0; }
.aw-scrolls { overflow-x: auto; overflow-y: hidden; }
.aw-putin-below { margin-top: 6px; padding-top: 5px; border-top: 1px solid var(--aw-rule); }
.aw-math math { margin: 1px 0; }
.aw-math [data-name] { cursor: pointer; }
.aw-math [data-name]:hover { color: var(--aw-link); }
.aw-long math { font-size: 1em; }
.aw-longest math { font-size: .92em; }
.aw-call { margin-top: 3px; color: var(--aw-quiet); font-size: .88em; }
.aw-where { margin-top: 4px; font-size: .92em; }
.aw-stack mtd { text-align: left; padding-left: 0; padding-right: 0; }
.aw-cases mtd { text-align: left; padding: .1em .6em .1em 0; }
.aw-label, .aw-celllabel { color: var(--aw-quiet); font-size: 11px; font-weight: 600; letter-spacing: .02em; }
.aw-celllabel { display: none; }
.aw-value { font-weight: 600; font-variant-numeric: tabular-nums lining-nums; }
.aw-plusminus, .aw-comparison, .aw-margin, .aw-figure, .aw-data, .aw-budget { font-variant-numeric: tabular-nums lining-nums; }
.aw-plusminus, .aw-nowrap { white-space: nowrap; }
.aw-apart { display: block; }
.aw-coverage, .aw-remark, .aw-reading, .aw-missing, .aw-because { color: var(--aw-quiet); }
.aw-coverage { font-size: .92em; white-space: nowrap; }
.aw-lines { padding-left: 8px; border-left: 1.5px solid var(--aw-quiet); }
.aw-message code, .aw-mends code { font-family: var(--aw-mono); font-size: .94em; color: inherit; background: none; }
.aw-kind { color: var(--aw-quiet); }
.aw-quote { overflow-wrap: anywhere; }
.aw-source { font-size: .94em; }
.aw-force { font-weight: 600; }
.aw-status { display: inline-flex; align-items: baseline; gap: 6px; font-weight: 600; white-space: nowrap; }
.aw-status.aw-holds { color: var(--aw-holds); }
.aw-status.aw-fails { color: var(--aw-fails); }
.aw-status.aw-undecided { color: var(--aw-undecided); }
.aw-status.aw-none { color: var(--aw-quiet); }
.aw-mark { flex: none; align-self: center; overflow: visible; }
.aw-sides { margin-top: 3px; }
.aw-gauge { display: block; max-width: 100%; height: auto; margin-top: 4px; }
.aw-ledger summary { cursor: pointer; list-style: none; }
.aw-ledger summary::-webkit-details-marker { display: none; }
.aw-ledger summary { position: relative; }
.aw-ledger summary::before {
  content: ""; position: absolute; left: -14px; top: .5em; width: 5px; height: 5px; border: solid var(--aw-quiet); border-width: 1.5px 1.5px 0 0; transform: rotate(45deg);
}
.aw-ledger summary:hover::before { border-color: var(--aw-ink); }
.aw-ledger details[open] > summary::before { transform: rotate(135deg); }
.aw-ledger .aw-figurebox .aw-details { margin-left: 16px; }
.aw-inside { margin: 6px 0 2px; padding-top: 6px; border-top: 1px solid var(--aw-rule); display: grid; gap: 8px; }
.aw-ledger ul, .aw-ledger ol { margin: 0; padding: 0; list-style: none; }
.aw-list li { display: inline; }
.aw-list li:not(:last-child)::after { content: ";"; margin-right: .5em; color: var(--aw-quiet); }
.aw-list li.aw-statement, .aw-function .aw-list li { display: block; }
.aw-list li.aw-statement::after, .aw-function .aw-list li::after { content: none; }
.aw-choice { margin-top: 3px; color: var(--aw-quiet); }
.aw-choice code, .aw-unreadable code { font-family: var(--aw-mono); font-size: .92em; color: var(--aw-ink); background: none; }
.aw-ledger .aw-budget { width: 100%; }
.aw-ledger .aw-budget caption, .aw-ledger .aw-data caption { text-align: left; color: var(--aw-quiet); font-size: 11px; font-weight: 600; }
.aw-ledger .aw-budget th, .aw-ledger .aw-budget td { padding: 2px 6px 2px 0; border: 0; border-top: 1px solid var(--aw-rule); background: none; text-align: left; font-weight: 400; vertical-align: baseline; }
.aw-ledger .aw-budget thead th { border-top: 0; overflow-wrap: normal; color: var(--aw-quiet); font-size: 11px; }
.aw-ledger .aw-budget a { display: inline-block; min-height: 24px; }
.aw-budget .aw-coverage { white-space: normal; }
.aw-share { display: none; }
.aw-concession { margin-top: 4px; padding-left: 8px; border-left: 3px double var(--aw-undecided); }
.aw-problems { display: grid; gap: 6px; padding: 2px 0; }
.aw-problem { display: grid; grid-template-columns: 20px 1fr; gap: 8px; align-items: start; }
.aw-problem > .aw-mark { margin-top: 2px; align-self: start; }
.aw-severity { font-weight: 600; font-size: .92em; }
.aw-problem.aw-error > .aw-mark, .aw-error .aw-severity { color: var(--aw-fails); }
.aw-problem.aw-warning > .aw-mark, .aw-warning .aw-severity { color: var(--aw-undecided); }
.aw-problem.aw-note > .aw-mark, .aw-note .aw-severity { color: var(--aw-quiet); }
.aw-mends li::before { content: "\\2192\\00A0"; color: var(--aw-quiet); }
.aw-ledger { position: relative; }
.aw-peek { position: absolute; z-index: 2; overflow: auto; max-height: 480px; width: max-content; min-width: 200px; max-width: min(420px, 100%); padding: 4px 10px 8px; border: 1px solid var(--aw-heavy); background: var(--aw-paper); color: var(--aw-ink); }
.aw-peek .aw-inside { margin-top: 0; border-top: 0; }
`;

// Less room: the values put in go below the formula and the source below the row, then everything in one column.

export const NARROW = `
@container (min-width: 820px) and (max-width: 940px) {
  .aw-ledger .aw-math math { font-size: 1em; }
}
@container (max-width: 820px) {
  .aw-ledger .aw-table, .aw-table > thead, .aw-table > tbody { display: block; }
  .aw-table > thead > tr { display: grid; grid-template-columns: 27% minmax(0, 1fr) 30%; border-bottom: 1px solid var(--aw-heavy); }
  .aw-ledger .aw-table > thead > tr > th { width: auto; padding: 3px 8px; border-bottom: 0; }
  .aw-table > thead > tr > th:nth-child(3), .aw-table > thead > tr > th:nth-child(5) { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .aw-table > tbody > tr { display: grid; grid-template-columns: 27% minmax(0, 1fr) 30%; grid-template-rows: auto 1fr; border-top: 1px solid var(--aw-rule); }
  .aw-table > tbody > tr:first-child { border-top: 0; }
  .aw-table > tbody > tr > th, .aw-table > tbody > tr > td { display: block; min-width: 0; border: 0; border-left: 1px solid var(--aw-rule); padding: 6px 8px; }
  .aw-table > tbody > tr > th { grid-area: 1 / 1 / span 2; border-left: 0; }
  .aw-table > tbody > tr > .aw-formula { grid-area: 1 / 2; }
  .aw-table > tbody > tr > .aw-putin { grid-area: 2 / 2; padding-top: 0; }
  .aw-table > tbody > tr > .aw-result { grid-area: 1 / 3 / span 2; }
  .aw-table > tbody > tr > .aw-source { grid-area: 3 / 1 / auto / -1; border-left: 0; padding-top: 0; }
  .aw-table > tbody > tr > .aw-source.aw-empty { display: none; }
  .aw-scrolls math { font-size: .96em; }
  .aw-table > tbody > tr:not(:has(.aw-putin)) > .aw-formula { grid-row: 1 / span 2; }
  .aw-ledger .aw-table > tbody > tr.aw-requirement { background: var(--aw-tint) !important; }
  .aw-table > tbody > tr.aw-requirement > th, .aw-table > tbody > tr.aw-requirement > td { background: none; }
  .aw-table > tbody > tr.aw-requirement > th, .aw-table > tbody > tr.aw-requirement > .aw-source { border-left: 4px solid var(--aw-rule); padding-left: 6px; }
  .aw-table > tbody > tr.aw-is-holds > :is(th, .aw-source) { border-left-color: var(--aw-holds); }
  .aw-table > tbody > tr.aw-is-fails > :is(th, .aw-source) { border-left-color: var(--aw-fails); }
  .aw-table > tbody > tr.aw-is-undecided > :is(th, .aw-source) { border-left-color: var(--aw-undecided); border-left-style: double; }
  .aw-table > tbody > tr.aw-wide { display: block; }
  .aw-table > tbody > tr.aw-wide > td { border-left: 0; }
  .aw-table > tbody > tr.aw-problemrow { border-top: 0; }
}
@container (max-width: 520px) {
  .aw-table > thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .aw-table > tbody > tr { display: block; padding: 6px 0; }
  .aw-table > tbody > tr > th, .aw-table > tbody > tr > td, .aw-table > tbody > tr > :first-child { border-left: 0; padding: 2px 4px; }
  .aw-table > tbody > tr > .aw-empty { display: none; }
  .aw-ledger .aw-table > tbody > tr > .aw-result { padding: 4px 4px 2px 18px; }
  .aw-table > tbody > tr.aw-requirement { border-left: 4px solid var(--aw-rule); padding-left: 6px; }
  .aw-table > tbody > tr.aw-requirement > :is(th, .aw-source) { border-left: 0; padding-left: 4px; }
  .aw-table > tbody > tr.aw-is-holds { border-left-color: var(--aw-holds); }
  .aw-table > tbody > tr.aw-is-fails { border-left-color: var(--aw-fails); }
  .aw-table > tbody > tr.aw-is-undecided { border-left-color: var(--aw-undecided); border-left-style: double; }
  .aw-celllabel { display: block; }
  .aw-ledger .aw-key { display: none; }
  .aw-plot-wide { display: none; }
  .aw-plot-narrow { display: block; }
}
`;

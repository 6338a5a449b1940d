// The ruled table: five columns, hairlines between them, heavy rules at head and foot.

export const LEDGER = `
.aw-ledger { container-type: inline-size; color: var(--aw-ink); font-family: var(--aw-sans); font-size: 13px; line-height: 1.45; }
.aw-ledger *, .aw-ledger *::before { box-sizing: border-box; }
.aw-ledger .aw-unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.aw-ledger table { border-collapse: collapse; border-spacing: 0; margin: 0; }
.aw-ledger .aw-table { width: 100%; table-layout: fixed; border-top: 2px solid var(--aw-heavy); border-bottom: 2px solid var(--aw-heavy); background: none; }
/* The editor stripes the tables of outputs; here a tint means a requirement. */
.aw-ledger :is(table, thead, tbody, tr) { background: none !important; }
.aw-table > thead > tr > th {
  padding: 4px 10px; border: 0; border-bottom: 1px solid var(--aw-heavy); background: none; color: var(--aw-quiet);
  font-size: 11px; font-weight: 600; letter-spacing: .02em; text-align: left; vertical-align: bottom;
}
.aw-table > thead > tr > th:nth-child(1) { width: 20%; }
.aw-table > thead > tr > th:nth-child(2) { width: 21%; }
.aw-table > thead > tr > th:nth-child(3) { width: 21%; }
.aw-table > thead > tr > th:nth-child(4) { width: 20%; }
.aw-table > thead > tr > th:nth-child(5) { width: 18%; }
.aw-table > tbody > tr > th, .aw-table > tbody > tr > td {
  padding: 7px 10px; border: 0; border-top: 1px solid var(--aw-rule); border-left: 1px solid var(--aw-rule); background: none;
  text-align: left; vertical-align: baseline; font-weight: 400; overflow-wrap: anywhere; white-space: normal;
}
.aw-table > thead > tr > th + th { border-left: 1px solid var(--aw-rule); }
.aw-table > tbody > tr > :first-child { border-left: 0; padding-left: 8px; }
.aw-table > thead > tr > th:first-child { padding-left: 8px; }
.aw-table > tbody > tr:first-child > th, .aw-table > tbody > tr:first-child > td { border-top: 0; }
.aw-ledger .aw-table > tbody > tr > .aw-result, .aw-ledger .aw-table > thead > tr > th:nth-child(4) { padding-left: 24px; }
.aw-table > tbody > tr.aw-problemrow > td { border-top: 0; padding-top: 0; }
.aw-table > tbody > tr.aw-requirement > th, .aw-table > tbody > tr.aw-requirement > td { background: var(--aw-tint); }
.aw-table > tbody > tr.aw-requirement > th { border-left: 4px solid var(--aw-rule); padding-left: 4px; }
.aw-table > tbody > tr.aw-is-holds > th { border-left-color: var(--aw-holds); }
.aw-table > tbody > tr.aw-is-fails > th { border-left-color: var(--aw-fails); }
.aw-table > tbody > tr.aw-is-undecided > th { border-left-color: var(--aw-undecided); border-left-style: double; }
.aw-table > tbody > tr.aw-is-not-calculated > th { border-left-style: dotted; border-left-color: var(--aw-quiet); }
.aw-table > tbody > tr:target > th, .aw-table > tbody > tr:target > td { background: var(--aw-tint); }
`;

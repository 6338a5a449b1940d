// Plots and tables of data.

export const PLOT = `
.aw-figurebox { margin: 4px 0; }
.aw-figurebox figcaption { margin-top: 4px; color: var(--aw-quiet); }
.aw-plot { display: block; max-width: 100%; height: auto; font-family: var(--aw-sans); }
.aw-plot-narrow { display: none; }
.aw-datascroll { max-height: 16em; overflow: auto; }
.aw-ledger .aw-data th, .aw-ledger .aw-data td { padding: 2px 12px 2px 0; border: 0; border-bottom: 1px solid var(--aw-rule); background: none; text-align: right; font-weight: 400; overflow-wrap: normal; }
.aw-ledger .aw-data td { white-space: nowrap; }
.aw-ledger .aw-data th { color: var(--aw-quiet); font-weight: 600; border-bottom-color: var(--aw-heavy); }
.aw-ledger .aw-extended { border-collapse: separate; }
.aw-ledger .aw-extended :is(th, td) { padding: 2px 8px; }
.aw-ledger .aw-extended thead th { position: sticky; top: 0; background: var(--aw-paper); vertical-align: bottom; white-space: nowrap; }
.aw-ledger .aw-extended tbody th { position: sticky; left: 0; background: var(--aw-paper); text-align: left; color: var(--aw-ink); font-weight: 400; border-bottom-color: var(--aw-rule); white-space: nowrap; }
.aw-ledger .aw-extended thead th:first-child { left: 0; z-index: 1; text-align: left; }
.aw-ledger .aw-extended :is(th, td):not(.aw-computed) + .aw-computed { border-left: 3px double var(--aw-heavy); }
.aw-ledger .aw-extended td.aw-computed { font-weight: 600; }
.aw-ledger .aw-extended .aw-was { font-weight: 400; margin: 0; }
.aw-key { margin-left: 1.5em; font-weight: 400; }
.aw-wide .aw-datascroll { max-height: 24em; }
`;

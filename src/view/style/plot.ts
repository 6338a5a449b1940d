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
`;

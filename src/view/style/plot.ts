// Plots and tables of data.

export const PLOT = `
.aw-figurebox { margin: 4px 0; }
.aw-figurebox figcaption { margin-top: 4px; color: var(--aw-quiet); }
.aw-plot { display: block; max-width: 100%; height: auto; font-family: var(--aw-sans); }
.aw-plot-narrow { display: none; }
.aw-tracekey { color: var(--aw-ink); font-size: 12px; }
.aw-sample { vertical-align: middle; }
.aw-plotbox { position: relative; max-width: 640px; }
.aw-plot-narrow .aw-plotbox { max-width: 320px; }
.aw-reader { position: absolute; inset: 0; cursor: crosshair; touch-action: pan-y; }
.aw-reader > span { position: absolute; display: none; pointer-events: none; }
.aw-reading-on > span:not([hidden]) { display: block; }
.aw-reader > .aw-hair { width: 0; border-left: 1px solid var(--aw-ink); }
.aw-reader > .aw-spot { width: 9px; height: 9px; margin: -5px 0 0 -4px; border: 2px solid var(--aw-ink); border-radius: 50%; background: var(--aw-paper); }
.aw-readout { margin-top: 4px; min-height: 1.5em; color: var(--aw-quiet); font-variant-numeric: tabular-nums lining-nums; }
.aw-readout.aw-told { color: var(--aw-ink); }
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

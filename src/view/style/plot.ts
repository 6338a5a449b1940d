// Plots and tables of data.

export const PLOT = `
.aw-figurebox { margin: 4px 0; }
.aw-figurebox figcaption { margin-top: 4px; color: var(--aw-quiet); }
.aw-plot { display: block; max-width: 100%; height: auto; font-family: var(--aw-sans); }
.aw-plot-narrow { display: none; }
.aw-grid { stroke: var(--aw-rule); stroke-width: .6; }
.aw-axis { fill: none; stroke: var(--aw-heavy); stroke-width: 1.2; }
.aw-tick, .aw-plotlabel, .aw-head { fill: var(--aw-ink); font-size: 12px; font-variant-numeric: tabular-nums; }
.aw-tick { fill: var(--aw-quiet); font-size: 11.5px; }
.aw-head { font-size: 13px; }
.aw-italic { font-style: italic; font-family: var(--aw-maths); font-size: 15px; }
.aw-subscript { font-size: 10px; }
.aw-trace { fill: none; stroke-width: 1.9; stroke-linejoin: round; }
.aw-trace-0 { stroke: var(--aw-trace-0); }
.aw-trace-1 { stroke: var(--aw-trace-1); stroke-dasharray: 8 3; }
.aw-trace-2 { stroke: var(--aw-trace-2); stroke-dasharray: 2.5 2.5; }
.aw-trace-3 { stroke: var(--aw-trace-3); stroke-dasharray: 10 3 2 3; }
.aw-limit { fill: none; stroke: var(--aw-ink); stroke-width: 1.3; stroke-dasharray: 14 4; }
.aw-drop { stroke: var(--aw-heavy); stroke-width: 1; stroke-dasharray: 1 3; }
.aw-point { fill: var(--aw-ink); stroke: var(--aw-paper); stroke-width: 1; }
.aw-plotlabel { paint-order: stroke; stroke: var(--aw-paper); stroke-width: 4px; stroke-linejoin: round; }
.aw-datascroll { max-height: 16em; overflow: auto; }
.aw-ledger .aw-data th, .aw-ledger .aw-data td { padding: 2px 12px 2px 0; border: 0; border-bottom: 1px solid var(--aw-rule); background: none; text-align: right; font-weight: 400; overflow-wrap: normal; }
.aw-ledger .aw-data td { white-space: nowrap; }
.aw-ledger .aw-data th { color: var(--aw-quiet); font-weight: 600; border-bottom-color: var(--aw-heavy); }
`;

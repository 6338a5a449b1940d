// Results that are not current: a hatched edge and broken rules; recorded results beside those of now.

export const RECORDED = `
.aw-notice { display: grid; grid-template-columns: 20px 1fr; gap: 8px; align-items: start; margin: 0 0 6px; padding: 5px 8px; border: 1px dashed var(--aw-heavy); }
.aw-notice > .aw-mark { margin-top: 2px; align-self: start; }
.aw-notice ul { margin-top: 3px; }
.aw-notice li { color: var(--aw-quiet); }
.aw-notice code { font-family: var(--aw-mono); font-size: .92em; color: var(--aw-ink); background: none; }
.aw-was { margin-bottom: 4px; padding-left: 8px; border-left: 3px double var(--aw-heavy); color: var(--aw-quiet); font-variant-numeric: tabular-nums lining-nums; }
.aw-was .aw-label { display: block; }
.aw-outdated { padding-left: 14px; background: repeating-linear-gradient(135deg, var(--aw-heavy) 0 1px, transparent 1px 5px) left / 7px 100% no-repeat; }
.aw-outdated .aw-value, .aw-outdated .aw-plusminus, .aw-outdated .aw-status, .aw-outdated .aw-margin { color: var(--aw-quiet); font-weight: 400; }
.aw-outdated .aw-value, .aw-outdated .aw-status { border-bottom: 1px dashed currentColor; }
.aw-ledger.aw-outdated .aw-table { border-top-style: dashed; border-bottom-style: dashed; }
`;

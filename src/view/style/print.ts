// On paper: black on white, no scrolling, rows kept whole, heads repeated.

import { PAPER } from './colours.ts';

export const PRINT = `
@media (forced-colors: active) {
  .aw-ledger .aw-mark-bar, .aw-ledger .aw-gauge-value, .aw-ledger .aw-point { fill: CanvasText; }
  .aw-ledger .aw-gauge-out { fill: none; stroke: CanvasText; stroke-dasharray: 2 2; }
  .aw-ledger svg { forced-color-adjust: auto; }
  /* The plate that is laid behind words would cover the lines around a formula: fonts for mathematics are very tall. */
  .aw-ledger math, .aw-page math { forced-color-adjust: none; color: CanvasText; }
  .aw-ledger a math, .aw-page a math { color: LinkText; }
  /* The halo of a label would be forced to the colour of its letters. */
  .aw-ledger .aw-plotlabel { forced-color-adjust: none; fill: CanvasText; stroke: Canvas; }
}
@media print {
  .aw-ledger, .aw-page {
    ${Object.entries(PAPER)
      .map(([name, colour]) => `--aw-${name}: ${colour};`)
      .join(' ')}
  }
  .aw-ledger { font-size: 8.5pt; }
  .aw-ledger .aw-scrolls, .aw-ledger .aw-datascroll { overflow: visible; max-height: none; }
  .aw-ledger .aw-extended :is(th, td) { position: static !important; }
  .aw-column details:not([open]), .aw-key { display: none; }
  .aw-extended tr { break-inside: avoid; }
  .aw-ledger .aw-extended :is(th, td) { padding: 1px 4px; font-size: 7.5pt; white-space: normal; }
  .aw-longest math { font-size: .72em; }
  .aw-table > tbody > tr { break-inside: avoid; }
  .aw-table > thead { break-after: avoid; }
  .aw-table > tbody > tr:first-child { break-before: avoid; }
  .aw-ledger summary::before { display: none; }
}
`;

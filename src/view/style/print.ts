// On paper: black on white, no scrolling, rows kept whole, heads repeated.

export const PRINT = `
@media (forced-colors: active) {
  .aw-ledger .aw-mark-bar, .aw-ledger .aw-gauge-value, .aw-ledger .aw-point { fill: CanvasText; }
  .aw-ledger .aw-gauge-out { fill: none; stroke: CanvasText; stroke-dasharray: 2 2; }
  .aw-ledger svg { forced-color-adjust: auto; }
}
@media print {
  .aw-ledger, .aw-page {
    --aw-ink: #000; --aw-quiet: #3d454c; --aw-paper: #fff; --aw-rule: #aab2b9; --aw-heavy: #000; --aw-tint: #f3f5f6; --aw-link: #000;
    --aw-holds: #154536; --aw-fails: #7d1f16; --aw-undecided: #5e4006; --aw-out: #d9dee2;
    --aw-trace-0: #1c4f73; --aw-trace-1: #7a3e12; --aw-trace-2: #4d3a78; --aw-trace-3: #2f5a2a;
  }
  .aw-ledger { font-size: 8.5pt; }
  .aw-scrolls, .aw-datascroll { overflow: visible; max-height: none; }
  .aw-longest math { font-size: .72em; }
  .aw-table > tbody > tr { break-inside: avoid; }
  .aw-table > thead { break-after: avoid; }
  .aw-table > tbody > tr:first-child { break-before: avoid; }
  .aw-ledger summary::before { display: none; }
}
`;

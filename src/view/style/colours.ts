// Colours and faces. In the editor they follow its theme (`--vscode-*`), on a page the reader's preference.

const DARK = `    --aw-quiet: #a3acb4; --aw-rule: #3f474e; --aw-heavy: #98a2ab; --aw-tint: #ffffff0b; --aw-link: #9cc4e4; --aw-holds: #86c9ae;
    --aw-fails: #f0a094; --aw-undecided: #e3bf72; --aw-out: #ffffff24; --aw-trace-0: #9cc4e4; --aw-trace-1: #e3ab7f;
    --aw-trace-2: #c3b1ea; --aw-trace-3: #a5cf9d;`;

const CONTRAST = `    --aw-quiet: var(--aw-ink); --aw-rule: var(--aw-ink); --aw-heavy: var(--aw-ink); --aw-tint: transparent; --aw-link: var(--aw-ink);
    --aw-holds: var(--aw-ink); --aw-fails: var(--aw-ink); --aw-undecided: var(--aw-ink); --aw-out: transparent; --aw-out-line: var(--aw-ink);
    --aw-trace-0: var(--aw-ink); --aw-trace-1: var(--aw-ink); --aw-trace-2: var(--aw-ink); --aw-trace-3: var(--aw-ink);`;

/** Colours on paper; a hex number each. */
export const PAPER = {
  ink: '#000000',
  quiet: '#3d454c',
  paper: '#ffffff',
  rule: '#aab2b9',
  heavy: '#000000',
  tint: '#f3f5f6',
  link: '#000000',
  holds: '#154536',
  fails: '#7d1f16',
  undecided: '#5e4006',
  out: '#d9dee2',
  'trace-0': '#1c4f73',
  'trace-1': '#7a3e12',
  'trace-2': '#4d3a78',
  'trace-3': '#2f5a2a',
} as const;

/** Variables for every colour; contrast is at least 4.5 to 1 for words and 3 to 1 for drawings. */
export const COLOURS = `
@font-face { font-family: "aw-wide-maths"; src: local("DejaVu Math TeX Gyre"), local("DejaVuMathTeXGyre-Regular"); size-adjust: 78%; }
.aw-ledger, .aw-page {
  --aw-ink: var(--vscode-editor-foreground, #1c2126);
  --aw-quiet: #565f68;
  --aw-paper: var(--vscode-notebook-outputContainerBackgroundColor, var(--vscode-editor-background, #ffffff));
  --aw-rule: #c9cfd4;
  --aw-heavy: #3c454d;
  --aw-tint: #f3f5f6;
  --aw-link: #1c4f73;
  --aw-holds: #1f5f4a;
  --aw-fails: #9a2a1f;
  --aw-undecided: #775208;
  --aw-out: #d9dee2;
  --aw-trace-0: #1c4f73;
  --aw-trace-1: #7a3e12;
  --aw-trace-2: #4d3a78;
  --aw-trace-3: #2f5a2a;
  --aw-focus: var(--vscode-focusBorder, #1c4f73);
  --aw-sans: var(--vscode-font-family, "Segoe UI", "Helvetica Neue", "Noto Sans", "Liberation Sans", Arial, sans-serif);
  --aw-mono: var(--vscode-editor-font-family, "Cascadia Mono", "Liberation Mono", "DejaVu Sans Mono", monospace);
  --aw-maths: "Cambria Math", "STIX Two Math", "STIX Math", "Latin Modern Math", "aw-wide-maths", "Noto Sans Math", math, serif;
}
@media (prefers-color-scheme: dark) {
  body:not([class*="vscode-"]) :is(.aw-page, .aw-ledger) {
    --aw-ink: #dfe3e6; --aw-paper: #171a1d;
${DARK}
  }
}
.vscode-dark :is(.aw-page, .aw-ledger) {
${DARK}
}
.vscode-high-contrast :is(.aw-page, .aw-ledger) {
${CONTRAST}
}
@media (prefers-contrast: more) {
  body:not([class*="vscode-"]) :is(.aw-page, .aw-ledger) {
${CONTRAST}
  }
}
`;

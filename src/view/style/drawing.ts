// Lines and fills of every drawing, as data: the style sheet of screen and page is made of them, and so are drawings that stand alone.

type Look = Readonly<Record<string, string>>;

const trace = (number: number, dashes: string | null): Look => ({
  fill: 'none',
  stroke: `var(--aw-trace-${number})`,
  'stroke-width': '1.9',
  'stroke-linejoin': 'round',
  ...(dashes === null ? {} : { 'stroke-dasharray': dashes }),
});
const words = (size: string, colour = 'ink'): Look => ({
  fill: `var(--aw-${colour})`,
  'font-size': size,
  'font-variant-numeric': 'tabular-nums',
});

/** What a shape of a class looks like: presentation attributes of SVG. */
export const SHAPES: Readonly<Record<string, Look>> = {
  'aw-mark-bar': { fill: 'currentColor' },
  'aw-mark-hollow': { fill: 'none', stroke: 'currentColor', 'stroke-width': '1.5' },
  'aw-mark-limit': { stroke: 'currentColor', 'stroke-width': '2' },
  'aw-mark-line': { fill: 'none', stroke: 'currentColor', 'stroke-width': '1.6' },
  'aw-gauge-out': { fill: 'var(--aw-out)', stroke: 'var(--aw-out-line, none)', 'stroke-dasharray': '2 2' },
  'aw-gauge-axis': { stroke: 'var(--aw-quiet)', 'stroke-width': '1' },
  'aw-gauge-break': { fill: 'none', stroke: 'var(--aw-quiet)', 'stroke-width': '1.2' },
  'aw-gauge-band': { fill: 'none', stroke: 'var(--aw-ink)', 'stroke-width': '1.2' },
  'aw-gauge-limit': { stroke: 'var(--aw-ink)', 'stroke-width': '2.4' },
  'aw-gauge-value': { fill: 'var(--aw-ink)', stroke: 'var(--aw-paper)', 'stroke-width': '1' },
  'aw-gauge-text': { ...words('11px', 'quiet'), 'font-family': 'var(--aw-sans)' },
  'aw-share-whole': { fill: 'var(--aw-out)' },
  'aw-share-part': { fill: 'var(--aw-heavy)' },
  'aw-grid': { stroke: 'var(--aw-rule)', 'stroke-width': '.6' },
  'aw-axis': { fill: 'none', stroke: 'var(--aw-heavy)', 'stroke-width': '1.2' },
  'aw-tick': words('11.5px', 'quiet'),
  'aw-head': words('13px'),
  'aw-italic': { 'font-style': 'italic', 'font-family': 'var(--aw-maths)', 'font-size': '15px' },
  'aw-subscript': { 'font-size': '10px' },
  'aw-trace-0': trace(0, null),
  'aw-trace-1': trace(1, '8 3'),
  'aw-trace-2': trace(2, '2.5 2.5'),
  'aw-trace-3': trace(3, '10 3 2 3'),
  'aw-limit': { fill: 'none', stroke: 'var(--aw-ink)', 'stroke-width': '1.3', 'stroke-dasharray': '14 4' },
  'aw-drop': { stroke: 'var(--aw-heavy)', 'stroke-width': '1', 'stroke-dasharray': '1 3' },
  'aw-point': { fill: 'var(--aw-ink)', stroke: 'var(--aw-paper)', 'stroke-width': '1' },
  'aw-plotlabel': {
    ...words('12px'),
    'paint-order': 'stroke',
    stroke: 'var(--aw-paper)',
    'stroke-width': '4px',
    'stroke-linejoin': 'round',
  },
  'aw-code': { fill: '#000' },
  'aw-code-ground': { fill: '#fff' },
};

/** The same as a style sheet. */
export const DRAWING = Object.entries(SHAPES)
  .map(([name, look]) => `.${name} { ${Object.entries(look).map(([key, value]) => `${key}: ${value};`).join(' ')} }`) // biome-ignore format: one rule a line
  .join('\n');

// Reading a curve: the pointer or the arrow keys move along it, a line below says the values there.
import { PLOTS } from '../view/ledger/figure.ts';
import type { CellView, CurveRow } from '../view/model.ts';
import { axesOf, short } from '../view/plot.ts';

const HINT = 'Point at the curve, or press the arrow keys on it, to read its values.';

/** Where each reader stands, by its key: its point's number. */
export function positionsOf(into: HTMLElement): ReadonlyMap<string, number> {
  const readers = [...into.querySelectorAll('.aw-reader.aw-reading-on')];
  return new Map(readers.map((reader) => [reader.getAttribute('data-key')!, Number(reader.getAttribute('aria-valuenow'))]));
}

/** Lays a reader over every plot; those that stood somewhere before stand there again. */
export function addReaders(into: HTMLElement, view: CellView, positions: ReadonlyMap<string, number>): void {
  for (const row of view.rows) {
    if (row.kind !== 'curve' || (row.traces[0]?.points.length ?? 0) === 0) continue;
    const figure = into.querySelector(`[data-key="${CSS.escape(`figure ${row.key}`)}"]`);
    for (const { name, width } of PLOTS) {
      const svg = figure?.querySelector(`.aw-plot-${name} > svg`);
      if (svg) addReader(svg, row, width, `${name} reader ${row.key}`, positions);
    }
  }
}

function addReader(svg: Element, row: CurveRow, width: number, key: string, positions: ReadonlyMap<string, number>): void {
  const { points } = row.traces[0]!;
  const { frame, x, y } = axesOf(row, width);
  const box = child('div', 'aw-plotbox');
  const reader = child('div', 'aw-reader');
  const hair = child('span', 'aw-hair');
  const spots = row.traces.map(() => child('span', 'aw-spot'));
  const readout = child('div', 'aw-readout');
  readout.textContent = HINT;
  reader.append(hair, ...spots);
  svg.replaceWith(box);
  box.append(svg, reader);
  box.after(readout);
  const attributes = { role: 'slider', tabindex: '0', 'data-key': key, 'aria-label': `Read the curve over ${row.x.name}` };
  for (const [name, value] of Object.entries({ ...attributes, 'aria-valuemin': '0', 'aria-valuemax': String(points.length - 1) }))
    reader.setAttribute(name, value);

  const percent = (part: number, whole: number) => `${(part / whole) * 100}%`;
  const move = (to: number) => {
    const at = Math.max(0, Math.min(points.length - 1, to));
    const text = textAt(row, at);
    reader.setAttribute('aria-valuenow', String(at));
    reader.setAttribute('aria-valuetext', text);
    reader.classList.add('aw-reading-on');
    readout.classList.add('aw-told');
    readout.textContent = text;
    const left = percent(x.at(points[at]!.x), frame.width);
    Object.assign(hair.style, { left, top: percent(frame.top, frame.height), bottom: percent(frame.height - frame.bottom, frame.height) });
    for (const [i, spot] of spots.entries()) {
      const value = row.traces[i]!.points[at]?.y ?? null;
      spot.hidden = value === null;
      if (value !== null) Object.assign(spot.style, { left, top: percent(y.at(value), frame.height) });
    }
  };
  const rest = () => {
    if (document.activeElement === reader) return;
    reader.classList.remove('aw-reading-on');
    readout.classList.remove('aw-told');
    readout.textContent = HINT;
  };
  reader.addEventListener('pointermove', ({ clientX }) => {
    const { left, width: drawn } = reader.getBoundingClientRect();
    const wanted = ((clientX - left) / drawn) * frame.width;
    move(nearest(points.map((p) => x.at(p.x)), wanted)); // biome-ignore format: one step
  });
  reader.addEventListener('pointerleave', rest);
  reader.addEventListener('blur', rest);
  reader.addEventListener('focus', () => move(Number(reader.getAttribute('aria-valuenow'))));
  reader.addEventListener('keydown', (event) => {
    const step = STEPS[event.key];
    if (step === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    // The notebook would move to another cell.
    event.preventDefault();
    event.stopPropagation();
    move(Number(reader.getAttribute('aria-valuenow')) + step);
  });
  const before = positions.get(key);
  reader.setAttribute('aria-valuenow', '0');
  reader.setAttribute('aria-valuetext', textAt(row, 0));
  if (before !== undefined) move(before);
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

/** `L = 320 m: run of 0.75 mm² 93.1 V; run of 2.5 mm² 104.2 V`. */
function textAt({ x, y, traces }: CurveRow, at: number): string {
  const withUnit = (value: number, unit: string) => (unit === '' ? short(value) : `${short(value)} ${unit}`);
  const values = traces.map(({ label, points }) => {
    const value = points[at]?.y ?? null;
    const what = traces.length > 1 && label !== '' ? `${label} ` : '';
    return what + (value === null ? 'no value' : withUnit(value, y.unit));
  });
  return `${x.name} = ${withUnit(traces[0]!.points[at]!.x, x.unit)}: ${values.join('; ')}`;
}

function nearest(places: readonly number[], wanted: number): number {
  let best = 0;
  for (const [i, place] of places.entries()) if (Math.abs(place - wanted) < Math.abs(places[best]! - wanted)) best = i;
  return best;
}

function child(tag: string, name: string): HTMLElement {
  const made = document.createElement(tag);
  made.className = name;
  return made;
}

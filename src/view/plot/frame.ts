// Where in a plot the curves are drawn, and where their labels have room.
import type { CurveRow } from '../model.ts';

/** Pixels from the left and the top. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The frame of a plot that is `width` pixels wide; a narrow one is higher for its width. */
export function frameOf(view: CurveRow, width: number): Frame {
  const height = Math.round(width < 480 ? width * 0.8 : width * 0.5);
  const longest = view.traces.length > 1 ? Math.max(...view.traces.map((t) => t.label.length)) : 0;
  const margin = Math.min(width * 0.3, longest * 6.6 + 16);
  return { width, height, left: 52, right: width - Math.max(14, Math.round(margin)), top: 30, bottom: height - 40 };
}

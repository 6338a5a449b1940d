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
  const room = longest * LETTER + 16;
  // Where the labels of traces have no room beside the frame they stand inside it.
  const margin = room <= width * 0.3 ? room : 14;
  return { width, height, left: 52, right: width - Math.max(14, Math.round(margin)), top: 30 + markRows(view) * LINE, bottom: height - 40 };
}

/** About how wide a letter of a label is. */
export const LETTER = 6.6;

/** Height of a line of labels. */
export const LINE = 15;

// Above the frame there is a line for the labels of marks, or two where there are several.
function markRows(view: CurveRow): number {
  return Math.min(view.marks.length, 2);
}

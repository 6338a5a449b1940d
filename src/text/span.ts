// Places in a text: half-open ranges of UTF-16 offsets, as editors count them.

/** From `start` up to, not including, `end`; offsets in UTF-16 code units of the text that the span belongs to. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** The span from `start` to `end`. */
export function span(start: number, end: number): Span {
  return { start, end };
}

/** The smallest span that holds both. */
export function cover(a: Span, b: Span): Span {
  return { start: Math.min(a.start, b.start), end: Math.max(a.end, b.end) };
}

/** Whether `offset` lies in the span or at one of its ends. */
export function touches(at: Span, offset: number): boolean {
  return at.start <= offset && offset <= at.end;
}

// The marks of status and of problems: small drawings that differ in shape, never in colour alone.
import type { ProblemView, StatusView } from './model.ts';
import { type Child, type ElementNode, element } from './node.ts';

/**
 * A bar and the limit it must not pass: it stops short (holds), passes it (fails), or its end, drawn hollow, lies on
 * both sides (undecided); the limit alone, where nothing was calculated.
 */
export function statusMark(status: StatusView): ElementNode {
  switch (status) {
    case 'holds':
      return mark(status, bar(1, 10), limit(15));
    case 'fails':
      return mark(status, bar(1, 9), bar(13, 19), limit(11));
    case 'undecided':
      return mark(status, bar(1, 6), hollow(6, 16), limit(11));
    case 'not calculated':
      return mark('none', element('path', { d: 'M1 7h2M6 7h2M11 7h2', class: 'aw-mark-line' }), limit(17));
    default:
      return status satisfies never;
  }
}

function mark(kind: string, ...children: readonly Child[]): ElementNode {
  return element('svg', { class: `aw-mark aw-${kind}`, viewBox: '0 0 20 14', width: 20, height: 14, 'aria-hidden': 'true' }, ...children);
}

function bar(from: number, to: number): ElementNode {
  return element('rect', { x: from, y: 4, width: to - from, height: 6, class: 'aw-mark-bar' });
}

function hollow(from: number, to: number): ElementNode {
  return element('rect', { x: from + 0.75, y: 4.75, width: to - from - 1.5, height: 4.5, class: 'aw-mark-hollow' });
}

function limit(x: number): ElementNode {
  return element('line', { x1: x, y1: 0, x2: x, y2: 14, class: 'aw-mark-limit' });
}

/** A broken line for an error, a bent one for a warning, a dotted one for a note. */
export function problemMark(severity: ProblemView['severity']): ElementNode {
  const path = { error: 'M1 7h6m6 0h6M7 2l-2 10M15 2l-2 10', warning: 'M1 10h5l4-7 4 7h5', note: 'M2 7h2m4 0h2m4 0h2' }[severity];
  return mark(severity, element('path', { d: path, class: 'aw-mark-line' }));
}

/** Two bars of which only the outline of the older is left: what is shown is not what the text says now, or not what the file says. */
export function differenceMark(): ElementNode {
  return mark('difference', element('rect', { x: 1.75, y: 1.75, width: 12.5, height: 4.5, class: 'aw-mark-hollow' }), lower());
}

function lower(): ElementNode {
  return element('rect', { x: 5, y: 9, width: 14, height: 4, class: 'aw-mark-bar' });
}

// A line on a terminal that says how far the work has come; where there is no terminal, nothing.
import { grouped } from '../sheet/table-columns.ts';
import type { Stream } from './terminal.ts';

export interface Progress {
  /** `done` of `total`, and how many of what is counted that makes. */
  readonly at: (done: number, count: number) => void;
  /** Takes the line away. */
  readonly end: () => void;
}

/** Milliseconds between two looks. */
const PAUSE = 100;
const WIDTH = 30;

/** `total` is null where nobody knows how much there is; `counted` says what is counted, such as `rows`. */
export function progress(stream: Stream, total: number | null, counted: string): Progress {
  if (!stream.isTerminal) return { at: () => {}, end: () => {} };
  let last = 0;
  let shown = false;
  return {
    at(done, count) {
      const now = Date.now();
      if (now - last < PAUSE) return;
      last = now;
      shown = true;
      stream.write(`\r\u001b[K${bar(done, total)}${grouped(count)} ${counted}`);
    },
    end() {
      if (shown) stream.write('\r\u001b[K');
    },
  };
}

function bar(done: number, total: number | null): string {
  if (!total) return '';
  const part = Math.min(1, done / total);
  const filled = Math.round(part * WIDTH);
  return `${'━'.repeat(filled)}${'─'.repeat(WIDTH - filled)} ${String(Math.floor(part * 100)).padStart(3)} %  `;
}

// The two streams of the program, and their colours.
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { WriteStream } from 'node:tty';

export type Style = 'bold' | 'dim' | 'red' | 'green' | 'yellow' | 'blue';

/** Puts a style around a text, or nothing where the stream gets no colour. */
export type Paint = (style: Style, text: string) => string;

export interface Stream {
  readonly paint: Paint;
  /** Writes a line. */
  readonly line: (text?: string) => void;
  /** Writes as it stands. */
  readonly write: (content: string | Uint8Array) => void;
  /** Writes piece by piece, no faster than they are taken; ends where they are taken no more, which the stream itself tells. */
  readonly writeAll: (pieces: AsyncIterable<string>) => Promise<void>;
  readonly isTerminal: boolean;
  /** Columns to fill at most. */
  readonly width: number;
}

/** Human output goes to `out`, diagnostics and progress to `err`. */
export interface Terminal {
  readonly out: Stream;
  readonly err: Stream;
}

const CODES: Readonly<Record<Style, readonly [on: number, off: number]>> = {
  bold: [1, 22],
  dim: [2, 22],
  red: [31, 39],
  green: [32, 39],
  yellow: [33, 39],
  blue: [34, 39],
};

export const plain: Paint = (_, text) => text;

export const coloured: Paint = (style, text) => `\u001b[${CODES[style][0]}m${text}\u001b[${CODES[style][1]}m`;

/** Colour is for terminals that have it, unless `NO_COLOR` is set (Node's tty knows that variable and `TERM=dumb`). */
function stream(target: NodeJS.WriteStream): Stream {
  const isTerminal = target instanceof WriteStream;
  const write = (content: string | Uint8Array) => void target.write(content);
  return {
    paint: isTerminal && target.hasColors() ? coloured : plain,
    line: (text = '') => write(`${text}\n`),
    write,
    writeAll: (pieces) => pipeline(Readable.from(pieces), target, { end: false }).catch(unlessWriting),
    isTerminal,
    width: isTerminal ? Math.max(40, target.columns) : 120,
  };
}

/** What the stream fails of it tells whoever listens to it; what the pieces fail of is thrown. */
function unlessWriting(error: NodeJS.ErrnoException): void {
  if (error.syscall !== 'write') throw error;
}

/** The terminal of this process. */
export function terminal(): Terminal {
  return { out: stream(process.stdout), err: stream(process.stderr) };
}

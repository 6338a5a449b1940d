// Bytes to text: UTF-8 or a refusal that says where. A file that is refused is shown to nobody as text and never written.

/** Why bytes are no text: a sentence part such as `byte 120 (line 4) is not UTF-8`, and the place. */
export interface Refusal {
  readonly refused: string;
  /** Offset of the first byte that does not belong, from 0. */
  readonly byte: number;
  /** The line it stands on, from 1. */
  readonly line: number;
}

// Both hosts have it, but no host's types are loaded here.
declare const TextDecoder: new (label: 'utf-8', options: { fatal: boolean; ignoreBOM: boolean }) => { decode(bytes: Uint8Array): string };
declare const TextEncoder: new () => { encode(text: string): Uint8Array };

/** The text of a file's bytes, byte order mark included, so that encoding it again gives the same bytes. */
export function decodeSheet(bytes: Uint8Array): string | Refusal {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return refusal(bytes);
  }
}

/** The bytes of a sheet's text. */
export function encodeSheet(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

function refusal(bytes: Uint8Array): Refusal {
  const byte = validLength(bytes);
  let line = 1;
  for (let i = 0; i < byte; i++) if (bytes[i] === 10 || (bytes[i] === 13 && bytes[i + 1] !== 10)) line++;
  const [a, b] = bytes;
  const wide = (a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff);
  const because = wide ? 'the file is UTF-16' : `byte ${byte + 1} (line ${line}) is not UTF-8`;
  return { refused: `${because}; save it as UTF-8 first`, byte, line };
}

/** How many bytes at the start are UTF-8 (RFC 3629, 4): no overlong forms, no surrogates, nothing above U+10FFFF. */
function validLength(bytes: Uint8Array): number {
  let i = 0;
  while (i < bytes.length) {
    const length = sequenceLength(bytes, i);
    if (length === 0) return i;
    i += length;
  }
  return i;
}

function sequenceLength(bytes: Uint8Array, i: number): number {
  const a = bytes[i]!;
  if (a < 0x80) return 1;
  const length = a >= 0xc2 && a < 0xe0 ? 2 : a >= 0xe0 && a < 0xf0 ? 3 : a >= 0xf0 && a < 0xf5 ? 4 : 0;
  for (let k = 1; k < length; k++) {
    const low = k > 1 ? 0x80 : a === 0xe0 ? 0xa0 : a === 0xf0 ? 0x90 : 0x80;
    const high = k > 1 ? 0xbf : a === 0xed ? 0x9f : a === 0xf4 ? 0x8f : 0xbf;
    const b = bytes[i + k];
    if (b === undefined || b < low || b > high) return 0;
  }
  return length;
}

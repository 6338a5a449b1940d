// Bytes to text and back: UTF-8 keeps every byte, anything else is refused with its place.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { decodeSheet, encodeSheet } from '../../src/sheet/decode.ts';

const bytes = (...parts: readonly (string | number[])[]) => Buffer.concat(parts.map((part) => Buffer.from(part as string)));

describe('a file', () => {
  it('in UTF-8 is its text, byte order mark included', () => {
    for (const text of ['', 'a\r\nb', '\ufeff# T\n', 'µ Ω ≤ 🙂\0']) assert.equal(decodeSheet(bytes(text)), text);
  });
  it('in anything else is refused, with the byte and the line', () => {
    const check = (file: Uint8Array, refused: string, byte: number, line: number) =>
      assert.deepEqual(decodeSheet(file), { refused, byte, line });
    const at = (byte: number, line: number) => `byte ${byte} (line ${line}) is not UTF-8; save it as UTF-8 first`;
    check(bytes('a\r\nb\nc = 25 ', [0xb0], 'C'), at(13, 3), 12, 3); // the degree sign in ISO 8859-1
    check(bytes([0xc0, 0x80]), at(1, 1), 0, 1); // overlong
    check(bytes('é', [0xed, 0xa0, 0x80]), at(3, 1), 2, 1); // half a surrogate pair
    check(bytes([0xf4, 0x90, 0x80, 0x80]), at(1, 1), 0, 1); // above U+10FFFF
    check(bytes('a', [0xe2, 0x82]), at(2, 1), 1, 1); // cut off
    check(bytes([0xff, 0xfe, 0x61, 0x00]), 'the file is UTF-16; save it as UTF-8 first', 0, 1);
  });
  it('comes back byte for byte, or is refused at the first byte that does not belong', () => {
    const pieces = fc.oneof(
      fc.uint8Array(),
      fc.string({ unit: 'grapheme' }).map((text) => new Uint8Array(Buffer.from(text))),
    );
    fc.assert(
      fc.property(
        fc.array(pieces, { maxLength: 6 }).map((parts) => new Uint8Array(Buffer.concat(parts))),
        (file) => {
          const decoded = decodeSheet(file);
          if (typeof decoded === 'string') return assert.deepEqual(Buffer.from(encodeSheet(decoded)), Buffer.from(file));
          assert.equal(typeof decodeSheet(file.slice(0, decoded.byte)), 'string');
          // No character has more than four bytes: what is wrong shows within four.
          assert.equal(
            Buffer.from(file.slice(decoded.byte, decoded.byte + 4))
              .toString('utf8')
              .charAt(0),
            '\ufffd',
          );
        },
      ),
      { numRuns: 2000 },
    );
  });
});

// Formatting as edits that give what the formatter gives.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { formatEdits } from '../../src/assist/formatting.ts';
import { format } from '../../src/language/format.ts';
import { applyEdits } from '../../src/sheet/edits.ts';

const code = 'a=2A   from plate "p"\nlong_name = 3 A from plate "q"\n\nb  =  a*2 # c\r\nbroken = (\nc=1';

describe('formatting', () => {
  it('changes no more than what differs', () => {
    assert.deepEqual(formatEdits('a = 2 A\nb=3 A'), [{ at: { start: 9, end: 10 }, text: ' = ' }]);
    assert.deepEqual(formatEdits('a = 2 A\n'), []);
  });

  it('gives the formatted text', () => {
    assert.equal(applyEdits(code, formatEdits(code)), format(code));
  });

  it('keeps to the lines that are asked for', () => {
    const text = 'a=1\nb=2\nc=3';
    assert.equal(applyEdits(text, formatEdits(text, { start: 5, end: 6 })), 'a=1\nb = 2\nc=3');
  });

  it('gives the formatted text, whatever the text is', () => {
    const pieces = fc.constantFrom(
      'a',
      '=',
      ' ',
      '  ',
      '2',
      'A',
      '\n',
      '\r\n',
      '\n  ',
      '(',
      ')',
      '+',
      '# x',
      '"t"',
      'from plate',
      '·',
      '²',
    );
    fc.assert(
      fc.property(
        fc.array(pieces, { maxLength: 40 }).map((parts) => parts.join('')),
        (text) => {
          assert.equal(applyEdits(text, formatEdits(text)), format(text));
        },
      ),
    );
  });
});

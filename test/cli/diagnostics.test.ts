// How a problem looks on a terminal.
import assert from 'node:assert/strict';
import { type Diagnostic, inOrder, printDiagnostic, source } from '../../src/cli/diagnostics.ts';
import { coloured, plain } from '../../src/cli/terminal.ts';

/** A diagnostic on the part of `marked` between `⟦` and `⟧`, and on `⟪…⟫` another place. */
function diagnostic(marked: string, rest: Partial<Diagnostic> = {}): Diagnostic {
  const text = marked.replace(/[⟦⟧⟪⟫]/g, '');
  const at = (open: string, close: string, others: RegExp) => {
    const without = marked.replace(others, '');
    return { start: without.indexOf(open), end: without.indexOf(close) - 1 };
  };
  const file = source('a.ampwright.md', text);
  const other = marked.includes('⟪') ? [{ source: file, at: at('⟪', '⟫', /[⟦⟧]/g), label: 'first defined here' }] : [];
  const main = at('⟦', '⟧', /[⟪⟫]/g);
  return { source: file, at: main, severity: 'error', code: 'code', message: 'words', mends: [], places: other, ...rest };
}

describe('a diagnostic on a terminal', () => {
  const check = (name: string, marked: string, expected: string, rest: Partial<Diagnostic> = {}, width = 80) =>
    it(name, () => assert.equal(`\n${printDiagnostic(diagnostic(marked, rest), plain, width)}`, expected));

  check(
    'has place, severity, message and code, and the line with carets under the exact characters',
    '# T\nx = 2 * ⟦I_m⟧ + 1\n',
    `
a.ampwright.md:2:9: error: words (code)
   2 | x = 2 * I_m + 1
     |         ^^^`,
  );
  check(
    'says what to write instead',
    'x = ⟦2 x⟧',
    `
a.ampwright.md:1:5: warning: words (code)
   1 | x = 2 x
     |     ^^^
  mend: Write \`2 * x\``,
    { severity: 'warning', mends: ['Write `2 * x`'] },
  );
  check(
    'shows other places',
    '⟪x⟫ = 3\n\n⟦x⟧ = 4',
    `
a.ampwright.md:3:1: error: words (code)
   3 | x = 4
     | ^
  a.ampwright.md:1:1: first defined here
   1 | x = 3
     | ^`,
  );
  check(
    'keeps carets under the characters behind tabs',
    'a\t=\t⟦I_m⟧',
    `
a.ampwright.md:1:5: error: words (code)
   1 | a   =   I_m
     |         ^^^`,
  );
  check(
    'keeps carets under wide and combined characters',
    'a = "電動機" + ⟦e\u0301電⟧',
    `
a.ampwright.md:1:13: error: words (code)
   1 | a = "電動機" + e\u0301電
     |                ^^^`,
  );
  check(
    'has one caret for a place without characters, and at the end of a line',
    'x = ⟦⟧\r\ny = 1',
    `
a.ampwright.md:1:5: error: words (code)
   1 | x = 
     |     ^`,
  );
  check(
    'marks the first line of a place over several',
    'x = f⟦(1,\n  2\ny⟧ = 3',
    `
a.ampwright.md:1:6: error: words (code)
   1 | x = f(1,
     |      ^^^ …`,
  );
  check(
    'quotes only the part around the place of a long line',
    `${'a + '.repeat(100_000)}⟦I_m⟧${' + b'.repeat(100_000)}`,
    `
a.ampwright.md:1:400001: error: words (code)
   1 | … + a + a + I_m + b + b …
     |             ^^^`,
    {},
    32,
  );
  check(
    'shows control characters by their code, so that a sheet cannot steer the terminal',
    'x = ⟦"\u001b[2J\u202e"⟧',
    `
a.ampwright.md:1:5: error: of \\u{1b}[31m x (code)
   1 | x = "\\u{1b}[2J\\u{202e}"
     |     ^^^^^^^^^^^^^^^^^^^`,
    { message: 'of \u001b[31m x' },
  );

  it('has colours on a terminal that shows them, and the same characters', () => {
    const one = diagnostic('x = ⟦I_m⟧', { mends: ['Write `I_n`'] });
    const shown = printDiagnostic(one, coloured, 80);
    assert.notEqual(shown, printDiagnostic(one, plain, 80));
    assert.equal(shown.replace(/\u001b\[\d+m/g, ''), printDiagnostic(one, plain, 80));
  });

  it('stands in the order of the text, errors first at one place, each once', () => {
    const at = (start: number, severity: Diagnostic['severity'], code: string) =>
      diagnostic('⟦x⟧', { at: { start, end: start + 1 }, severity, code });
    const ordered = inOrder([at(5, 'error', 'b'), at(0, 'note', 'n'), at(0, 'error', 'e'), at(5, 'error', 'b'), at(0, 'warning', 'w')]);
    assert.deepEqual(
      ordered.map((d) => d.code),
      ['e', 'w', 'n', 'b'],
    );
  });
});

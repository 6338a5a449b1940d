// Formatting a block: what changes, what stays, and that nothing changes its meaning.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { format } from '../../src/language/format.ts';
import { parse } from '../../src/language/parser.ts';
import { meaningOf } from '../support/parsing.ts';
import { blocks, soups } from '../support/sources.ts';

const check = (rows: readonly (readonly [text: string, expected: string])[]) => {
  for (const [text, expected] of rows) {
    it(`${JSON.stringify(text)} becomes ${JSON.stringify(expected)}`, () => {
      assert.equal(format(text), expected);
      assert.equal(format(expected), expected);
    });
  }
};

describe('formatting', () => {
  describe('puts one space where one belongs, and none elsewhere:', () => {
    check([
      ['x=25°C', 'x = 25 °C'],
      ['x = 92.4%', 'x = 92.4 %'],
      ['x = 5\u2009kW', 'x = 5 kW'],
      ['x = 0.004  1/K', 'x = 0.004 1/K'],
      ['x:A=a+b-c*d/e', 'x: A = a + b - c * d / e'],
      ['x : [ ohm ] = [ a,b , c ]', 'x: [ohm] = [a, b, c]'],
      ['x = f (a ,p=3)+g( )', 'x = f(a, p = 3) + g()'],
      ['f ( a:kW,b ) : A = a', 'f(a: kW, b): A = a'],
      ['x = - a * - 5 V', 'x = -a * -5 V'],
      ['x = a ^ - 2+b ² - √ c', 'x = a^-2 + b² - √c'],
      ['x = √ (a)', 'x = √(a)'],
      ['x = K . I_AC3', 'x = K.I_AC3'],
      ['x = a-2026-09-14', 'x = a-2026-09-14'],
      ['x = a  -  2026-09-14', 'x = a - 2026-09-14'],
      ['x = 5 V+/-(1%+2 mV)( k = 2,nu = 4 )', 'x = 5 V +/- (1 % + 2 mV) (k=2, nu=4)'],
      ['x = 5 V within - 4 V to 6 V', 'x = 5 V within -4 V to 6 V'],
      ['x = readings[1 V,2 V]', 'x = readings [1 V, 2 V]'],
      ['x = readings(a)', 'x = readings (a)'],
      ['x = if(a)then(b)else(c)', 'x = if (a) then (b) else (c)'],
      ['x = a<=b<=c and not(d)', 'x = a <= b <= c and not (d)'],
      ['x = 2*pi rad*f', 'x = 2 * pi rad * f'],
      ['x = 5 V/(a + b)', 'x = 5 V / (a + b)'],
      ['curve f(L):V "l" over L from(0 m)to - 5 m', 'curve f(L): V "l" over L from (0 m) to -5 m'],
      ['tabulate f(L) over L from 0 m to 5 m step(1 m)', 'tabulate f(L) over L from 0 m to 5 m step (1 m)'],
    ]);
  });

  describe('brings clauses of consecutive lines, and comments, into columns:', () => {
    check([
      ['P = 18.5 kW from plate "a"\neta=0.9   from plate "b"', 'P = 18.5 kW  from plate "a"\neta = 0.9    from plate "b"'],
      ['a = 1 from plate "x" because "y"', 'a = 1  from plate "x"  because "y"'],
      ['a = 1 from plate "x"\n\nlong_name = 1 from plate "y"', 'a = 1  from plate "x"\n\nlong_name = 1  from plate "y"'],
      ['a = 1 from plate "x"\nb = a\nlong_name = 1 from plate "y"', 'a = 1  from plate "x"\nb = a\nlong_name = 1  from plate "y"'],
      ['a = 1 # one\nlong_name = 2# two', 'a = 1          # one\nlong_name = 2  # two'],
      ['a = 1 from plate "x" # one\nbb = 2 "y"   # two', 'a = 1   from plate "x"  # one\nbb = 2  "y"             # two'],
      [`a = 1 "x"\nb = ${'a + '.repeat(20)}a "y"`, `a = 1  "x"\nb = ${'a + '.repeat(20)}a  "y"`],
      ['η = 1 "x"\nη_n = 1 "x"', 'η = 1    "x"\nη_n = 1  "x"'],
    ]);
  });

  describe('keeps line ends, indentation, comments and blank lines:', () => {
    check([
      ['a=1\r\nb=2\r\n', 'a = 1\r\nb = 2\r\n'],
      ['a=1\rb=2', 'a = 1\rb = 2'],
      ['a = b+\n\t  c   from plate "x"\n\n', 'a = b +\n\t  c  from plate "x"\n\n'],
      ['#  note \n\n  # another', '#  note \n\n  # another'],
      ['a = 1\n   \nb = 2', 'a = 1\n\nb = 2'],
      ['', ''],
      ['\n', '\n'],
      ['x = "a  =  b"  # c  =  d', 'x = "a  =  b"  # c  =  d'],
    ]);
  });

  describe('leaves statements with errors as they are:', () => {
    check([
      ['x = 1,5   kW\ny=2', 'x = 1,5   kW\ny = 2'],
      ['x  = f(1\ny=2', 'x  = f(1\ny = 2'],
      ['x=1\n  y=2   from plate "p"', 'x = 1\n  y=2   from plate "p"'],
      ['  x=1\n  y=2', '  x=1\n  y = 2'],
      ['a+b', 'a+b'],
    ]);
  });

  it('keeps the meaning of well-formed blocks', () => {
    fc.assert(
      fc.property(blocks, (text) => assert.deepEqual(meaningOf(format(text)), meaningOf(text))),
      { numRuns: 500 },
    );
  });

  it('keeps the meaning of any text, comments and line ends too', () => {
    const trivia = (text: string) =>
      parse(text)
        .trivia.filter((t) => t.kind !== 'blank')
        .map((t) => text.slice(t.at.start, t.at.end));
    fc.assert(
      fc.property(fc.oneof(soups, blocks), (text) => {
        const formatted = format(text);
        assert.deepEqual(meaningOf(formatted), meaningOf(text));
        assert.deepEqual(trivia(formatted), trivia(text));
      }),
      { numRuns: 1000 },
    );
  });

  it('is done once', () => {
    fc.assert(
      fc.property(fc.oneof(soups, blocks), (text) => assert.equal(format(format(text)), format(text))),
      { numRuns: 500 },
    );
  });
});

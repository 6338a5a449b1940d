// The digest as a code that a camera reads (QR code, ISO/IEC 18004), as a drawing without a text of its own.
import qrcode from 'qrcode-generator';
import { type ElementNode, element } from '../view/node.ts';

/** Light modules around the code, as the standard asks for. */
const QUIET = 4;

/** The drawing, `size` pixels wide; a reader gets the text back letter by letter. Level M: up to 15 % of it may be unreadable. */
export function digestCode(text: string, size: number): ElementNode {
  const code = qrcode(0, 'M');
  code.addData(text, 'Byte');
  code.make();
  const count = code.getModuleCount();
  const whole = count + 2 * QUIET;
  const rows = Array.from({ length: count }, (_, row) => runs(count, (column) => code.isDark(row, column)).map(strip(row))); // biome-ignore format: one step
  return element(
    'svg',
    { class: 'aw-digestcode', viewBox: `0 0 ${whole} ${whole}`, width: size, height: size, role: 'img', 'aria-label': `Code of ${text}` },
    element('rect', { class: 'aw-code-ground', x: 0, y: 0, width: whole, height: whole }),
    element('path', { class: 'aw-code', d: rows.flat().join('') }),
  );
}

interface Run {
  readonly from: number;
  readonly to: number;
}

/** Dark modules that lie side by side are one strip: no hairlines between them. */
function runs(count: number, isDark: (column: number) => boolean): readonly Run[] {
  const found: Run[] = [];
  for (let column = 0; column < count; column++) {
    if (!isDark(column)) continue;
    const from = column;
    while (column + 1 < count && isDark(column + 1)) column++;
    found.push({ from, to: column + 1 });
  }
  return found;
}

function strip(row: number): (run: Run) => string {
  return ({ from, to }) => `M${from + QUIET} ${row + QUIET}h${to - from}v1h${from - to}z`;
}

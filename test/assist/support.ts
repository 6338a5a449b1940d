// Sheets with a cursor in them, and answers marked under the characters that they are about.
import assert from 'node:assert/strict';
import { block, inFile, type Location, SHEET, type Spot, spotInFile } from '../../src/assist/location.ts';
import { type OpenSheet, openSheet } from '../../src/run/open-sheet.ts';
import { lineMap, positionAt } from '../../src/text/lines.ts';
import { filesOf } from '../support/answers.ts';

/** Invented contactors and wires, a panel standard to use, and a motor list, for the sheets of these tests. */
export const TABLES = `
Table contactors — Contactor range, invented  from datasheet "invented for this test"

| type | I_AC3 / A | U_s / V | f / Hz | S_inrush / VA |
| --- | --: | --: | --: | --: |
| K4 | 31.5 | 110 | 50 | 80 |
| K5 | 40 | 110 | 50 | 160 |
| K6 | 50 | 110 | 50 | 200 |

Table wires — Copper, class 2, at 20 °C  from standard "IEC 60228"

| A / mm² | R / (mohm/m) |
| --: | --: |
| 1.5 | 13.3 |
| 2.5 | 7.98 |
`;

export const FILES: Readonly<Record<string, string>> = {
  'panel-standard.ampwright.md': `# Panel standard, invented\n\n\`\`\`ampwright\nT_panel = 45 degC  from standard "house rule 3, invented"\nmargin(a: A, b: A): % = (b - a) / a\n\`\`\`\n`,
  'motors.csv': 'motor,P_n / kW\nM-12,18.5\nM-20,7.5\n',
};

export interface Opened {
  readonly open: OpenSheet;
  /** Where the cursor stands; of several, in order. */
  readonly spots: readonly Spot[];
  /** The one cursor. */
  readonly spot: Spot;
}

/**
 * Opens a text with cursors: the code of a block, behind `TABLES`, or a whole file where it has a fence. A cursor is `|`; in a whole file
 * one that touches a character, so that no table has any.
 */
export function opened(marked: string): Opened {
  const whole = marked.includes('```');
  const pattern = whole ? /(?<=\S)\|(?!$)|\|(?=[^\s])/gm : /\|/g;
  const file = whole ? marked.replace(/^\n/, '') : `${TABLES}\n\`\`\`ampwright\n${marked}\n\`\`\`\n`;
  const offsets: number[] = [];
  const start = whole ? 0 : TABLES.length + 1;
  const text =
    file.slice(0, start) +
    file.slice(start).replace(pattern, (_, at: number) => {
      offsets.push(start + at - offsets.length);
      return '';
    });
  const open = openSheet(text, filesOf(FILES));
  const spots = offsets.map((offset) => spotInFile(open.loaded.sheet, offset));
  return {
    open,
    spots,
    get spot() {
      assert.equal(spots.length, 1, `one cursor in\n${marked}`);
      return spots[0]!;
    },
  };
}

export interface Marked {
  readonly location: Location;
  readonly label?: string;
}

/** The lines with places of the sheet, each place marked below with its label; other files by name. */
export function underlined(open: OpenSheet, marks: readonly Marked[]): string {
  const { sheet } = open.loaded;
  const map = lineMap(sheet.text);
  const lines = sheet.text.split('\n');
  const placed = marks.map(({ location, label = '' }) => {
    const { text, at } = inFile(sheet, location);
    const name = text.kind === 'file' ? text.path : text.kind === 'library' ? `library ${text.name}` : null;
    return { ...positionAt(map, at.start), width: at.end - at.start, label, name };
  });
  const own = placed.filter(({ name }) => name === null).sort((a, b) => a.line - b.line || a.column - b.column);
  const shown = own.map(({ line, column, width, label }, i) => {
    const mark = `${' '.repeat(column)}${'^'.repeat(Math.max(1, width))}${label === '' ? '' : ` ${label}`}`;
    return own[i - 1]?.line === line ? mark : `${lines[line]}\n${mark}`;
  });
  return [...shown, ...placed.flatMap(({ name, label }) => (name === null ? [] : [`${name}${label === '' ? '' : ` ${label}`}`]))].join(
    '\n',
  );
}

/** Compares lines, without blank ones around them. */
export function same(found: string, expected: string): void {
  const plain = (text: string) => text.replace(/[ \t]+$/gm, '').replace(/^\n+|\n+$/g, '');
  assert.equal(plain(found), plain(expected));
}

export { block, SHEET };

// One style for the editor, the page and print: light, dark, high contrast and forced colours, from 300 pixels up.
import { COLOURS } from './style/colours.ts';
import { DRAWING } from './style/drawing.ts';
import { LEDGER } from './style/ledger.ts';
import { NARROW } from './style/narrow.ts';
import { PARTS } from './style/parts.ts';
import { PLOT } from './style/plot.ts';
import { PRINT } from './style/print.ts';
import { RECORDED } from './style/recorded.ts';

/** The style of all that `ledger` makes. Every class begins with `aw-`, every variable with `--aw-`. */
export const STYLE = [COLOURS, LEDGER, PARTS, DRAWING, PLOT, RECORDED, NARROW, PRINT].join('\n');

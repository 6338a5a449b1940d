// A program that counts the steps of each stage on texts of two lengths: blocks of our code that were run, as V8 counts them.
import { Session } from 'node:inspector/promises';
import { lex } from '../../src/language/lexer.ts';
import { parse } from '../../src/language/parser.ts';
import { checkItems } from '../../src/run/check-items.ts';
import { buildModule } from '../../src/run/module.ts';
import { makeWorld } from '../../src/run/world.ts';
import { readCsvTable } from '../../src/sheet/csv.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { BLOCKS, CSV, SHEETS, type Shapes, TABLES } from './shapes.ts';

const caption = readSheet('Table motors — [Motors](motors.csv) from report "survey"\n').csvTables[0]!;
const CAPTION = 'Table motors — Motors, invented  from plate "x"\n\n';

const STAGES: readonly (readonly [name: string, shapes: Shapes, run: (text: string) => unknown])[] = [
  ['lexer', BLOCKS, lex],
  ['parser', BLOCKS, parse],
  ['checker', BLOCKS, checkBlock],
  ['sheet reader', SHEETS, readSheet],
  ['tables', TABLES, (text) => readSheet(CAPTION + text)],
  ['CSV', CSV, (text) => readCsvTable(text, caption)],
];

function checkBlock(text: string): void {
  const items = buildModule('sheet', '', [{ code: text, ...parse(text) }], []).cells.flat();
  checkItems(makeWorld(), items, () => true);
}

const session = new Session();
session.connect();
await session.post('Profiler.enable');
await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });

/** How often blocks of this program were run meanwhile. */
async function steps(run: () => unknown): Promise<number> {
  await session.post('Profiler.takePreciseCoverage');
  run();
  const { result } = await session.post('Profiler.takePreciseCoverage');
  const own = result.filter(({ url }) => url === import.meta.url);
  return own.flatMap((script) => script.functions.flatMap((f) => f.ranges)).reduce((sum, { count }) => sum + count, 0);
}

const counted = [];
for (const [stage, shapes, run] of STAGES) {
  for (const [shape, text] of Object.entries(shapes)) {
    run(text(10));
    const [short, long] = [text(1000), text(2000)];
    counted.push({ stage, shape, once: await steps(() => run(short)), twice: await steps(() => run(long)) });
  }
}
process.stdout.write(JSON.stringify(counted));

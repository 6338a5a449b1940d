// A program that counts the steps of each stage on texts of two lengths: blocks of our code that were run, as V8 counts them.
import { Session } from 'node:inspector/promises';
import { spotInFile } from '../../src/assist/location.ts';
import { rename } from '../../src/assist/rename.ts';
import { lex } from '../../src/language/lexer.ts';
import { parse } from '../../src/language/parser.ts';
import { auditPage } from '../../src/report/page.ts';
import { checkItems } from '../../src/run/check-items.ts';
import { evaluationOf } from '../../src/run/evaluate.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { buildModule } from '../../src/run/module.ts';
import { type OpenSheet, openSheet } from '../../src/run/open-sheet.ts';
import { makeWorld } from '../../src/run/world.ts';
import { readCsvTable } from '../../src/sheet/csv.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { toView } from '../../src/view/to-view.ts';
import { BLOCKS, CALCULATIONS, CSV, SHEETS, type Shapes, TABLES } from './shapes.ts';

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

/** What is made of a sheet that has been run. */
const ANSWERS: readonly (readonly [name: string, run: (open: OpenSheet) => unknown])[] = [
  ['evaluation', evaluationOf],
  ['view', (open) => toView(evaluationOf(open).result)],
  ['page', (open) => auditPage({ ...evaluationOf(open), version: '1.0.0' })],
  ['rename', renameFirst],
];

/** Gives the first name of the first block another one. */
function renameFirst(open: OpenSheet): void {
  const { sheet } = open.loaded;
  const answer = rename(open, spotInFile(sheet, sheet.text.indexOf('\n', sheet.text.indexOf('```')) + 1), 'renamed');
  if ('refused' in answer) throw new Error(answer.refused);
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
for (const [shape, text] of Object.entries(CALCULATIONS)) {
  const [few, short, long] = [text(100), text(500), text(1000)];
  openSheet(few, NO_FILES);
  counted.push({
    stage: 'run',
    shape,
    once: await steps(() => openSheet(short, NO_FILES)),
    twice: await steps(() => openSheet(long, NO_FILES)),
  });
  const [small, once, twice] = [few, short, long].map((written) => openSheet(written, NO_FILES)) as [OpenSheet, OpenSheet, OpenSheet];
  for (const [stage, run] of ANSWERS) {
    run(small);
    counted.push({ stage, shape, once: await steps(() => run(once)), twice: await steps(() => run(twice)) });
  }
}
process.stdout.write(JSON.stringify(counted));

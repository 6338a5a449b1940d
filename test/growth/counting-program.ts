// A program that counts the steps of each stage on texts of two lengths: blocks of our code that were run, as V8 counts them.
import { Session } from 'node:inspector/promises';
import { spotInFile } from '../../src/assist/location.ts';
import { rename } from '../../src/assist/rename.ts';
import { lex } from '../../src/language/lexer.ts';
import { parse } from '../../src/language/parser.ts';
import { comparisonsMarkdown } from '../../src/report/comparison/markdown.ts';
import { comparisonsPage } from '../../src/report/comparison/page.ts';
import { auditPage } from '../../src/report/page.ts';
import { compareSheets } from '../../src/review/compare.ts';
import { type Comparisons, comparedSheet } from '../../src/review/comparisons.ts';
import { checkItems } from '../../src/run/check-items.ts';
import { evaluateSheet, evaluationOf, type SheetEvaluation } from '../../src/run/evaluate.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { buildModule } from '../../src/run/module.ts';
import { type OpenSheet, openSheet } from '../../src/run/open-sheet.ts';
import { recordedResults } from '../../src/run/record.ts';
import { makeWorld } from '../../src/run/world.ts';
import { readCsvTable } from '../../src/sheet/csv.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { toView } from '../../src/view/to-view.ts';
import { BLOCKS, CALCULATIONS, CSV, PROSE, REVISED, SHEETS, type Shapes, TABLES } from './shapes.ts';

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

/** What a sheet may have become since. */
const withOtherNumbers = (text: string) => text.replaceAll(/(?<![\w.])\d+/g, (number) => `${Number(number) + 1}`);
const CHANGES: Readonly<Record<string, (text: string) => string>> = {
  'with other numbers': withOtherNumbers,
  'with other names': (text) => text.replaceAll(/\b([a-z])_(?=\d)/g, 'other_$1_'),
  'with other words': (text) => text.replaceAll('Starter', 'The motor of starter'),
  'without its first lines': (text) => withoutLines(text, /(?<!\d)1000\d(?!\d)/),
};

function withoutLines(text: string, such: RegExp): string {
  return text
    .split('\n')
    .filter((line) => !such.test(line))
    .join('\n');
}

/** A sheet beside what it was. */
type Sides = readonly [old: SheetEvaluation, now: SheetEvaluation];

const recordedBeside = ([old, { result }]: Sides) => toView(result, { recorded: recordedResults(old) });
const comparison = ([old, now]: Sides) => compareSheets(old, now);
const comparisonsOf = ([old, now]: Sides): Comparisons => ({
  old: 'old',
  new: 'new',
  sheets: [comparedSheet('s.ampwright.md', null, old, now)],
});

const session = new Session();
session.connect();
await session.post('Profiler.enable');
await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });

/** How often blocks of this program were run since this was last asked. */
async function steps(): Promise<number> {
  const { result } = await session.post('Profiler.takePreciseCoverage');
  const own = result.filter(({ url }) => url === import.meta.url);
  return own.flatMap((script) => script.functions.flatMap((f) => f.ranges)).reduce((sum, { count }) => sum + count, 0);
}

const counted: { stage: string; shape: string; once: number; twice: number }[] = [];

/** Counts a stage on what it takes: a little to begin with, so much, and twice as much. */
async function count<T>(stage: string, shape: string, [few, short, long]: Three<T>, run: (of: T) => unknown): Promise<void> {
  run(few);
  await steps();
  run(short);
  const once = await steps();
  run(long);
  counted.push({ stage, shape, once, twice: await steps() });
}

type Three<T> = readonly [few: T, short: T, long: T];
const each = <S, T>([few, short, long]: Three<S>, make: (of: S) => T): Three<T> => [make(few), make(short), make(long)];

for (const [stage, shapes, run] of STAGES)
  for (const [shape, text] of Object.entries(shapes)) await count(stage, shape, each([10, 1000, 2000], text), run);
for (const [shape, text] of Object.entries(CALCULATIONS)) {
  const texts = each([100, 500, 1000], text);
  await count('run', shape, texts, (written) => openSheet(written, NO_FILES));
  const opened = each(texts, (written) => openSheet(written, NO_FILES));
  for (const [stage, run] of ANSWERS) await count(stage, shape, opened, run);
}
for (const [shape, text] of Object.entries({ ...CALCULATIONS, ...REVISED })) {
  const before = each([100, 500, 1000], (n) => ({ written: text(n), evaluation: evaluateSheet(text(n)) }));
  for (const [change, changed] of Object.entries(CHANGES)) {
    if (changed(before[2].written) === before[2].written) continue;
    const sides = each(before, ({ written, evaluation }): Sides => [evaluation, evaluateSheet(changed(written))]);
    const what = `${shape}, ${change}`;
    await count('comparison', what, sides, comparison);
    if (changed !== withOtherNumbers) continue;
    await count('recorded results beside', what, sides, recordedBeside);
    const comparisons = each(sides, comparisonsOf);
    await count('comparison as a page', what, comparisons, comparisonsPage);
    await count('comparison as a comment', what, comparisons, (of) => comparisonsMarkdown(of));
  }
}
// Differences in words take the square of their number, up to a thousand of them; beyond that the length of the text counts alone.
for (const [shape, text] of Object.entries(PROSE)) {
  const sides = each([10, 6000, 12_000], (n): Sides => [evaluateSheet(text(n)), evaluateSheet(withoutLines(text(n), /[05](?!\d)/))]);
  await count('comparison', `${shape}, without each fifth line`, sides, comparison);
}
process.stdout.write(JSON.stringify(counted));

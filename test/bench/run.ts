// The bench: every figure as a ratio within this one run, as a Markdown table. `npm run bench -- NAME…` takes some groups, `--write` puts the
// table into MEASUREMENTS.md.
import { readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { batchBench } from './batch.ts';
import { columnBench } from './columns.ts';
import { exportBench } from './export.ts';
import { formulaBench } from './formula.ts';
import { reviewBench } from './review.ts';
import { type BenchRow, HEAD, tableLine } from './row.ts';
import { sheetBench } from './sheets.ts';
import { sizeBench } from './size.ts';
import { verifyBench } from './verify.ts';

const DOCUMENT = 'MEASUREMENTS.md';
const [BEGIN, END] = ['<!-- bench -->', '<!-- end bench -->'];

/** In the order of the table, each with how it is measured. */
const GROUPS: Readonly<Record<string, readonly [how: string, bench: () => readonly BenchRow[] | Promise<readonly BenchRow[]>]>> = {
  size: ['bytes on disk, minified', sizeBench],
  formula: ['processor time, median of 25 rounds in turns', formulaBench],
  sheets: ['processor time, median of 3 to 15 rounds', sheetBench],
  review: ['processor time, median of 3 to 7 rounds', reviewBench],
  columns: ['processor time, median of 9 rounds in turns', columnBench],
  verify: ['clock, median of 3 runs of the program', verifyBench],
  batch: ['clock, one run; heap after collection', batchBench],
  export: ['page: processor time; PDF: clock; median of 1 to 5', exportBench],
};

const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const unknown = asked.find((name) => !Object.hasOwn(GROUPS, name));
if (unknown !== undefined) throw new Error(`there is no group ${unknown}; the groups are ${Object.keys(GROUPS).join(', ')}`);
const write = process.argv.includes('--write');
if (write && asked.length > 0) throw new Error('the document takes the whole table: --write goes without groups');

const lines: string[] = [];
const say = (line: string): void => {
  lines.push(line);
  console.log(line);
};

const day = new Date().toISOString().slice(0, 10);
say(`${day}, Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'processor'}\n`);
for (const line of HEAD) say(line);
for (const [name, [how, bench]] of Object.entries(GROUPS)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  for (const row of await bench()) say(tableLine(row, how));
}
if (write) {
  const text = readFileSync(DOCUMENT, 'utf8');
  const [before, behind] = [text.split(BEGIN)[0]!, text.split(END)[1]!];
  writeFileSync(DOCUMENT, `${before}${BEGIN}\n\n${lines.join('\n')}\n\n${END}${behind}`);
}

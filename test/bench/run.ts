// The bench: every figure as a ratio within this one run, printed as a table.
import { cpus } from 'node:os';
import { batchBench } from './batch.ts';
import { columnBench } from './columns.ts';
import { exportBench } from './export.ts';
import { formulaBench } from './formula.ts';
import { reviewBench } from './review.ts';
import type { BenchRow } from './row.ts';
import { sheetBench } from './sheets.ts';
import { sizeBench } from './size.ts';
import { verifyBench } from './verify.ts';

const rows: BenchRow[] = [
  ...sizeBench(),
  ...formulaBench(),
  ...sheetBench(),
  ...reviewBench(),
  ...columnBench(),
  ...verifyBench(),
  ...(await batchBench()),
  ...(await exportBench()),
];
console.log(`Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'processor'}\n`);
console.log('| what | aim | found | |');
console.log('| --- | --- | --- | --- |');
for (const row of rows) console.log(`| ${row.what} | ${row.aim} | ${row.found} | ${row.holds ? '' : 'missed'} |`);

// `ampwright batch SHEET --rows FILE.csv`: the sheet once for each row, whose columns replace inputs of the same name.
import { createReadStream, type ReadStream, statSync } from 'node:fs';
import { csvRows, NotCsv } from '../../node/csv-rows.ts';
import { writeAtomically } from '../../node/write-atomically.ts';
import { readyForRows } from '../batch-heads.ts';
import { type BatchCount, badRowPrinter, calculatedRows, printEnd } from '../batch-rows.ts';
import type { Context, Declare } from '../command.ts';
import { loadSheet } from '../load.ts';
import { progress } from '../progress.ts';
import { isSameFile } from '../same-file.ts';

interface Options {
  readonly rows: string;
  readonly out: string;
}

export const batch: Declare = (program, context) => {
  program
    .command('batch')
    .summary('run a sheet once for each row of a CSV file')
    .description(
      'Runs the sheet once for each row. A column replaces the input of its name, `±` included; its head gives the unit, as in `P_n / kW`. ' +
        'Other columns are carried along. Each row gets the calculated entries, U_of_… where they are uncertain, the status of every ' +
        'requirement, and what is wrong with the row. One row in, one row out, in order, however long the file. ' +
        'Exit code 0 where every row holds, 1 where a `shall` fails or is undecided, 2 where a row has an error.',
    )
    .argument('<SHEET>', 'a *.ampwright.md file')
    .requiredOption('--rows <FILE>', 'a CSV file with heads in its first line; - is standard input')
    .option('--out <FILE>', 'the CSV file to write; - is standard output', '-')
    .action((path: string, options: Options) => runBatch(path, options, context));
};

async function runBatch(path: string, { rows: from, out: to }: Options, { terminal: { out, err }, end }: Context): Promise<void> {
  const fail = (because: string) => {
    err.line(`${err.paint('red', 'error:')} ${because}`);
    end(2);
  };
  const sheet = loadSheet(path);
  if (to !== '-' && isSameFile(path, to)) return fail(`${to} was not written: it is the sheet itself`);
  if (to !== '-' && isSameFile(from, to)) return fail(`${to} was not written: it is the file of the rows`);
  const name = from === '-' ? 'standard input' : from;
  const file = from === '-' ? null : statSync(from);
  if (file?.isDirectory()) return fail(`${from}: it is a folder; name a file in it`);
  const input = from === '-' ? process.stdin : createReadStream(from);
  const interrupt = () => input.destroy(new NotCsv('interrupted'));
  process.once('SIGINT', interrupt);
  const line = progress(err, file?.size ?? null, 'rows');
  try {
    const rows = await csvRows(input);
    const ready = readyForRows(sheet, rows.heads, name, err);
    if (ready === null) return end(2);
    const count: BatchCount = { rows: 0, errors: 0, fail: 0, undecided: 0 };
    const pieces = calculatedRows(rows, ready, count, badRowPrinter(name, err, line));
    const watched = onEach(pieces, () => line.at((input as ReadStream).bytesRead ?? 0, count.rows));
    if (to === '-') await out.writeAll(watched);
    else {
      const outcome = await writeAtomically(to, watched);
      if (outcome.kind === 'refused') return fail(`${to} was not written: ${outcome.because}`);
    }
    line.end();
    printEnd(count, err);
    end(count.errors > 0 ? 2 : count.fail + count.undecided > 0 ? 1 : 0);
  } catch (error) {
    if (!(error instanceof NotCsv)) throw error;
    line.end();
    fail(`${name}: ${error.message}${to === '-' ? '' : `; ${to} was not written`}`);
  } finally {
    line.end();
    process.off('SIGINT', interrupt);
    input.destroy();
  }
}

async function* onEach<T>(items: AsyncIterable<T>, look: () => void): AsyncGenerator<T, void> {
  for await (const item of items) {
    look();
    yield item;
  }
}

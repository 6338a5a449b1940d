// A sheet of 20 formulas for 100,000 rows: evaluations a second, the same formulas in mathjs, what is retained.
import { all, create } from 'mathjs';
import { calculatedRows } from '../../src/cli/batch-rows.ts';
import { csvRows } from '../../src/node/csv-rows.ts';
import { openBatch } from '../../src/run/batch.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { openSheet } from '../../src/run/open-sheet.ts';
import type { BenchRow } from './row.ts';

const math = create(all!, {});
const ROWS = 100_000;
const MATHJS_ROWS = 1000;

/** A starter with its control run; the same text for both, without declared units for mathjs. */
const FORMULAS = `
P_in: kW = P_n / eta
I_n: A = P_n / (sqrt(3) * U_n * eta * pf)
S_n: kVA = sqrt(3) * U_n * I_n
Q_n: kvar = sqrt(S_n^2 - P_in^2)
P_loss: kW = P_in - P_n
M_n: N·m = P_n / (2 * pi rad * n_n)
slip: % = (25 1/s - n_n / 1 rev) / 25 1/s
I_lr: A = 7.2 * I_n
S_lr: kVA = sqrt(3) * U_n * I_lr
I_set: A = 1.05 * I_n
I_AC3_min: A = 1.1 * I_n
R_20: ohm = 18.1 ohm/km * L
R_hot: ohm = R_20 * (1 + 0.00393 1/K * 30 K)
dU: V = sqrt(3) * I_n * R_hot * pf
du: % = dU / U_n
P_cable: W = 3 * I_n^2 * R_hot
Z_coil: ohm = (110 V)^2 / 160 VA
R_coil: ohm = 0.75 * Z_coil
X_coil: ohm = sqrt(Z_coil^2 - R_coil^2)
U_coil: V = 110 V * Z_coil / sqrt((R_coil + 2 * R_hot)^2 + X_coil^2)`.trim();

const INPUTS = ['P_n = 18.5 kW', 'U_n = 400 V', 'eta = 92.4 %', 'pf = 0.84', 'n_n = 1475 rpm', 'L = 60 m'];
const HEADS = 'P_n / kW,U_n / V,eta / %,pf / 1,n_n / rpm,L / m';

export async function batchBench(): Promise<BenchRow[]> {
  const before = retained();
  const start = process.hrtime.bigint();
  const grown = await runAll();
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  const each = (ROWS * FORMULAS.split('\n').length) / seconds;
  const mathjs = inMathjs();
  const growth = (grown - before) / 1e6;
  return [
    {
      what: `batch: ${ROWS.toLocaleString('en')} rows of 20 formulas, read to written`,
      aim: '2 million formulas a second',
      found: `${(each / 1e6).toFixed(2)} million (${seconds.toFixed(1)} s)`,
      holds: each >= 2e6,
    },
    {
      what: 'batch against the same formulas in mathjs on 1,000 rows',
      aim: 'faster',
      found: `${(each / mathjs).toFixed(0)} times faster`,
      holds: each > mathjs,
    },
    { what: 'batch: memory retained after all rows', aim: 'under 20 MB more', found: `${growth.toFixed(1)} MB`, holds: growth < 20 },
  ];
}

/** Runs all rows as the command does and throws the output away. The heap behind the last row, in bytes. */
async function runAll(): Promise<number> {
  const text = `\`\`\`ampwright\n${[...INPUTS, FORMULAS].join('\n')}\n\`\`\`\n`;
  const rows = await csvRows(generated());
  const { heads } = rows;
  const { batch } = openBatch(
    openSheet(text, NO_FILES),
    heads.map((head) => ({ text: head, at: { start: 0, end: 0 } })),
  );
  const count = { rows: 0, errors: 0, fail: 0, undecided: 0 };
  let written = 0;
  for await (const piece of calculatedRows(rows, batch!, count, () => {})) written += piece.length;
  if (count.rows !== ROWS || count.errors > 0 || written < ROWS) throw new Error('the rows were not calculated');
  return retained();
}

async function* generated(): AsyncGenerator<Uint8Array> {
  const encoder = new TextEncoder();
  yield encoder.encode(`${HEADS}\n`);
  for (let row = 0; row < ROWS; row += 1000) {
    const lines = Array.from({ length: 1000 }, (_, i) => line(row + i));
    yield encoder.encode(`${lines.join('\n')}\n`);
  }
}

function line(row: number): string {
  return `${1 + (row % 90) / 2},${380 + (row % 40)},${90 + (row % 6)},${0.8 + (row % 10) / 100},${1440 + (row % 50)},${10 + (row % 200)}`;
}

/** Formulas a second, compiled once, with units. */
function inMathjs(): number {
  const formulas = FORMULAS.split('\n').map((f) => {
    const plain = f
      .replace(/: [^=]+=/, ' =')
      .replaceAll('pi rad', 'pi')
      .replaceAll(' rev', '')
      .replaceAll('1/s', 's^-1')
      .replaceAll('1/K', 'K^-1');
    return math.compile(plain.replaceAll('Ω', 'ohm'));
  });
  const start = process.hrtime.bigint();
  for (let row = 0; row < MATHJS_ROWS; row++) {
    const scope = {
      P_n: math.unit(18.5 + row / 100, 'kW'),
      U_n: math.unit(400, 'V'),
      eta: 0.924,
      pf: 0.84,
      n_n: math.unit(1475 / 60, 's^-1'),
      L: math.unit(60, 'm'),
    };
    for (const formula of formulas) formula.evaluate(scope);
  }
  return (MATHJS_ROWS * formulas.length) / (Number(process.hrtime.bigint() - start) / 1e9);
}

function retained(): number {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed;
}

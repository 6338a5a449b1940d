// Whole sheets: reading, checking, compiling and evaluating against mathjs; growth; an edit against a cold run.
import { all, create } from 'mathjs';
import { editCell } from '../../src/run/edit-cell.ts';
import { editSheet } from '../../src/run/edit-sheet.ts';
import { evaluateSheet, resultOf } from '../../src/run/evaluate.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { openSheet } from '../../src/run/open-sheet.ts';
import { compareTimes, onceTime } from './measure.ts';
import type { BenchRow } from './row.ts';

const math = create(all!, {});

/** A sheet of `count` statements, ten a block: inputs, and formulas that read those above. */
export function makeSheet(count: number): string {
  const blocks: string[] = [];
  for (let from = 0; from < count; from += 10)
    blocks.push(`## Block ${from / 10}\n\n\`\`\`ampwright\n${statements(from, Math.min(10, count - from)).join('\n')}\n\`\`\`\n`);
  return blocks.join('\n');
}

function statements(from: number, count: number): string[] {
  return Array.from({ length: count }, (_, i) => {
    const n = from + i;
    if (i % 5 === 0) return `U_${n} = ${380 + (n % 40)} V from plate "invented"`;
    if (i % 5 === 1) return `I_${n} = ${10 + (n % 90)} A from measurement "invented"`;
    if (i % 5 === 2) return `S_${n}: kVA = sqrt(3) * U_${n - 2} * I_${n - 1}`;
    if (i % 5 === 3) return `P_${n}: kW = 0.84 * sqrt(3) * U_${n - 3} * I_${n - 2}`;
    return `R_${n}: ohm = U_${n - 4} / I_${n - 3} + 0.1 ohm`;
  });
}

/** The same statements for mathjs, which has no sources and says the unit of a result behind it. */
function mathStatements(count: number): string[] {
  return statements(0, count).map((line) => line.replace(/ from .*/, '').replace(/: (\w+) = (.*)/, ' = ($2) to $1'));
}

export function sheetBench(): BenchRow[] {
  const text = makeSheet(1000);
  const lines = mathStatements(1000);
  const t = compareTimes(
    {
      sheet: () => evaluateSheet(text).result,
      mathjs: () => {
        const scope = {};
        return lines.map((line) => math.format(math.evaluate(line, scope), 4));
      },
    },
    7,
    200,
  );
  const ratio = t['mathjs']! / t['sheet']!;
  const [small, large] = [makeSheet(1000), makeSheet(100_000)].map((s) => onceTime(() => evaluateSheet(s).result, 3)) as [number, number];
  const growth = large / small / 100;
  return [
    {
      what: 'a sheet of 1,000 statements, text to texts of the results, against the statements alone in mathjs',
      aim: '10 times faster',
      found: `${ratio.toFixed(1)} times faster (${(t['sheet']! / 1e6).toFixed(1)} ms)`,
      holds: ratio >= 10,
    },
    {
      what: 'growth from 1,000 to 100,000 statements (1 is linear)',
      aim: 'at most 1.5',
      found: `${growth.toFixed(2)} (${small.toFixed(0)} ms, ${large.toFixed(0)} ms)`,
      holds: growth <= 1.5,
    },
    editRow(),
    tableRow(),
  ];
}

/** Changes one input that one formula of its block reads alone. */
function editRow(): BenchRow {
  const text = makeSheet(10_000);
  const cold = onceTime(() => resultOf(openSheet(text, NO_FILES)), 5);
  const open = openSheet(text, NO_FILES);
  const original = open.cells[500]!.code;
  let turn = 0;
  const edit =
    compareTimes({ edit: () => editCell(open, 500, original.replace(/^(U_\d+ = )\d+/, `$1${300 + (turn++ % 100)}`)) }, 15, 50)['edit']! /
    1e6;
  const ratio = cold / edit;
  return {
    what: 'an edit of one input in a sheet of 10,000 statements against its cold run',
    aim: '1/200',
    found: `1/${ratio.toFixed(0)} (${edit.toFixed(2)} ms, ${cold.toFixed(0)} ms)`,
    holds: ratio >= 200,
  };
}

/** Changes one cell of a table that one formula reads: the whole file is read again, and that formula evaluated. */
function tableRow(): BenchRow {
  const rows = Array.from({ length: 200 }, (_, i) => `| M${i} | ${1 + (i % 90) / 2} |`).join('\n');
  const table = `Table motors — invented  from assumption "bench"\n\n| tag | P / kW |\n| --- | --: |\n${rows}\n`;
  const text = `${table}\n${makeSheet(10_000)}\n\`\`\`ampwright\nP_all: kW = sum(motors.P)\n\`\`\`\n`;
  const cold = onceTime(() => resultOf(openSheet(text, NO_FILES)), 5);
  const open = openSheet(text, NO_FILES);
  let turn = 0;
  const edit =
    compareTimes({ edit: () => editSheet(open, text.replace('| M7 | 4.5 |', `| M7 | ${turn++ % 100} |`)) }, 15, 50)['edit']! / 1e6;
  const ratio = cold / edit;
  return {
    what: 'an edit of one cell of a table that one formula reads, in a sheet of 10,000 statements, against its cold run',
    aim: '1/10',
    found: `1/${ratio.toFixed(0)} (${edit.toFixed(2)} ms, ${cold.toFixed(0)} ms)`,
    holds: ratio >= 10,
  };
}

// A computed column over 100,000 rows against a plain loop over the same numbers.
import { evaluateRaw, newRun } from '../../src/run/evaluate-item.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { openSheet } from '../../src/run/open-sheet.ts';
import { compareTimes } from './measure.ts';
import type { BenchRow } from './row.ts';

const ROWS = 100_000;

export function columnBench(): BenchRow[] {
  const numbers = Array.from({ length: ROWS }, (_, i) => ({ P: 1 + (i % 90) / 2, U: 380 + (i % 40), eta: 0.9 + (i % 6) / 100, pf: 0.84 }));
  const table = numbers.map(({ P, U, eta, pf }) => `| ${P} | ${U} | ${eta} | ${pf} |`).join('\n');
  const code = 'motors.I: A = P_n / (sqrt(3) * U_n * eta * pf)';
  const text = `Table motors — invented  from assumption "bench"\n\n| P_n / kW | U_n / V | eta / 1 | pf / 1 |\n| --: | --: | --: | --: |\n${table}\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`;
  const item = openSheet(text, NO_FILES).cells[0]!.items[0]!;
  const plain = () => {
    const cells = new Array<number>(ROWS);
    for (let i = 0; i < ROWS; i++) {
      const { P, U, eta, pf } = numbers[i]!;
      cells[i] = (1000 * P) / (Math.sqrt(3) * U * eta * pf);
    }
    return cells;
  };
  const first = evaluateRaw(item, newRun(item, false)) as readonly number[];
  if (plain().some((value, i) => Math.abs(first[i]! - value) > 1e-12 * value)) throw new Error('the column has other values');
  const t = compareTimes({ column: () => evaluateRaw(item, newRun(item, false)), plain }, 9, 60);
  const ratio = t['column']! / t['plain']!;
  return [
    {
      what: 'a computed column over 100,000 rows against a plain loop',
      aim: 'within 5 times',
      found: `${ratio.toFixed(1)} times (${(t['column']! / 1e6).toFixed(1)} ms)`,
      holds: ratio <= 5,
    },
  ];
}

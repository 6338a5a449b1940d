// The full-load-current formula: compiled here, in mathjs with units, and as plain JavaScript.
import { all, create } from 'mathjs';
import { evaluateRaw, frameOf, newRun } from '../../src/run/evaluate-item.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { openSheet } from '../../src/run/open-sheet.ts';
import { compareTimes } from './measure.ts';
import type { BenchRow } from './row.ts';

const math = create(all!, {});

export function formulaBench(): BenchRow[] {
  const exact = entryRunner('400 V');
  const uncertain = entryRunner('400 V ± 2 %', '92.4 % ± 0.5 %');
  const withUnits = math.compile('P / (sqrt(3) * U * eta * pf)');
  const scope = { P: math.unit(18.5, 'kW'), U: math.unit(400, 'V'), eta: 0.924, pf: 0.84 };
  const values = [18500, 400, 0.924, 0.84];
  const plain = () => values[0]! / (Math.sqrt(3) * values[1]! * values[2]! * values[3]!);
  const t = compareTimes({ exact, uncertain, mathjs: () => withUnits.evaluate(scope), plain });
  return [
    {
      what: 'full-load current against mathjs with units',
      aim: '200 times faster',
      found: `${(t['mathjs']! / t['exact']!).toFixed(0)} times faster`,
      holds: t['mathjs']! / t['exact']! >= 200,
    },
    {
      what: 'the same against plain JavaScript',
      aim: 'within 3 times',
      found: `${(t['exact']! / t['plain']!).toFixed(1)} times`,
      holds: t['exact']! / t['plain']! <= 3,
    },
    {
      what: 'with two uncertain inputs against mathjs with units',
      aim: '50 times faster',
      found: `${(t['mathjs']! / t['uncertain']!).toFixed(0)} times faster`,
      holds: t['mathjs']! / t['uncertain']! >= 50,
    },
  ];
}

/** Evaluates the entry again and again in one frame, as a run does. */
function entryRunner(U: string, eta = '92.4 %'): () => unknown {
  const code = `P = 18.5 kW\nU = ${U}\neta = ${eta}\npf = 0.84\nI: A = P / (sqrt(3) * U * eta * pf)`;
  const open = openSheet(`\`\`\`ampwright\n${code}\n\`\`\`\n`, NO_FILES);
  const item = open.cells[0]!.items[4]!;
  const frame = frameOf(newRun(item, false));
  evaluateRaw(item, frame.run);
  const evaluate = item.evaluate!;
  return () => evaluate(frame);
}

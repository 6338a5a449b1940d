// Review: comparing two sheets, as a part of evaluating them; growth.
import { compareSheets } from '../../src/review/compare.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { compareTimes, onceTime } from './measure.ts';
import type { BenchRow } from './row.ts';
import { makeSheet } from './sheets.ts';

export function reviewBench(): BenchRow[] {
  const pair = (count: number) => [makeSheet(count), makeSheet(count).replaceAll('380 V', '381 V').replaceAll('U_', 'V_')] as const;
  const texts = pair(1000);
  const [old, now] = texts.map((text) => evaluateSheet(text)) as [ReturnType<typeof evaluateSheet>, ReturnType<typeof evaluateSheet>];
  const t = compareTimes({ compare: () => compareSheets(old, now), evaluate: () => texts.map((text) => evaluateSheet(text)) }, 7, 200);
  const part = t['compare']! / t['evaluate']!;
  const large = pair(10_000).map((text) => evaluateSheet(text)) as [typeof old, typeof now];
  const growth = onceTime(() => compareSheets(...large), 3) / onceTime(() => compareSheets(old, now), 3) / 10;
  return [
    {
      what: 'comparing two sheets of 1,000 statements, values and names changed, against evaluating both',
      aim: '≤ 1',
      found: part.toFixed(2),
      holds: part <= 1,
    },
    { what: 'comparing sheets ten times as long, for each statement', aim: '≤ 2', found: growth.toFixed(2), holds: growth <= 2 },
  ];
}

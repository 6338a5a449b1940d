// Exports: page and PDF of the largest sample against its evaluation, and how both grow up to 300 pages.
import { readFileSync } from 'node:fs';
import { pdfOf } from '../../src/node/pdf.ts';
import { auditPage } from '../../src/report/page.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { median, onceTime } from './measure.ts';
import type { BenchRow } from './row.ts';
import { makeSheet } from './sheets.ts';

/** The largest of the samples. */
const SAMPLE = 'samples/starter-sizing.ampwright.md';
/** Statements that fill about 30 and 300 pages. */
const SMALL = 560;
const LARGE = 5600;

export async function exportBench(): Promise<BenchRow[]> {
  const text = readFileSync(SAMPLE, 'utf8');
  const sample = inputOf(text);
  const evaluation = onceTime(() => evaluateSheet(text), 5);
  const page = onceTime(() => auditPage(sample), 5);
  const pdf = await pdfTime(sample, 5);
  const [few, many] = [inputOf(makeSheet(SMALL)), inputOf(makeSheet(LARGE))];
  const pageGrowth = onceTime(() => auditPage(many), 3) / onceTime(() => auditPage(few), 3);
  const [small, large] = [await pdfTime(few, 3), await pdfTime(many, 1)];
  const growth = (large.time / small.time) * (small.pages / large.pages);
  return [
    row('page of the largest sample, against its evaluation', page / evaluation, 8),
    row(`PDF of the largest sample (${pdf.pages} pages), against its page`, pdf.time / page, 15),
    row('page of a sheet of 300 printed pages, against ten times one of 30', pageGrowth / (LARGE / SMALL), 1.5),
    row(`PDF of ${large.pages} pages, a page against one of ${small.pages}`, growth, 1.5),
  ];
}

function inputOf(text: string) {
  return { ...evaluateSheet(text), version: '1.0.0' };
}

async function pdfTime(input: ReturnType<typeof inputOf>, times: number): Promise<{ time: number; pages: number }> {
  const found: number[] = [];
  let pages = 0;
  for (let i = 0; i < times; i++) {
    const start = process.hrtime.bigint();
    const outcome = await pdfOf(input, 'a4');
    found.push(Number(process.hrtime.bigint() - start) / 1e6);
    if (outcome.kind === 'refused') throw new Error(outcome.because);
    pages = Number(/\/Type ?\/Pages[^>]*\/Count (\d+)/.exec(Buffer.from(outcome.bytes).toString('latin1'))?.[1] ?? 0);
  }
  return { time: median(found), pages };
}

function row(what: string, ratio: number, most: number): BenchRow {
  return { what, aim: `at most ${most} times`, found: `${ratio.toFixed(2)} times`, holds: ratio <= most };
}

// A sheet made into a PDF and read again.
import assert from 'node:assert/strict';
import { workspaceFiles } from '../../src/node/files.ts';
import { pdfOf } from '../../src/node/pdf.ts';
import type { ReportInput } from '../../src/report/input.ts';
import type { Paper } from '../../src/report/typeset/document.ts';
import { evaluationOf } from '../../src/run/evaluate.ts';
import { openSheet } from '../../src/run/open-sheet.ts';
import { type ReadPdf, readPdf } from './pdf-reader.ts';

/** Where the files are looked for that a sheet uses. */
const PLACE = new URL('../../samples/starter-sizing.ampwright.md', import.meta.url).pathname;

export interface Made {
  readonly bytes: Uint8Array;
  readonly unshown: readonly string[];
  readonly pdf: ReadPdf;
}

export async function made(text: string, { paper = 'a4' as Paper, ...more }: Partial<ReportInput> & { paper?: Paper } = {}): Promise<Made> {
  const outcome = await pdfOf({ ...evaluationOf(openSheet(text, workspaceFiles(PLACE))), version: '1.2.3', ...more }, paper);
  if (outcome.kind === 'refused') assert.fail(outcome.because);
  return { ...outcome, pdf: await readPdf(outcome.bytes) };
}

export const wordsOf = ({ pdf }: Made) => pdf.pages.map((page) => page.text).join(' ');

export function sheet(code: string, { front = 'title: Trial\n', prose = '' } = {}): string {
  return `---\nampwright: 1\n${front}---\n\n${prose}\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`;
}

// The first page of the reference: every library sheet with its functions, each in a line.
import { escapeText, toHtml } from '../../view/node.ts';
import { cautions } from '../fixed-words.ts';
import type { ReferencePage } from './frame.ts';
import { type EvaluatedLibrarySheet, functionIndex } from './library-page.ts';

export function indexPage(sheets: readonly EvaluatedLibrarySheet[]): ReferencePage {
  const functions = sheets.reduce((sum, s) => sum + s.functions.length, 0);
  const tables = sheets.reduce((sum, s) => sum + s.evaluation.tables.length, 0);
  const parts = sheets.map((sheet) => `<h2><a href="${sheet.file}">${escapeText(sheet.title)}</a></h2>\n${functionIndex(sheet)}`);
  return {
    file: 'index.html',
    title: 'Ampwright reference',
    part: null,
    body: `<p>The trade library: ${functions} functions and ${tables} tables in ${sheets.length} sheets, written in the notation itself. Each function stands
with its formula, its limits, its source and an example whose result was calculated when this page was made. The sheets check themselves
against published values; the checks stand on their pages with the publication beside them. What was not seen in print says
<em>memory</em>; what is a habit of the trade says <em>practice</em>. A value of a code names its edition: which edition is in force where the
machine stands is yours to settle.</p>
${parts.join('\n')}
<h2>Cautions</h2>
<div class="aw-words">${toHtml(cautions())}</div>`,
  };
}

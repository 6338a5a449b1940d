// A sheet as text for others, by the ending of the file: the page for an audit, or its results for another program.
import type { ReportInput } from './input.ts';

export type TextExport = 'html' | 'csv' | 'json';

/** The text of the file; `path` is the sheet's, as the export names it. */
export async function textExport(ending: TextExport, input: ReportInput, path: string): Promise<string> {
  switch (ending) {
    case 'html':
      return (await import('./page.ts')).auditPage(input);
    case 'csv':
      return (await import('./csv.ts')).sheetCsv(input);
    case 'json':
      return (await import('./json.ts')).evaluationJson(path, input);
    default:
      return ending satisfies never;
  }
}

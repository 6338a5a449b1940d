// `ampwright evaluate SHEET`: every entry, requirement and problem of a sheet.
import { evaluationJson } from '../../report/json.ts';
import { toView } from '../../view/to-view.ts';
import type { Declare } from '../command.ts';
import { printListing } from '../listing.ts';
import { loadSheet, report } from '../load.ts';

export const evaluate: Declare = (program, { terminal, end }) => {
  program
    .command('evaluate')
    .summary('print every entry, requirement and problem of a sheet')
    .description('Prints every entry, requirement and problem of a sheet. Nothing is written. Exit code 2 where the sheet has errors.')
    .argument('<SHEET>', 'a *.ampwright.md file')
    .option('--json', 'as JSON: values unrounded, in their units')
    .action((path: string, { json = false }: { json?: boolean }) => {
      const sheet = loadSheet(path);
      if (json) terminal.out.write(evaluationJson(path, sheet.evaluation));
      else {
        printListing(sheet.evaluation.sheet, toView(sheet.evaluation.result), terminal.out);
        report(sheet.diagnostics, terminal.err);
      }
      end(sheet.failed ? 2 : 0);
    });
};

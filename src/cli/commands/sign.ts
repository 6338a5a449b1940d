// `ampwright sign SHEET --role ROLE --name NAME`: adds a signature that covers the sheet as it stands, or renews the one that is there.
import { InvalidArgumentError, Option } from 'commander';
import { writeAtomically } from '../../node/write-atomically.ts';
import { summaryLine } from '../../report/summary.ts';
import { signatures } from '../../review/checks/signatures.ts';
import { signed } from '../../review/sign.ts';
import { encodeSheet } from '../../sheet/decode.ts';
import { dateText } from '../../text/date.ts';
import { toView } from '../../view/to-view.ts';
import { visible } from '../columns.ts';
import type { Context, Declare } from '../command.ts';
import { parseDay, today } from '../day.ts';
import { loadSheet, report } from '../load.ts';
import { VERSION } from '../version.ts';

interface Options {
  readonly role: string;
  readonly name: string;
  readonly on: number;
}

export const sign: Declare = (program, context) => {
  program
    .command('sign')
    .summary('add a signature that covers the sheet as it stands, or renew it')
    .description(
      'Adds a signature to the front matter: who looked at the sheet, in which role, on which day. It covers the text, the recorded ' +
        'results and every file that the sheet uses; once one of them is changed, `verify` finds it out of date. The same role and name ' +
        'again renews it. A sheet with errors is not signed, nor one whose results are not recorded as they come out. ' +
        'A signature is a record of who looked at what, kept honest by version control. It is no electronic signature in law and no ' +
        'professional engineer’s seal.',
    )
    .argument('<SHEET>', 'a *.ampwright.md file')
    .requiredOption('--role <ROLE>', 'what the signature stands for, such as prepared, checked or approved', filled)
    .requiredOption('--name <NAME>', 'who signs', filled)
    .addOption(new Option('--on <DATE>', 'the day of the signature').argParser(parseDay).default(today(), 'today'))
    .action((path: string, options: Options) => signOne(path, options, context));
};

async function signOne(path: string, { role, name, on }: Options, { terminal: { out, err }, end }: Context): Promise<void> {
  const sheet = loadSheet(path);
  report(
    sheet.diagnostics.filter((d) => d.severity === 'error'),
    err,
  );
  const refuse = (because: string) => {
    err.line(`${err.paint('red', 'error:')} ${path} was not signed: ${because}`);
    end(2);
  };
  const done = signed(sheet.evaluation, { role, name, date: dateText(on), version: VERSION });
  if ('refused' in done) return refuse(done.refused);
  const outcome = await writeAtomically(path, encodeSheet(done.text), sheet.bytes);
  if (outcome.kind === 'refused') return refuse(outcome.because);
  out.line(`${outcome.kind === 'written' ? 'signed' : 'unchanged'} ${path}, ${visible(role)}: ${visible(name)}, ${dateText(on)}`);
  out.line(`it covers ${done.evaluation.digest}: ${summaryLine(toView(done.evaluation.result))}`);
  const found = signatures({ evaluation: done.evaluation, version: VERSION, on, require: [] });
  for (const { message, code } of found)
    err.line(`${err.paint('yellow', 'warning:')} ${visible(message)} ${err.paint('dim', `(${code})`)}`);
}

function filled(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  if (line === '') throw new InvalidArgumentError('It is empty.');
  return line;
}

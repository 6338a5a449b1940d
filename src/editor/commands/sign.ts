// Signs the sheet in front: its results are recorded, and an entry in the front matter says who looked at exactly that.
import * as vscode from 'vscode';
import { sheetStatus } from '../../assist/block-status.ts';
import type { SheetEvaluation } from '../../run/evaluate.ts';
import { recordSheet } from '../../run/record.ts';
import { encodeSheet } from '../../sheet/decode.ts';
import { signSheet } from '../../sheet/signatures.ts';
import { replaceFile } from '../replace-file.ts';
import { type CommandContext, type Register, sheetFor, tell, versionOf } from './context.ts';
import { savedSheet } from './saved-sheet.ts';
import { today } from './today.ts';

/** Where the name of who signed last on this machine is kept; the setting comes first. */
const NAME = 'ampwright.signer';
const SETTING = 'ampwright.signAs';

const ROLES = [
  { label: 'prepared', description: 'who made the calculation' },
  { label: 'checked', description: 'who went through it and agrees; usually someone else than who prepared it' },
  { label: 'approved', description: 'who releases it for use' },
] as const;

export const sign: Register = (context) =>
  vscode.commands.registerCommand('ampwright.sign', async (called?: unknown) => {
    const session = await sheetFor(context, called);
    const sheet = session && (await savedSheet(session, 'the signature'));
    if (!sheet) return;
    const role = await askRole(sheet.evaluation);
    const name = role && (await askName(role, sheet.evaluation, context));
    if (!role || !name) return;
    const entry = { role, name, date: today(), version: versionOf(context) };
    const signed = signSheet(recordSheet(sheet.evaluation), entry, sheet.evaluation.files);
    if (signed === null) return tell('the signatures in its front matter, or a conflict of a merge, must be put right first', NOT_SIGNED);
    const outcome = await replaceFile(session.notebook.uri, sheet.bytes, encodeSheet(signed), context.desktop);
    if (typeof outcome !== 'string') return tell(outcome.because, NOT_SIGNED);
    await context.extension.globalState.update(NAME, name);
    void vscode.window.showInformationMessage(`Signed as ${role} by ${name}. It is out of date as soon as the sheet changes.`);
  });

const NOT_SIGNED = 'The sheet was not signed';

async function askRole({ result, sheet }: SheetEvaluation): Promise<string | undefined> {
  const standing = sheetStatus(result, sheet.problems)?.text;
  const other = { label: 'Another role…', description: 'as your office calls it' };
  const picked = await vscode.window.showQuickPick([...ROLES, other], {
    title: 'Sign: As What',
    placeHolder: standing ? `This sheet stands so: ${standing}` : 'This sheet has no requirements',
  });
  if (picked !== other) return picked?.label;
  return vscode.window.showInputBox({ title: 'Sign: As What', prompt: 'The role', validateInput: filled });
}

async function askName(role: string, { sheet, digest }: SheetEvaluation, { extension }: CommandContext): Promise<string | undefined> {
  const prepared = sheet.frontMatter.signatures.filter((signature) => signature.role === 'prepared').map(({ name }) => name);
  return vscode.window.showInputBox({
    title: `Sign: Who (${role})`,
    value: vscode.workspace.getConfiguration().get<string>(SETTING, '').trim() || (extension.globalState.get<string>(NAME) ?? ''),
    placeHolder: 'Name',
    prompt: `Covers text, results and used files, ${digest.slice(0, 19)}…. A record of who looked at what, no electronic signature in law.`,
    validateInput: (name) =>
      filled(name) ??
      (role === 'checked' && prepared.includes(name.trim())
        ? {
            message: `${name.trim()} prepared this sheet; a check usually wants a second person.`,
            severity: vscode.InputBoxValidationSeverity.Warning,
          }
        : undefined),
  });
}

function filled(text: string): string | undefined {
  return text.trim() === '' ? 'Write something, or press Escape to leave it.' : undefined;
}

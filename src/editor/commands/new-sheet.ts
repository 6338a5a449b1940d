// Makes a new sheet from a template: a real file, which never takes another one's place.
import * as vscode from 'vscode';
import { evaluateSheet } from '../../run/evaluate.ts';
import { recordSheet } from '../../run/record.ts';
import { decodeSheet, encodeSheet } from '../../sheet/decode.ts';
import { retitled } from '../../sheet/retitled.ts';
import { SHEET_ENDING } from '../sheet-documents.ts';
import { type Register, tell } from './context.ts';
import { today } from './today.ts';

interface Template extends vscode.QuickPickItem {
  /** File in the extension's folder of templates. */
  readonly file: string;
}

const TEMPLATES: readonly Template[] = [
  {
    file: 'starter-sizing',
    label: 'Starter Sizing',
    detail: 'Which contactor and overload setting a motor gets, and whether its coil picks up',
  },
  { file: 'condition-survey', label: 'Condition Survey', detail: 'Whether the poles and the coil of a contactor in service are still fit' },
  {
    file: 'control-run',
    label: 'Control Circuit Run',
    detail: 'Whether a contactor picks up and lets go at the end of a long control run',
  },
  {
    file: 'motor-list',
    label: 'Motor List',
    detail: 'Currents and contactors of many motors, and the control transformer for all of them',
  },
];

export const newSheet: Register = ({ extension }) =>
  vscode.commands.registerCommand('ampwright.newSheet', async (called?: unknown) => {
    const template = await vscode.window.showQuickPick(TEMPLATES, {
      title: 'New Calc Sheet',
      placeHolder: 'What is to be decided',
      matchOnDetail: true,
    });
    const title = template && (await askTitle(template));
    if (!title) return;
    try {
      const uri = await freePlace(called, title);
      if (!uri) return;
      await create(uri, await filledIn(extension.extensionUri, template.file, title));
      await vscode.commands.executeCommand('vscode.open', uri);
    } catch (error) {
      tell(error, 'The sheet was not made');
    }
  });

function askTitle({ label }: Template): Thenable<string | undefined> {
  return vscode.window.showInputBox({
    title: `New Calc Sheet: ${label}`,
    prompt: 'Its title; the file is named after it',
    placeHolder: 'Starter for kiln drum motor M-12',
    validateInput: (text) => (fileName(text) === '' ? 'Write a title with a letter or digit in it.' : undefined),
  });
}

async function filledIn(extension: vscode.Uri, file: string, title: string): Promise<string> {
  const text = decodeSheet(await vscode.workspace.fs.readFile(vscode.Uri.joinPath(extension, 'templates', file + SHEET_ENDING)));
  if (typeof text !== 'string') throw new Error(text.refused);
  return recordSheet(evaluateSheet(retitled(text, title.trim(), today())));
}

/** Where no file is yet: in the folder that the command was called on, else in that of the file in front; where none is open the user says. */
async function freePlace(called: unknown, title: string): Promise<vscode.Uri | undefined> {
  const name = fileName(title);
  const folder = await folderFor(called);
  if (!folder)
    return vscode.window.showSaveDialog({ title: 'New Calc Sheet', saveLabel: 'Create', defaultUri: vscode.Uri.file(name + SHEET_ENDING) });
  for (let number = 1; ; number++) {
    const uri = vscode.Uri.joinPath(folder, (number === 1 ? name : `${name}-${number}`) + SHEET_ENDING);
    if (!(await kindOf(uri))) return uri;
  }
}

async function folderFor(called: unknown): Promise<vscode.Uri | undefined> {
  if (called instanceof vscode.Uri)
    return (await kindOf(called)) === vscode.FileType.Directory ? called : vscode.Uri.joinPath(called, '..');
  const inFront = vscode.window.activeNotebookEditor?.notebook.uri ?? vscode.window.activeTextEditor?.document.uri;
  const folder = inFront && vscode.workspace.getWorkspaceFolder(inFront);
  return folder ? vscode.Uri.joinPath(inFront, '..') : vscode.workspace.workspaceFolders?.[0]?.uri;
}

async function kindOf(uri: vscode.Uri): Promise<vscode.FileType | undefined> {
  try {
    return (await vscode.workspace.fs.stat(uri)).type;
  } catch {
    return undefined;
  }
}

/** The editor refuses to create a file that is there, so none is overwritten even if it came meanwhile. */
async function create(uri: vscode.Uri, text: string): Promise<void> {
  const change = new vscode.WorkspaceEdit();
  change.createFile(uri, { overwrite: false, ignoreIfExists: false, contents: encodeSheet(text) });
  if (!(await vscode.workspace.applyEdit(change))) throw new Error(`${vscode.workspace.asRelativePath(uri)} could not be created`);
}

/** Letters and digits of the title, in lower case, with hyphens between. */
function fileName(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 80);
}

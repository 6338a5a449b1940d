// The same writing help in a sheet that is open as text, and in the prose cells of one that is open as a notebook.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { byTitle } from '../support/picking.ts';
import { block, closeAll, openSheet, resultSaying, writeFile } from '../support/sheet.ts';
import { atTheScreen, miss, press, screenshot, see, target } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const SHEET = `# Drum

It draws [34 A](#I_n) at full load, and [2 A](#I_x) more.

Table contactors — Invented

| type | I_AC3 / A |
| --- | --: |
| K4 | 31.5 |
| K5 | 40 |

\`\`\`ampwright
I_n = 34 A
I_m: A = 2 * I_n
K = least I_AC3 of contactors where I_AC3 >= I_n
I_p: A = peak_factor(0.5) * 1 A
\`\`\`
`;

const at = (document: vscode.TextDocument, text: string, behind = 0) => document.positionAt(document.getText().indexOf(text) + behind);
const ask = async <T>(command: string, ...args: readonly unknown[]) =>
  (await vscode.commands.executeCommand(`vscode.execute${command}`, ...args)) as T;
const labels = ({ items }: vscode.CompletionList) => items.map(({ label }) => (typeof label === 'string' ? label : label.label));
const said = (hovers: readonly vscode.Hover[]) =>
  hovers.flatMap((h) => h.contents.map((c) => (typeof c === 'string' ? c : c.value))).join('\n');
const covered = (document: vscode.TextDocument, tokens: vscode.SemanticTokens) => {
  const words: string[] = [];
  let [line, character] = [0, 0];
  for (let i = 0; i < tokens.data.length; i += 5) {
    const [down, along, length] = [tokens.data[i]!, tokens.data[i + 1]!, tokens.data[i + 2]!];
    [line, character] = [line + down, down === 0 ? character + along : along];
    words.push(document.getText(new vscode.Range(line, character, line, character + length)));
  }
  return words;
};

let count = 0;
const asText = async () => {
  const uri = await writeFile(`help-${++count}.ampwright.md`, SHEET);
  return vscode.workspace.openTextDocument(uri);
};

describe('a sheet that is open as text', () => {
  // A workspace with sheets starts the extension; this one had none when it was opened.
  before(() => vscode.extensions.getExtension('ampwright.ampwright')!.activate());
  afterEach(closeAll);

  it('has its problems on the exact characters', async () => {
    const document = await asText();
    await vscode.window.showTextDocument(document);
    const problems = await waitFor('problems are told', () => {
      const found = vscode.languages.getDiagnostics(document.uri);
      return found.length > 0 && found;
    });
    assert.deepEqual(problems.map(({ code, range }) => `${code}: ${document.getText(range)}`).sort(), [
      'link-leads-nowhere: [2 A](#I_x)',
      'no-source: I_n',
      'no-source: contactors',
    ]);
  });

  it('tells, completes, goes to definitions and marks all places of a name', async () => {
    const { uri } = await asText();
    const document = await vscode.workspace.openTextDocument(uri);
    assert.match(said(await ask('HoverProvider', uri, at(document, '2 * I_n', 5))), /34 A/);
    assert.match(said(await ask('HoverProvider', uri, at(document, '(#I_n', 3))), /34 A/);
    assert.ok(labels(await ask('CompletionItemProvider', uri, at(document, '2 * I_n', 6))).includes('I_n'));
    assert.ok(labels(await ask('CompletionItemProvider', uri, at(document, '(#I_n', 3))).includes('K'));
    const [found] = await ask<vscode.Location[]>('DefinitionProvider', uri, at(document, '(#I_n', 3));
    assert.equal(found?.range.start.line, 12);
    const [inLibrary] = await ask<vscode.Location[]>('DefinitionProvider', uri, at(document, 'peak_factor', 2));
    assert.match((await vscode.workspace.openTextDocument(inLibrary!.uri)).lineAt(inLibrary!.range.start).text, /^peak_factor\(/);
    const marks = await ask<vscode.DocumentHighlight[]>('DocumentHighlights', uri, at(document, 'I_n = 34'));
    assert.deepEqual(
      marks.map(({ range }) => range.start.line).sort((a, b) => a - b),
      [2, 12, 13, 14],
    );
  });

  atTheScreen().it('lets one look into a function of the library without leaving it', async () => {
    const document = await asText();
    const editor = await vscode.window.showTextDocument(document);
    const place = at(document, 'peak_factor', 2);
    editor.selection = new vscode.Selection(place, place);
    // The command is there as soon as something gives definitions.
    await waitFor('its definition is known', async () => (await ask<unknown[]>('DefinitionProvider', document.uri, place)).length > 0);
    await byTitle('Peek Definition');
    await see(target.workbench('.peekview-widget .view-line:has-text("peak_factor")'));
    await screenshot('peek');
    await press('Escape');
    await miss(target.workbench('.peekview-widget'));
  });

  it('is renamed in blocks, prose and tables at once', async () => {
    const { uri } = await asText();
    const document = await vscode.workspace.openTextDocument(uri);
    const edit = await ask<vscode.WorkspaceEdit>('DocumentRenameProvider', uri, at(document, 'I_AC3 / A'), 'I_rated');
    assert.ok(await vscode.workspace.applyEdit(edit));
    await document.save();
    assert.match(document.getText(), /\| type \| I_rated \/ A \|[\s\S]*least I_rated of contactors where I_rated >= I_n/);
  });

  it('has its names coloured by meaning, and nothing else', async () => {
    const { uri } = await asText();
    const document = await vscode.workspace.openTextDocument(uri);
    const own = (await vscode.commands.executeCommand('vscode.provideDocumentSemanticTokens', uri)) as vscode.SemanticTokens;
    assert.deepEqual(covered(document, own).slice(0, 5), ['I_n', 'contactors', 'type', 'I_AC3', 'I_n']);
  });

  it('is outlined and mended', async () => {
    const { uri } = await asText();
    const document = await vscode.workspace.openTextDocument(uri);
    const outlined = await ask<vscode.DocumentSymbol[]>('DocumentSymbolProvider', uri);
    for (const name of ['contactors', 'I_n', 'K']) assert.ok(JSON.stringify(outlined).includes(`"${name}"`), name);
    const where = at(document, 'I_n = 34');
    const fixes = await ask<vscode.CodeAction[]>('CodeActionProvider', uri, new vscode.Range(where, where));
    assert.ok(
      fixes.some(({ title }) => title === 'Add a source'),
      fixes.map(({ title }) => title).join(),
    );
  });
});

describe('a prose cell', () => {
  afterEach(closeAll);

  it('has help in its links and tables', async () => {
    const notebook = await openSheet(SHEET);
    await resultSaying(notebook, 0, 'K = K5');
    const { document } = notebook.cellAt(0);
    assert.match(said(await ask('HoverProvider', document.uri, at(document, '(#I_n', 3))), /34 A/);
    assert.ok(labels(await ask('CompletionItemProvider', document.uri, at(document, '(#I_n', 2))).includes('I_m'));
    const [found] = await ask<vscode.Location[]>('DefinitionProvider', document.uri, at(document, '(#I_n', 3));
    assert.equal(found?.uri.toString(), block(notebook, 0).document.uri.toString());
  });

  it('is renamed together with the blocks', async () => {
    const notebook = await openSheet(SHEET);
    await resultSaying(notebook, 0, 'K = K5');
    const { document } = notebook.cellAt(0);
    const code = block(notebook, 0).document;
    const edit = await ask<vscode.WorkspaceEdit>('DocumentRenameProvider', code.uri, at(code, 'I_AC3'), 'I_rated');
    assert.ok(await vscode.workspace.applyEdit(edit));
    assert.match(block(notebook, 0).document.getText(), /least I_rated of contactors where I_rated >= I_n/);
    assert.match(document.getText(), /\| I_rated \/ A \|/);
  });
});

describe('values at the line’s end', () => {
  const setting = vscode.workspace.getConfiguration('ampwright');
  afterEach(closeAll);
  after(() => setting.update('valuesAtLineEnd', undefined, vscode.ConfigurationTarget.Global));

  it('stand there where they are asked for', async () => {
    const notebook = await openSheet(SHEET);
    await resultSaying(notebook, 0, 'K = K5');
    const { document } = block(notebook, 0);
    const hints = () => ask<vscode.InlayHint[]>('InlayHintProvider', document.uri, new vscode.Range(0, 0, document.lineCount, 0));
    assert.deepEqual(await hints(), []);
    await setting.update('valuesAtLineEnd', true, vscode.ConfigurationTarget.Global);
    const shown = await waitFor('values are shown', async () => {
      const found = await hints();
      return found.length > 0 && found;
    });
    assert.deepEqual(
      shown.map(({ label }) => label),
      ['= 68.00 A', '= K5', '= 1.239 A'],
    );
  });
});

// Writing help in the cells of an open sheet, as the editor asks for it.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { block, closeAll, openSheet, plainResult, resultSaying, sheetOf } from '../support/sheet.ts';
import { waitFor } from '../support/wait.ts';

type Cell = ReturnType<typeof block>;

const at = (cell: Cell, text: string, behind = 0): vscode.Position =>
  cell.document.positionAt(cell.document.getText().indexOf(text) + behind);

async function ask<T>(command: string, cell: Cell, position: vscode.Position, ...more: readonly unknown[]): Promise<T> {
  return (await vscode.commands.executeCommand(`vscode.execute${command}`, cell.document.uri, position, ...more)) as T;
}

describe('writing help', () => {
  afterEach(closeAll);

  const open = async () => {
    const notebook = await openSheet(
      sheetOf('U_n = 400 V from plate "M-12"\nI_n = 34 A from plate "M-12"', 'S: kVA = sqrt(3) * U_n * I_n\nx = 2 I_n'),
    );
    await resultSaying(notebook, 1, 'S = 23.56 kVA');
    return notebook;
  };

  it('tells value and source of a name, and the form of a function', async () => {
    const notebook = await open();
    const said = async (text: string) => {
      const found = await ask<vscode.Hover[]>('HoverProvider', block(notebook, 1), at(block(notebook, 1), text, 1));
      return found.flatMap((h) => h.contents.map((c) => (typeof c === 'string' ? c : c.value))).join('\n');
    };
    assert.match(await said('U_n'), /400 V/);
    assert.match(await said('U_n'), /M.*12/);
    assert.match(await said('sqrt'), /sqrt\(x\)/);
  });

  it('offers names with their values, functions and units', async () => {
    const notebook = await open();
    const cell = block(notebook, 1);
    const list = async (text: string, behind: number) =>
      (await ask<vscode.CompletionList>('CompletionItemProvider', cell, at(cell, text, behind))).items.map(({ label }) =>
        typeof label === 'string' ? label : `${label.label}: ${label.description}`,
      );
    const values = await list('U_n', 1);
    assert.ok(
      values.some((v) => v.startsWith('U_n') && v.includes('400 V')),
      values.slice(0, 8).join(' | '),
    );
    assert.ok(values.some((v) => v.startsWith('fla_3ph')));
    assert.ok((await list('kVA', 1)).some((v) => v.startsWith('kW')));
  });

  it('goes to a definition in another cell, and finds all uses', async () => {
    const notebook = await open();
    const [found] = await ask<vscode.Location[]>('DefinitionProvider', block(notebook, 1), at(block(notebook, 1), 'I_n', 1));
    assert.equal(found!.uri.toString(), block(notebook, 0).document.uri.toString());
    assert.equal(found!.range.start.line, 1);
    const uses = await ask<vscode.Location[]>('ReferenceProvider', block(notebook, 0), at(block(notebook, 0), 'U_n', 1));
    assert.equal(uses.length, 2);
  });

  it('goes to the definition of a function of the library, which can be read and not changed', async () => {
    const notebook = await openSheet(sheetOf('I = fla_3ph(18.5 kW, 400 V, 92.4 %, 0.84)'));
    await resultSaying(notebook, 0, 'I = 34.40 A');
    const cell = block(notebook, 0);
    const [found] = await ask<vscode.Location[]>('DefinitionProvider', cell, at(cell, 'fla_3ph', 1));
    const library = await vscode.workspace.openTextDocument(found!.uri);
    assert.equal(library.languageId, 'markdown');
    assert.match(library.lineAt(found!.range.start).text, /^fla_3ph\(P: kW, U: V, eta, pf\): A = /);
    assert.equal(library.getText(found!.range), 'fla_3ph');
    const before = library.getText();
    await vscode.window.showTextDocument(library);
    await vscode.commands.executeCommand('type', { text: 'x' });
    assert.equal(library.getText(), before);
  });

  it('leads from a function of the library to its place in the reference', async () => {
    const notebook = await openSheet(sheetOf('I = fla_3ph(18.5 kW, 400 V, 92.4 %, 0.84)'));
    await resultSaying(notebook, 0, 'I = 34.40 A');
    const cell = block(notebook, 0);
    const [found] = await ask<vscode.Hover[]>('HoverProvider', cell, at(cell, 'fla_3ph', 1));
    const link = found!.contents.map((one) => (typeof one === 'string' ? one : one.value)).join('\n');
    assert.ok(link.includes(`command:ampwright.openReference?${encodeURIComponent('["motors.html#function-fla_3ph"]')}`), link);
  });

  it('renames across cells', async () => {
    const notebook = await open();
    const edit = await ask<vscode.WorkspaceEdit>('DocumentRenameProvider', block(notebook, 0), at(block(notebook, 0), 'U_n', 1), 'U_rated');
    assert.ok(await vscode.workspace.applyEdit(edit));
    await waitFor('both cells have the new name', () => [0, 1].every((n) => block(notebook, n).document.getText().includes('U_rated')));
    await waitFor('the result stays', () => plainResult(block(notebook, 1)).includes('S = 23.56 kVA'));
  });

  it('renames from a value in prose', async () => {
    const notebook = await openSheet(`The motor draws [34.00 A](#I_n).\n\n${sheetOf('I_n = 34 A from plate "M-12"', 'x = 2 * I_n')}`);
    await resultSaying(notebook, 1, 'x = 68.00 A');
    const prose = notebook.cellAt(0);
    vscode.window.activeNotebookEditor!.selection = new vscode.NotebookRange(0, 1);
    await vscode.commands.executeCommand('notebook.cell.edit');
    await waitFor('the cell is edited', () => vscode.window.activeTextEditor?.document === prose.document);
    const edit = await ask<vscode.WorkspaceEdit>('DocumentRenameProvider', prose, at(prose, '#I_n', 2), 'I_full');
    assert.ok(await vscode.workspace.applyEdit(edit));
    await waitFor('prose and blocks have the new name', () =>
      notebook.getCells().every(({ document }) => !/\bI_n\b/.test(document.getText())),
    );
    assert.equal(prose.document.getText(), 'The motor draws [34.00 A](#I_full).');
    await resultSaying(notebook, 1, 'x = 68.00 A');
  });

  it('offers the mend of a problem', async () => {
    const notebook = await open();
    const cell = block(notebook, 1);
    const position = at(cell, '2 I_n', 1);
    const range = new vscode.Range(position, position);
    const found = (await vscode.commands.executeCommand(
      'vscode.executeCodeActionProvider',
      cell.document.uri,
      range,
    )) as vscode.CodeAction[];
    const mend = found.find(({ edit }) => edit !== undefined);
    assert.ok(mend, 'a quick fix is offered');
    await vscode.workspace.applyEdit(mend.edit!);
    assert.match(cell.document.getText(), /x = 2 \* I_n/);
  });

  it('outlines statements, folds, formats, and shows the form of a call', async () => {
    const notebook = await open();
    const uri = block(notebook, 1).document.uri;
    const outlined = (await vscode.commands.executeCommand('vscode.executeDocumentSymbolProvider', uri)) as vscode.DocumentSymbol[];
    assert.deepEqual(
      outlined.map((s) => s.name),
      ['S', 'x'],
    );
    const help = await ask<vscode.SignatureHelp>('SignatureHelpProvider', block(notebook, 1), at(block(notebook, 1), 'sqrt(', 5));
    assert.match(help.signatures[0]!.label, /^sqrt\(x\)/);
  });
});

// Problems stand on the exact characters, in the editor's own list.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, sheetOf } from '../support/sheet.ts';
import { waitFor } from '../support/wait.ts';

const problemsOf = (cell: vscode.NotebookCell) => vscode.languages.getDiagnostics(cell.document.uri);
const errorsOf = (cell: vscode.NotebookCell) => problemsOf(cell).filter((problem) => problem.severity === vscode.DiagnosticSeverity.Error);

describe('a problem', () => {
  afterEach(closeAll);

  it('stands on the characters that it is about, in the cell where they are', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', '# fine\nb = 2 * x_1'));
    const [problem] = await waitFor('an error is reported', () => errorsOf(block(notebook, 1)).length > 0 && errorsOf(block(notebook, 1)));
    const { document } = block(notebook, 1);
    assert.equal(document.getText(problem!.range), 'x_1');
    assert.equal(problem!.source, 'Ampwright');
    assert.deepEqual(errorsOf(block(notebook, 0)), []);
  });

  it('points at the other place that belongs to it', async () => {
    const notebook = await openSheet(sheetOf('x = 3 A', 'x = 4 A'));
    const [problem] = await waitFor('an error is reported', () => errorsOf(block(notebook, 1)).length > 0 && errorsOf(block(notebook, 1)));
    const [other] = problem!.relatedInformation ?? [];
    assert.equal(other?.location.uri.toString(), block(notebook, 0).document.uri.toString());
  });

  it('goes when it is mended', async () => {
    const notebook = await openSheet(sheetOf('b = 2 * x_1'));
    await waitFor('an error is reported', () => errorsOf(block(notebook, 0)).length > 0);
    await edit(block(notebook, 0), 'x_1', '3 A');
    await waitFor('the error goes', () => errorsOf(block(notebook, 0)).length === 0);
  });

  it('is found in the front matter and in prose too', async () => {
    const notebook = await openSheet('---\nampwright: one\n---\n\n# A\n');
    await waitFor('a problem is reported', () => problemsOf(notebook.cellAt(0)).length > 0);
  });
});

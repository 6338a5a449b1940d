// What opening and saving do to the file.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, readFile, resultSaying, sheetOf, writeFile } from '../support/sheet.ts';
import { waitFor } from '../support/wait.ts';

const recorded = (row: string) =>
  ['', '<!-- results -->', '| result | value | note |', '| :-- | --: | :-- |', row, '<!-- end results -->', ''].join('\n');

describe('the file of a sheet', () => {
  afterEach(closeAll);

  it('gets results computed from the text whenever it is saved', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await edit(block(notebook, 0), '2 A', '3 A');
    await notebook.save();
    assert.equal(await readFile(notebook.uri), sheetOf('a = 3 A', 'b = 2 * a') + recorded('| b | 6.000 A | |'));
    assert.equal(notebook.isDirty, false);
  });

  it('gets the values in its prose refreshed, in the file and in the editor', async () => {
    const text = `The motor draws [1 A](#b) and no [more](#more).\n\n${sheetOf('a = 2 A', 'b = 2 * a')}`;
    const notebook = await openSheet(text);
    await edit(block(notebook, 0), '2 A', '3 A');
    await notebook.save();
    assert.equal(notebook.cellAt(0).document.getText(), 'The motor draws [6.000 A](#b) and no [more](#more).');
    assert.match(await readFile(notebook.uri), /^The motor draws \[6\.000 A\]\(#b\) and no \[more\]\(#more\)\.\n/);
    assert.equal(notebook.isDirty, false);
  });

  it('keeps line ends, blank lines, a byte order mark, unknown keys and other blocks', async () => {
    const text =
      '\uFEFF---\r\nampwright: 1\r\nshelf: 3   # ours\r\n---\r\n\r\n\r\n# A\r\n~~~text\r\na = 1\r\n~~~\r\n\r\n```ampwright\r\n# nothing\r\n```\r\n\r\nEnd';
    const notebook = await openSheet(text);
    await edit(notebook.cellAt(notebook.cellCount - 1), 'End', 'The end');
    await notebook.save();
    assert.equal(await readFile(notebook.uri), text.replace('End', 'The end'));
  });

  it('is refused when it is not UTF-8, and not changed', async () => {
    const bytes = new Uint8Array([0x23, 0x20, 0xe9, 0x0a]);
    const uri = await writeFile('latin.ampwright.md', bytes);
    await assert.rejects(async () => vscode.workspace.openNotebookDocument(uri), /not UTF-8/);
    assert.deepEqual([...(await vscode.workspace.fs.readFile(uri))], [...bytes]);
  });

  it('opens with the markers of a merge in it, shown as they stand', async () => {
    const text = `${sheetOf('a = 2 A')}\n<<<<<<< ours\nx\n=======\ny\n>>>>>>> theirs\n`;
    const notebook = await openSheet(text);
    const conflict = notebook.getCells().find((cell) => cell.document.languageId === 'plaintext');
    assert.match(conflict?.document.getText() ?? '', /<<<<<<< ours/);
  });

  it('is shown anew when something else changes it', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await vscode.workspace.fs.writeFile(notebook.uri, new TextEncoder().encode(sheetOf('a = 7 A')));
    await resultSaying(notebook, 0, 'a = 7 A');
    assert.equal(notebook.isDirty, false);
  });

  it('reads a sheet beside it, and follows that sheet', async () => {
    const used = await writeFile('mill-standard.ampwright.md', sheetOf('U_mill = 400 V'));
    const notebook = await openSheet(sheetOf('use "mill-standard.ampwright.md" for U_mill\nU = 2 * U_mill', 'b = 3 A'));
    await resultSaying(notebook, 0, 'U = 800.0 V');
    await resultSaying(notebook, 1, 'b = 3 A');
    const untouched = block(notebook, 1).outputs[0];
    await vscode.workspace.fs.writeFile(used, new TextEncoder().encode(sheetOf('U_mill = 500 V')));
    await resultSaying(notebook, 0, 'U = 1.000 kV');
    assert.equal(block(notebook, 1).outputs[0], untouched);
  });

  it('reads no file outside the workspace', async () => {
    const notebook = await openSheet(sheetOf('use "../../outside.ampwright.md" for a\nb = 2 * a'));
    const problems = await waitFor('a problem is reported', () => {
      const found = vscode.languages.getDiagnostics(block(notebook, 0).document.uri);
      return found.length > 0 && found;
    });
    assert.ok(
      problems.some((problem) => problem.message.includes('outside the workspace')),
      problems.map((p) => p.message).join('\n'),
    );
  });
});

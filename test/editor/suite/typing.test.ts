// What a writer sees while typing in a cell, with keys and mouse alone: what may be written here, what a name stands for, the form of a call.
import assert from 'node:assert';
import { clickInto } from '../support/cell-text.ts';
import { block, closeAll, openSheet, readFile, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, hover, miss, press, read, screenshot, see, settle, target, typeText } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const suggestions = '.suggest-widget.visible .monaco-list-row';
const offered = (text: string) => target.workbench(`${suggestions}:has-text("${text}")`);
// It stands there before it takes what is typed.
const box = target.workbench('.rename-box input:focus');
const form = target.workbench('.parameter-hints-widget.visible');

/** Puts the cursor at the end of the only line that says this, with the mouse. */
async function clickLine(text: string): Promise<void> {
  await clickInto(text);
  await press('End');
}

const sheet = `The motor draws [34.40 A](#I_n) at full load.\n\n${sheetOf(
  'I_n = 34.4 A from plate "M-12" "full-load current"',
  'U_n = 400 V from plate "M-12"\nx = 2 * I_n',
)}`;

atTheScreen().describe('while typing in a cell', () => {
  afterEach(closeAll);

  const open = async () => {
    const notebook = await openSheet(sheet);
    await resultSaying(notebook, 1, 'x = 68.80 A');
    return notebook;
  };

  it('names are offered with their values, and Enter takes one', async () => {
    const notebook = await open();
    await clickLine('x = 2 * I_n');
    await press('Enter');
    await typeText('S: kVA = sqrt(3) * U_n * I_');
    await see(offered('I_n'));
    assert.match(await read(offered('I_n')), /34\.4 A/);
    await screenshot('completion');
    await press('Enter');
    await waitFor('the name is taken', () => block(notebook, 1).document.getText().endsWith('sqrt(3) * U_n * I_n'));
    await miss(target.workbench('.suggest-widget.visible'));
    await resultSaying(notebook, 1, 'S = 23.83 kVA');
  });

  it('units are offered behind a number, and Escape leaves the text as it was typed', async () => {
    const notebook = await open();
    await clickLine('x = 2 * I_n');
    await press('Enter');
    await typeText('L = 320 m');
    await see(offered('mm'));
    await press('Escape');
    await miss(target.workbench('.suggest-widget.visible'));
    assert.match(block(notebook, 1).document.getText(), /\nL = 320 m$/);
    await resultSaying(notebook, 1, 'L = 320 m');
  });

  it('a name tells its value and its source where the mouse rests on it', async () => {
    await open();
    // Cells move as long as outputs come.
    await see(target.outputs('tr[data-key="entry x"]'));
    await settle();
    await hover(target.workbench('.notebookOverlay .cell-editor-part .view-line:has-text("x = 2") span[class^="mtk"]:has-text("I_n")'));
    const said = target.workbench('.monaco-hover:has-text("full-load current")');
    await see(said);
    const words = await read(said);
    assert.match(words, /34\.4 A/);
    assert.match(words, /plate/);
    await screenshot('hover in a cell');
  });

  it('the form of a call stands beside it, with the argument that comes next', async () => {
    await open();
    await clickLine('x = 2 * I_n');
    await press('Enter');
    await typeText('P_n = 18.5 kW\nI: A = fla_3ph(');
    await see(form);
    const next = target.workbench('.parameter-hints-widget.visible .signature .parameter.active');
    assert.match(await read(form), /fla_3ph\(/);
    const first = await read(next);
    await typeText('P_n, ');
    await waitFor('the second argument is told', async () => (await read(next)) !== first);
    await screenshot('form of a call');
  });

  it('a name gets another one in every cell by F2', async () => {
    const notebook = await open();
    await clickLine('x = 2 * I_n');
    await press('F2');
    await see(box);
    await press('Control+A');
    await typeText('I_full');
    await screenshot('rename');
    await press('Enter');
    await waitFor('both blocks have it', () => [0, 1].every((number) => /\bI_full\b/.test(block(notebook, number).document.getText())));
    await waitFor('the prose has it', () => notebook.cellAt(0).document.getText() === 'The motor draws [34.40 A](#I_full) at full load.');
    await resultSaying(notebook, 1, 'x = 68.80 A');
    await press('Control+s');
    await waitFor('it is saved', () => !notebook.isDirty);
    const saved = await readFile(notebook.uri);
    assert.doesNotMatch(saved, /I_n/);
    assert.match(saved, /\[34\.4 A\]\(#I_full\)[\s\S]*\nI_full = 34\.4 A[\s\S]*\nx = 2 \* I_full\n[\s\S]*\| x \| 68\.80 A \| \|/);
  });

  it('a name that is taken is refused in the box, and nothing changes', async () => {
    const notebook = await open();
    await clickLine('x = 2 * I_n');
    await press('F2');
    await see(box);
    await press('Control+A');
    await typeText('U_n');
    await press('Enter');
    await see(target.workbench('text=/U_n.? is defined in this sheet already/'));
    assert.equal(block(notebook, 1).document.getText(), 'U_n = 400 V from plate "M-12"\nx = 2 * I_n');
    assert.equal(notebook.isDirty, false);
  });
});

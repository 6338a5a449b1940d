// How a sheet looks: the ledger below its block in every kind of theme, reachable and named for those who don't see it.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { closeAll, openSheet, resultSaying } from '../support/sheet.ts';
import {
  accessibilityFaults,
  atTheScreen,
  click,
  focused,
  hover,
  miss,
  press,
  read,
  screenshot,
  see,
  settle,
  target,
  texts,
  theme,
  webviewText,
} from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const sheet = `# Starter for kiln drum motor M-12

The motor draws [0 A](#I_n) at full load. All data are invented.

\`\`\`ampwright
P_n = 18.5 kW            from plate "M-12, photo of 2026-10-02"
U_n = 400 V ± 2 %        from plate "M-12"
eta = 92.4 %             from datasheet "maker's sheet rev 2, 4/4 load"
pf  = 0.84               from datasheet "maker's sheet rev 2, 4/4 load"
I_n: A = fla_3ph(P_n, U_n, eta, pf)   "full-load current"
shall I_n <= 40 A        because "the contactor's rating"
shall I_n <= 34 A        because "a limit that does not hold"
x = I_n + y
\`\`\`

## Curve

\`\`\`ampwright
drop(L: m): V = I_n * 0.5 mohm/m * L
curve drop(L): V over L from 0 m to 500 m
  mark 120 m "kiln drum"
  limit 5 V "limit"
\`\`\`
`;

atTheScreen().describe('the results of a block', () => {
  after(async function () {
    await theme('light');
    await closeAll.call(this);
  });
  let notebook: vscode.NotebookDocument;

  before(async () => {
    notebook = await openSheet(sheet, 'look.ampwright.md');
    await resultSaying(notebook, 0, 'I_n = 34.40 A');
    await see(target.outputs('.aw-ledger svg, .aw-ledger figure'));
  });

  it('are a ledger of the quantities, with values, sources and requirements', async () => {
    const text = await webviewText();
    for (const words of ['34.40 A', '40 A', 'photo of 2026-10-02', 'holds', 'undecided', 'full-load current'])
      assert.ok(text.includes(words), `${words} in:\n${text}`);
    assert.ok((await texts(target.outputs('.aw-ledger math'))).length > 4);
  });

  for (const name of ['light', 'dark', 'high contrast', 'high contrast light'] as const) {
    it(`can be read in a ${name} theme, without a fault that axe finds`, async () => {
      await theme(name);
      await settle();
      await screenshot(`ledger ${name}`);
      assert.deepEqual(await accessibilityFaults(target.outputs('.aw-ledger')), []);
    });
  }

  it('show what a result depends on and its uncertainty budget while the pointer rests on it', async () => {
    await theme('light');
    await hover(target.outputs('tr[data-key="entry I_n"] summary'));
    await see(target.outputs('.aw-peek .aw-budget'));
    await screenshot('ledger looked at');
    await hover(target.workbench('.notebookOverlay .notebook-toolbar-container'));
    await miss(target.outputs('.aw-peek'));
  });

  it('lead with a click on a symbol to where its name is defined', async () => {
    await click(target.outputs('[data-key="requirement I_n <= 40 A"] .aw-math [data-name="I_n"]'));
    await waitFor('the cursor stands on the name', () => {
      const editor = vscode.window.activeTextEditor;
      return (
        editor?.document.languageId === 'ampwright' &&
        editor.document.getText(editor.selection) === 'I_n' &&
        editor.selection.start.line === 4
      );
    });
  });

  it('are reached with the keyboard, and unfold', async () => {
    await vscode.commands.executeCommand('notebook.focusTop');
    await press('ArrowDown');
    await vscode.commands.executeCommand('notebook.cell.focusInOutput');
    const reached = await waitFor('the value is focused', async () => {
      await press('Tab');
      const now = await focused();
      return now.label.includes('18.5 kW') && now;
    });
    assert.equal(reached.place, 'outputs');
    await press('Enter');
    await see(target.outputs('.aw-ledger details[open]'));
    await screenshot('ledger unfolded');
  });

  it('have curves that are read with the arrow keys, which stay with the curve', async () => {
    const readout = target.outputs('.aw-plot-wide .aw-readout');
    await vscode.commands.executeCommand('notebook.focusBottom');
    await vscode.commands.executeCommand('notebook.cell.focusInOutput');
    await waitFor('the curve is focused', async () => {
      await press('Tab');
      return (await focused()).label.startsWith('Read the curve');
    });
    await press('Home');
    await waitFor('the first point is told', async () => (await read(readout)).startsWith('L = 0 m: 0 V'));
    await press('End');
    await waitFor('the last point is told', async () => /^L = 500 m: 8\.601 V$/.test(await read(readout)));
    assert.equal((await focused()).place, 'outputs');
    await screenshot('curve read');
  });
});

// The text of the cells on the screen: its lines, and the cursor put into one of them with the mouse.
import { click, press, see, type Target, target, texts } from './ui.ts';
import { waitFor } from './wait.ts';

/** The line of a cell that says this, wherever in it. */
export const line = (text: string): Target => target.workbench(`.notebookOverlay .cell-editor-part .view-line:has-text("${text}")`);

/** The editor of a cell that takes what is typed, where it has this line. */
const taking = (text: string): Target =>
  target.workbench(`.notebookOverlay .cell-editor-part .monaco-editor.focused:has(.view-line:has-text("${text}"))`);

/** Clicks into the only line that says this until its cell takes what is typed: results that come push cells away from under the mouse. */
export async function clickInto(text: string): Promise<void> {
  await waitFor(`the cell with “${text}” takes what is typed`, async () => {
    await click(line(text));
    return soon(async () => (await texts(taking(text))).length > 0);
  });
}

/** The same, and leaves the text for the cell around it, which is then selected. */
export async function selectCell(text: string): Promise<void> {
  await clickInto(text);
  await press('Escape');
  await see(target.workbench(`.notebookOverlay .monaco-list-row.focused:has(.view-line:has-text("${text}"))`));
}

/** Whether it is so within a moment, as a user waits for what a click does before the next one. */
async function soon(ask: () => Promise<boolean>): Promise<boolean> {
  for (let times = 0; times < 40; times++) {
    if (await ask()) return true;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return false;
}

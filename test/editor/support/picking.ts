// Answering the questions of a command: its lists to pick from, and its input boxes.
import { press, see, target, typeText } from './ui.ts';

const box = (title: string) => target.workbench(`.quick-input-widget:has(.quick-input-title:has-text("${title}"))`);

/** Picks the entry of a list that these letters narrow it down to. */
export async function pick(title: string, letters: string, label: string): Promise<void> {
  await see(box(title));
  await typeText(letters);
  await see(target.workbench(`.quick-input-list .monaco-list-row.focused:has-text("${label}")`));
  await press('Enter');
}

/** Answers an input box. */
export async function answer(title: string, text: string): Promise<void> {
  await see(box(title));
  await press('Control+A');
  await typeText(text);
  await press('Enter');
}

/** Runs a command by its title, as someone does who does not know its key. */
export async function byTitle(title: string): Promise<void> {
  await press('F1');
  await see(target.workbench('.quick-input-widget'));
  await typeText(title);
  await see(target.workbench(`.quick-input-list .monaco-list-row.focused:has-text("${title}")`));
  await press('Enter');
}

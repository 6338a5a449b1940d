// A sheet that is open as plain text, as in a text diff or a merge: Markdown with the notation coloured in its blocks.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { closeAll, writeFile } from '../support/sheet.ts';
import { atTheScreen, markup, screenshot, target } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

atTheScreen().describe('a sheet that is open as text', () => {
  afterEach(closeAll);

  it('has the notation coloured in its blocks, and in no others', async () => {
    const code = 'shall I_n <= 40 A because "rating"';
    const uri = await writeFile('as-text.ampwright.md', `# A\n\n\`\`\`ampwright\n${code}\n\`\`\`\n\n\`\`\`text\n${code}\n\`\`\`\n`);
    await vscode.commands.executeCommand('vscode.openWith', uri, 'default');
    const colours = async (line: number) => {
      const text = await markup(target.workbench(`.editor-instance .view-lines .view-line >> nth=${line}`));
      return new Set(Array.from(text.matchAll(/class="(mtk\d+)/g), ([, colour]) => colour)).size;
    };
    // The view keeps its lines in no order: both lines of code are among them, one coloured and one not.
    const found = await waitFor('the block is coloured', async () => {
      const all = await Promise.all(Array.from({ length: 9 }, (_, line) => colours(line)));
      return all.some((count) => count >= 4) && all;
    });
    assert.equal(found.filter((count) => count >= 4).length, 1, found.join());
    await screenshot('as text');
  });
});

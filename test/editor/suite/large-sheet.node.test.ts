// A word while the editor opens a very large sheet.
import { closeAll, openSheet, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, miss, see, target } from '../support/ui.ts';

atTheScreen().describe('a sheet of 5 MB', () => {
  afterEach(closeAll);

  it('is told of in the status bar until it is open', async () => {
    const prose = 'The drum of the kiln (invented) starts on line, unloaded, about eleven times an hour in the season.\n'.repeat(52_000);
    const word = target.workbench('.statusbar-item:has-text("A sheet of 5.0 MiB is being opened")');
    const opening = openSheet(`${prose}\n${sheetOf('a = 2 A')}`);
    await see(word);
    await resultSaying(await opening, 0, 'a = 2 A');
    await miss(word);
  }).timeout(240_000);
});

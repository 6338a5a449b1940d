// What happens to a file when the command that writes it is cut off: it is the old one or the new one, never half of it.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync, utimesSync } from 'node:fs';
import { started } from '../support/killed.ts';
import { program } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const entries = Array.from({ length: 300 }, (_, i) => `x_${i}: V = ${i} V + 1 V`).join('\n');
const SHEET = `# Long sheet, invented\n\n\`\`\`ampwright\nU = 1 V from plate "M-12"\n${entries}\n\`\`\`\n`;
const ROWS = `U / V\n${Array.from({ length: 1500 }, (_, i) => i).join('\n')}\n`;
const SIGN = ['sign', 's.ampwright.md', '--role', 'checked', '--name', 'R. Osei', '--on', '2026-11-20'];

const LONG_AGO = new Date('2026-01-01');

interface Written {
  readonly command: readonly string[];
  readonly file: string;
  /** What it has in it before; null: a recorded sheet. */
  readonly old: string | null;
}

const WRITTEN: readonly Written[] = [
  { command: ['record', 's.ampwright.md'], file: 's.ampwright.md', old: SHEET },
  { command: SIGN, file: 's.ampwright.md', old: null },
  { command: ['batch', 's.ampwright.md', '--rows', 'rows.csv', '--out', 'out.csv'], file: 'out.csv', old: 'old\n' },
  { command: ['export', 's.ampwright.md', '--to', 'html', '--out', 'out.html'], file: 'out.html', old: 'old\n' },
  { command: ['export', 's.ampwright.md', '--to', 'json', '--out', 'out.json'], file: 'out.json', old: 'old\n' },
];

describe('a command that is killed', function () {
  this.timeout(180_000);
  const folder = temporaryFolder();

  for (const { command, file, old } of WRITTEN) {
    it(`leaves the old or the new file: ${command.filter((word) => !/^(s\.|rows)/.test(word)).join(' ')}`, async () => {
      const bundle = await program();
      folder.write('rows.csv', ROWS);
      const sheet = folder.write('s.ampwright.md', SHEET);
      const run = (args: readonly string[], moment: Parameters<typeof started>[2] = null) =>
        started(process.execPath, [bundle, ...args], moment, folder.path);
      if (old === null) await run(['record', 's.ampwright.md']);
      const before = old ?? readFileSync(sheet, 'utf8');
      folder.write(file, before);
      const files = readdirSync(folder.path);
      const began = Date.now();
      assert.equal(await run(command), 0);
      const whole = Date.now() - began;
      const after = readFileSync(folder.at(file), 'utf8');
      assert.notEqual(after, before);

      for (const moment of [
        whole / 3,
        whole / 2,
        (whole * 2) / 3,
        (whole * 5) / 6,
        whole,
        { writesIn: folder.path },
        { writesIn: folder.path },
      ]) {
        folder.write(file, before);
        await run(command, moment);
        const now = readFileSync(folder.at(file), 'utf8');
        assert.ok(now === before || now === after, `half a file of ${now.length} characters`);
      }
      // The next run does the work; what the others left is removed once it is too old to be in use.
      for (const name of readdirSync(folder.path)) if (!files.includes(name)) utimesSync(folder.at(name), LONG_AGO, LONG_AGO);
      folder.write(file, before);
      assert.equal(await run(command), 0);
      assert.equal(readFileSync(folder.at(file), 'utf8'), after);
      assert.deepEqual(readdirSync(folder.path), files);
    });
  }
});

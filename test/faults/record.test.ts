// What happens to a sheet when recording it is cut off: the file is the old one or the new one, never half of it.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { ampwright, program } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const entries = Array.from({ length: 300 }, (_, i) => `x_${i} = ${i} V + 1 V`).join('\n');
const OLD = `# Long sheet, invented\n\n\`\`\`ampwright\n${entries}\n\`\`\`\n`;

describe('recording a sheet', function () {
  this.timeout(120_000);
  const folder = temporaryFolder();

  /** Starts the program; ends it by force after so many milliseconds, if that comes first. */
  async function started(command: string, args: readonly string[], killAfter: number | null = null): Promise<number | null> {
    const child = spawn(command, args, { stdio: 'ignore' });
    const timer = killAfter === null ? null : setTimeout(() => child.kill('SIGKILL'), killAfter);
    return new Promise((resolve) =>
      child.once('close', (code) => {
        if (timer) clearTimeout(timer);
        resolve(code);
      }),
    );
  }

  it('leaves the old or the new file when it is killed at any moment', async () => {
    const path = folder.write('a.ampwright.md', OLD);
    const bundle = await program();
    const began = Date.now();
    await started(process.execPath, [bundle, 'record', path]);
    const whole = Date.now() - began;
    const recorded = readFileSync(path, 'utf8');
    assert.notEqual(recorded, OLD);
    for (let round = 0; round < 12; round++) {
      folder.write('a.ampwright.md', OLD);
      await started(process.execPath, [bundle, 'record', path], (whole * (round + 1)) / 11);
      const now = readFileSync(path, 'utf8');
      assert.ok(now === OLD || now === recorded, `half a file of ${now.length} characters`);
    }
  });

  it('leaves one whole file when two do it at once', async () => {
    const path = folder.write('a.ampwright.md', OLD);
    const bundle = await program();
    const codes = await Promise.all([1, 2, 3].map(() => started(process.execPath, [bundle, 'record', path])));
    assert.ok(codes.includes(0));
    assert.ok(codes.every((code) => code === 0 || code === 2));
    const { code, stdout } = await ampwright(['record', path]);
    assert.deepEqual([code, stdout], [0, `unchanged ${path}\n`]);
    assert.deepEqual(readdirSync(folder.path), ['a.ampwright.md']);
  });

  it('changes nothing and leaves nothing behind where no file may grow', async function () {
    if (process.platform === 'win32') this.skip();
    const path = folder.write('a.ampwright.md', OLD);
    const code = await started('bash', ['-c', `ulimit -f 4; exec "$0" "$@"`, process.execPath, await program(), 'record', path]);
    assert.notEqual(code, 0);
    assert.equal(readFileSync(path, 'utf8'), OLD);
    assert.deepEqual(readdirSync(folder.path), ['a.ampwright.md']);
  });
});

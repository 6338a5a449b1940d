// `ampwright verify` over folders with many sheets, whose work threads share.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { ampwright, program } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

interface Verified {
  readonly sheets: readonly { readonly sheet: string; readonly findings: readonly { readonly code: string }[] }[];
}

describe('verify, many sheets', function () {
  this.timeout(60_000);
  const folder = temporaryFolder();
  const count = 90;
  const path = (i: number) => `mill/floor-${i % 3}/motor-${String(i).padStart(3, '0')}.ampwright.md`;
  const sheet = (i: number) => `# M\n\n\`\`\`ampwright\nI = ${i} A from plate "M"\nshall I <= 45 A\n\`\`\`\n`;
  beforeEach(() => {
    for (let i = 0; i < count; i++) folder.write(path(i), sheet(i));
    folder.write(path(50), Uint8Array.of(0xff, 0x0a));
  });

  const run = (...args: string[]) => ampwright(['verify', ...args, '--on', '2026-12-01'], { cwd: folder.path });

  it('answers in the order of the paths, a file that is no sheet among them, and as each sheet alone', async () => {
    const { code, stdout, stderr } = await run('mill', '--format', 'json');
    assert.deepEqual([code, stderr], [2, '']);
    const { sheets } = JSON.parse(stdout) as Verified;
    const paths = Array.from({ length: count }, (_, i) => path(i)).sort();
    assert.deepEqual(
      sheets.map((one) => one.sheet),
      paths,
    );
    assert.deepEqual(sheets.filter(({ findings }) => findings.some((f) => f.code === 'requirement-fails')).length, 89 - 45 - 1);
    // So few sheets that one thread does them.
    for (const from of [0, 15, 75]) {
      const few = paths.slice(from, from + 15);
      const alone = JSON.parse((await run(...few, '--format', 'json')).stdout) as Verified;
      assert.deepEqual(
        alone.sheets,
        sheets.filter((one) => few.includes(one.sheet)),
      );
    }
  });

  it('gives the same bytes each time, in every form', async () => {
    for (const format of ['text', 'json', 'sarif', 'junit', 'github']) {
      const [first, second] = [await run('mill', '--format', format), await run('mill', '--format', format)];
      assert.deepEqual(first, second);
    }
  });

  it('shows no progress where nobody watches', async () => {
    assert.equal((await run('mill')).stderr, '');
  });

  // `script` gives its child a terminal.
  const onTerminal = existsSync('/usr/bin/script') ? it : it.skip;
  onTerminal('counts the sheets on a terminal, and takes the line away before it answers', async () => {
    for (let i = count; i < 400; i++) folder.write(path(i), sheet(i).repeat(5));
    const command = `"${process.execPath}" "${await program()}" verify mill --format junit --on 2026-12-01`;
    const { stdout } = spawnSync('/usr/bin/script', ['-qec', command, '/dev/null'], {
      cwd: folder.path,
      env: { TERM: 'xterm', PATH: process.env['PATH'] ?? '' },
      encoding: 'utf8',
      maxBuffer: 1 << 26,
    });
    assert.match(stdout, /\r\u001b\[K.*\d+ sheets/);
    assert.match(stdout, /\r\u001b\[K<\?xml /);
  });
});

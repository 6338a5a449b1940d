// What happens where there is no room, in a file's folder or on standard output: it says so, and what was there is as it was.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { ampwright, program } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const SHEET = 's.ampwright.md';
const ENTRIES = Array.from({ length: 300 }, (_, i) => `x_${i}: V = ${i} V + 1 V`).join('\n');
const TEXT = `# Long sheet, invented\n\n\`\`\`ampwright\nU = 1 V from plate "M-12"\n${ENTRIES}\n\`\`\`\n`;
const ROWS = `U / V\n${Array.from({ length: 100 }, (_, i) => i).join('\n')}\n`;

const WRITINGS: readonly (readonly [file: string, refusal: string, command: readonly string[]])[] = [
  [SHEET, 'was not written', ['record', SHEET]],
  [SHEET, 'was not signed', ['sign', SHEET, '--role', 'checked', '--name', 'R. Osei', '--on', '2026-11-20']],
  ['out.html', 'was not written', ['export', SHEET, '--to', 'html', '--out', 'out.html']],
  ['out.csv', 'was not written', ['batch', SHEET, '--rows', 'rows.csv', '--out', 'out.csv']],
];

/** Copies the files of the folder onto a disk of its own, fills that, runs the command there, and lists what is on it then. */
const ON_A_FULL_DISK = `
mount -t tmpfs -o size=512k full disk && cp *.* disk && cd disk || exit
cat /dev/zero > fill 2> /dev/null
echo mounted; "$0" "$@"; echo "code $?"
rm fill; ls -A; cat *`;

describe('where there is no room', function () {
  this.timeout(120_000);
  const folder = temporaryFolder();
  const contents = () => readdirSync(folder.path).map((name) => [name, readFileSync(folder.at(name), 'utf8')]);
  const errors = (stderr: string) => stderr.split('\n').filter((line) => line.startsWith('error:'));

  async function prepare(command: readonly string[]): Promise<void> {
    folder.write(SHEET, TEXT);
    if (command[0] === 'sign') await ampwright(['record', SHEET], { cwd: folder.path });
    folder.write('rows.csv', ROWS);
    folder.write('out.html', 'old\n');
    folder.write('out.csv', 'old\n');
  }

  for (const [file, refusal, command] of WRITINGS) {
    it(`${command[0]} changes nothing and leaves nothing behind where no file may grow`, async function () {
      if (process.platform === 'win32') return this.skip();
      await prepare(command);
      const before = contents();
      const limited = ['-c', 'ulimit -f 4; exec "$0" "$@"', process.execPath, await program(), ...command];
      const { status, stdout, stderr } = spawnSync('bash', limited, { cwd: folder.path, encoding: 'utf8' });
      assert.deepEqual([status, stdout], [2, '']);
      assert.deepEqual(errors(stderr), [`error: ${file} ${refusal}: it would be larger than a file may be here`]);
      assert.deepEqual(contents(), before);
    });

    it(`${command[0]} changes nothing and leaves nothing behind where the disk is full`, async function () {
      await prepare(command);
      const here = contents();
      const own = process.getuid?.() === 0 ? ['--mount'] : ['--map-root-user', '--mount'];
      mkdirSync(folder.at('disk'));
      const run = [...own, '--', 'sh', '-c', ON_A_FULL_DISK, process.execPath, await program(), ...command];
      const { stdout, stderr, error } = spawnSync('unshare', run, { cwd: folder.path, encoding: 'utf8' });
      if (error || !stdout.startsWith('mounted\n')) {
        console.log(`      no disk to fill: ${error?.message ?? stderr.trim()}`);
        return this.skip();
      }
      assert.equal(stdout, `mounted\ncode 2\n${here.map(([name]) => `${name}\n`).join('')}${here.map(([, text]) => text).join('')}`);
      assert.deepEqual(errors(stderr), [`error: ${file} ${refusal}: the disk is full`]);
    });
  }

  const full = spawnSync('sh', ['-c', 'test -c /dev/full']).status === 0 ? it : it.skip;
  const PRINTING: readonly (readonly string[])[] = [
    ['evaluate', SHEET],
    ['verify', SHEET],
    ['export', SHEET, '--to', 'html'],
    ['batch', SHEET, '--rows', 'rows.csv'],
    ['functions'],
  ];
  for (const command of PRINTING) {
    full(`${command[0]} says that standard output takes no more, and ends with 2`, async () => {
      await prepare(command);
      const run = ['-c', 'exec "$0" "$@" > /dev/full', process.execPath, await program(), ...command];
      const { status, stderr } = spawnSync('sh', run, { cwd: folder.path, encoding: 'utf8' });
      assert.equal(status, 2);
      assert.deepEqual(errors(stderr), ['error: standard output: the disk is full']);
      assert.doesNotMatch(stderr, /\n {4}at /);
    });
  }

  full('ends with 2 where not even the error can be told', async () => {
    const run = ['-c', 'exec "$0" "$@" 2> /dev/full', process.execPath, await program(), 'evaluate', 'nowhere.ampwright.md'];
    assert.equal(spawnSync('sh', run, { cwd: folder.path }).status, 2);
  });
});

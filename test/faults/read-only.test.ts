// What happens where a file, or the folder in which it is to be made, is read-only: it says so, and nothing is changed or left behind.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { chmodSync, copyFileSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { ampwright, program } from '../support/program.ts';
import { WAYS, type Way, whyNot } from '../support/read-only.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const SHEET = 's.ampwright.md';
const TEXT = '# Starter, invented\n\n```ampwright\nU = 230 V from plate "M-12"\nV = 2 * U\n```\n';
const AS_CHECKED = ['--role', 'checked', '--name', 'R. Osei', '--on', '2026-11-20'];

interface Writing {
  readonly name: string;
  readonly command: readonly string[];
  readonly file: string;
  readonly said: string;
}

const WRITINGS: readonly Writing[] = [
  { name: 'record', command: ['record', SHEET], file: SHEET, said: 'was not written' },
  { name: 'sign', command: ['sign', SHEET, ...AS_CHECKED], file: SHEET, said: 'was not signed' },
  { name: 'export', command: ['export', SHEET, '--to', 'html', '--out', 'out.html'], file: 'out.html', said: 'was not written' },
  { name: 'batch', command: ['batch', SHEET, '--rows', 'rows.csv', '--out', 'out.csv'], file: 'out.csv', said: 'was not written' },
];

describe('where nothing may be written', function () {
  this.timeout(120_000);
  const folder = temporaryFolder();
  const work = () => folder.at('work');
  const contents = () =>
    Object.fromEntries(
      readdirSync(work())
        .sort()
        .map((name) => [name, readFileSync(folder.at(`work/${name}`), 'utf8')]),
    );

  /** A folder that anyone may write in, with a sheet as `command` wants it, rows, and an old file in the place of a new one. */
  async function prepare({ name, file }: Writing, old: boolean): Promise<void> {
    mkdirSync(work());
    chmodSync(folder.path, 0o755);
    chmodSync(work(), 0o777);
    folder.write(`work/${SHEET}`, TEXT);
    if (name === 'sign') await ampwright(['record', SHEET], { cwd: work() });
    folder.write('work/rows.csv', 'U / V\n1\n2\n');
    if (old && file !== SHEET) folder.write(`work/${file}`, 'old\n');
    for (const there of readdirSync(work())) chmodSync(folder.at(`work/${there}`), 0o666);
    // Whoever may read nothing of ours may read the program here.
    mkdirSync(folder.at('program'));
    copyFileSync(await program(), folder.at('program/cli.js'));
    folder.write('program/package.json', '{ "type": "module" }\n');
  }

  /** Runs the command where `path` is read-only; null, and says why, where that can't be had on this machine. */
  function refusal(way: Way, path: string, command: readonly string[]): string | null {
    const before = contents();
    way.before(path);
    try {
      const not = whyNot(way, path, path === work());
      if (not !== null) {
        console.log(`      not read-only ${way.name}: ${not}`);
        return null;
      }
      const [first, ...rest] = way.inside(path, [process.execPath, folder.at('program/cli.js'), ...command]);
      const { status, stdout, stderr } = spawnSync(first!, rest, { cwd: work(), encoding: 'utf8' });
      assert.equal(status, 2, stderr);
      assert.equal(stdout, '');
      assert.deepEqual(contents(), before);
      return stderr.split('\n').filter((line) => line.startsWith('error:')).join('\n'); // biome-ignore format: one step
    } finally {
      way.after(path);
    }
  }

  for (const way of WAYS) {
    for (const writing of WRITINGS) {
      it(`${writing.name} leaves a file that is read-only ${way.name}`, async function () {
        await prepare(writing, true);
        const said = refusal(way, folder.at(`work/${writing.file}`), writing.command);
        if (said === null) return this.skip();
        assert.equal(said, `error: ${writing.file} ${writing.said}: it is read-only`);
      });

      it(`${writing.name} makes nothing in a folder that is read-only ${way.name}`, async function () {
        await prepare(writing, false);
        const said = refusal(way, work(), writing.command);
        if (said === null) return this.skip();
        const because = /: (nothing may be written in its folder|it is read-only|the file system is read-only)$/;
        assert.equal(said.replace(because, ''), `error: ${writing.file} ${writing.said}`);
      });
    }
  }
});

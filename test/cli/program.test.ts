// The command line from outside: what each command prints, and the code it ends with.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, existsSync, mkdirSync, readdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { golden } from '../support/golden.ts';
import { readPdf } from '../support/pdf-reader.ts';
import { ampwright, type Outcome, program } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const fixtures = join(import.meta.dirname, 'fixtures');

describe('the command line', function () {
  this.timeout(60_000);
  const folder = temporaryFolder();
  beforeEach(() => cpSync(fixtures, folder.path, { recursive: true }));

  const run = (args: string, env: Readonly<Record<string, string>> = {}) => ampwright(args.split(' '), { cwd: folder.path, env });
  /** Unrounded numbers are approved to ten digits: the last ones are the business of other tests. */
  const transcript = (args: string, { code, stdout, stderr }: Outcome) =>
    `$ ampwright ${args}\n--- exit code ${code}\n--- standard output\n${stdout}--- standard error\n${stderr}`
      .replaceAll(folder.path, '/folder')
      .replace(/\d+\.\d{11,}/g, (number) => Number(number).toPrecision(10));

  /** What a command prints is approved in test/cli/golden; its exit code stands here too. */
  const check = (name: string, args: string, code: number) =>
    it(`${name}: ${args}`, async () => {
      const outcome = await run(args);
      golden(join(import.meta.dirname, 'golden', `${name}.txt`), transcript(args, outcome));
      assert.equal(outcome.code, code);
    });

  describe('prints', () => {
    check('help', '--help', 0);
    check('help-verify', 'verify --help', 0);
    check('evaluate', 'evaluate sizing.ampwright.md', 0);
    check('evaluate-failing', 'evaluate failing.ampwright.md', 0);
    check('evaluate-errors', 'evaluate errors.ampwright.md', 2);
    check('evaluate-json', 'evaluate errors.ampwright.md --json', 2);
    check('verify', 'verify . --on 2026-12-01', 2);
    check('verify-failing', 'verify failing.ampwright.md --on 2026-12-01', 1);
    check('verify-json', 'verify failing.ampwright.md --on 2026-12-01 --require checked --format json', 1);
    check('record', 'record sizing.ampwright.md errors.ampwright.md', 2);
    check('export-csv', 'export sizing.ampwright.md --to csv', 0);
  });

  describe('refuses', () => {
    check('unknown-command', 'evalute sizing.ampwright.md', 2);
    check('unknown-option', 'evaluate sizing.ampwright.md --jsn', 2);
    check('no-sheet', 'evaluate', 2);
    check('missing-file', 'evaluate nowhere.ampwright.md', 2);
    check('a-folder', 'evaluate .', 2);
    check('bad-day', 'verify . --on 2026-02-30', 2);
    check('bad-part', 'verify . --part 3/2', 2);
    check('bad-format', 'export sizing.ampwright.md --to docx', 2);
    check('nothing-to-verify', 'verify nowhere', 2);
    check('unknown-function', 'functions fla_3hp', 2);
  });

  describe('record', () => {
    it('writes results and values in prose; then verify finds nothing, and recording again changes nothing', async () => {
      assert.equal((await run('record sizing.ampwright.md')).code, 0);
      const text = readFileSync(folder.at('sizing.ampwright.md'), 'utf8');
      golden(join(import.meta.dirname, 'golden', 'sizing-recorded.ampwright.md'), text);
      assert.equal((await run('verify sizing.ampwright.md')).code, 0);
      const before = statSync(folder.at('sizing.ampwright.md')).mtimeMs;
      assert.equal((await run('record sizing.ampwright.md')).stdout, 'unchanged sizing.ampwright.md\n');
      assert.equal(statSync(folder.at('sizing.ampwright.md')).mtimeMs, before);
    });

    it('finds a result that was changed by hand', async () => {
      await run('record sizing.ampwright.md');
      const path = folder.at('sizing.ampwright.md');
      writeFileSync(path, readFileSync(path, 'utf8').replace('| 34.40 A', '| 33.40 A'));
      const { code, stdout } = await run('verify sizing.ampwright.md');
      assert.equal(code, 1);
      assert.match(stdout, /results-stale/);
    });

    it('finds a value in prose that is no longer so', async () => {
      await run('record sizing.ampwright.md');
      const path = folder.at('sizing.ampwright.md');
      writeFileSync(path, readFileSync(path, 'utf8').replace('[34.40 A](#I_n)', '[33 A](#I_n)'));
      const { code, stdout } = await run('verify sizing.ampwright.md');
      assert.equal(code, 1);
      assert.match(stdout, /value-stale/);
    });

    it('keeps line ends, byte order mark and a missing last line end', async () => {
      const before = `\ufeff${readFileSync(folder.at('sizing.ampwright.md'), 'utf8').trimEnd().replaceAll('\n', '\r\n')}`;
      writeFileSync(folder.at('sizing.ampwright.md'), before);
      assert.equal((await run('record sizing.ampwright.md')).code, 0);
      const after = readFileSync(folder.at('sizing.ampwright.md'), 'utf8');
      assert.ok(after.startsWith('\ufeff---\r\n'));
      assert.ok(!/[^\r]\n/.test(after) && !after.endsWith('\n'));
      const without = after.replace(/\r\n\r\n<!-- results -->[\s\S]*?<!-- end results -->/g, '').replace('[34.40 A]', '[? A]');
      assert.equal(without, before);
    });

    it('refuses a read-only file and leaves it as it is', async () => {
      const path = folder.at('sizing.ampwright.md');
      const before = readFileSync(path, 'utf8');
      chmodSync(path, 0o444);
      const { code, stderr } = await run('record sizing.ampwright.md');
      assert.equal(code, 2);
      assert.match(stderr, /sizing\.ampwright\.md was not written: it is read-only/);
      assert.equal(readFileSync(path, 'utf8'), before);
    });

    it('refuses bytes that are not UTF-8 and goes on with the other sheets', async () => {
      const bytes = Uint8Array.of(0x23, 0x20, 0xff, 0x0a);
      writeFileSync(folder.at('bytes.ampwright.md'), bytes);
      const { code, stdout, stderr } = await run('record bytes.ampwright.md sizing.ampwright.md');
      assert.equal(code, 2);
      assert.match(stderr, /bytes\.ampwright\.md: byte 3 \(line 1\) is not UTF-8/);
      assert.equal(stdout, 'recorded sizing.ampwright.md\n');
      assert.deepEqual(new Uint8Array(readFileSync(folder.at('bytes.ampwright.md'))), bytes);
    });

    it('does not write a sheet in which a merge left its conflict', async () => {
      const path = folder.write('merge.ampwright.md', '# M\n\n<<<<<<< ours\na\n=======\nb\n>>>>>>> theirs\n\n```ampwright\nx = 1 V\n```\n');
      const before = readFileSync(path, 'utf8');
      const { code, stderr } = await run('record merge.ampwright.md');
      assert.equal(code, 2);
      assert.match(stderr, /merge\.ampwright\.md was not written: choose a side in the conflict first/);
      assert.equal(readFileSync(path, 'utf8'), before);
    });

    it('leaves no file of its own behind', async () => {
      const before = readdirSync(folder.path);
      await run('record sizing.ampwright.md failing.ampwright.md errors.ampwright.md');
      assert.deepEqual(readdirSync(folder.path), before);
    });
  });

  describe('functions', () => {
    it('lists the library by its sheets, then the mathematics, with forms and descriptions', async () => {
      const { code, stdout } = await run('functions');
      assert.equal(code, 0);
      assert.match(stdout, /^motors\n {2}fla_3ph\(P: kW, U: V, eta, pf\): A +\S/);
      assert.match(stdout, /\nmathematics\n(?: .*\n)* {2}interpolate\(/);
    });

    it('explains one: formula, limits with their reasons, source, example', async () => {
      const { stdout } = await run('functions fla_3ph');
      assert.match(stdout, /^fla_3ph\(P: kW, U: V, eta, pf\): A\n/);
      assert.match(stdout, / {2}formula {3}P \/ \(√3 \* U \* eta \* pf\)\n/);
      assert.match(stdout, /\n {2}needs .*\n(?: .*\n)* {12}0 < eta <= 1 because "/);
      assert.match(stdout, /\n {2}source {4}\w+ "/);
      assert.match(stdout, /\n {2}example {3}fla_3ph\(18\.5 kW, 400 V, 92\.4 %, 0\.84\) = 34\.40 A\n/);
    });

    it('of a word that is none lists those that speak of it', async () => {
      const { code, stdout, stderr } = await run('functions torque');
      assert.equal(code, 2);
      assert.match(stderr, /there is no function torque; these speak of it:/);
      assert.match(stdout, /^motors\n {2}shaft_torque\(P: kW, n: rpm\): N·m +\S/);
      assert.doesNotMatch(stdout, /fla_3ph/);
    });

    it('gives all of them as JSON, none without description, formula, source and example', async () => {
      const all = JSON.parse((await run('functions --json')).stdout) as Record<string, unknown>[];
      const fields = ['name', 'library', 'form', 'parameters', 'result', 'formula', 'needs', 'source', 'description', 'example'];
      assert.ok(all.length > 40);
      for (const one of all) {
        assert.deepEqual(Object.keys(one), fields);
        for (const field of ['form', 'formula', 'source', 'description', 'example'])
          assert.ok(one[field], `${one['name']} has no ${field}`);
      }
      assert.deepEqual(
        all.filter((f) => f['name'] === 'fla_3ph').map((f) => [f['library'], f['parameters'], f['result']]),
        [
          [
            'motors',
            [
              { name: 'P', unit: 'kW' },
              { name: 'U', unit: 'V' },
              { name: 'eta', unit: '1' },
              { name: 'pf', unit: '1' },
            ],
            'A',
          ],
        ],
      );
      assert.ok(all.some((f) => f['name'] === 'sqrt' && f['library'] === null));
    });
  });

  describe('verify', () => {
    it('splits the work so that the parts together are all sheets', async () => {
      const sheets = async (part: string) => {
        const { stdout } = await run(`verify . --format json --on 2026-12-01 --part ${part}`);
        return (JSON.parse(stdout) as { sheets: { sheet: string }[] }).sheets.map((s) => s.sheet);
      };
      const parts = [...(await sheets('1/2')), ...(await sheets('2/2'))];
      assert.deepEqual(parts.sort(), ['errors.ampwright.md', 'failing.ampwright.md', 'sizing.ampwright.md']);
      assert.deepEqual((await sheets('1/2')).length, 2);
    });

    it('asks for signatures where it is told to', async () => {
      await run('record sizing.ampwright.md');
      assert.equal((await run('verify sizing.ampwright.md')).code, 0);
      const { code, stdout } = await run('verify sizing.ampwright.md --require checked');
      assert.equal(code, 1);
      assert.match(stdout, /nobody has signed as checked/);
      const both = await run('verify --require checked --require approved sizing.ampwright.md');
      assert.match(both.stdout, /nobody has signed as checked[\s\S]*nobody has signed as approved/);
    });

    it('goes on behind a file that is no sheet', async () => {
      writeFileSync(folder.at('bytes.ampwright.md'), Uint8Array.of(0xff));
      await run('record sizing.ampwright.md');
      const { code, stdout } = await run('verify bytes.ampwright.md sizing.ampwright.md');
      assert.equal(code, 2);
      assert.match(stdout, /ok\s+sizing\.ampwright\.md/);
    });
  });

  describe('export', () => {
    it('writes the page whole, and says where it lies', async () => {
      const { code, stdout } = await run('export sizing.ampwright.md --to html --out page.html');
      assert.equal(code, 0);
      assert.equal(stdout, `exported ${folder.at('page.html')}\n`);
      const page = readFileSync(folder.at('page.html'), 'utf8');
      assert.match(page, /^<!doctype html>/i);
      assert.match(page, /34\.40/);
      assert.doesNotMatch(page, /<script|https?:\/\/(?!www\.w3\.org)/);
    });

    it('writes a pdf, which says in which repository its changes are', async () => {
      const packages = { NODE_PATH: resolve(import.meta.dirname, '../../node_modules') };
      const { code, stdout } = await run('export sizing.ampwright.md --to pdf --paper letter --out sheet.pdf', packages);
      assert.equal(code, 0);
      assert.equal(stdout, `exported ${folder.at('sheet.pdf')}\n`);
      const { pages } = await readPdf(readFileSync(folder.at('sheet.pdf')));
      assert.deepEqual(pages[0]?.size, [612, 792]);
      assert.match(pages.map(({ text }) => text).join(' '), /The changes of this sheet are not known: its file is in no git repository\./);
    });

    it('says which package a pdf lacks, and writes nothing', async () => {
      const { code, stderr } = await run('export sizing.ampwright.md --to pdf --out sheet.pdf');
      assert.equal(code, 2);
      assert.match(stderr, /not exported: the package @myriaddreamin\/typst-ts-node-compiler is missing.*npm install/);
      assert.ok(!existsSync(folder.at('sheet.pdf')));
    });

    it('does not write over the sheet', async () => {
      symlinkSync('sizing.ampwright.md', folder.at('page.html'));
      const before = readFileSync(folder.at('sizing.ampwright.md'), 'utf8');
      const { code, stderr } = await run('export sizing.ampwright.md --to html --out page.html');
      assert.equal(code, 2);
      assert.match(stderr, /it is the sheet itself/);
      assert.equal(readFileSync(folder.at('sizing.ampwright.md'), 'utf8'), before);
    });

    it('says that a folder is not there', async () => {
      const { code, stderr } = await run('export sizing.ampwright.md --to csv --out no/page.csv');
      assert.equal(code, 2);
      assert.match(stderr, /no\/page\.csv was not written: its folder is not there/);
    });
  });

  it('has no colour where output is no terminal, whatever NO_COLOR says', async () => {
    for (const env of [{}, { NO_COLOR: '1' }, { NO_COLOR: '' }] as readonly Record<string, string>[]) {
      const { stdout, stderr } = await run('evaluate errors.ampwright.md', env);
      assert.doesNotMatch(stdout + stderr, /\u001b/);
    }
  });

  // `script` gives its child a terminal.
  const onTerminal = existsSync('/usr/bin/script') ? it : it.skip;
  onTerminal('has colour on a terminal, unless NO_COLOR is set', async () => {
    const command = `"${process.execPath}" "${await program()}" evaluate failing.ampwright.md`;
    const shown = (env: Readonly<Record<string, string>>) =>
      spawnSync('/usr/bin/script', ['-qec', command, '/dev/null'], { cwd: folder.path, env: { TERM: 'xterm', ...env }, encoding: 'utf8' })
        .stdout;
    assert.match(shown({}), /\u001b\[31mfails/);
    assert.doesNotMatch(shown({ NO_COLOR: '1' }), /\u001b\[\d+m/);
    assert.doesNotMatch(shown({ TERM: 'dumb' }), /\u001b\[\d+m/);
  });

  it('ends quietly where its reader has gone', async () => {
    const shell = spawnSync('sh', ['-c', `"${process.execPath}" "${await program()}" functions --json | head -n 1`], { encoding: 'utf8' });
    assert.deepEqual([shell.stdout, shell.stderr], ['[\n', '']);
  });

  describe('stands', () => {
    /** What is wrong is told at its place, and the entry beside it has its value. */
    const nasty = (name: string, code: string, said: RegExp) =>
      it(name, async () => {
        folder.write('nasty.ampwright.md', `# N\n\n\`\`\`ampwright\nbad = ${code}\ngood = 2 V * 3 from plate "M"\n\`\`\`\n`);
        const { code: ended, stdout, stderr } = await run('evaluate nasty.ampwright.md');
        assert.equal(ended, 2);
        assert.match(stderr, said);
        assert.ok(stderr.length < 20_000, 'a long line is quoted in part');
        assert.match(stdout, /good +6\.000 V/);
      });

    nasty('10,000 nested brackets', `${'('.repeat(10_000)}1${')'.repeat(10_000)}`, /nasty\.ampwright\.md:4:\d+: error: /);
    nasty('a line of a megabyte', `${'1 + '.repeat(250_000)}I_m`, /nasty\.ampwright\.md:4:\d+: error: `I_m` is not defined/);
    nasty('a megabyte of what no line begins with', '§'.repeat(1_000_000), /nasty\.ampwright\.md:4:\d+: error: /);
  });

  it('works from any directory', async () => {
    mkdirSync(folder.at('elsewhere'));
    const outcome = await ampwright(['evaluate', '../sizing.ampwright.md'], { cwd: folder.at('elsewhere') });
    assert.deepEqual(outcome, await run('evaluate sizing.ampwright.md'));
    assert.equal((await ampwright(['evaluate', folder.at('sizing.ampwright.md')], { cwd: resolve('/') })).code, 0);
  });
});

// `ampwright batch`: the real program on files and pipes.
import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { copyFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { golden } from '../support/golden.ts';
import { ampwright, type Outcome, program } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const SHEET = `# Starter

\`\`\`ampwright
P_n = 18.5 kW from plate "M-12"
U_n = 400 V from plate "M-12"
I_n: A = P_n / (sqrt(3) * U_n * 0.8)
shall I_n <= 40 A because "the contactor"
\`\`\`
`;

describe('batch', function () {
  this.timeout(60_000);
  const folder = temporaryFolder();
  const run = (rows: string, ...more: readonly string[]): Promise<Outcome> => {
    folder.write('s.ampwright.md', SHEET);
    folder.write('rows.csv', rows);
    return ampwright(['batch', 's.ampwright.md', '--rows', 'rows.csv', ...more], { cwd: folder.path });
  };

  it('writes one row for one row, in order, as a table that reads back', async () => {
    const numbers = Array.from({ length: 3000 }, (_, i) => 1 + (i % 20));
    const { code, stderr } = await run(`tag,P_n / kW\n${numbers.map((P, i) => `M-${i},${P}`).join('\n')}\n`, '--out', 'out.csv');
    assert.equal(code, 0, stderr);
    const written: Record<string, string>[] = parse(readFileSync(join(folder.path, 'out.csv'), 'utf8'), { columns: true });
    assert.deepEqual(
      written.map((row) => row['tag']),
      numbers.map((_, i) => `M-${i}`),
    );
    assert.ok(written.every((row, i) => Math.abs(Number(row['I_n / A']) - (numbers[i]! * 1000) / (Math.sqrt(3) * 400 * 0.8)) < 1e-9));
    assert.match(stderr, /3,000 rows: 3,000 hold/);
  });

  const ends: readonly (readonly [name: string, rows: string, code: number, said: RegExp])[] = [
    ['1 where a `shall` fails', 'P_n / kW\n18.5\n30\n', 1, /2 rows: 1 hold, 1 fail/],
    ['2 where a row has an error, and goes on', 'P_n / kW\nabc\n18.5\n', 2, /2 rows: 1 hold, 1 with an error/],
    ['2 where a row is ragged, and goes on', 'tag,P_n / kW\nM\nN,18.5\n', 2, /row 1 \(M\): the row has 1 field/],
    ['2 where a head has the wrong unit', 'P_n / A\n1\n', 2, /found A, the sheet wants kW/],
    ['2 where there is nothing', '', 2, /rows\.csv/],
    ['2 where columns are separated otherwise', 'tag;P_n / kW\nM;1\n', 2, /comma/],
    ['2 where a quotation mark is never closed', 'tag,P_n / kW\n"M,18.5\n', 2, /quotation mark in row 1 is never closed/],
  ];
  for (const [name, rows, code, said] of ends) {
    it(`ends with ${name}`, async () => {
      const outcome = await run(rows);
      assert.equal(outcome.code, code, outcome.stdout + outcome.stderr);
      assert.match(outcome.stderr, said);
      assert.doesNotMatch(outcome.stderr, /mistake in Ampwright/);
    });
  }

  it('reads from standard input and writes to standard output, so that a file may be cut and put together again', async () => {
    folder.write('s.ampwright.md', SHEET);
    const rows = Array.from({ length: 40 }, (_, i) => `${1 + i / 10}`);
    const piped = async (part: readonly string[]) => {
      const input = `P_n / kW\n${part.join('\n')}\n`;
      const { stdout } = await ampwright(['batch', 's.ampwright.md', '--rows', '-'], { cwd: folder.path, input });
      return stdout;
    };
    const whole = await piped(rows);
    const [first, second] = [await piped(rows.slice(0, 20)), await piped(rows.slice(20))];
    assert.equal(first + second.slice(second.indexOf('\n') + 1), whole);
  });

  it('says in one line where the file of the rows is not there, or is a folder', async () => {
    folder.write('s.ampwright.md', SHEET);
    const said = async (rows: string) => {
      const { code, stderr } = await ampwright(['batch', 's.ampwright.md', '--rows', rows], { cwd: folder.path });
      return `${code} ${stderr}`;
    };
    assert.equal(await said('nowhere.csv'), '2 error: nowhere.csv: there is no such file or folder\n');
    assert.equal(await said('.'), '2 error: .: it is a folder; name a file in it\n');
  });

  it('does not write over the sheet or over the rows', async () => {
    for (const out of ['s.ampwright.md', 'rows.csv']) {
      const { code, stderr } = await run('P_n / kW\n18.5\n', '--out', out);
      assert.equal(code, 2);
      assert.match(stderr, /was not written/);
    }
    assert.equal(readFileSync(join(folder.path, 's.ampwright.md'), 'utf8'), SHEET);
  });

  it('leaves an old output where the rows turn out to be no CSV', async () => {
    folder.write('out.csv', 'old\n');
    const { code } = await run('tag,P_n / kW\nM,1\n"N,2\n', '--out', 'out.csv');
    assert.equal(code, 2);
    assert.equal(readFileSync(join(folder.path, 'out.csv'), 'utf8'), 'old\n');
  });

  it('answers the rows of a fixture as approved, bad ones told and counted', async () => {
    copyFileSync('test/cli/batch-fixtures/rows.ampwright.md', folder.at('rows.ampwright.md'));
    copyFileSync('test/cli/batch-fixtures/rows.csv', folder.at('rows.csv'));
    const { code, stdout, stderr } = await ampwright(['batch', 'rows.ampwright.md', '--rows', 'rows.csv'], { cwd: folder.path });
    golden('test/cli/golden/rows-calculated.csv', stdout);
    golden('test/cli/golden/rows-calculated.txt', stderr);
    assert.equal(code, 2);
  });

  it('writes no formula of a row for a spreadsheet, and is the same once more', async () => {
    const texts = ['=1+1', '-1', '-1+cmd', '@SUM(A1)', '+44', "'=1", '- spare', '-', 'M-12'];
    const first = await run(`tag,P_n / kW\n${texts.map((text) => `${text},4`).join('\n')}\n`, '--out', 'first.csv');
    assert.equal(first.code, 0, first.stderr);
    const tags = (file: string) =>
      (parse(readFileSync(folder.at(file), 'utf8'), { columns: true }) as { tag: string }[]).map((row) => row.tag);
    assert.deepEqual(tags('first.csv'), ["'=1+1", '-1', "'-1+cmd", "'@SUM(A1)", '+44', "'=1", "'- spare", '-', 'M-12']);
    const own = readFileSync(folder.at('first.csv'), 'utf8').split('\n').map((line) => line.split(',').slice(0, 2).join(',')); // biome-ignore format: one step
    const again = await run(own.join('\n'), '--out', 'again.csv');
    assert.equal(again.code, 0, again.stderr);
    assert.deepEqual(tags('again.csv'), tags('first.csv'));
    folder.write(
      'r.ampwright.md',
      'Table sized — [Sized](first.csv) from calculation "x"\n\n```ampwright\nn = the P_n of sized where tag is "=1+1"\n```\n',
    );
    const read = await ampwright(['evaluate', 'r.ampwright.md', '--json'], { cwd: folder.path });
    assert.equal(JSON.parse(read.stdout).entries[0].text, '4 kW', read.stderr);
  });

  it('writes what another sheet reads as a table', async () => {
    copyFileSync('test/cli/batch-fixtures/rows.ampwright.md', folder.at('rows.ampwright.md'));
    const [heads, ...rows] = readFileSync('test/cli/batch-fixtures/rows.csv', 'utf8').split('\n');
    folder.write('rows.csv', [heads, ...rows.slice(0, 4), ''].join('\n'));
    await ampwright(['batch', 'rows.ampwright.md', '--rows', 'rows.csv', '--out', 'sized.csv'], { cwd: folder.path });
    const register = `Table sized — [The mill's motors](sized.csv) from calculation "sizing sheet"

\`\`\`ampwright
n = count(sized)
largest = greatest I_n of sized
loose = first of sized where K is "K4"
widest: A = max(sized.U_of_I_n)
total: kW = sum(sized.P_n)
refused = first of sized where shall_R_a_at_most_0_5_mohm_or_spare is "fails"
shall U_c >= 95 V for each sized
\`\`\`
`;
    folder.write('register.ampwright.md', register);
    const { code, stdout, stderr } = await ampwright(['evaluate', 'register.ampwright.md', '--json'], { cwd: folder.path });
    assert.equal(code, 0, stderr);
    const { entries, requirements, diagnostics } = JSON.parse(stdout);
    assert.deepEqual(diagnostics, []);
    assert.deepEqual(
      entries.map((e: { name: string; text: string }) => `${e.name} = ${e.text}`),
      ['n = 4', 'largest = M-14', 'loose = M-15', 'widest = 0.2942 A', 'total = 74.50 kW', 'refused = M-14'],
    );
    assert.deepEqual(
      requirements.map((r: { status: string }) => r.status),
      ['holds'],
    );
  });

  it('stands between other programs of a pipe, and ends quietly where the next one has enough', async () => {
    folder.write('s.ampwright.md', SHEET);
    folder.write('rows.csv', `tag,P_n / kW\n${Array.from({ length: 50_000 }, (_, i) => `M-${i},${1 + (i % 20)}`).join('\n')}\n`);
    const pipe = (line: string) =>
      spawnSync('bash', ['-o', 'pipefail', '-c', line], { cwd: folder.path, encoding: 'utf8', maxBuffer: 1 << 28 });
    const batch = `'${process.execPath}' '${await program()}' batch s.ampwright.md --rows -`;
    const whole = pipe(`cat rows.csv | ${batch} | tail -n +2 | wc -l`);
    assert.deepEqual([whole.status, whole.stdout.trim()], [0, '50000'], whole.stderr);
    const some = pipe(`cat rows.csv | ${batch} | head -n 2`);
    assert.deepEqual(
      some.stdout.split('\n').map((line) => line.split(',')[0]),
      ['tag', 'M-0', ''],
    );
    assert.doesNotMatch(some.stderr, /EPIPE|mistake in Ampwright/);
  });

  it('is split by GNU parallel as README.md has it, where that is installed', async function () {
    if (spawnSync('bash', ['-c', 'parallel --version']).status !== 0) this.skip();
    folder.write('starter.ampwright.md', SHEET);
    folder.write('motors.csv', `tag,P_n / kW\n${Array.from({ length: 25_000 }, (_, i) => `M-${i},${1 + (i % 20)}`).join('\n')}\n`);
    const recipe = /^ {4}parallel .*?sized\.csv$/ms.exec(readFileSync('README.md', 'utf8'))![0];
    const command = recipe.replace('node dist/cli.js', `${process.execPath} ${await program()}`);
    const split = spawnSync('bash', ['-c', command], { cwd: folder.path, encoding: 'utf8' });
    assert.equal(split.status, 0, split.stderr);
    await ampwright(['batch', 'starter.ampwright.md', '--rows', 'motors.csv', '--out', 'whole.csv'], { cwd: folder.path });
    assert.equal(readFileSync(folder.at('sized.csv'), 'utf8'), readFileSync(folder.at('whole.csv'), 'utf8'));
  });

  it('runs over rows that would not fit into its memory', async () => {
    folder.write('s.ampwright.md', SHEET);
    const remark = 'kept as it came, '.repeat(12);
    folder.write(
      'rows.csv',
      `tag,P_n / kW,remark\n${Array.from({ length: 250_000 }, (_, i) => `M-${i},${1 + (i % 20)},"${remark}"`).join('\n')}\n`,
    );
    const { code, stderr } = await ampwright(['batch', 's.ampwright.md', '--rows', 'rows.csv', '--out', 'out.csv'], {
      cwd: folder.path,
      env: { NODE_OPTIONS: '--max-old-space-size=48' },
    });
    assert.equal(code, 0, stderr);
    assert.match(stderr, /250,000 rows: 250,000 hold/);
  });

  it('leaves an old output, and nothing beside it, where it is interrupted', async () => {
    folder.write('s.ampwright.md', SHEET);
    folder.write('out.csv', 'old\n');
    const child = spawn(process.execPath, [await program(), 'batch', 's.ampwright.md', '--rows', '-', '--out', 'out.csv'], {
      cwd: folder.path,
    });
    let said = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
    child.stdin.write('P_n / kW\n18.5\nabc\n18.5\n');
    try {
      // It has told of the second row, so it is in the middle of its work and waits for more.
      while (!said.includes('row 2')) await once(child.stderr, 'data', { signal: AbortSignal.timeout(30_000) });
      child.kill('SIGINT');
      const [code] = await once(child, 'close');
      assert.equal(code, 2, said);
    } finally {
      child.kill('SIGKILL');
    }
    assert.match(said, /interrupted; out\.csv was not written/);
    assert.equal(readFileSync(folder.at('out.csv'), 'utf8'), 'old\n');
    assert.deepEqual(readdirSync(folder.path).sort(), ['out.csv', 's.ampwright.md']);
  });
});

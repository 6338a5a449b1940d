// `ampwright batch`: the real program on files and pipes.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { ampwright, type Outcome } from '../support/program.ts';
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
});

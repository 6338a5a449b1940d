// How work grows with the text: steps are counted, so that the answer is the same on any machine. What a regular expression takes
// is one step here; test/regular-expressions.test.ts looks after those.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { bundled } from '../support/program.ts';

interface Counted {
  readonly stage: string;
  readonly shape: string;
  /** Steps on the text. */
  readonly once: number;
  /** Steps on the text of twice the length. */
  readonly twice: number;
}

/** A little more than twice: sorting takes n·log n. */
const MOST = 2.2;

describe('the steps from a text to its checked program, its results, view and page, to another name in it, and to what it was', function () {
  this.timeout(480_000);

  it('double with the text, whatever it is made of', async () => {
    const program = await bundled(join(import.meta.dirname, 'counting-program.ts'));
    // What V8 optimizes or throws away meanwhile it no longer counts; without that the counts are the same each time.
    const { stdout, stderr } = spawnSync(process.execPath, ['--no-opt', '--no-flush-bytecode', program], {
      encoding: 'utf8',
      maxBuffer: 1e8,
      timeout: 470_000,
    });
    assert.notEqual(stdout, '', stderr);
    const counted: readonly Counted[] = JSON.parse(stdout);
    assert.ok(counted.length > 300 && counted.every(({ once }) => once > 0), 'steps were counted');
    const grown = counted.filter(({ once, twice }) => twice > MOST * once);
    assert.deepEqual(
      grown.map(({ stage, shape, once, twice }) => `${stage}, ${shape}: ${once} steps became ${twice}`),
      [],
    );
  });
});

// The workflow and the git hook that come with the samples: they are what they say, and their commands do it.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { chmodSync, copyFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parse } from 'yaml';
import { program } from './support/program.ts';
import { testRepository } from './support/repository.ts';

interface Workflow {
  readonly on: Readonly<Record<string, unknown>>;
  readonly jobs: Readonly<
    Record<
      string,
      { readonly steps: readonly { readonly name?: string; readonly run?: string; readonly env?: Readonly<Record<string, string>> }[] }
    >
  >;
}

const samples = join(import.meta.dirname, '../samples/ci');
const sheet = (current: string, limit = '40 A') =>
  `# M\n\n\`\`\`ampwright\nI = ${current} from plate "M"\nx = 2 * I\nshall I <= ${limit}\n\`\`\`\n`;

describe('in continuous integration', function () {
  this.timeout(60_000);
  const repository = testRepository();
  const workflow = parse(readFileSync(join(samples, 'verify-sheets.yml'), 'utf8')) as Workflow;

  beforeEach(async () => {
    mkdirSync(repository.at('tools'));
    copyFileSync(await program(), repository.at('tools/ampwright.mjs'));
  });

  const ampwright = (...args: string[]) =>
    spawnSync(process.execPath, ['tools/ampwright.mjs', ...args], { cwd: repository.path, encoding: 'utf8' });

  /** Runs a step of the workflow as a runner does, with values for its expressions. */
  function runStep(name: string, values: Readonly<Record<string, string>>) {
    const step =
      Object.values(workflow.jobs)
        .flatMap(({ steps }) => steps)
        .find((one) => one.name === name) ?? assert.fail(`no step ${name}`);
    const filled = (text: string) =>
      text.replace(/\$\{\{ (.*?) \}\}/g, (_, key: string) => values[key] ?? assert.fail(`no value for ${key}`));
    const env = Object.fromEntries(Object.entries(step.env ?? {}).map(([key, value]) => [key, filled(value)]));
    const summary = repository.at('tools/summary.md');
    const { status, stdout } = spawnSync('bash', ['--noprofile', '--norc', '-eo', 'pipefail', '-c', filled(step.run!)], {
      cwd: repository.path,
      env: { PATH: `${dirname(process.execPath)}:${process.env['PATH']}`, GITHUB_STEP_SUMMARY: summary, ...env },
      encoding: 'utf8',
    });
    return { status, stdout, summary: existsSync(summary) ? readFileSync(summary, 'utf8') : '' };
  }

  it('the workflow runs on pull requests, on main, and each week', () => {
    assert.deepEqual(Object.keys(workflow.on), ['pull_request', 'push', 'schedule']);
  });

  it('its parts together verify every sheet, annotate findings and stop at them', () => {
    repository.commit('sheets', { 'a.ampwright.md': sheet('30 A'), 'mill/b c.ampwright.md': sheet('50 A') });
    ampwright('record', 'a.ampwright.md', 'mill/b c.ampwright.md');
    const first = runStep('Verify every sheet', { 'matrix.part': '1' });
    assert.deepEqual([first.status, first.stdout], [0, '']);
    const second = runStep('Verify every sheet', { 'matrix.part': '2' });
    assert.equal(second.status, 1);
    assert.match(second.stdout, /^::warning file=mill\/b c\.ampwright\.md,line=6,.*::shall I <= 40 A: fails/);
    assert.match(second.summary, /1 of 1 sheets stand[\s\S]*0 of 1 sheets stand/);
  });

  it('what a pull request changes in meaning stands in the summary, and stops nothing', () => {
    repository.commit('base', { 'a.ampwright.md': sheet('30 A') });
    repository.git('update-ref', 'refs/remotes/origin/main', 'HEAD');
    const nothing = runStep('What changed in meaning', { 'github.base_ref': 'main' });
    assert.equal(nothing.status, 0);
    repository.commit('more current', { 'a.ampwright.md': sheet('50 A') });
    const { status, summary } = runStep('What changed in meaning', { 'github.base_ref': 'main' });
    assert.equal(status, 0);
    assert.match(summary, /\*\*1 requirement now fails · 1 input changed/);
    assert.notEqual(runStep('What changed in meaning', { 'github.base_ref': 'nowhere' }).status, 0);
  });

  describe('the git hook', () => {
    beforeEach(() => {
      copyFileSync(join(samples, 'pre-commit'), repository.at('.git/hooks/pre-commit'));
      chmodSync(repository.at('.git/hooks/pre-commit'), 0o755);
    });
    const committed = (path: string) => repository.git('show', `HEAD:${path}`);

    it('records the sheets that are committed, whatever their names are, and no others', () => {
      repository.write('other.ampwright.md', sheet('1 A'));
      repository.write('старт/a "b".ampwright.md', sheet('30 A'));
      repository.git('add', 'старт');
      repository.git('commit', '--quiet', '--message=sheet');
      assert.match(committed('старт/a "b".ampwright.md'), /\| x \| 60\.00 A \|/);
      assert.equal(readFileSync(repository.at('other.ampwright.md'), 'utf8'), sheet('1 A'));
    });

    it('stops at an error, and at a sheet that is staged in part; nothing is lost', () => {
      repository.write('a.ampwright.md', sheet('30 A', '40 V'));
      repository.git('add', 'a.ampwright.md');
      assert.throws(() => repository.git('commit', '--quiet', '--message=sheet'), /a\.ampwright\.md:6:/);
      repository.write('a.ampwright.md', sheet('30 A'));
      repository.git('add', 'a.ampwright.md');
      repository.write('a.ampwright.md', sheet('31 A'));
      assert.throws(() => repository.git('commit', '--quiet', '--message=sheet'), /A sheet is staged in part/);
      assert.equal(readFileSync(repository.at('a.ampwright.md'), 'utf8'), sheet('31 A'));
      repository.git('add', 'a.ampwright.md');
      repository.git('commit', '--quiet', '--message=sheet');
      assert.match(committed('a.ampwright.md'), /\| x \| 62\.00 A \|/);
    });

    it('lets everything else through', () => {
      repository.commit('no sheet', { 'notes.txt': 'x' });
      assert.equal(committed('notes.txt'), 'x');
    });
  });
});

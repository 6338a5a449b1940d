// `ampwright compare`: the real program on real files and repositories.
import assert from 'node:assert/strict';
import { rmSync } from 'node:fs';
import { COMPARISONS } from '../../src/review/comparisons.ts';
import { ampwright, type Outcome } from '../support/program.ts';
import { gitIn, testRepository } from '../support/repository.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const sheet = (current: string, more = '') =>
  `# Starter\n\n\`\`\`ampwright\nI_n = ${current} from plate "M-12"\nshall I_n <= 40 A\n${more}\`\`\`\n`;

function is({ code, stdout, stderr }: Outcome, wanted: number, ...texts: readonly RegExp[]): void {
  assert.equal(code, wanted, stdout + stderr);
  for (const text of texts) assert.match(stdout + stderr, text);
  assert.doesNotMatch(stderr, /mistake in Ampwright/);
}

describe('compare: two files', function () {
  this.timeout(60_000);
  const folder = temporaryFolder();
  const run = (...args: readonly string[]) => ampwright(['compare', ...args], { cwd: folder.path });

  it('without a change ends with 0, with changes with 1', async () => {
    folder.write('a.ampwright.md', sheet('34 A'));
    folder.write('b.ampwright.md', sheet('34  A'));
    folder.write('c.ampwright.md', sheet('41 A'));
    is(await run('a.ampwright.md', 'b.ampwright.md'), 0, /^a\.ampwright\.md → b\.ampwright\.md\nno change in meaning\n$/);
    is(await run('a.ampwright.md', 'c.ampwright.md'), 1, /1 requirement now fails · 1 input changed/, /holds → fails {2}shall I_n <= 40 A/);
  });

  it('gives Markdown, a page, and JSON as its schema has it', async () => {
    folder.write('a.ampwright.md', sheet('34 A'));
    folder.write('b.ampwright.md', sheet('41 A'));
    is(await run('a.ampwright.md', 'b.ampwright.md', '--format', 'markdown'), 1, /^## What changed in meaning\n/);
    is(await run('a.ampwright.md', 'b.ampwright.md', '--format', 'html'), 1, /^<!DOCTYPE html>/);
    const { stdout } = await run('a.ampwright.md', 'b.ampwright.md', '--format', 'json');
    const { sheets } = COMPARISONS.parse(JSON.parse(stdout));
    assert.equal(sheets[0]!.comparison!.requirements[0]!.turned, 'worse');
  });

  it('what is missing, is a folder, or is no text is said so, with 2', async () => {
    folder.write('a.ampwright.md', sheet('34 A'));
    folder.write('bytes.ampwright.md', new Uint8Array([0xff, 0x00]));
    folder.write('folder/b.ampwright.md', sheet('34 A'));
    is(await run('a.ampwright.md', 'gone.ampwright.md'), 2, /gone\.ampwright\.md: there is no such file/);
    is(await run('bytes.ampwright.md', 'a.ampwright.md'), 2, /bytes\.ampwright\.md: byte 1 \(line 1\) is not UTF-8/);
    is(await run('a.ampwright.md', 'folder'), 2, /folder: is a folder, and the other is none/);
    is(await run('a.ampwright.md', 'a.ampwright.md', 'a.ampwright.md'), 2, /name two sheets or folders/);
    is(await run('a.ampwright.md'), 2, /in no git repository/);
  });

  it('two folders: by path, by number, by name; one sheet that fails stops none of the others', async () => {
    folder.write('old/same.ampwright.md', sheet('34 A'));
    folder.write('new/same.ampwright.md', sheet('34 A'));
    folder.write('old/kiln.ampwright.md', `---\nampwright: 1\nnumber: CALC-1\n---\n${sheet('34 A')}`);
    folder.write('new/drum/drum.ampwright.md', `---\nampwright: 1\nnumber: CALC-1\n---\n${sheet('35 A')}`);
    folder.write('old/gone.ampwright.md', sheet('34 A'));
    folder.write('new/come.ampwright.md', sheet('44 A'));
    folder.write('new/bytes.ampwright.md', new Uint8Array([0xff]));
    const { stdout } = await run('old', 'new', '--format', 'json');
    const { sheets } = COMPARISONS.parse(JSON.parse(stdout));
    assert.deepEqual(
      sheets.map(({ path, oldPath, change }) => [path, oldPath, change]),
      [
        ['bytes.ampwright.md', null, 'not compared'],
        ['come.ampwright.md', null, 'added'],
        ['drum/drum.ampwright.md', 'kiln.ampwright.md', 'changed'],
        ['same.ampwright.md', null, 'same'],
        ['gone.ampwright.md', null, 'removed'],
      ],
    );
    is(
      await run('old', 'new'),
      2,
      /bytes\.ampwright\.md: byte 1/,
      /new sheet: 1 fails/,
      /removed: 1 requirement holds/,
      /1 more sheet without a change/,
    );
    folder.write('empty/readme.txt', '');
    is(await run('empty', 'empty'), 2, /holds no sheets/);
  });
});

describe('compare: with a revision', function () {
  this.timeout(60_000);
  const repository = testRepository();
  const run = (...args: readonly string[]) => ampwright(['compare', ...args], { cwd: repository.path });

  it('that is named, by default the one where the work left the default branch', async () => {
    repository.commit('base', { 'calc/a.ampwright.md': sheet('34 A') });
    repository.git('tag', 'issued-A');
    repository.git('switch', '--quiet', '--create', 'review');
    repository.commit('more current', { 'calc/a.ampwright.md': sheet('36 A') });
    repository.write('calc/a.ampwright.md', sheet('41 A'));
    is(await run('calc/a.ampwright.md'), 1, /^merge base with main \([0-9a-f]{10}, 2026-11-20\) → work tree\n/, /34 A → 41 A/);
    is(await run('--since', 'HEAD', 'calc/a.ampwright.md'), 1, /36 A → 41 A/);
    is(await run('calc', '--since', 'issued-A', '--until', 'review'), 1, /34 A → 36 A/);
    is(await run('calc', '--since', 'issued-A', '--until', 'main'), 0, /no change in meaning/);
  });

  it('with the files that the sheet reads as they were then', async () => {
    const csv = (rating: number) => `type,I / A\nK4,31.5\nK5,${rating}\n`;
    const text = `Table t — [Range](data/range.csv)\n\n${sheet('34 A', 'use "standard.ampwright.md"\nx = margin * 1 A\nK = least I of t where I >= 1.1 * I_n\n')}`;
    const standard = (margin: number) => `\`\`\`ampwright\nmargin = ${margin} from practice "usual"\n\`\`\`\n`;
    repository.commit('base', { 'a.ampwright.md': text, 'data/range.csv': csv(40), 'standard.ampwright.md': standard(2) });
    repository.write('data/range.csv', csv(45));
    repository.write('standard.ampwright.md', standard(3));
    const { stdout } = await run('a.ampwright.md', '--since', 'HEAD', '--format', 'json');
    const { comparison } = COMPARISONS.parse(JSON.parse(stdout)).sheets[0]!;
    assert.deepEqual(comparison!.tables[0]!.cells, [
      { row: 'K5', column: 'I', value: { old: '40 A', new: '45 A', absolute: '+5.00 A', relative: 0.125 } },
    ]);
    assert.deepEqual(
      comparison!.entries.map(({ name, knockOn, value }) => [name, knockOn, value!.old, value!.new]),
      [['x', true, '2.000 A', '3.000 A']],
    );
  });

  it('in which the sheet is absent, or had another path, or from which it is gone', async () => {
    repository.commit('base', { 'kiln.ampwright.md': sheet('34 A'), 'gone.ampwright.md': sheet('1 A') });
    repository.git('switch', '--quiet', '--create', 'review');
    repository.git('mv', 'kiln.ampwright.md', 'drum.ampwright.md');
    repository.commit('renamed', { 'gone.ampwright.md': null });
    repository.write('drum.ampwright.md', sheet('35 A'));
    repository.write('new.ampwright.md', sheet('35 A'));
    is(await run('drum.ampwright.md'), 1, /34 A → 35 A/, /the file was kiln\.ampwright\.md/);
    is(await run('new.ampwright.md'), 1, /new sheet: 1 requirement holds/);
    is(await run('gone.ampwright.md'), 1, /removed: 1 requirement holds/);
    is(await run('never.ampwright.md'), 2, /never\.ampwright\.md: is no sheet, neither in [0-9a-f]{10} nor in the work tree/);
  });

  it('that does not exist, or that a shallow clone does not hold, is said so, with 2', async () => {
    repository.commit('base', { 'a.ampwright.md': sheet('34 A') });
    const first = repository.commit('next', { 'a.ampwright.md': sheet('35 A') });
    repository.commit('last', { 'a.ampwright.md': sheet('36 A') });
    is(await run('a.ampwright.md', '--since', 'mains'), 2, /no revision mains; did you mean main$/m);
    gitIn(repository.path, 'clone', '--quiet', '--depth=1', `file://${repository.path}`, 'clone');
    is(await run('clone/a.ampwright.md', '--since', first), 2, /not in this clone.*--unshallow/);
    rmSync(repository.at('.git'), { recursive: true });
    is(await run('a.ampwright.md'), 2, /in no git repository/);
  });

  it('whose branches, authors, files and sheets have names of every kind: nothing of them becomes markup or a command', async () => {
    const hostile = (current: string) =>
      `---\nampwright: 1\ntitle: '<script>alert("1")</script> [x](javascript:y) @all \u202e \u0645\u062d\u0631\u0643'\n---\n\n${sheet(current)}`;
    const path = 'старт <b>/№ 1 "東".ampwright.md';
    repository.git('config', 'user.name', '<img src=x onerror=alert(1)> \u5c71\u7530');
    repository.commit('<script>alert(2)</script>', { [path]: hostile('34 A') });
    repository.git('branch', 'a<b>&c');
    repository.write(path, hostile('41 A'));
    const shown = async (format: string) => (await run(path, '--since', 'a<b>&c', '--format', format)).stdout;
    is(await run(path, '--since', 'a<b>&c'), 1, /^a<b>&c \([0-9a-f]{10}/, /34 A → 41 A/);
    assert.doesNotMatch(await shown('text'), /\u202e/);
    assert.doesNotMatch(await shown('html'), /<script|<img|<b>|javascript:y"|\son\w+=/);
    const markdown = await shown('markdown');
    assert.doesNotMatch(markdown.replace(/`[^`\n]*`/g, ''), /<script|<b>|(?<!\\)\]\(|@all|\u202e/);
    assert.match(markdown, /№ 1 "東"/);
    const { stdout } = await ampwright(['export', path, '--to', 'html'], { cwd: repository.path });
    assert.match(stdout, /&lt;script&gt;/);
    assert.doesNotMatch(stdout, /<script|<img|href="javascript|\son\w+=/);
  });

  it('on a machine without git', async () => {
    repository.commit('base', { 'a.ampwright.md': sheet('34 A') });
    is(
      await ampwright(['compare', 'a.ampwright.md'], { cwd: repository.path, env: { PATH: repository.at('nowhere') } }),
      2,
      /git was not found/,
    );
  });
});

// Finding the revision that a digest covers, in real repositories.
import assert from 'node:assert/strict';
import { rmSync } from 'node:fs';
import { coveredIn } from '../../src/node/git-covered.ts';
import { sheetOnDisk } from '../../src/node/sheet-source.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { gitIn, testRepository } from '../support/repository.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const sheet = (current: string, more = '') => `# M\n\n\`\`\`ampwright\nI = ${current} from plate "M"\n${more}\`\`\`\n`;

describe('the revision that a digest covers', function () {
  this.timeout(60_000);
  const repository = testRepository();
  const elsewhere = temporaryFolder();

  const evaluationAt = (path: string) => {
    const source = sheetOnDisk(path);
    return 'refused' in source ? assert.fail(source.refused) : evaluateSheet(source.text, source.files);
  };
  const digestOf = (name: string) => evaluationAt(repository.at(name)).digest;

  /** The revision, or why there is none. */
  const found = (path: string, covers: string) => {
    const answer = coveredIn(path, evaluationAt(path).files)(covers);
    return 'because' in answer ? answer.because : answer.revision.replace(/ of .*/, '');
  };

  it('is the newest one that has this text, whatever its line ends and signatures are', () => {
    repository.commit('first', { 'a.ampwright.md': sheet('1 A') });
    const covers = digestOf('a.ampwright.md');
    repository.commit('second', { 'a.ampwright.md': sheet('2 A') });
    const again = repository.commit('back', { 'a.ampwright.md': sheet('1 A').replaceAll('\n', '\r\n') });
    repository.commit('third', { 'a.ampwright.md': sheet('3 A') });
    assert.equal(found(repository.at('a.ampwright.md'), covers), again.slice(0, 10));
  });

  it('is found through a move of the file, with any name', () => {
    const first = repository.commit('first', { 'старт/№ 1 \u{1f600}.ampwright.md': sheet('1 A') });
    const covers = digestOf('старт/№ 1 \u{1f600}.ampwright.md');
    repository.git('mv', 'старт/№ 1 \u{1f600}.ampwright.md', 'b.ampwright.md');
    repository.commit('moved', {});
    repository.commit('second', { 'b.ampwright.md': sheet('2 A') });
    assert.notEqual(found(repository.at('b.ampwright.md'), covers), first.slice(0, 10), 'the move has the same text and is newer');
    assert.match(found(repository.at('b.ampwright.md'), covers), /^[0-9a-f]{10}$/);
  });

  it('has the files that the sheet uses as they were, whichever was changed', () => {
    const csv = (power: string) => `tag,P / kW\nM-20,${power}\n`;
    const list = '# L\n\nTable motors — [The list](data/motors.csv) from datasheet "list"\n';
    repository.commit('first', { 'calc/l.ampwright.md': list, 'calc/data/motors.csv': csv('1') });
    const second = repository.commit('list alone', { 'calc/data/motors.csv': csv('2') });
    const covers = digestOf('calc/l.ampwright.md');
    repository.commit('third', { 'calc/data/motors.csv': csv('3'), 'calc/l.ampwright.md': `${list}\n` });
    assert.equal(found(repository.at('calc/l.ampwright.md'), covers), second.slice(0, 10));
  });

  it('is not told where it was never committed', () => {
    repository.commit('first', { 'a.ampwright.md': sheet('1 A') });
    assert.equal(
      found(repository.at('a.ampwright.md'), `sha256:${'0'.repeat(64)}`),
      'no revision of this file is what the signature covers',
    );
  });

  it('is not told of a sheet that was never committed, in a repository with and without commits', () => {
    repository.write('a.ampwright.md', sheet('1 A'));
    assert.equal(found(repository.at('a.ampwright.md'), digestOf('a.ampwright.md')), 'the sheet has never been committed');
    repository.commit('first', { 'other.txt': '' });
    repository.write('b.ampwright.md', sheet('1 A'));
    assert.equal(found(repository.at('b.ampwright.md'), digestOf('b.ampwright.md')), 'the sheet has never been committed');
  });

  it('is not told in a clone whose history was cut off, which is said', () => {
    repository.commit('first', { 'a.ampwright.md': sheet('1 A') });
    const covers = digestOf('a.ampwright.md');
    repository.commit('second', { 'a.ampwright.md': sheet('2 A') });
    gitIn(elsewhere.path, 'clone', '--quiet', '--depth=1', `file://${repository.path}`, 'clone');
    assert.match(
      found(elsewhere.at('clone/a.ampwright.md'), covers),
      /not in this clone, whose history was cut off \(`git fetch --unshallow`/,
    );
  });

  it('is not told outside of a repository, and where git is not there', () => {
    elsewhere.write('a.ampwright.md', sheet('1 A'));
    assert.equal(found(elsewhere.at('a.ampwright.md'), 'sha256:0'), 'it is in no git repository');
    repository.commit('first', { 'a.ampwright.md': sheet('1 A') });
    const path = process.env['PATH'];
    process.env['PATH'] = '/nowhere';
    try {
      assert.match(found(repository.at('a.ampwright.md'), 'sha256:0'), /^git was not found/);
    } finally {
      process.env['PATH'] = path;
    }
  });

  it('is not told where the repository is broken', () => {
    repository.commit('first', { 'a.ampwright.md': sheet('1 A') });
    rmSync(repository.at('.git/objects'), { recursive: true });
    assert.match(found(repository.at('a.ampwright.md'), 'sha256:0'), /./);
  });
});

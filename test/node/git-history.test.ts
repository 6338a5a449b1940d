// The change history of a file on real repositories.
import assert from 'node:assert/strict';
import { historyOf } from '../../src/node/git-history.ts';
import { gitIn, testRepository } from '../support/repository.ts';

describe('change history', () => {
  const repository = testRepository();
  const subjects = (path: string) => historyOf(path).changes.map(({ subject }) => subject);

  it('lists the commits that changed the file, newest first, through renames', () => {
    const text = 'a line of the sheet\n'.repeat(20);
    repository.commit('Sheet for M-12', { 'kiln.ampwright.md': text, other: '1' });
    repository.commit('Nothing to do with it', { other: '2' });
    repository.git('mv', 'kiln.ampwright.md', 'drum.ampwright.md');
    repository.commit('Call the sheet by its drum', {});
    const last = repository.commit('Länge der Leitung: "60 m" | <b>', { 'drum.ampwright.md': `${text}more\n` });
    const { changes, complete, uncommitted } = historyOf(repository.at('drum.ampwright.md'));
    assert.deepEqual(
      changes.map(({ subject }) => subject),
      ['Länge der Leitung: "60 m" | <b>', 'Call the sheet by its drum', 'Sheet for M-12'],
    );
    assert.deepEqual(changes[0], {
      commit: last,
      short: last.slice(0, 10),
      date: '2026-11-20',
      author: 'R. Osei',
      subject: changes[0]!.subject,
    });
    assert.equal(complete, true);
    assert.equal(uncommitted, false);
  });

  it('says whether the file differs from the newest commit; line ends are no difference', () => {
    repository.commit('first', { 'a.ampwright.md': 'a\nb\n' });
    const path = repository.write('a.ampwright.md', 'a\r\nb\r\n');
    assert.equal(historyOf(path).uncommitted, false);
    repository.write('a.ampwright.md', 'a\nc\n');
    assert.equal(historyOf(path).uncommitted, true);
  });

  it('is empty for a file that was never committed', () => {
    const path = repository.write('a.ampwright.md', 'a');
    assert.deepEqual(historyOf(path), { changes: [], complete: true, uncommitted: true });
    repository.commit('another', { other: '1' });
    repository.write('new.ampwright.md', 'a');
    assert.deepEqual(subjects(repository.at('new.ampwright.md')), []);
  });

  it('a shallow clone says that older changes may be missing', () => {
    repository.commit('first', { 'a.ampwright.md': '1' });
    repository.commit('second', { 'a.ampwright.md': '2' });
    gitIn(repository.path, 'clone', '--quiet', '--depth=1', `file://${repository.path}`, 'clone');
    const { changes, complete } = historyOf(repository.at('clone/a.ampwright.md'));
    assert.equal(changes.length, 1);
    assert.equal(complete, false);
  });
});

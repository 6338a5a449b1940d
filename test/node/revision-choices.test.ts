// The revisions that are offered for comparing a sheet, from real repositories.
import assert from 'node:assert/strict';
import { GitError } from '../../src/node/git.ts';
import { type RevisionChoices, revisionChoices } from '../../src/node/revision-choices.ts';
import { testRepository } from '../support/repository.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const SHEET = 'm-12.ampwright.md';

describe('the revisions to compare a sheet with', () => {
  const repository = testRepository();
  const choices = (file = SHEET) => revisionChoices(repository.at(file));
  const subjects = ({ changes }: RevisionChoices) => changes.map(({ subject }) => subject);
  const names = ({ names: all }: RevisionChoices) => all.map(({ kind, name }) => `${kind} ${name}`).sort();

  it('begin with where the branch left the default branch', () => {
    const base = repository.commit('Starter sized', { [SHEET]: '1' });
    repository.git('switch', '--quiet', '--create', 'longer-run');
    repository.commit('Longer run', { [SHEET]: '2' });
    const found = choices().base;
    assert.ok('commit' in found, JSON.stringify(found));
    assert.deepEqual([found.commit, found.subject, found.date], [base, 'Starter sized', '2026-11-20']);
  });

  it('say why where there is no such place, and offer the rest', () => {
    repository.git('switch', '--quiet', '--create', 'longer-run');
    repository.commit('Starter sized', { [SHEET]: '1' });
    const found = choices();
    assert.ok('because' in found.base && found.base.because !== '', JSON.stringify(found.base));
    assert.deepEqual([subjects(found), names(found)], [['Starter sized'], ['branch longer-run']]);
  });

  it('are the commits that changed the sheet, newest first, and no others', () => {
    repository.commit('Starter sized', { [SHEET]: '1' });
    repository.commit('Another sheet', { 'm-20.ampwright.md': '1' });
    repository.commit('Longer run', { [SHEET]: '2' });
    assert.deepEqual(subjects(choices()), ['Longer run', 'Starter sized']);
  });

  it('are none of a sheet that was never committed, but names', () => {
    repository.commit('Another sheet', { 'm-20.ampwright.md': '1' });
    repository.write(SHEET, '1');
    const found = choices();
    assert.deepEqual([subjects(found), names(found)], [[], ['branch main']]);
  });

  it('are branches, tags and branches of the server, each once', () => {
    const first = repository.commit('Starter sized', { [SHEET]: '1' });
    repository.git('tag', 'issued-A');
    repository.git('tag', '--annotate', '--message=Issued for construction', 'issued-B');
    repository.git('branch', 'site/longer-run');
    repository.git('update-ref', 'refs/remotes/origin/main', first);
    repository.git('symbolic-ref', 'refs/remotes/origin/HEAD', 'refs/remotes/origin/main');
    const found = choices();
    assert.deepEqual(names(found), ['branch main', 'branch site/longer-run', 'remote branch origin/main', 'tag issued-A', 'tag issued-B']);
    const issued = found.names.find(({ name }) => name === 'issued-B');
    assert.deepEqual(issued, { kind: 'tag', name: 'issued-B', date: '2026-11-20', subject: 'Issued for construction' });
  });

  it('are found for a sheet in a folder of the repository', () => {
    repository.commit('Starter sized', { [`kiln/${SHEET}`]: '1' });
    assert.deepEqual(subjects(choices(`kiln/${SHEET}`)), ['Starter sized']);
  });
});

describe('a sheet outside a repository', () => {
  const folder = temporaryFolder();

  it('has no revisions, and is told so', () => {
    folder.write(SHEET, '1');
    assert.throws(
      () => revisionChoices(folder.at(SHEET)),
      (error) => error instanceof GitError && /repository/.test(error.message),
    );
  });
});

// Revisions on real repositories: names, the merge base, and every way in which there is none.
import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { GitError, type GitFailure } from '../../src/node/git.ts';
import { historyOf } from '../../src/node/git-history.ts';
import { defaultBranch, mergeBase, pathInRepository, repositoryOf, revision } from '../../src/node/git-revisions.ts';
import { gitIn, testRepository } from '../support/repository.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

function refused(failure: GitFailure, message: RegExp, run: () => unknown): void {
  assert.throws(run, (error) => {
    assert.ok(error instanceof GitError, String(error));
    assert.equal(error.failure, failure);
    assert.match(error.message, message);
    assert.doesNotMatch(error.message, /\.$/);
    return true;
  });
}

describe('revisions', () => {
  const repository = testRepository();

  it('are found by branch, tag, object name and the distance from one', () => {
    const first = repository.commit('Sheet for M-12', { 'a.txt': '1' });
    repository.git('tag', 'issued-A');
    const second = repository.commit('Longer run', { 'a.txt': '2' });
    for (const name of ['issued-A', 'main~1', first, first.slice(0, 8), 'HEAD^'])
      assert.equal(revision(repository.path, name).commit, first, name);
    assert.deepEqual(revision(repository.path, 'main'), {
      name: 'main',
      commit: second,
      short: second.slice(0, 10),
      date: '2026-11-20',
      subject: 'Longer run',
    });
  });

  it('are found by an annotated tag, and never mistaken for an option', () => {
    const first = repository.commit('first', { 'a.txt': '1' });
    repository.git('tag', '--annotate', '--message=issued', 'B');
    assert.equal(revision(repository.path, 'B').commit, first);
    refused('unknown revision', /no revision --help/, () => revision(repository.path, '--help'));
    refused('unknown revision', /no revision ;/, () => revision(repository.path, ''));
  });

  it('are never taken for an option, a file, a path of the disk or two names', () => {
    repository.commit('first', { 'a.txt': '1', 'out.txt': 'kept' });
    const names = [
      '--output=out.txt', '-Oout.txt', '-o', '--upload-pack=touch out.txt', '--exec=touch x', 'HEAD:a.txt', 'HEAD:../../etc/passwd', ':/first',
      'HEAD\n--output=out.txt', 'HEAD\0', 'HEAD HEAD', 'HEAD..main', '^HEAD', '@{-1}', '$(touch x)', '`touch x`', 'HEAD; touch x', 'HEAD^{/', 'HEAD\u001b[2J',
    ]; // biome-ignore format: a list of attacks
    for (const name of names) refused('unknown revision', /no revision /, () => revision(repository.path, name));
    assert.deepEqual(readdirSync(repository.path).sort(), ['.git', 'a.txt', 'out.txt']);
    assert.equal(readFileSync(repository.at('out.txt'), 'utf8'), 'kept');
  });

  it('of a repository whose configuration would run programs run none of them', () => {
    const first = repository.commit('first', { 'a.txt': '1', '.gitattributes': '* diff=evil filter=evil\n' });
    const touch = `touch ${repository.at('ran')}`;
    for (const key of ['core.pager', 'core.fsmonitor', 'core.sshCommand', 'core.editor', 'diff.external', 'diff.evil.textconv', 'filter.evil.smudge', 'filter.evil.clean', 'gpg.program', 'alias.rev-parse', 'alias.log'])
      repository.git('config', key, key.startsWith('alias') ? `!${touch}` : touch); // biome-ignore format: a list of attacks
    repository.git('config', 'log.showSignature', 'true');
    assert.equal(revision(repository.path, 'HEAD').commit, first);
    assert.equal(mergeBase(repository.path).commit, first);
    assert.equal(historyOf(repository.at('a.txt')).changes.length, 1);
    assert.ok(!readdirSync(repository.path).includes('ran'));
  });

  it('that do not exist are said so, with near names', () => {
    repository.commit('first', { 'a.txt': '1' });
    repository.git('branch', 'longer-run');
    refused('unknown revision', /no revision longer-runs; did you mean longer-run$/, () => revision(repository.path, 'longer-runs'));
    refused('unknown revision', /no revision zzz; write a branch, a tag or a commit/, () => revision(repository.path, 'zzz'));
  });

  it('there are none before the first commit', () => {
    refused('unknown revision', /no commit yet/, () => revision(repository.path, 'HEAD'));
  });

  it('the merge base is where the branch left the default branch', () => {
    const base = repository.commit('base', { 'a.txt': '1' });
    repository.git('switch', '--quiet', '--create', 'review');
    repository.commit('on the branch', { 'b.txt': '1' });
    repository.git('switch', '--quiet', 'main');
    repository.commit('on main', { 'c.txt': '1' });
    repository.git('switch', '--quiet', 'review');
    const found = mergeBase(repository.path);
    assert.equal(found.commit, base);
    assert.equal(found.name, 'merge base with main');
  });

  it('the default branch is what the server says, before any usual name', () => {
    repository.commit('base', { 'a.txt': '1' });
    assert.equal(defaultBranch(repository.path), 'main');
    repository.git('update-ref', 'refs/remotes/origin/trunk', 'HEAD');
    repository.git('symbolic-ref', 'refs/remotes/origin/HEAD', 'refs/remotes/origin/trunk');
    assert.equal(defaultBranch(repository.path), 'origin/trunk');
    repository.git('update-ref', '-d', 'refs/remotes/origin/trunk');
    assert.equal(defaultBranch(repository.path), 'main');
  });

  it('no default branch, and no common ancestor, are said so', () => {
    repository.commit('base', { 'a.txt': '1' });
    repository.git('branch', '--move', 'main', 'work');
    refused('no default branch', /no branch origin\/main, origin\/master, main or master/, () => mergeBase(repository.path));
    repository.git('switch', '--quiet', '--orphan', 'main');
    repository.commit('another beginning', { 'b.txt': '1' });
    repository.git('switch', '--quiet', 'work');
    refused('no common ancestor', /HEAD and main have no commit in common/, () => mergeBase(repository.path));
  });

  it('a shallow clone says that it is one', () => {
    repository.commit('base', { 'a.txt': '1' });
    const first = repository.git('rev-parse', 'HEAD');
    repository.git('switch', '--quiet', '--create', 'review');
    repository.commit('next', { 'a.txt': '2' });
    repository.git('switch', '--quiet', 'main');
    repository.commit('on main', { 'b.txt': '2' });
    gitIn(repository.path, 'clone', '--quiet', '--depth=1', '--no-single-branch', `file://${repository.path}`, 'clone');
    const clone = repository.at('clone');
    gitIn(clone, 'switch', '--quiet', 'review');
    refused('history cut off', /shallow clone.*--unshallow/, () => revision(clone, first));
    refused('history cut off', /does not reach back to origin\/main.*--unshallow/, () => mergeBase(clone));
  });

  it('the repository of a path is found from below, through links, and for a path that is gone', () => {
    repository.commit('base', { 'calculations/kiln/a.txt': '1' });
    const outside = mkdtempSync(join(tmpdir(), 'ampwright-link-'));
    try {
      symlinkSync(repository.at('calculations'), join(outside, 'link'));
      for (const path of [
        repository.at('calculations/kiln/a.txt'),
        repository.at('calculations/gone/b.txt'),
        join(outside, 'link/kiln/a.txt'),
      ]) {
        assert.equal(repositoryOf(path), repository.path, path);
      }
      assert.equal(pathInRepository(repository.path, join(outside, 'link/kiln/a.txt')), 'calculations/kiln/a.txt');
      assert.equal(pathInRepository(repository.path, repository.path), '.');
    } finally {
      rmSync(outside, { recursive: true });
    }
  });
});

describe('without a repository or without git', () => {
  const folder = temporaryFolder();

  it('a folder in no repository is said so', () => {
    refused('no repository', /is in no git repository/, () => repositoryOf(folder.path));
  });

  it('a machine without git is said so', () => {
    const path = process.env['PATH'];
    mkdirSync(folder.at('empty'));
    process.env['PATH'] = folder.at('empty');
    try {
      refused('no git', /git was not found/, () => repositoryOf(folder.path));
    } finally {
      process.env['PATH'] = path;
    }
  });
});

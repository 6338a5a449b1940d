// `ampwright sign`: the real program on real sheets and repositories.
import assert from 'node:assert/strict';
import { chmodSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { ampwright, type Outcome } from '../support/program.ts';
import { testRepository } from '../support/repository.ts';

const SHEET = `---
ampwright: 1 # keep
title: Dust fan M-20
x-mill: Lindrow # means nothing to Ampwright
---

# Dust fan

It takes [? A](#I_n).

\`\`\`ampwright
P_n = 7.5 kW from plate "M-20"
I_n: A = fla_3ph(P_n, 400 V, 90 %, 0.85)
shall I_n <= 16 A
\`\`\`
`;

describe('sign', function () {
  this.timeout(60_000);
  const repository = testRepository();
  const path = 'fan.ampwright.md';
  const read = () => readFileSync(repository.at(path), 'utf8');
  const run = (...args: string[]) => ampwright(args, { cwd: repository.path });
  const sign = (role: string, name: string, ...more: string[]) =>
    run('sign', path, '--role', role, '--name', name, '--on', '2026-11-20', ...more);
  const verify = async (...more: string[]): Promise<Outcome> => run('verify', path, '--on', '2026-12-01', ...more);
  const change = (from: string, to: string) => writeFileSync(repository.at(path), read().replace(from, to));
  beforeEach(async () => {
    repository.write(path, SHEET);
    await run('record', path);
  });

  it('adds an entry that covers the sheet, keeps every other byte, and verify finds nothing', async () => {
    const before = read();
    const { code, stdout, stderr } = await sign('prepared', 'R. Osei');
    assert.deepEqual([code, stderr], [0, '']);
    const covers = /sha256:[0-9a-f]{64}/.exec(read())![0];
    assert.equal(stdout, `signed ${path}, prepared: R. Osei, 2026-11-20\nit covers ${covers}: 1 requirement holds\n`);
    const entry =
      /signatures:\n {2}- role: prepared\n {4}name: R\. Osei\n {4}date: 2026-11-20\n {4}covers: sha256:[0-9a-f]{64}\n {4}version: \d+\.\d+\.\d+\n/;
    assert.match(read(), entry);
    assert.equal(read().replace(entry, ''), before);
    assert.equal((await verify('--require', 'prepared')).code, 0);
  });

  it('renews the entry of the same role and name, and adds one for another person or role', async () => {
    await sign('prepared', 'R. Osei');
    await sign('checked', 'M. Okafor');
    change('7.5 kW', '8 kW');
    await run('record', path);
    const { code, stderr } = await sign('prepared', '  R.  Osei ');
    assert.equal(code, 0);
    assert.match(stderr, /^warning: signed as checked by M\. Okafor on 2026-11-20: .* was changed since \(signature-out-of-date\)\n$/);
    assert.deepEqual(
      [...read().matchAll(/role: (\w+)/g)].map(([, role]) => role),
      ['prepared', 'checked'],
    );
    await sign('checked', 'M. Okafor');
    assert.equal((await verify('--require', 'prepared', '--require', 'checked')).code, 0);
  });

  it('signed twice the same changes nothing', async () => {
    await sign('prepared', 'R. Osei');
    const before = read();
    assert.match((await sign('prepared', 'R. Osei')).stdout, /^unchanged /);
    assert.equal(read(), before);
  });

  it('warns of a check by who prepared the sheet', async () => {
    await sign('prepared', 'R. Osei');
    const { code, stderr } = await sign('checked', 'r. osei');
    assert.equal(code, 0);
    assert.match(
      stderr,
      /warning: signed as checked by r\. osei on 2026-11-20: r\. osei has prepared the sheet too.*\(check-not-independent\)/,
    );
    const verified = await verify();
    assert.equal(verified.code, 1);
    assert.match(verified.stdout, /check-not-independent/);
  });

  it('takes a name in any script', async () => {
    const names = ['Ольга Петренко', '山田 太郎', 'ليلى حسن', 'A: B, "C" # D', '\u0915\u094d\u0937 \u{1f600}'];
    for (const name of names) assert.equal((await sign('prepared', name)).code, 0);
    const { stdout } = await verify('--format', 'json');
    const [sheet] = (JSON.parse(stdout) as { sheets: { signatures: unknown[]; findings: { code: string }[] }[] }).sheets;
    assert.deepEqual(
      sheet!.findings.map(({ code }) => code),
      ['front-matter-key-unknown'],
    );
    assert.deepEqual(
      sheet!.signatures,
      names.map((name) => ({ role: 'prepared', name, date: '2026-11-20', version: '1.0.0', state: 'current' })),
    );
  });

  it('covers the files that the sheet uses', async () => {
    repository.write('motors.csv', 'tag,P_n / kW\nM-20,7.5\n');
    repository.write(path, '---\nampwright: 1\n---\n\nTable motors — [The list](motors.csv) from datasheet "list"\n');
    assert.equal((await sign('prepared', 'R. Osei')).code, 0);
    assert.equal((await verify()).code, 0);
    repository.write('motors.csv', 'tag,P_n / kW\nM-20,9\n');
    assert.match((await verify()).stdout, /signature-out-of-date/);
  });

  describe('refuses, and leaves the file as it is:', () => {
    const check = (title: string, spoil: () => void, said: RegExp) =>
      it(title, async () => {
        spoil();
        const before = read();
        const names = readdirSync(repository.path);
        const { code, stdout, stderr } = await sign('prepared', 'R. Osei');
        assert.deepEqual([code, stdout], [2, '']);
        assert.match(stderr, said);
        assert.equal(read(), before);
        assert.deepEqual(readdirSync(repository.path), names);
      });
    check(
      'a sheet with an error',
      () => change('I_n <=', 'I_m <='),
      /I_m[\s\S]*fan\.ampwright\.md was not signed: it has an error; put it right first\n$/,
    );
    check(
      'results that were changed by hand',
      () => change('| I_n | ', '| I_n | 1'),
      /was not signed: its results, .* are not recorded as they come out; record the sheet, read it, then sign/,
    );
    check('results that are not recorded', () => repository.write(path, SHEET), /record the sheet, read it, then sign/);
    check('a value in prose that is no longer so', () => change('](#I_n)', '1](#I_n)'), /record the sheet, read it, then sign/);
    check(
      'a conflict',
      () => change('It takes', '<<<<<<< ours\na\n=======\nb\n>>>>>>> theirs\nIt takes'),
      /was not signed: choose a side in the conflict first/,
    );
    check('signatures that can’t be read', () => change('x-mill: Lindrow', 'signatures: me'), /was not signed: it has an error/);
    check('a read-only file', () => chmodSync(repository.at(path), 0o444), /was not signed: it is read-only/);
    check(
      'bytes that are not UTF-8',
      () => writeFileSync(repository.at(path), Uint8Array.of(0x23, 0xff)),
      /byte 2 \(line 1\) is not UTF-8/,
    );
  });

  it('wants a role, a name that is not empty, and a day of the calendar', async () => {
    const said = async (...args: string[]) => {
      const { code, stderr } = await run('sign', path, ...args);
      assert.equal(code, 2);
      return stderr;
    };
    assert.match(await said('--role', 'prepared'), /required option '--name <NAME>' not specified/);
    assert.match(await said('--role', ' ', '--name', 'R. Osei'), /--role.*It is empty/);
    assert.match(await said('--role', 'prepared', '--name', 'R. Osei', '--on', '2026-02-30'), /Write a day of the calendar/);
  });

  describe('once the sheet is changed, verify says what changed since', () => {
    beforeEach(async () => {
      await sign('prepared', 'R. Osei');
      repository.git('add', '--all');
      repository.git('commit', '--quiet', '--message=signed');
    });

    it('from the revision that the signature covers, in every form', async () => {
      const commit = repository.git('rev-parse', 'HEAD').slice(0, 10);
      change('7.5 kW', '9 kW');
      await run('record', path);
      const said = `signed as prepared by R. Osei on 2026-11-20: it covers ${commit} of 2026-11-20; since then: 1 requirement now fails, 1 input changed, 1 result changed with them`;
      for (const format of ['text', 'json', 'sarif', 'junit', 'github']) {
        const { code, stdout } = await verify('--format', format);
        assert.equal(code, 1);
        assert.ok(stdout.includes(said), format);
      }
    });

    it('which may be nothing in meaning', async () => {
      change('P_n = 7.5 kW ', 'P_n  =  7.5 kW ');
      assert.match((await verify()).stdout, /since then nothing changed in meaning, only how it is written/);
    });

    it('or not to be told, with the reason', async () => {
      change('7.5 kW', '9 kW');
      await run('record', path);
      await sign('prepared', 'R. Osei');
      change('9 kW', '10 kW');
      await run('record', path);
      assert.match(
        (await verify()).stdout,
        /was changed since; what changed can't be told: no revision of this file is what the signature covers/,
      );
    });
  });
});

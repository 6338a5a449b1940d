// Digests and signatures: what a digest covers, how a signature is put into the front matter, when it is out of date.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { digest } from '../../src/sheet/digest.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { signatureStates, signSheet } from '../../src/sheet/signatures.ts';
import { type SignatureEntry, withSignature } from '../../src/sheet/with-signature.ts';
import { markdownish } from './support.ts';

const sha256 = (text: string) => `sha256:${createHash('sha256').update(text, 'utf8').digest('hex')}`;
const covers = `sha256:${'0f'.repeat(32)}`;
const osei: SignatureEntry = { role: 'prepared', name: 'R. Osei', date: '2026-11-20', covers, version: '1.0.0' };
const item = `  - role: prepared\n    name: R. Osei\n    date: 2026-11-20\n    covers: ${covers}\n    version: 1.0.0\n`;

describe('the digest of a sheet', () => {
  const check = (text: string, covered: string) => assert.equal(digest(text), sha256(covered));
  it('is the SHA-256 of its UTF-8 text', () => {
    check('', '');
    check('µ Ω 🙂\n', 'µ Ω 🙂\n');
    assert.equal(digest('abc'), 'sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'); // FIPS 180-4 example
  });
  it('is the same with CRLF line ends and with a byte order mark, as version control and editors change them', () => {
    check('\ufeffa\r\nb\r\n', 'a\nb\n');
    check('a\rb', 'a\rb');
  });
  it('leaves the lines of the signatures out and nothing else', () => {
    check(`---\ntitle: T\nsignatures:\n${item}digits: 5\n---\n\nText.\n`, '---\ntitle: T\ndigits: 5\n---\n\nText.\n');
    check(`---\nsignatures:\n- role: a\n\n# aside\n- role: b\n# tail\ndigits: 5\n---\n`, '---\n# tail\ndigits: 5\n---\n');
    check('---\n"signatures": [\n {role: a}\n]\n---\n', '---\n---\n');
    check('---\ntitle: T\n---\nsignatures:\n  - a\n', '---\ntitle: T\n---\nsignatures:\n  - a\n');
    check('---\nnotes:\n  signatures: a\n---\n', '---\nnotes:\n  signatures: a\n---\n');
  });
  it('covers the used files: sorted by path, each once, by path and own digest', () => {
    const a = { path: 'a.csv', digest: digest('1') };
    const b = { path: 'parts/b.ampwright.md', digest: digest('2') };
    const both = sha256(`x${a.path}\0${a.digest}${b.path}\0${b.digest}`);
    assert.equal(digest('x', [b, a]), both);
    assert.equal(digest('x', [a, b, a]), both);
    assert.notEqual(digest('x', [{ ...a, digest: digest('3') }, b]), both);
    assert.notEqual(digest('x', [{ ...a, path: 'c.csv' }, b]), both);
  });
});

describe('a signature', () => {
  /** Signs `before` with `entry`; `^` and `$` of the expectation are the whole text. */
  const check = (before: string, after: string | null, entry = osei) => assert.equal(withSignature(before, entry), after);

  it('is added behind the others, indented as they are', () => {
    const other = '  - role: checked\n    name: T. Nkemelu\n    date: 2026-11-19\n    covers: sha256:…\n';
    check(`---\nsignatures:\n${other}digits: 5\n---\n`, `---\nsignatures:\n${other}${item}digits: 5\n---\n`);
    check(`---\nsignatures:\n- role: checked # so\n---\n`, `---\nsignatures:\n- role: checked # so\n${item.replace(/^ {2}/gm, '')}---\n`);
    const inline = `{ role: "prepared", name: "R. Osei", date: "2026-11-20", covers: "${covers}", version: "1.0.0" }`;
    check('---\nsignatures: [{ role: checked }] # c\n---\n', `---\nsignatures: [{ role: checked }, ${inline}] # c\n---\n`);
  });
  it('makes the list, and the front matter, where there is none', () => {
    check('---\ntitle: T\n---\nText.', `---\ntitle: T\nsignatures:\n${item}---\nText.`);
    check('---\n---\n', `---\nsignatures:\n${item}---\n`);
    check('---\nsignatures: [] # none\ndigits: 5\n---\n', `---\nsignatures:  # none\n${item}digits: 5\n---\n`);
    check('---\nsignatures:\n---\n', `---\nsignatures:\n${item}---\n`);
    check('\ufeff# T\n', `\ufeff---\nsignatures:\n${item}---\n\n# T\n`);
  });
  it('of the same role and name is renewed in place, comments and order kept', () => {
    const before =
      '---\nsignatures:\n  - name: "R. Osei" # lead\n    role: prepared\n    date: 2025-01-01 # old\n    covers:\n  - role: checked\n---\n';
    const after = `---\nsignatures:\n  - name: "R. Osei" # lead\n    role: prepared\n    date: 2026-11-20 # old\n    covers: ${covers}\n    version: 1.0.0\n  - role: checked\n---\n`;
    check(before, after);
    check(after, after);
    check(
      '---\nsignatures: [{name: R. Osei, role: prepared, date: 2025-01-01}]\n---\n',
      `---\nsignatures: [{name: R. Osei, role: prepared, date: "2026-11-20", covers: "${covers}", version: "1.0.0"}]\n---\n`,
    );
  });
  it('of another person in the same role is another signature', () => {
    const second = withSignature(withSignature('---\n---\n', osei)!, { ...osei, name: 'T. Nkemelu' })!;
    assert.deepEqual(
      readSheet(second).frontMatter.signatures.map((s) => s.name),
      ['R. Osei', 'T. Nkemelu'],
    );
  });
  it('is not put where the others cannot be read', () => {
    check('---\nsignatures: me\n---\n', null);
    check('---\nsignatures: [a\n---\n', null);
    check('---\nsignatures: {a: b}\n---\n', null);
  });
  it('keeps CRLF and CR line ends', () => {
    for (const end of ['\r\n', '\r']) {
      const lines = (text: string) => text.replaceAll('\n', end);
      check(lines('---\ntitle: T\n---\nText.\n'), lines(`---\ntitle: T\nsignatures:\n${item}---\nText.\n`));
    }
  });

  const names = fc.oneof(
    fc.string({ minLength: 1, unit: 'grapheme' }),
    fc.constantFrom('a: b', 'no', '1.0', '# x', '[x]', "it's", 'a\nb', '- a', '*a', '…'),
  );
  const entries = fc.record({ role: names, name: names, date: fc.constant('2026-11-20'), version: fc.constantFrom(null, '1.0', '2.0.0') });
  it('of any name reads back as it was given and is current, in any sheet, until the sheet changes', () => {
    const clean = (text: string) => text.replace(/\s+/g, ' ').trim();
    fc.assert(
      fc.property(markdownish, entries, entries, (text, first, second) => {
        fc.pre([first, second].every((e) => clean(e.role) !== '' && clean(e.name) !== ''));
        const once = signSheet(text, first);
        const twice = once === null ? null : signSheet(once, second);
        if (once === null || twice === null) return;
        const now = digest(twice);
        assert.equal(now, digest(once));
        const states = signatureStates(readSheet(twice).frontMatter.signatures, now);
        for (const entry of [first, second]) {
          const found = states.find(({ signature: s }) => s.role === clean(entry.role) && s.name === clean(entry.name));
          assert.equal(found?.state, 'current');
        }
        const changed = signatureStates(readSheet(`${twice} `).frontMatter.signatures, digest(`${twice} `));
        assert.ok(changed.every(({ state }) => state === 'out of date'));
      }),
      { numRuns: 500 },
    );
  });
  it('whose digest is a placeholder is out of date', () => {
    const text = withSignature('# T\n', { ...osei, covers: 'sha256:…' })!;
    assert.deepEqual(
      signatureStates(readSheet(text).frontMatter.signatures, 'sha256:…'.replace('…', '0')).map((s) => s.state),
      ['out of date'],
    );
  });
});

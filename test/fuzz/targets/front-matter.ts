// Front matter: any YAML, or what is none, has fields with places; a signature can be added without touching anything else.
import assert from 'node:assert/strict';
import { readSheet } from '../../../src/sheet/read-sheet.ts';
import { withSignature } from '../../../src/sheet/with-signature.ts';
import { maker, wordsOf } from '../grammar.ts';
import { FRONT_MATTER } from '../grammars/sheet.ts';
import { checkPlace, checkProblems, type Target } from '../target.ts';

const ENTRY = { role: 'checked', name: 'A. "Osei": #1', date: '2026-11-20', covers: `sha256:${'0'.repeat(64)}`, version: '1.0.0' };

export const frontMatter: Target = {
  name: 'front-matter',
  make: maker(FRONT_MATTER, 'yaml'),
  words: wordsOf(FRONT_MATTER),
  check(yaml, random) {
    const text = `---\n${yaml}\n---\n\n# Sheet\n`;
    const { frontMatter: front, problems } = readSheet(text);
    checkProblems(problems, text);
    for (const [key, at] of front.places) checkPlace(at, text, key);
    assert.ok(Number.isInteger(front.digits) && front.digits >= 1 && front.digits <= 15);
    for (const signature of front.signatures) checkPlace(signature.at, text, 'signature');
    if (random.chance(30)) checkSigning(text);
  },
};

function checkSigning(text: string): void {
  const before = readSheet(text);
  const signed = withSignature(text, ENTRY);
  if (signed === null) return;
  const { frontMatter: front } = readSheet(signed);
  const mine = front.signatures.filter(({ role, name }) => role === ENTRY.role && name === ENTRY.name);
  assert.ok(mine.length >= 1, 'the signature is not there');
  assert.deepEqual({ ...mine[0], at: null }, { ...ENTRY, at: null });
  assert.ok(front.signatures.length >= before.frontMatter.signatures.length, 'a signature was lost');
  for (const key of ['title', 'digits', 'sources', 'codes', 'issued'] as const) assert.deepEqual(front[key], before.frontMatter[key]);
}

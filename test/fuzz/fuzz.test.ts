// A short run of every target: what is kept in the corpus, then inputs that are new with each change of a grammar, the same in every run.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { corpusOf, inputOf } from './inputs.ts';
import { randomOf } from './random.ts';
import { TARGETS } from './targets.ts';

const SEED = Number(process.env['SEED'] ?? 20261120);
const COUNT: Readonly<Record<string, number>> = {
  lexer: 3000,
  parser: 2000,
  tables: 1500,
  csv: 1500,
  checker: 500,
  evaluate: 150,
  exports: 40,
  'writing-help': 150,
};

for (const target of TARGETS) {
  const corpus = corpusOf(target, join(import.meta.dirname, 'corpus'));
  describe(`any text, for the ${target.name}`, () => {
    it('is treated as it should be where it is kept in the corpus', () => {
      assert.ok(corpus.length > 0);
      for (const { name, text } of corpus) named(name, () => target.check(text, randomOf(SEED, 0)));
    });
    it('is treated as it should be where it is made up', () => {
      for (let i = 0; i < (COUNT[target.name] ?? 300); i++) {
        const { text, random } = inputOf(target, corpus, SEED, i);
        named(JSON.stringify(text), () => target.check(text, random));
      }
    });
  });
}

/** Says of what failed which input it was. */
function named(input: string, check: () => void): void {
  try {
    check();
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.stack : error}\nwith ${input}`);
  }
}

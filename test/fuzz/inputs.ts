// The inputs of a run: the n-th is a text of the grammar, of the corpus, or either of them changed.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { mutate } from './mutate.ts';
import { type Random, randomOf } from './random.ts';
import type { Target } from './target.ts';

export interface CorpusFile {
  readonly name: string;
  readonly text: string;
}

/** The texts that are kept for a target: what every input may begin as, and what once went wrong. */
export function corpusOf(target: Target, folder: string): readonly CorpusFile[] {
  const its = join(folder, target.name);
  if (!existsSync(its)) return [];
  return readdirSync(its)
    .sort()
    .map((name) => ({ name, text: readFileSync(join(its, name), 'utf8') }));
}

/** The n-th input of the run with this seed, and the numbers for what is asked of it. */
export function inputOf(target: Target, corpus: readonly CorpusFile[], seed: number, index: number): { text: string; random: Random } {
  const random = randomOf(seed, index);
  const kept = () => random.of(corpus).text;
  const text = corpus.length > 0 && random.chance(30) ? kept() : target.make(random);
  if (random.chance(25)) return { text, random };
  return { text: mutate(text, target.words, corpus.length > 0 ? kept() : target.make(random), random), random };
}

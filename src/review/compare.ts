// Compares two sheets by what they mean: what a reviewer has to look at, and nothing that is only written otherwise.
import type { SheetEvaluation } from '../run/evaluate.ts';
import type { Status } from '../run/result.ts';
import { compareEntries } from './compare/entries.ts';
import { compareFrontMatter, compareSignatures } from './compare/front-matter.ts';
import { compareFunctions } from './compare/functions.ts';
import { compareProblems } from './compare/problems.ts';
import { compareProse } from './compare/prose.ts';
import { findRenames } from './compare/renames.ts';
import { compareRequirements } from './compare/requirements.ts';
import { type Pair, sideOf } from './compare/side.ts';
import { compareStatements } from './compare/statements.ts';
import { compareTables } from './compare/tables.ts';
import type { Comparison, SheetInShort } from './comparison.ts';

/** What changed in meaning from one evaluated sheet to another. The same two sheets give the same answer, always. */
export function compareSheets(old: SheetEvaluation, now: SheetEvaluation): Comparison {
  const sides = { old: sideOf(old), new: sideOf(now) };
  const pair: Pair = { ...sides, renames: findRenames(sides.old, sides.new) };
  return {
    old: sheetInShort(old),
    new: sheetInShort(now),
    problems: compareProblems(pair),
    requirements: compareRequirements(pair),
    signatures: compareSignatures(pair),
    entries: compareEntries(pair),
    functions: compareFunctions(pair),
    tables: compareTables(pair),
    statements: compareStatements(pair),
    frontMatter: compareFrontMatter(pair),
    prose: compareProse(pair),
  };
}

/** An evaluated sheet in a few words: its title block, its digest, and how its requirements stand. */
export function sheetInShort({ sheet, result, digest }: SheetEvaluation): SheetInShort {
  const { title, number, revision } = sheet.frontMatter;
  const requirements: Record<Status, number> = { holds: 0, fails: 0, undecided: 0, 'not calculated': 0 };
  for (const { statements } of result.cells) for (const of of statements) if (of.kind === 'requirement') requirements[of.status]++;
  return { title, number, revision, digest, requirements };
}

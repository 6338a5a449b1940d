// The parser: statements in order that cover all tokens, one error of form each at most, and printing that reads back.
import assert from 'node:assert/strict';
import { format } from '../../../src/language/format.ts';
import { parse } from '../../../src/language/parser.ts';
import { print } from '../../../src/language/print.ts';
import { expressionsOf, walk } from '../../../src/language/walk.ts';
import { maker, wordsOf } from '../grammar.ts';
import { NOTATION } from '../grammars/notation.ts';
import { checkPlace, checkProblems, type Target } from '../target.ts';

export const parser: Target = {
  name: 'parser',
  make: maker(NOTATION, 'block'),
  words: wordsOf(NOTATION),
  check(text, random) {
    const { statements, tokens, problems } = parse(text);
    checkProblems(problems, text);
    let token = 0;
    for (const [i, statement] of statements.entries()) {
      assert.ok(statement.at.start >= (statements[i - 1]?.at.end ?? 0), 'statements overlap');
      while (token < tokens.length && tokens[token]!.at.end <= statement.at.end) token++;
      for (const expression of expressionsOf(statement)) walk(expression, (node) => checkPlace(node.at, text, node.kind));
    }
    assert.equal(token, tokens.length, 'a token belongs to no statement');
    if (random.chance(10)) checkForms(text);
  },
};

/** Printing and formatting change nothing but blanks and spellings. */
function checkForms(text: string): void {
  for (const statement of parse(text).statements) {
    if (statement.broken) continue;
    for (const expression of expressionsOf(statement)) {
      const printed = print(expression);
      const [again] = expressionsOf(parse(`x = (${printed})`).statements[0]!);
      if (again?.kind === 'group') assert.equal(print(again.inner), printed);
    }
  }
  const formatted = format(text);
  assert.equal(format(formatted), formatted, 'formatting twice changes something');
}

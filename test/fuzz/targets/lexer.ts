// The lexer: every character belongs to one token or piece of trivia, whatever it is.
import assert from 'node:assert/strict';
import { lex } from '../../../src/language/lexer.ts';
import { maker, wordsOf } from '../grammar.ts';
import { NOTATION } from '../grammars/notation.ts';
import { checkProblems, type Target } from '../target.ts';

export const lexer: Target = {
  name: 'lexer',
  make: maker(NOTATION, 'block'),
  words: wordsOf(NOTATION),
  check(text) {
    const { tokens, trivia, problems } = lex(text);
    let [end, t, v] = [0, 0, 0];
    while (t < tokens.length || v < trivia.length) {
      const piece = tokens[t]?.at.start === end ? tokens[t++] : trivia[v++];
      assert.ok(piece !== undefined && piece.at.start === end && piece.at.end > end, `a gap at ${end}`);
      end = piece.at.end;
    }
    assert.equal(end, text.length);
    checkProblems(problems, text);
  },
};

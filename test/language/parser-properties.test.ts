// What holds for any text: nothing is lost, nothing is thrown, errors stay in their statement, nothing takes more than linear time.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { Statement } from '../../src/language/ast.ts';
import { lex } from '../../src/language/lexer.ts';
import { MAX_NESTING } from '../../src/language/parser/cursor.ts';
import { parse } from '../../src/language/parser.ts';
import { print } from '../../src/language/print.ts';
import { expressionsOf, walk } from '../../src/language/walk.ts';
import { shape } from '../support/parsing.ts';
import { blocks, expressions, soupLines, soups } from '../support/sources.ts';

const anyText = fc.oneof(soups, blocks, fc.string({ unit: 'binary', maxLength: 40 }), fc.string({ maxLength: 40 }));
/** Reported of lines, not of what is in them. */
const LAYOUT: ReadonlySet<string> = new Set(['indented-block', 'indented-statement']);

describe('lexer, on any text', () => {
  it('puts every character into exactly one token or piece of trivia', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { tokens, trivia } = lex(text);
        const pieces = [...tokens, ...trivia].sort((a, b) => a.at.start - b.at.start);
        assert.equal(pieces.map((piece) => text.slice(piece.at.start, piece.at.end)).join(''), text);
        assert.ok(pieces.every((piece, i) => piece.at.start < piece.at.end && piece.at.start === (pieces[i - 1]?.at.end ?? 0)));
      }),
      { numRuns: 1000 },
    );
  });

  it('gives the same tokens for a line wherever it stands', () => {
    fc.assert(
      fc.property(soupLines, soupLines, (before, line) => {
        const alone = lex(line).tokens.map((token) => [token.kind, token.at.start]);
        const offset = before.length + 1;
        const behind = lex(`${before}\n${line}`).tokens.filter((token) => token.at.start >= offset);
        assert.deepEqual(
          behind.map((token) => [token.kind, token.at.start - offset]),
          alone,
        );
      }),
    );
  });
});

describe('parser, on any text', () => {
  it('reads it as statements in order, each token in one of them', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { statements, tokens } = parse(text);
        assert.ok(statements.every((s, i) => s.at.start >= (statements[i - 1]?.at.end ?? 0) && s.at.end <= text.length));
        assert.ok(tokens.every((token) => statements.some((s) => s.at.start <= token.at.start && token.at.end <= s.at.end)));
      }),
      { numRuns: 1000 },
    );
  });

  it('calls a statement broken if and only if an error is reported in it', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { statements, problems } = parse(text);
        const errors = problems.filter((p) => p.severity === 'error' && !LAYOUT.has(p.code));
        for (const statement of statements) {
          const own = errors.filter((p) => p.at.end > statement.at.start && p.at.start < statement.at.end);
          assert.equal(statement.broken, own.length > 0, text.slice(statement.at.start, statement.at.end));
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('offers mends and places that lie in the text', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        for (const problem of parse(text).problems) {
          const places = [problem.at, ...problem.places.map((p) => p.at), ...problem.mends.flatMap((m) => m.edits.map((e) => e.at))];
          assert.ok(places.every((at) => 0 <= at.start && at.start <= at.end && at.end <= text.length));
          assert.match(problem.message.replace(/`[^`]*`/g, '`…`'), /^\S[^!\n]*[^.!]$/u);
        }
      }),
    );
  });

  it('lets no error reach the statements before and behind it (Y5)', () => {
    fc.assert(
      fc.property(soupLines, fc.constantFrom('x = ', 'shall ', 'f(a) = ', 'curve ', 't.c: V = '), (soup, head) => {
        const [first, ...others] = parse(`a = 1 V\n${head}${soup}\nb = (2 V)\n  from plate "p"`).statements;
        const last = others.at(-1)!;
        assert.ok(first?.kind === 'entry' && !first.broken && first.name.name === 'a');
        assert.ok(last.kind === 'entry' && !last.broken && last.name.name === 'b' && last.clauses.source !== null);
      }),
      { numRuns: 500 },
    );
  });

  it('keeps the name of a broken line', () => {
    fc.assert(
      fc.property(soupLines, (soup) => {
        const names = (statement: Statement | undefined) => (statement && 'name' in statement ? statement.name?.name : undefined);
        assert.equal(names(parse(`x = ${soup}`).statements[0]), 'x');
        assert.equal(names(parse(`f(a) = ${soup}`).statements[0]), 'f');
      }),
    );
  });
});

describe('well-formed text', () => {
  it('has no problems', () => {
    fc.assert(
      fc.property(blocks, (text) => {
        assert.deepEqual(
          parse(text).problems.filter((p) => p.severity === 'error'),
          [],
        );
      }),
      { numRuns: 500 },
    );
  });

  it('is printed so that it reads back as the same', () => {
    fc.assert(
      fc.property(expressions, (text) => {
        const [before] = expressionsOf(parse(`x = ${text}`).statements[0]!);
        const printed = print(before!);
        const [after] = expressionsOf(parse(`x = ${printed}`).statements[0]!);
        assert.equal(shape(after!), shape(before!));
        assert.equal(print(after!), printed);
      }),
      { numRuns: 500 },
    );
  });

  it('has no hole in its tree, and each part lies in its whole', () => {
    fc.assert(
      fc.property(blocks, (text) => {
        for (const statement of parse(text).statements) {
          for (const expression of expressionsOf(statement)) {
            walk(expression, (node) => {
              assert.notEqual(node.kind, 'hole');
              assert.ok(expression.at.start <= node.at.start && node.at.end <= expression.at.end);
            });
          }
        }
      }),
    );
  });
});

describe('parser, on nasty text', () => {
  const codes = (text: string) => parse(text).problems.map((problem) => problem.code);
  const deep = 10_000;

  const nests: [string, string][] = [
    ['parentheses', `x = ${'('.repeat(deep)}1${')'.repeat(deep)}`],
    ['lists', `x = ${'['.repeat(deep)}1${']'.repeat(deep)}`],
    ['calls', `x = ${'f('.repeat(deep)}1${')'.repeat(deep)}`],
    ['signs', `x = ${'-'.repeat(deep)}a`],
    ['negations', `x = ${'not '.repeat(deep)}a`],
    ['powers', `x = ${'2^'.repeat(deep)}2`],
    ['roots', `x = ${'√'.repeat(deep)}2`],
    ['branches', `x = ${'if a then b else '.repeat(deep)}c`],
    ['columns', `x = a${'.b'.repeat(deep)}`],
    ['readings', `x = ${'readings '.repeat(deep)}(a)`],
  ];
  for (const [what, text] of nests) {
    it(`reports ${deep} nested ${what} once`, () => {
      assert.deepEqual(codes(text), ['nested-too-deep']);
    });
  }

  it(`reads ${MAX_NESTING} nested brackets`, () => {
    assert.deepEqual(codes(`x = ${'('.repeat(MAX_NESTING)}1${')'.repeat(MAX_NESTING)}`), []);
    assert.deepEqual(codes(`x = ${'('.repeat(MAX_NESTING + 1)}1${')'.repeat(MAX_NESTING + 1)}`), ['nested-too-deep']);
  });

  it('reports brackets that are opened or closed a hundred thousand times once', () => {
    assert.deepEqual(codes(`x = ${'('.repeat(100_000)}`), ['unclosed-bracket']);
    assert.deepEqual(codes(`x = ${'f([('.repeat(30_000)}`), ['unclosed-bracket']);
    assert.deepEqual(codes(`x = 1${')'.repeat(100_000)}`), ['stray-bracket']);
    assert.deepEqual(codes(`x = ${'('.repeat(50_000)}${']'.repeat(50_000)}`), ['unclosed-bracket']);
  });

  it('reads long chains as one node', () => {
    const kindOf = (text: string) => {
      const [statement] = parse(`x = ${text}`).statements;
      assert.ok(statement?.kind === 'entry' && !statement.broken);
      const { value } = statement;
      return value.kind === 'sum'
        ? value.terms.length
        : value.kind === 'product'
          ? value.factors.length
          : 'operands' in value
            ? value.operands.length
            : 0;
    };
    assert.equal(kindOf(`a${' + a'.repeat(99_999)}`), 100_000);
    assert.equal(kindOf(`a${'*a/b'.repeat(50_000)}`), 100_001);
    assert.equal(kindOf(`a${' and b'.repeat(50_000)}`), 50_001);
    assert.equal(kindOf(`a${' <= b'.repeat(50_000)}`), 50_001);
  });

  it('reads lists up to their limit', () => {
    assert.deepEqual(codes(`x = [${'1, '.repeat(100_000)}]`), []);
    assert.deepEqual(codes(`x = [${'1, '.repeat(100_001)}]`), ['list-too-long']);
  });

  it('reads a line of a megabyte', () => {
    for (const piece of ['a', '$', ' ', 'a ', '5 + ', '# x', '1 ']) {
      const text = `x = ${piece.repeat((1 << 20) / piece.length)}\ny = 3`;
      assert.equal(parse(text).statements.length, 2, piece);
    }
  });

  it('reads whatever is repeated twenty thousand times', () => {
    const pieces = [
      '1,', '2026-01-01-', '5 m*', '5 W/(m*', "'", '“', '"\\x', '$\u200B', 'f(', '²', '1_', '.5', '5 ± ', '5 within 3 to ', 'readings [',
      '-', 'x.', 'a b ', 'if ', 'with a = ', 'needs a, ', 'from plate "a" ', '[a, ', 'a < ', '1/K ', ': V', '\u202E', 'a\u0301', '🙂',
    ]; // biome-ignore format: a list of pieces
    for (const piece of pieces) assert.equal(parse(`x = ${piece.repeat(20_000)}\ny = 3`).statements.length, 2, piece);
  });

  it('reads ten thousand lines, whatever is on them', () => {
    for (const line of ['x = 2 kw', 'f(a', 'x = (', '  y = 3', 'a b', '"', ')', '5 V', '# note', 'x = 1,5 – 3', 'a c = 3']) {
      const { problems } = parse(`${line}\n`.repeat(10_000));
      assert.ok(problems.length <= 20_001, line);
    }
  });
});

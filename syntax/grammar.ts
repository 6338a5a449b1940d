// The TextMate grammar of the notation, put together from named pieces; its test writes it to ampwright.tmLanguage.json.
import { RESERVED, SOURCE_KINDS } from '../src/language/token.ts';
import { CATALOGUE } from '../src/units/catalogue.ts';

const anyOf = (words: Iterable<string>): string => [...words].sort((a, b) => b.length - a.length || (a < b ? -1 : 1)).join('|');

// Blanks include the no-break and thin spaces (L12); words and digits are spelled out, since `\w` and `\d` take other scripts' digits.
const blank = '[ \\t\\x{A0}\\x{2009}\\x{202F}]';
const letter = '[\\p{L}_]';
const inWord = '[\\p{L}\\p{M}0-9_]';
const word = `${letter}${inWord}*`;
const reserved = `(?:${anyOf(RESERVED)})(?!${inWord})`;
const name = `(?!${reserved})${word}`;
// Words are taken whole from left to right, so that none begins inside another.
const wordEnd = `(?!${inWord})`;

const digits = '[0-9]+';
const decimal = `(?:0|[1-9][0-9]*)(?:\\.${digits})?(?:[eE][+-]?${digits})?`;
const number = decimal;

// Units (L1 to L6): the catalogue's symbols, and no blank inside. A sign is a symbol whatever follows it.
const symbols = [...CATALOGUE.keys()];
const signs = symbols.filter((symbol) => !/[\p{L}]$/u.test(symbol));
const words = symbols.filter((symbol) => /[\p{L}]$/u.test(symbol));
const symbol = `(?:(?:${anyOf(words)})(?![\\p{L}\\p{M}0-9_\\[(]|\\.${letter})|(?:${anyOf(signs)})(?![\\p{L}\\p{M}0-9_\\[]|\\.${letter}))`;
const exponent = '(?:⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+|\\^(?:[-−]?[0-9]+(?:\\.[0-9]+)?|\\([-−]?[0-9]+/[0-9]+\\)))';
const power = `${symbol}${exponent}?`;
const product = `${power}(?:[·⋅*]${power})*`;
const divisor = `(?:${power}|\\(${product}\\))`;
const unit = `(?:1/${divisor}|${product}(?:/${divisor})?)`;

const assigned = `(?=${blank}*(?:=(?!=)|:))`;
const operand = `(?:["√(\\[]|-?[0-9]|${name})`;
const lineStart = `^${blank}*`;
const statementStart = `^(?=(?:shall|should|use|curve|tabulate|instrument|action)${wordEnd}|${name}(?:\\.${word})?${blank}*(?:=(?!=)|:)|${name}\\()`;

/** A pattern with a scope; the language's suffix is added to every scope. */
interface Rule {
  readonly name?: string;
  readonly contentName?: string;
  readonly match?: string;
  readonly begin?: string;
  readonly end?: string;
  readonly include?: string;
  readonly captures?: Readonly<Record<number, { readonly name?: string; readonly patterns?: readonly Rule[] }>>;
  readonly beginCaptures?: Rule['captures'];
  readonly endCaptures?: Rule['captures'];
  readonly patterns?: readonly Rule[];
}

const scope = (name: string) => ({ name: name.replace(/(\S+)/g, '$1.ampwright') });
const numbered = (...names: readonly (string | null)[]): NonNullable<Rule['captures']> =>
  Object.fromEntries(names.flatMap((name, i) => (name === null ? [] : [[i + 1, scope(name)]])));
const token = (name: string, match: string): Rule => ({ ...scope(name), match });
const parts = (match: string, ...names: readonly (string | null)[]): Rule => ({ match, captures: numbered(...names) });
const include = (...names: readonly string[]): Rule[] => names.map((name) => ({ include: `#${name}` }));
const whole = (word: string): string => `(?:${word})${wordEnd}`;

const repository: Record<string, { readonly patterns: readonly Rule[] }> = {
  comment: { patterns: [token('comment.line.number-sign', '#.*$')] },
  text: {
    patterns: [
      {
        ...scope('string.quoted.double'),
        begin: '"',
        end: '"|$',
        patterns: [token('constant.character.escape', '\\\\["\\\\]'), token('invalid.illegal.escape', '\\\\.')],
      },
    ],
  },
  // What begins a statement (Y2): an entry, a computed column, a function.
  definition: {
    patterns: [
      {
        begin: `${lineStart}(${name})(\\()(?=(?:[^()#"]|\\([^()#"]*\\))*\\)${blank}*(?:=(?!=)|:))`,
        beginCaptures: numbered('entity.name.function.definition', 'punctuation.section.parameters.begin'),
        end: '(\\))|$',
        endCaptures: numbered('punctuation.section.parameters.end'),
        patterns: [...include('type'), token('variable.parameter', name), token('punctuation.separator.comma', ',')],
      },
      parts(
        `${lineStart}(${name})(\\.)(${word})${assigned}`,
        'variable.other.table',
        'punctuation.accessor',
        'variable.other.definition.column',
      ),
      parts(`${lineStart}(${name})${assigned}`, 'variable.other.definition'),
      parts(`(with)${blank}+(${name})${assigned}`, 'keyword.other.clause', 'variable.other.definition'),
      parts(`(?<=,)${blank}*(${name})(?=${blank}*(?:=(?!=)|:[^,()#"]*=(?!=)))`, 'variable.other.definition'),
      parts(`${lineStart}(instrument)${blank}+(${name})`, 'keyword.other.statement', 'variable.other.definition.instrument'),
      parts(`${lineStart}(action)(?=${blank}*")`, 'keyword.other.statement'),
    ],
  },
  type: {
    patterns: [
      {
        begin: `:${blank}*(?=\\[)`,
        beginCaptures: { 0: scope('punctuation.separator.type') },
        end: '(\\])|(?=[=,)])|$',
        endCaptures: numbered('punctuation.section.brackets'),
        patterns: [
          token('keyword.other.unit', `${unit}|1`),
          token('storage.type', whole('text|date|any')),
          token('punctuation.section.brackets', '\\['),
        ],
      },
      parts(`(:)${blank}*(${unit}|1(?![0-9./]))`, 'punctuation.separator.type', 'keyword.other.unit'),
      parts(`(:)${blank}*(text|date|any)${wordEnd}`, 'punctuation.separator.type', 'storage.type'),
      token('punctuation.separator.type', ':'),
    ],
  },
  // A number with its unit is one literal. `1/` belongs to the unit behind a blank only (L6), and `pi` takes `rad` alone (L9).
  literal: {
    patterns: [
      token('invalid.illegal.date', `(?<![\\p{L}0-9_-])[0-9]{4}-(?![0-9]{2}-[0-9]{2}(?![\\p{L}0-9_-]))[0-9]{1,2}-[0-9]{1,2}[\\p{L}0-9_-]*`),
      token('constant.other.date', '(?<![\\p{L}0-9_-])[0-9]{4}-[0-9]{2}-[0-9]{2}(?![\\p{L}0-9_-])'),
      token('invalid.illegal.decimal-comma', '(?<=[0-9]),(?=[0-9])'),
      token('invalid.illegal.number', `(?<![\\p{L}0-9_.])0[0-9]+(?:\\.${digits})?`),
      token('constant.numeric.quantity', `${number}(?:${blank}+${unit}|(?!1/)${unit})`),
      token('constant.numeric', number),
      token('constant.numeric.quantity', `(?:pi|π)${blank}+rad(?!${inWord}|[(\\[]|\\.${letter})`),
      token('constant.numeric.pi', whole('pi|π')),
      token('constant.language.boolean', whole('yes|no')),
    ],
  },
  uncertainty: {
    patterns: [
      token('keyword.operator.uncertainty', '±|\\+/-'),
      parts(`(within)(?=${blank}+[-−]?[0-9])`, 'keyword.other.uncertainty'),
      parts(`(readings)(?=${blank}*[\\[(]|${blank}+${name})`, 'keyword.other.uncertainty'),
      {
        match: `(?<![\\p{L}0-9_])(\\()${blank}*(k)${blank}*(=)${blank}*(${decimal})(?:${blank}*(,)${blank}*(nu)${blank}*(=)${blank}*(${decimal}))?${blank}*(\\))`,
        captures: numbered(
          'punctuation.section.parens.begin',
          'keyword.other.uncertainty',
          'keyword.operator.assignment',
          'constant.numeric',
          'punctuation.separator.comma',
          'keyword.other.uncertainty',
          'keyword.operator.assignment',
          'constant.numeric',
          'punctuation.section.parens.end',
        ),
      },
    ],
  },
  // Clauses, and the words that are words of the notation in one place only (K2). Two values never stand side by side, so a
  // contextual word with an operand right behind it is no name.
  clause: {
    patterns: [
      parts(`(from)${blank}+(${anyOf(SOURCE_KINDS)})(?=${blank}*(?:"|$))`, 'keyword.other.clause', 'support.type.source-kind'),
      parts(`(accepted)${blank}+(by)${wordEnd}`, 'keyword.other.clause', 'keyword.other.clause'),
      parts(`(by)(?=${blank}+(?:"|${name}))`, 'keyword.other.clause'),
      parts(`(on|until|due|calibrated)(?=${blank}+[0-9]{4}-)`, 'keyword.other.clause'),
      parts(`(serial)(?=${blank}*")`, 'keyword.other.clause'),
      parts(`(for)${blank}+(each)${wordEnd}`, 'keyword.other.clause', 'keyword.other.clause'),
      token('keyword.other.clause', whole('because|with|needs|throughout')),
    ],
  },
  // A curve or tabulation reaches up to the next line that starts in the first column.
  sweep: {
    patterns: [
      {
        begin: `${lineStart}(curve|tabulate)${wordEnd}`,
        beginCaptures: numbered('keyword.other.statement'),
        end: '^(?=[^\\s#)\\]])',
        patterns: [
          parts(`^${blank}+(mark|limit)(?=${blank}+${operand})`, 'keyword.other.clause'),
          parts(`(?<!to |from |[-+*/^(,=] )(step)(?=${blank}+${operand})`, 'keyword.other.range'),
          parts(`(?<!to |from |[-+*/^(,=] )(log)(?=${blank}*(?:$|#|"|(?:with|from|because)${wordEnd}))`, 'keyword.other.range'),
          ...include('expression'),
        ],
      },
    ],
  },
  keyword: {
    patterns: [
      token('keyword.other.requirement', whole('shall|should')),
      token('keyword.other.statement', whole('use|curve|tabulate')),
      token('keyword.control.conditional', whole('if|then|else')),
      token('keyword.operator.expression.logical', whole('and|or|not|is')),
      parts(`(least|greatest|the)${blank}+(${word})(?=${blank}+of${wordEnd})`, 'keyword.other.choice', 'variable.other.property'),
      parts(`(root)(?=${blank}+of${wordEnd})`, 'keyword.other.choice'),
      token('keyword.other.choice', whole('least|greatest|first|the|of|where')),
      token('keyword.other.range', whole('over|from|to|for')),
      token('variable.language.row', whole('row')),
    ],
  },
  access: {
    patterns: [
      parts(`(?<=[\\p{L}\\p{M}0-9_)\\]])${blank}*(\\.)${blank}*(${word})`, 'punctuation.accessor', 'variable.other.property'),
      parts(`(\\.)(${word})`, 'punctuation.accessor', 'variable.other.property'),
    ],
  },
  call: {
    patterns: [
      {
        begin: `(?:(sqrt|abs|exp|ln|log10|sin|cos|tan|asin|acos|atan2?|hypot|round|ceil|floor|min|max|sum|mean|count|interpolate(?:_log)?|integrate|differences|slope|fit|uncertainty_of)|(${name}))${blank}*(\\()`,
        beginCaptures: numbered('support.function', 'entity.name.function.call', 'punctuation.section.arguments.begin'),
        end: `(\\))|${statementStart}`,
        endCaptures: numbered('punctuation.section.arguments.end'),
        patterns: [
          parts(`(?:${lineStart}|(?<=[(,])${blank}*)(${name})(?=${blank}*=(?!=))`, 'variable.parameter'),
          ...include('expression'),
        ],
      },
    ],
  },
  operator: {
    patterns: [
      token('keyword.operator.comparison', '<=|>=|==|!=|[≤≥≠<>]'),
      token('keyword.operator.arithmetic', '[-−+*·⋅×/÷^√]'),
      token('keyword.operator.power', '⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+'),
      token('keyword.operator.assignment', '='),
      token('punctuation.separator.comma', ','),
      token('punctuation.accessor', '\\.'),
      token('punctuation.section.parens', '[()]'),
      token('punctuation.section.brackets', '[\\[\\]]'),
    ],
  },
  reference: { patterns: [token('support.constant', whole('absolute_zero')), token('variable.other', `${name}`)] },
  // Characters that no statement has: look-alikes from word processors and other languages' marks (L12).
  stray: { patterns: [token('invalid.illegal.character', "[“”„‟‘’‚‛«»–—;{}$@&|?!\\\\~'`]")] },
  expression: {
    patterns: include(
      'comment', 'text', 'definition', 'uncertainty', 'type', 'literal', 'access', 'clause', 'keyword', 'call', 'reference', 'operator', 'stray',
    ), // biome-ignore format: a list in order of precedence
  },
};

/** The grammar as editors load it. */
export const grammar = {
  $schema: 'https://raw.githubusercontent.com/martinring/tmlanguage/master/tmlanguage.json',
  name: 'Ampwright',
  scopeName: 'source.ampwright',
  patterns: include('sweep', 'expression'),
  repository,
};

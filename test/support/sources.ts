// Random source text of the notation: well-formed expressions and blocks, and soups of tokens that mostly are not.
import fc from 'fast-check';

const name = fc.constantFrom('a', 'I_n', 'U_coil', 'η', 'eta', 'x_1', 'limit', 'by', 'root', 'step', 'within', 'K', 'V', 'm', 'k');
/** Names that are no units either, for places where a unit would join. */
const plainName = name.filter((n) => !['K', 'V', 'm'].includes(n));
const column = fc.constantFrom('I_AC3', 'from', 'row', 'R', 'type');
const number = fc.constantFrom('0', '1', '2.5', '400', '1.2e-3', '92.4', '1E6', 'pi');
const unit = fc.constantFrom('V', 'kW', 'A', '%', 'N·m', 'W/(m²·K)', 'A·s^(1/2)/mm²', '1/K', 'degC', 'ohm/km', 'mm^2', 'm*s^-1');
const plainNumber = number.filter((n) => n !== 'pi');
const quantity = fc.oneof(
  number,
  fc.tuple(plainNumber, unit).map(([n, u]) => `${n} ${u}`),
  fc.constant('pi rad'),
);
const text = fc.constantFrom('"M-12"', '"a \\"b\\" \\\\ # c"', '""', '"±5 °C"');
const date = fc.constantFrom('2026-09-14', '2024-02-29', '1999-12-31');
const blank = fc.constantFrom(' ', ' ', '  ', '\t', '\u00A0');

/** Between two tokens that may touch. */
const maybe = fc.constantFrom('', ' ', ' ', '  ');

/** Joins parts with blanks that may be missing where the tokens may touch. */
const spaced = (...parts: fc.Arbitrary<string>[]) =>
  fc.tuple(...parts, maybe, maybe).map((found) => {
    const [left, right] = found.slice(-2) as [string, string];
    const pieces = found.slice(0, -2);
    return pieces.map((piece, i) => (i % 2 === 1 ? `${left}${piece}${right}` : piece)).join('');
  });

const relation = fc.constantFrom('<', '<=', '≤', '==', '!=');
const words = (...parts: (string | fc.Arbitrary<string>)[]) =>
  fc
    .tuple(...parts.map((part) => (typeof part === 'string' ? fc.constant(part) : part)), blank)
    .map((found) => found.slice(0, -1).join(found.at(-1)));

/** Expressions: `operand` may stand beside an operator, `whole` only where an expression reaches as far as it can. */
const grown = fc.letrec<{ atom: string; power: string; product: string; sum: string; condition: string; whole: string }>((tie) => ({
  atom: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    quantity,
    name,
    date,
    fc.constantFrom('yes', 'no', 'row'),
    fc.tuple(name, column).map(([n, c]) => `${n}.${c}`),
    tie('whole').map((e) => `(${e})`),
    fc.tuple(tie('whole'), tie('whole')).map(([a, b]) => `[${a}, ${b}]`),
    fc.tuple(name, tie('whole'), tie('whole'), name).map(([f, a, b, p]) => `${f}(${a}, ${p} = ${b})`),
    name.map((n) => `√${n}`),
  ),
  power: fc.oneof(
    { depthSize: 'small' },
    tie('atom'),
    fc.tuple(name, plainNumber).map(([a, b]) => `${a}^${b}`),
    name.map((n) => `${n}²`),
    fc.tuple(name, name).map(([a, b]) => `-${a}^-${b}`),
    quantity.map((q) => `-${q}`),
  ),
  product: fc.oneof(
    { depthSize: 'small' },
    tie('power'),
    spaced(tie('power'), fc.constantFrom('*', '/', '·', '×'), plainName),
    words(tie('power'), '*', tie('power')),
  ),
  sum: fc.oneof(
    { depthSize: 'small' },
    tie('product'),
    words(tie('product'), fc.constantFrom('+', '-', '−'), tie('product')),
    words(tie('product'), '+', tie('product'), '-', tie('product')),
  ),
  condition: fc.oneof(
    { depthSize: 'small' },
    words(tie('sum'), relation, tie('sum')),
    words('not', tie('sum')),
    words(tie('sum'), 'is not', text),
    words(tie('condition'), fc.constantFrom('and', 'or'), tie('condition')),
    tie('sum'),
  ),
  whole: fc.oneof(
    { depthSize: 'small' },
    tie('sum'),
    tie('condition'),
    words('if', tie('condition'), 'then', tie('whole'), 'else', tie('whole')),
    words(fc.constantFrom('least', 'greatest'), column, 'of', name, 'where', tie('condition')),
    words('first of', name),
    words('the', column, 'of', name, 'where', tie('condition')),
    words('root of', tie('sum'), 'over', name, 'from', tie('sum'), 'to', tie('sum')),
  ),
}));

/** A well-formed expression. A literal is never directly before a date's or a point's sign. */
export const expressions: fc.Arbitrary<string> = grown.whole;

const input = fc.oneof(
  fc
    .tuple(
      plainNumber,
      unit.filter((u) => u !== 'degC'),
    )
    .map(([n, u]) => `${n} ${u} ± 2 %`),
  fc.constantFrom(
    '12.4 mV ± (1.5 % + 0.5 mV) (k=2)',
    '-5 degC ± 2 K (k=2.87, nu=4)',
    '92 % within 91 % to 93 %',
    'readings [1 V, 2 V] ± 0.1 V',
    '[1 V ± 1 %, -2 V ± 1 V]',
  ),
);
const clause = fc.oneof(
  text.map((t) => `from plate ${t}`),
  text.map((t) => `because ${t}`),
  text,
  expressions.map((e) => `with a = ${e}, b: V = 3 V`),
);
const comment = fc.constantFrom('', '', '  # a note', '# touching', '\t#');
const statement = fc.oneof(
  fc.tuple(name, expressions, maybe).map(([n, e, gap]) => `${n}${gap}=${gap}${e}`),
  fc.tuple(name, unit, expressions).map(([n, u, e]) => `${n}: ${u} = ${e}`),
  fc.tuple(name, input).map(([n, i]) => `${n} = ${i}`),
  fc.tuple(name, column, expressions).map(([n, c, e]) => `${n}.${c} = ${e}`),
  fc.tuple(name, expressions, expressions).map(([n, e, c]) => `${n}(a: kW,b: [ohm], c) : A = ${e} needs (${c}) because "positive"`),
  fc.tuple(fc.constantFrom('shall', 'should'), expressions).map(([w, e]) => `${w}  ${e} throughout U from 1 V to 2 V`),
  expressions.map((e) => `curve (${e}): V "drop" over x from 0 to 10 log\n  mark 3 "three"\n  limit (${e})`),
  fc.constantFrom(
    'instrument DMM ±(1.5 % + 0.5 mV) serial "B41" due 2027-03-01',
    'use "x.ampwright.md" for a,b',
    'action "Renew" by "maintenance" due 2026-12-15',
  ),
);
const lineEnd = fc.constantFrom('\n', '\n', '\r\n', '\n\n', '\n# a comment\n', '\n  \n');

/** A block of well-formed statements with clauses, comments and blank lines. */
export const blocks: fc.Arbitrary<string> = fc
  .array(fc.tuple(statement, fc.option(fc.tuple(fc.constantFrom(' ', '  ', '\n    '), clause), { nil: null }), comment, lineEnd), {
    maxLength: 6,
  })
  .map((lines) =>
    lines.map(([s, c, remark, end]) => `${s}${c === null || /^(use|action|instrument)/.test(s) ? '' : c.join('')}${remark}${end}`).join(''),
  );

const SOUP = [
  ...'a I_n η 400 V kW 1 2.5 pi rad 2026-09-14 "text" ( ) [ ] , : . = == != < <= > >= + - * / ^ √ ² ⁻¹ ± · and or not is if then else where of for'.split(
    ' ',
  ),
  ...'from to over the least greatest first shall should throughout use curve tabulate because with needs yes no row each root step log within by on'.split(
    ' ',
  ),
  ...'accepted until due serial calibrated instrument action mark limit readings k nu plate text date any degC 1/K W/(m²·K) $ ; “ ” – ＝ \u202E \u200B " \\ # % 1,5 007'.split(
    ' ',
  ),
];
const soupPiece = fc.oneof(
  { weight: 8, arbitrary: fc.constantFrom(...SOUP) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 3 }) },
);

/** Tokens in any order on one line. */
export const soupLines: fc.Arbitrary<string> = fc
  .array(fc.tuple(soupPiece, fc.constantFrom(' ', ' ', '', '\t')), { maxLength: 24 })
  .map((pieces) =>
    pieces
      .flat()
      .join('')
      .replace(/[\r\n]/g, ' '),
  );

/** Tokens in any order on several lines, at any indentation. */
export const soups: fc.Arbitrary<string> = fc
  .array(fc.tuple(fc.constantFrom('', '', '  ', 'x = ', 'f(a) = ', 'shall '), soupLines, fc.constantFrom('\n', '\r\n', '\r')), {
    maxLength: 6,
  })
  .map((lines) => lines.flat().join(''));

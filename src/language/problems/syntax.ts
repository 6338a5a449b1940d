// What can be wrong with the form of a statement: the words and the mends of the parser's problems.
import { kind, type Mend, problemMaker, replace } from '../../text/problem.ts';
import type { Span } from '../../text/span.ts';

const insert = (title: string, at: number, text: string): Mend => ({ title, edits: [{ at: { start: at, end: at }, text }] });
const write = (at: Span, ...texts: readonly (string | null)[]) =>
  texts.filter((t) => t !== null).map((t) => replace(`Write \`${t}\``, at, t));
const remove = (at: Span) => [replace('Remove it', at, '')];
const oneOf = (words: readonly string[]) => words.map((w) => `\`${w}\``).join(words.length === 2 ? ' or ' : ', ');
const enclose = (what: string, at: Span): Mend => ({
  title: `Put parentheses around ${what}`,
  edits: [
    { at: { start: at.start, end: at.start }, text: '(' },
    { at: { start: at.end, end: at.end }, text: ')' },
  ],
});

const SYNTAX = {
  // ------------------------------------------------------------------------------------------- layout and brackets
  'indented-block': kind(
    'error',
    (_: { lines: readonly Span[] }) => 'The first line of a block begins at the margin; this one is indented',
    (f) => [{ title: 'Move the lines of the block to the margin', edits: f.lines.map((at) => ({ at, text: '' })) }],
  ),
  'indented-statement': kind(
    'error',
    (_: { indent: Span }) => 'This line is indented, so it continues the statement above; a statement begins at the margin',
    (f) => [replace('Move the line to the margin', f.indent, '')],
  ),
  'clause-at-margin': kind(
    'error',
    (f: { clause: string }) => `${f.clause} continues the statement above: indent the line`,
    (_, at) => [insert('Indent the line', at.start, '  ')],
  ),
  'unclosed-bracket': kind('error', (f: { bracket: string }) => `\`${f.bracket}\` is never closed`),
  'stray-bracket': kind(
    'error',
    (f: { bracket: string }) => `\`${f.bracket}\` closes nothing`,
    (_, at) => remove(at),
  ),
  'nested-too-deep': kind('error', (f: { limit: number }) => `Nested more than ${f.limit} deep; give a part of it a name of its own`),

  // ----------------------------------------------------------------------------------------------- what is missing
  'missing-value': kind('error', (f: { behind: string | null; before: string | null }) =>
    f.before === null ? `A value is missing behind \`${f.behind}\`` : `A value is missing before \`${f.before}\``,
  ),
  'missing-name': kind('error', (f: { what: string; behind: string }) => `${f.what} is missing behind \`${f.behind}\``),
  'missing-word': kind('error', (f: { word: string; form: string }) => `\`${f.word}\` is missing; the form is \`${f.form}\``),
  'missing-text': kind(
    'error',
    (f: { behind: string; form: string }) => `A text is missing behind \`${f.behind}\`; the form is \`${f.form}\``,
  ),
  'missing-date': kind('error', (f: { behind: string }) => `A date is missing behind \`${f.behind}\`, such as \`2026-09-14\``),
  'missing-unit': kind(
    'error',
    (f: { any: boolean }) =>
      `Behind a colon stands a unit, \`1\` for plain numbers, ${f.any ? '`text`, `date` or `any`' : '`text` or `date`'}`,
  ),
  'missing-equals': kind('error', (f: { name: string }) => `\`=\` and a value are missing: \`${f.name} = …\``),
  'missing-operator': kind(
    'error',
    (f: { product: string | null; joined: string | null; behind: number }) => {
      if (f.product === null) return 'Two values side by side; an operator is missing between them';
      if (f.joined === null) return `Two values side by side; write \`${f.product}\``;
      return `Two names side by side; write \`${f.product}\` for a product, \`${f.joined}\` for one name`;
    },
    (f, at) => (f.product === null ? [insert('Put `*` between them', f.behind, ' *')] : write(at, f.product, f.joined)),
  ),
  'missing-colon': kind(
    'error',
    (f: { name: string; unit: string }) => `A colon is missing between name and unit; write \`${f.name}: ${f.unit}\``,
    (f, at) => write(at, `${f.name}: ${f.unit}`),
  ),
  'missing-limits': kind(
    'error',
    (f: { name: string }) => `The limits of the instrument are missing: \`instrument ${f.name} ± (1.5 % + 0.5 mV)\``,
  ),

  // --------------------------------------------------------------------------------------------------------- units
  'unknown-unit': kind(
    'error',
    (f: { unit: string; near: readonly string[]; product: string | null; unitAt: Span }) =>
      f.near.length > 0
        ? `Unknown unit \`${f.unit}\`; did you mean ${oneOf(f.near)}${f.product === null ? '' : `; for the name write \`${f.product}\``}`
        : `Unknown unit \`${f.unit}\`${f.product === null ? '' : `; write \`${f.product}\` if it is a name`}`,
    (f, at) => [...write(f.unitAt, ...f.near), ...write(at, f.product)],
  ),
  'no-unit-here': kind(
    'error',
    (f: { unit: string; product: string }) => `\`${f.unit}\` is no unit here; write \`${f.product}\``,
    (f, at) => write(at, f.product),
  ),
  'space-in-unit': kind(
    'error',
    (f: { joined: string }) => `A unit has no space in it; write \`${f.joined}\``,
    (f, at) => write(at, f.joined),
  ),
  'unit-behind-value': kind(
    'error',
    (f: { unit: string; behind: number }) =>
      `A unit stands behind a number, or behind the name that is defined, as in \`name: ${f.unit} = …\`; if \`${f.unit}\` is a name, an operator is missing before it`,
    (f) => [insert('Put `*` between them', f.behind, ' *')],
  ),
  'unit-in-brackets': kind(
    'error',
    (f: { written: string }) => `A unit stands behind its number without brackets; write \`${f.written}\``,
    (f, at) => write(at, f.written),
  ),
  'current-kind': kind(
    'error',
    (f: { found: string; written: string }) => `\`${f.found}\` is no part of a unit; it may stand in a description: \`${f.written}\``,
    (f, at) => write(at, f.written),
  ),
  'unit-behind-pi': kind(
    'error',
    (f: { product: string }) => `No unit but \`rad\` stands behind \`pi\`; write \`${f.product}\``,
    (f, at) => write(at, f.product),
  ),

  // ------------------------------------------------------------------------------------------------------- powers
  'power-of-quantity': kind(
    'error',
    (f: { whole: string; unit: string | null }) =>
      f.unit === null
        ? `Write \`${f.whole}\` for the power of the whole`
        : `Write \`${f.whole}\` for the power of the whole, or join the power to the unit: \`${f.unit}\``,
    (f, at) => write(at, f.whole, f.unit),
  ),
  'power-of-root': kind(
    'error',
    (f: { inside: string; outside: string }) => `Root and power need parentheses: \`${f.inside}\` or \`${f.outside}\``,
    (f, at) => write(at, f.inside, f.outside),
  ),
  'two-powers': kind(
    'error',
    (f: { left: string; right: string | null }) =>
      `Two powers need parentheses: \`${f.left}\`${f.right === null ? '' : ` or \`${f.right}\``}`,
    (f, at) => write(at, f.left, f.right),
  ),
  'sign-behind-root': kind('error', (_: object) => 'A sign behind `√` stands in parentheses: `√(-…)`'),
  'unary-plus': kind(
    'error',
    (_: object) => 'A value has no `+` before it',
    (_, at) => remove(at),
  ),

  // -------------------------------------------------------------------------------------------------- expressions
  'operand-needs-parentheses': kind(
    'error',
    (f: { form: string; whole: Span }) => `\`${f.form}\` is a whole expression: as a part of another one it stands in parentheses`,
    (f) => [enclose('it', f.whole)],
  ),
  'chain-turns': kind(
    'error',
    (f: { joined: string }) => `A chain of comparisons runs one way; join them with \`and\`: \`${f.joined}\``,
    (f, at) => write(at, f.joined),
  ),
  'no-chain': kind(
    'error',
    (f: { relation: string; joined: string }) =>
      `\`${f.relation}\` does not stand in a chain; join the comparisons with \`and\`: \`${f.joined}\``,
    (f, at) => write(at, f.joined),
  ),
  'equals-compares': kind(
    'error',
    (_: object) => '`=` defines a name; a comparison is written `==`',
    (_, at) => write(at, '=='),
  ),
  'positional-behind-named': kind('error', (_: object) => 'An argument without a name stands before the named ones'),
  'list-empty': kind('error', (_: object) => 'A list has at least one element'),
  'list-too-long': kind('error', (f: { limit: number }) => `A list has at most ${f.limit} elements`),
  'list-index': kind('error', (_: object) => 'A list has no index; take a row of a table with `the … of … where …`'),
  'list-without-brackets': kind('error', (_: object) => 'A comma separates arguments and the elements of a list; a list stands in `[ ]`'),
  'column-of-number': kind('error', (_: object) => 'A number has no columns'),
  'column-called': kind('error', (f: { column: string }) => `\`.${f.column}\` is a column; only a function has arguments`),

  // -------------------------------------------------------------------------------------------------- uncertainty
  'limits-behind-value': kind(
    'error',
    (_: object) =>
      '`±` stands behind a value that is written out, or behind `readings […]`; a calculated value has the uncertainty of its inputs',
  ),
  'uncertain-needs-name': kind(
    'error',
    (_: { name: string; line: string; above: Span }) => 'An uncertain value needs a name of its own, so that it can have a source',
    (f, at) => [
      {
        title: `Name it \`${f.name}\``,
        edits: [
          { at: f.above, text: f.line },
          { at, text: f.name },
        ],
      },
    ],
  ),
  'half-width-literal': kind('error', (_: object) => 'The half-width is written out, such as `2 %`, or a sum such as `(1.5 % + 0.3 A)`'),
  'half-width-negative': kind(
    'error',
    (_: object) => 'A half-width has no sign',
    (_, at) => remove(at),
  ),
  'bound-literal': kind('error', (_: object) => 'Limits are written out, such as `within 91.3 % to 92.4 %`'),
  'coverage-form': kind('error', (_: object) => 'Behind a half-width stands `(k=2)` or `(k=2, nu=18)`'),
  'coverage-number': kind('error', (f: { name: string }) => `\`${f.name}\` is a plain number above 0`),
  'coverage-alone': kind('error', (_: object) => '`(k=…)` belongs behind `±` and a half-width'),
  'reading-uncertain': kind('error', (_: object) => 'A single reading has no `±` of its own; it stands behind the list, for all of them'),

  // ------------------------------------------------------------------------------------------- statements, clauses
  'bare-expression': kind(
    'error',
    (_: object) => 'This value has no name; write `name = …`',
    (_, at) => [insert('Give it a name', at.start, 'name = ')],
  ),
  'comparison-as-definition': kind(
    'error',
    (f: { name: string; equals: Span }) => `\`==\` compares; to define \`${f.name}\` write \`=\``,
    (f) => write(f.equals, '='),
  ),
  'definition-without-equals': kind(
    'error',
    (f: { name: string; behind: number }) => `\`=\` is missing behind \`${f.name}\``,
    (f) => [insert('Put `=` between them', f.behind, ' =')],
  ),
  'not-a-statement': kind('error', (f: { found: string }) => `A statement does not begin with \`${f.found}\``),
  'reserved-name': kind('error', (f: { word: string }) => `\`${f.word}\` is a word of the notation and can't be a name`),
  'fixed-name': kind('error', (f: { name: string }) => `\`${f.name}\` belongs to the mathematics and can't be given another value`),
  'broken-name': kind(
    'error',
    (f: { name: string | null }) =>
      f.name === null ? 'A name begins with a letter or `_`' : `A name is letters, digits and \`_\` without a gap; write \`${f.name}\``,
    (f, at) => write(at, f.name),
  ),
  'word-before-name': kind(
    'error',
    (f: { word: string; name: string; form: string }) =>
      `A name has no word before it; write \`${f.form} = …\`, or \`${f.word}_${f.form} = …\` for one name`,
    (f, at) => write(at, f.name, `${f.word}_${f.name}`),
  ),
  'misspelt-statement': kind(
    'error',
    (f: { word: string; near: readonly string[] }) => `\`${f.word}\` begins no statement; did you mean ${oneOf(f.near)}`,
    (f, at) => write(at, ...f.near),
  ),
  'misspelt-choice': kind(
    'error',
    (f: { word: string; near: readonly string[] }) => `\`${f.word}\` begins no choice; did you mean ${oneOf(f.near)}`,
    (f, at) => write(at, ...f.near),
  ),
  'any-not-here': kind('error', (_: object) => '`any` stands behind parameters of functions only'),
  'unknown-source': kind(
    'error',
    (f: { word: string; near: readonly string[]; kinds: readonly string[] }) =>
      f.near.length > 0
        ? `\`${f.word}\` is no kind of source; did you mean ${oneOf(f.near)}`
        : `\`${f.word}\` is no kind of source; the kinds are ${f.kinds.join(', ')}`,
    (f, at) => write(at, ...f.near),
  ),
  'missing-source': kind(
    'error',
    (f: { kinds: readonly string[] }) => `The kind of source is missing behind \`from\`: one of ${f.kinds.join(', ')}`,
  ),
  'clause-twice': kind('error', (f: { clause: string }) => `${f.clause} stands once in a statement`),
  'clause-not-here': kind('error', (f: { clause: string; statement: string }) => `\`${f.clause}\` does not belong to ${f.statement}`),
  unexpected: kind('error', (f: { found: string }) => `\`${f.found}\` can't stand here`),
};

/** Makes the parser's problems. */
export const syntaxProblem = problemMaker(SYNTAX);

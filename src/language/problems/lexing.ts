// What can be wrong with the characters of a calc block: the words and the mends of the lexer's problems.
import { kind, problemMaker, replace } from '../../text/problem.ts';
import { cover, type Span } from '../../text/span.ts';

/** Several readings of one place, each offered as a mend: the title and the text that would stand there. */
function readings(...offers: readonly (readonly [text: string | null, as: string])[]) {
  return (at: Span) => offers.flatMap(([text, as]) => (text === null ? [] : [replace(`Write \`${text}\`${as}`, at, text)]));
}

const LEXING = {
  'comma-in-number': kind(
    'error',
    (_: { decimal: string | null; joined: string | null; separated: string }) =>
      'A comma between two digits: the decimal sign is a point; put a space behind a comma that separates values',
    (f, at) => [
      ...readings([f.decimal, ''], [f.joined, ', thousands joined'])(at),
      replace('Put a space behind the comma', at, f.separated),
    ],
  ),
  'gap-in-number': kind(
    'error',
    (f: { joined: string | null }) =>
      f.joined === null
        ? 'Two numbers side by side; an operator or a comma is missing between them'
        : `A number has no spaces or \`_\` in it; write \`${f.joined}\``,
    (f, at) => readings([f.joined, ''])(at),
  ),
  'leading-zeros': kind(
    'error',
    (f: { number: string }) => `A number has no leading zeros; write \`${f.number}\``,
    (f, at) => readings([f.number, ''])(at),
  ),
  'point-without-digits': kind(
    'error',
    (f: { number: string | null }) =>
      f.number === null ? 'A number has one decimal point' : `A decimal point has digits on both sides; write \`${f.number}\``,
    (f, at) => readings([f.number, ''])(at),
  ),
  'number-out-of-range': kind(
    'error',
    (f: { number: string }) => `\`${f.number}\` is outside the range of numbers that can be calculated with`,
  ),
  'no-such-date': kind('error', (f: { date: string }) => `There is no date ${f.date}`),
  'date-form': kind(
    'error',
    (f: { date: string | null; subtraction: string | null }) =>
      `A date is written ${f.date === null ? 'as in `2026-09-14`' : `\`${f.date}\``}${f.subtraction === null ? '' : `, a subtraction with spaces, \`${f.subtraction}\``}`,
    (f, at) => readings([f.date, ', a date'], [f.subtraction, ', a subtraction'])(at),
  ),
  'date-touches-sign': kind(
    'error',
    (f: { apart: string; sign: Span }) => `A sign before a date has spaces around it; write \`${f.apart}\``,
    (f, at) => [replace('Put spaces around the sign', cover(f.sign, at), ` ${f.apart}`)],
  ),
  'date-with-time': kind(
    'error',
    (f: { date: string }) => `A date is a whole day, without a time; write \`${f.date}\``,
    (f, at) => readings([f.date, ''])(at),
  ),
  'unclosed-text': kind(
    'error',
    (_: object) => 'This text is not closed: a text ends with `"` on the line where it begins',
    (_, at) => [{ title: 'Close the text at the end of the line', edits: [{ at: { start: at.end, end: at.end }, text: '"' }] }],
  ),
  'text-escape': kind(
    'error',
    (f: { escape: string }) => `\`${f.escape}\` has no meaning in a text; a backslash is written \`\\\\\`, a quotation mark \`\\"\``,
    (f, at) => readings([`\\${f.escape}`, ''])(at),
  ),
  'text-too-long': kind('error', (f: { limit: number }) => `A text has at most ${f.limit} characters`),
  'wrong-quotes': kind(
    'error',
    (f: { text: string }) => `A text stands between plain quotation marks; write \`${f.text}\``,
    (f, at) => readings([f.text, ''])(at),
  ),
  'look-alike': kind(
    'error',
    (f: { found: string; meant: string }) =>
      f.meant.trim() === ''
        ? `${f.found} is no space here; write a plain space`
        : `${f.found} is not used in the notation; write \`${f.meant}\``,
    (f, at) => [replace(f.meant.trim() === '' ? 'Write a plain space' : `Write \`${f.meant}\``, at, f.meant)],
  ),
  'other-operator': kind(
    'error',
    (f: { found: string; meant: string }) => `\`${f.found}\` is no operator of the notation; write \`${f.meant}\``,
    (f, at) => [replace(`Write \`${f.meant}\``, at, f.meant === 'not' ? 'not ' : f.meant)],
  ),
  'other-comment': kind(
    'error',
    (_: object) => 'A comment begins with `#`',
    (_, at) => readings(['#', ''])(at),
  ),
  'bidi-control': kind(
    'error',
    (f: { characters: string }) =>
      `${f.characters} changes the direction of the text, so that it reads otherwise than it is calculated; remove it`,
    (_, at) => [replace('Remove it', at, '')],
  ),
  'invisible-character': kind(
    'error',
    (f: { characters: string }) => `${f.characters} can't be seen; remove it`,
    (_, at) => [replace('Remove it', at, '')],
  ),
  'unit-without-number': kind(
    'error',
    (f: { unit: string }) => `\`${f.unit}\` is a unit: it stands behind a number or a colon, with no letter directly behind it`,
  ),
  'stray-characters': kind('error', (f: { characters: string }) => `\`${f.characters}\` has no meaning here`),
  'stray-semicolon': kind(
    'error',
    (f: { ends: boolean }) =>
      f.ends
        ? 'A statement ends with its line, without `;`'
        : '`;` separates nothing: arguments and elements are separated by `,`, statements by lines',
    (f, at) => (f.ends ? [replace('Remove it', at, '')] : readings([',', ''])(at)),
  ),
  'mixed-scripts': kind(
    'warning',
    (f: { name: string; scripts: readonly string[]; latin: string | null }) =>
      `The name \`${f.name}\` mixes ${f.scripts.join(' and ')} letters, so that it can look like another name`,
    (f, at) => readings([f.latin, ', all Latin letters'])(at),
  ),
  'second-solidus': kind(
    'error',
    (f: { forms: readonly string[]; apart: string | null }) =>
      `A unit has one \`/\`, with one power or a product in parentheses behind it; write ${f.forms.map((form) => `\`${form}\``).join(' or ')}`,
    (f, at) => readings(...f.forms.map((form) => [form, ''] as const), [f.apart, ', an operator and a name'])(at),
  ),
  'unit-power': kind('error', (f: { power: string }) => `No unit has the power \`${f.power}\``),
  'unit-size': kind('error', (f: { unit: string }) => `\`${f.unit}\` is outside the range of units that can be calculated with`),
};

/** Makes the lexer's problems. */
export const lexingProblem = problemMaker(LEXING);

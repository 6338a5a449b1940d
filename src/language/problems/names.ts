// Words for what is wrong with names: unknown, doubled, circular, hidden.
import { kind, problemMaker, replace } from '../../text/problem.ts';

const list = (words: readonly string[]) => words.map((w) => `\`${w}\``).join(', ');
const near = (words: readonly string[]) => (words.length === 0 ? '' : `; did you mean ${list(words)}`);

export const nameProblem = problemMaker({
  'unknown-name': kind(
    'error',
    (f: { name: string; near: readonly string[] }) => `\`${f.name}\` is not defined${near(f.near)}`,
    (f, at) => f.near.map((n) => replace(`Write \`${n}\``, at, n)),
  ),
  'unknown-function': kind(
    'error',
    (f: { name: string; near: readonly string[] }) => `there is no function \`${f.name}\`${near(f.near)}`,
    (f, at) => f.near.map((n) => replace(`Write \`${n}\``, at, n)),
  ),
  'unknown-table': kind(
    'error',
    (f: { name: string; near: readonly string[] }) => `there is no table \`${f.name}\`${near(f.near)}`,
    (f, at) => f.near.map((n) => replace(`Write \`${n}\``, at, n)),
  ),
  'unknown-column': kind(
    'error',
    (f: { name: string; table: string; near: readonly string[] }) => `table \`${f.table}\` has no column \`${f.name}\`${near(f.near)}`,
    (f, at) => f.near.map((n) => replace(`Write \`${n}\``, at, n)),
  ),
  'unknown-instrument': kind(
    'error',
    (f: { name: string; near: readonly string[] }) =>
      `no instrument \`${f.name}\` is defined${near(f.near)}; write \`instrument ${f.name} ± …\``,
    (f, at) => f.near.map((n) => replace(`Write \`${n}\``, at, n)),
  ),
  'no-instrument': kind(
    'error',
    (f: { name: string }) => `\`${f.name}\` is no instrument; a meter is defined by \`instrument ${f.name} ± …\``,
  ),
  'no-value': kind('error', (f: { name: string; is: string }) => `\`${f.name}\` is ${f.is} and has no value of its own`),
  'function-without-call': kind('error', (f: { name: string; form: string }) => `\`${f.name}\` is a function; call it as \`${f.form}\``),
  'no-function': kind(
    'error',
    (f: { name: string }) => `\`${f.name}\` is no function; to multiply write \`${f.name} * (…)\``,
    (f, at) => [replace(`Write \`${f.name} *\``, at, `${f.name} * `)],
  ),
  'defined-twice': kind('error', (f: { name: string }) => `\`${f.name}\` is defined twice; the first definition stands`),
  circle: kind('error', (f: { names: readonly string[] }) => `these definitions go in a circle: ${f.names.join(' → ')}`),
  recursion: kind('error', (f: { names: readonly string[] }) => `a function may not call itself: ${f.names.join(' → ')}`),
  'local-circle': kind('error', (f: { names: readonly string[] }) => `these \`with\` definitions go in a circle: ${f.names.join(' → ')}`),
  'looks-like-another': kind(
    'warning',
    (f: { name: string; other: string }) =>
      `\`${f.name}\` looks like \`${f.other}\`, another name of this sheet, but has other letters; rename one of them`,
  ),
  'column-or-name': kind(
    'error',
    (f: { name: string; other: string }) =>
      `\`${f.name}\` is a column here and ${f.other}; write \`row.${f.name}\` for the column, or give the other one a name of its own with \`with\``,
    (f, at) => [replace(`Write \`row.${f.name}\``, at, `row.${f.name}`)],
  ),
  'row-outside': kind('error', (_: object) => '`row` has a meaning only in `where`, in a computed column and in `for each`'),
  'redefines-mathematics': kind(
    'error',
    (f: { name: string }) => `\`${f.name}\` belongs to the mathematics and can't be defined again; choose another name`,
  ),
  'hides-library': kind('note', (f: { name: string }) => `this \`${f.name}\` hides the library's \`${f.name}\``),
  'local-hides': kind('warning', (f: { name: string }) => `this \`${f.name}\` hides the sheet's \`${f.name}\` in this statement`),
  'used-twice': kind(
    'error',
    (f: { name: string; first: string; second: string }) =>
      `\`${f.name}\` comes from \`${f.first}\` and from \`${f.second}\`; take it from one by \`use "…" for …\``,
  ),
  'used-and-defined': kind(
    'error',
    (f: { name: string; path: string }) =>
      `\`${f.name}\` is defined here and comes from \`${f.path}\` as well; name what you take: \`use "${f.path}" for …\``,
  ),
  'call-depth': kind('error', (f: { limit: number }) => `functions call each other more than ${f.limit} deep`),
  'evaluation-depth': kind(
    'error',
    (f: { limit: number }) => `working this out nests more than ${f.limit} deep; make an entry of a part of it`,
  ),
  'too-many-calls': kind(
    'error',
    (f: { limit: number }) =>
      `working this out takes more than ${f.limit / 1e6} million calls of functions and equations; give what is asked for several times a name by \`with\``,
  ),
  'too-many-instances': kind(
    'error',
    (f: { limit: number }) => `functions of \`any\` are used with more than ${f.limit} different kinds of value`,
  ),
});

// Words for what goes wrong when values are computed, and for what a reader should know of a value.
import { insideSentence, kind, problemMaker } from '../../text/problem.ts';

export const valueProblem = problemMaker({
  'divides-by-zero': kind('error', (_: object) => 'divides by zero'),
  overflow: kind('error', (_: object) => 'the value or its uncertainty is too large to be computed'),
  'negative-root': kind('error', (f: { name: string }) => `\`${f.name}\` of a negative value`),
  'out-of-domain': kind('error', (f: { name: string; takes: string; found: string }) => `\`${f.name}\` takes ${f.takes}; found ${f.found}`),
  'power-undefined': kind('error', (_: object) => 'a negative value has no power that is not whole'),
  'different-lengths': kind(
    'error',
    (f: { left: number; right: number }) => `lists of ${f.left} and of ${f.right} elements don't go together`,
  ),
  'empty-list': kind('error', (f: { name: string }) => `\`${f.name}\` of an empty list`),
  'too-few': kind(
    'error',
    (f: { name: string; wanted: number; found: number }) => `\`${f.name}\` takes at least ${f.wanted} values; found ${f.found}`,
  ),
  'not-rising': kind('error', (f: { name: string; row: number }) => `\`${f.name}\` takes rising values; element ${f.row} does not rise`),
  extrapolation: kind(
    'error',
    (f: { name: string; from: string; to: string; found: string }) =>
      `\`${f.name}\` has values from ${f.from} to ${f.to} only; found ${f.found}`,
  ),
  'not-positive': kind('error', (f: { name: string }) => `\`${f.name}\` takes values above zero`),
  'no-spread': kind('error', (f: { name: string }) => `\`${f.name}\` needs values that differ`),
  'needs-failed': kind(
    'error',
    (f: { name: string; message: string; found: string }) => `\`${f.name}\`: ${f.message}${f.found === '' ? '' : `; found ${f.found}`}`,
  ),
  'inside-call': kind('error', (f: { name: string; message: string }) => `in \`${f.name}\`: ${insideSentence(f.message)}`),
  'empty-cell': kind(
    'error',
    (f: { table: string; column: string; row: number }) => `row ${f.row} of \`${f.table}\` gives no \`${f.column}\``,
  ),
  'no-row-left': kind('error', (f: { table: string; rows: number; last: string; ruledOut: string }) =>
    f.rows === 0
      ? `table \`${f.table}\` has no rows`
      : `no row of \`${f.table}\` is left; \`${f.last}\` ruled out the last one (${f.ruledOut})`,
  ),
  'no-such-row': kind(
    'error',
    (f: { table: string; wanted: string; where: string; neighbours: string }) =>
      `no row of \`${f.table}\` has ${f.wanted}${f.where === '' ? '' : ` where ${f.where}`}${f.neighbours === '' ? '' : `; neighbours: ${f.neighbours}`}`,
  ),
  'several-rows': kind(
    'error',
    (f: { table: string; count: number; rows: string }) => `${f.count} rows of \`${f.table}\` fit (${f.rows}); a look-up wants one`,
  ),
  'no-root': kind(
    'error',
    (f: { variable: string; from: string; to: string; left: string; right: string }) =>
      `no change of sign for \`${f.variable}\` from ${f.from} (${f.left}) to ${f.to} (${f.right}); choose a range that holds the root`,
  ),
  'several-roots': kind('error', (f: { count: string; places: string }) => `${f.count} roots, near ${f.places}; narrow the range to one`),
  'undefined-at': kind('error', (f: { where: string; message: string }) => `at ${f.where}: ${insideSentence(f.message)}`),
  'jump-no-root': kind(
    'error',
    (f: { variable: string; place: string }) => `the sign changes near \`${f.variable}\` = ${f.place} by a jump, not a root`,
  ),
  'empty-range': kind(
    'error',
    (f: { variable: string; from: string; to: string }) => `the range of \`${f.variable}\` is empty or reversed: from ${f.from} to ${f.to}`,
  ),
  'log-range': kind('error', (f: { variable: string }) => `a logarithmic range of \`${f.variable}\` lies above zero`),
  'step-range': kind('error', (f: { variable: string }) => `the step of \`${f.variable}\` is above zero`),
  'too-many-samples': kind(
    'error',
    (f: { count: string; limit: number }) => `this asks for ${f.count} rows; at most ${f.limit} are made, take a greater step`,
  ),
  'corner-limit': kind('error', (f: { limit: number }) => `\`throughout\` takes at most ${f.limit} names`),
  undecided: kind('note', (_: object) => 'undecided within the uncertainty; the best values decide here'),
  'also-rounds-to': kind('note', (f: { other: string }) => `could also be ${f.other} within the uncertainty`),
  'not-shiftable': kind(
    'error',
    (f: { input: string }) => `no value on either side when \`${f.input}\` is moved by its standard uncertainty`,
  ),
  'follows-from-choice': kind('warning', (f: { entry: string }) => `this can't fail: it follows from the choice of \`${f.entry}\``),
  'uncertainty-in-function': kind(
    'error',
    (_: object) =>
      "derivatives don't serve for this value, so its uncertainty can't be found inside a function; give it a name in the sheet",
  ),
  'no-row-checked': kind('note', (f: { table: string }) => `no row of \`${f.table}\` is left, so nothing is checked`),
  'choice-undecided': kind(
    'note',
    (f: { row: string; inHand: string; next: string | null }) =>
      `undecided within the uncertainty: ${f.row}${f.inHand}${f.next === null ? '; no other row holds with it' : `; ${f.next} holds with it`}`,
  ),
  'element-fault': kind('error', (f: { element: number; message: string }) => `element ${f.element}: ${insideSentence(f.message)}`),
  'row-fault': kind('error', (f: { row: number; message: string }) => `row ${f.row}: ${insideSentence(f.message)}`),
});

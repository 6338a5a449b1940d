// Words for what the checker finds wrong with types, dimensions, counts of rotation, points and kinds of power.
import type { Mend } from '../../text/problem.ts';
import { insideSentence, kind, problemMaker, replace } from '../../text/problem.ts';

const offered = (f: { mends: readonly Mend[] }) => f.mends;

export const typeProblem = problemMaker({
  'dimension-mismatch': kind(
    'error',
    (f: { doing: string; left: string; right: string; hint: string; mends: readonly Mend[] }) =>
      `${f.doing} ${f.left} and ${f.right}${f.hint}`,
    offered,
  ),
  'wrong-dimension': kind(
    'error',
    (f: { found: string; wanted: string; hint: string; mends: readonly Mend[] }) => `found ${f.found}, wanted ${f.wanted}${f.hint}`,
    offered,
  ),
  'turns-against-radians': kind(
    'error',
    (f: { doing: string; mends: readonly Mend[] }) => `${f.doing} turns or cycles and radians; a turn is \`2*pi rad\``,
    offered,
  ),
  'bare-turns': kind(
    'error',
    (f: { doing: string; mends: readonly Mend[] }) =>
      `${f.doing} a count of turns that nothing turns into radians; write \`2*pi rad * n\` for a speed, or a pitch in \`mm/rev\``,
    offered,
  ),
  'not-an-angle': kind(
    'error',
    (f: { name: string; found: string; mends: readonly Mend[] }) => `\`${f.name}\` takes an angle in radians or a plain number; ${f.found}`,
    offered,
  ),
  'point-arithmetic': kind('error', (f: { words: string; mends: readonly Mend[] }) => f.words, offered),
  'point-zero': kind('error', (_: object) => 'a temperature point has no plain 0; write `0 degC`, or compare a difference'),
  'wants-number': kind('error', (f: { doing: string; found: string }) => `${f.doing} numbers; found ${f.found}`),
  'wants-yes-no': kind('error', (f: { where: string; found: string }) => `${f.where} takes yes or no; found ${f.found}`),
  'wants-one': kind('error', (f: { where: string }) => `${f.where} takes one yes or no, not a list of them`),
  'different-kinds': kind('error', (f: { doing: string; left: string; right: string }) => `${f.doing} ${f.left} and ${f.right}`),
  'no-order': kind('error', (f: { what: string }) => `${f.what} has no order; compare by \`is\` or \`is not\``),
  'not-comparable': kind('error', (f: { what: string }) => `${f.what} can't be compared`),
  'mixed-list': kind(
    'error',
    (f: { first: string; found: string }) => `the elements of a list are of one kind; the first is ${f.first}, this is ${f.found}`,
  ),
  'nested-list': kind('error', (_: object) => 'a list holds single values, not lists'),
  'mixed-power': kind('warning', (f: { doing: string; first: string; second: string }) => `${f.doing} ${f.first} and ${f.second} power`),
  'power-declared': kind('warning', (f: { found: string; wanted: string }) => `${f.found} power is taken as ${f.wanted} power here`),
  'power-of-unit': kind(
    'error',
    (_: object) => 'the power of a quantity with a unit is written as a number, such as `^2` or `^(1/2)`, since its unit depends on it',
  ),
  'power-plain': kind('error', (f: { found: string }) => `an exponent is a plain number; found ${f.found}`),
  'power-fraction': kind(
    'error',
    (_: object) => 'the exponent of the unit would be no fraction with a denominator up to 60; take another power',
  ),
  exponents: kind('error', (_: object) => 'the unit of this value has exponents beyond 60'),
  'argument-count': kind(
    'error',
    (f: { name: string; form: string; wanted: string; found: number }) =>
      `\`${f.name}\` takes ${f.wanted}, found ${f.found}: \`${f.form}\``,
  ),
  'argument-missing': kind(
    'error',
    (f: { name: string; parameter: string; form: string }) => `\`${f.name}\` lacks its argument \`${f.parameter}\`: \`${f.form}\``,
  ),
  'argument-twice': kind(
    'error',
    (f: { name: string; parameter: string }) => `the argument \`${f.parameter}\` of \`${f.name}\` is given twice`,
  ),
  'argument-unknown': kind(
    'error',
    (f: { name: string; parameter: string; form: string; near: readonly string[] }) =>
      `\`${f.name}\` has no parameter \`${f.parameter}\`: \`${f.form}\``,
    (f, at) => f.near.map((n) => replace(`Write \`${n}\``, at, n)),
  ),
  'argument-order': kind('error', (_: object) => 'arguments without a name stand before those with one'),
  'argument-type': kind(
    'error',
    (f: { name: string; parameter: string; wanted: string; found: string; hint: string; mends: readonly Mend[] }) =>
      `\`${f.parameter}\` of \`${f.name}\` wants ${f.wanted}; found ${f.found}${f.hint}`,
    offered,
  ),
  'wants-list': kind(
    'error',
    (f: { name: string; what: string; found: string }) => `\`${f.name}\` takes a list as ${f.what}; found ${f.found}`,
  ),
  'inside-function': kind('error', (f: { name: string; message: string }) => `in \`${f.name}\`: ${insideSentence(f.message)}`),
  'no-member': kind(
    'error',
    (f: { found: string; column: string }) => `\`.${f.column}\` reads a column of a table or of a row; this is ${f.found}`,
  ),
  'declared-type': kind('error', (f: { wanted: string; found: string }) => `declared as ${f.wanted}, found ${f.found}`),
  'bounds-dimension': kind('error', (f: { words: string; mends: readonly Mend[] }) => f.words, offered),
  'bounds-range': kind('error', (f: { words: string }) => f.words),
  'readings-count': kind('error', (_: object) => 'repeated readings are at least two; a single one is an input with `± a`'),
  'readings-dimension': kind(
    'error',
    (f: { first: string; found: string }) => `readings are of one kind; the first is in ${f.first}, this is in ${f.found}`,
  ),
  'readings-equal': kind(
    'warning',
    (_: object) => 'all readings are equal, so they say nothing of the spread; add the limits of the instrument behind `±`',
  ),
  'readings-uncertain': kind(
    'error',
    (_: object) => 'readings of uncertain values would count their uncertainty twice; take values without `±`',
  ),
  'specification-range': kind(
    'warning',
    (_: object) =>
      'a tolerance of a specification is a range to be met, no uncertainty; write `throughout … from … to …` behind the requirement',
  ),
  'no-source': kind(
    'warning',
    (f: { name: string }) => `\`${f.name}\` has no source; add \`from plate "…"\`, \`from assumption "…"\` or the like`,
  ),
  'source-required': kind(
    'error',
    (f: { name: string }) =>
      `\`${f.name}\` has no source, and this sheet asks for sources; add \`from plate "…"\`, \`from assumption "…"\` or the like`,
  ),
  'unit-name-clash': kind(
    'warning',
    (f: { symbol: string; unit: string; mend: string }) => `\`${f.symbol}\` is ${f.unit} here; for the name write \`${f.mend}\``,
  ),
  'degrees-likelier': kind(
    'warning',
    (f: { symbol: string; unit: string; degrees: string; quantity: string; declared: string; mends: readonly Mend[] }) =>
      `\`${f.symbol}\` is the unit ${f.unit}; for a temperature write \`${f.degrees}\`, for a ${f.quantity} declare the unit: \`${f.declared}\``,
    offered,
  ),
  'mean-duration': kind(
    'note',
    (f: { unit: string }) => `a ${f.unit} is taken with its mean length here; a date that matters is better given in d`,
  ),
  'entry-type': kind('error', (f: { found: string }) => `an entry can't be ${f.found}`),
  'requirement-type': kind(
    'error',
    (f: { force: string; found: string }) => `\`${f.force}\` wants a condition such as \`a <= b\`; found ${f.found}`,
  ),
  'equality-uncertain': kind(
    'warning',
    (_: object) => 'uncertain values are never known to be equal; ask for limits, such as `a <= b <= c`',
  ),
  'list-lengths': kind('error', (f: { left: number; right: number }) => `lists of ${f.left} and of ${f.right} elements don't go together`),
  'overdue-instrument': kind(
    'warning',
    (f: { name: string; due: string; on: string }) => `\`${f.name}\` was due for calibration on ${f.due}, before this reading of ${f.on}`,
  ),
});

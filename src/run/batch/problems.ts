// Words for what is wrong with the rows that a sheet is run for: with their heads, and in single rows.
import { kind, problemMaker, replace } from '../../text/problem.ts';

const listed = (names: readonly string[]) => names.map((name) => `\`${name}\``).join(', ');
const INPUTS_LISTED = 12;

/** Problems of heads; places are in the line of the heads. */
export const batchProblem = problemMaker({
  'column-no-input': kind(
    'error',
    (f: { name: string; what: string }) =>
      `\`${f.name}\` is ${f.what}; rows replace inputs of the sheet only, so rename this column or leave it out`,
  ),
  'column-kind': kind(
    'error',
    (f: { name: string; found: string; wanted: string; head: string }) =>
      `\`${f.name}\`: found ${f.found}, the sheet wants ${f.wanted}; write the head \`${f.head}\``,
    (f, at) => [replace(`Write \`${f.head}\``, at, f.head)],
  ),
  'column-power': kind(
    'warning',
    (f: { name: string; found: string; wanted: string }) => `\`${f.name}\`: ${f.found} power is taken as ${f.wanted} power here`,
  ),
  'column-written': kind(
    'error',
    (f: { name: string }) => `\`${f.name}\` is a column that the results have; rename this one or leave it out`,
  ),
  'column-near': kind(
    'warning',
    (f: { name: string; near: readonly string[] }) =>
      `the sheet has no input \`${f.name}\`, so this column is carried along unused; did you mean ${listed(f.near)}`,
    (f, at) => f.near.map((name) => replace(`Write \`${name}\``, { start: at.start, end: at.start + f.name.length }, name)),
  ),
  'no-input-column': kind('error', (f: { inputs: readonly string[] }) =>
    f.inputs.length === 0
      ? 'the sheet has no input that a row could replace'
      : `no column replaces an input of the sheet; its inputs are ${listed(f.inputs.slice(0, INPUTS_LISTED))}${f.inputs.length > INPUTS_LISTED ? ', …' : ''}`,
  ),
});

/** What is wrong in one row, for its column `error`. */
export const rowWords = {
  ragged: (found: number, wanted: number) =>
    `the row has ${found} ${found === 1 ? 'field' : 'fields'} and the head ${wanted}, so nothing in it is read; a text with a comma stands in quotes`,
  notGiven: 'not given',
  yesNo: (text: string) => `\`${text}\` is neither yes nor no`,
  exact: 'the sheet takes this input as exact, so its ± would be lost; give the input of the sheet a ±, or leave it out here',
};

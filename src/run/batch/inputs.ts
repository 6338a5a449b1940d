// Puts the cells of a row in the place of inputs: a cell replaces the whole literal, its `±` included (F9).
import type { Checked, CheckedReading } from '../../language/checked.ts';
import { readBy } from '../../language/compiler/values.ts';
import { Fault } from '../../language/fault.ts';
import type { Uncertain } from '../../language/uncertainty/dual.ts';
import { Input, limitsSpread } from '../../language/uncertainty/input.ts';
import { readCell } from '../../sheet/table-cell.ts';
import type { InputColumn } from './columns.ts';
import { rowWords } from './problems.ts';

/** Puts a cell's value into the input's slot; gives what is wrong with the cell, or null. An input without value has a Fault. */
export type ReplaceInput = (text: string) => string | null;

export function replaceInput({ item, type }: InputColumn): ReplaceInput {
  const { signature, plan } = item.checked!;
  const { slot, label, statement } = item;
  const reading = plan.kind === 'value' ? readingIn(plan.value) : null;
  const offset = statement.kind === 'entry' ? statement.value.at.start : 0;
  const missing = new Fault('not calculated', null, label);
  let exact: unknown;
  let uncertain: Input | null = null;
  const value = () => {
    const literal = uncertain === null ? exact : uncertain.current;
    return reading === null ? literal : readBy(reading, literal as Uncertain);
  };
  // Where inputs are shifted, the slot is filled from here again.
  item.evaluate = value;
  const refuse = (because: string) => {
    slot.value = missing;
    return because;
  };
  return (text) => {
    const cell = signature.type.is === 'yesno' ? readYesNo(text) : readCell(text, type);
    if ('because' in cell) return refuse(`${cell.because}${cell.instead === null ? '' : `; write \`${cell.instead}\``}`);
    if (cell.value === null || cell.value === undefined) return refuse(rowWords.notGiven);
    if (cell.bounds !== null && !signature.uncertain) return refuse(rowWords.exact);
    exact = cell.value;
    uncertain = cell.bounds === null ? null : inputOf(cell.value as number, cell.bounds.halfWidth);
    slot.value = value();
    return null;
  };
  function inputOf(nominal: number, halfWidth: number): Input {
    return new Input(label, item, offset, nominal, limitsSpread(-halfWidth, halfWidth));
  }
}

function readingIn(node: Checked): CheckedReading | null {
  if (node.kind === 'lets') return readingIn(node.body);
  return node.kind === 'reading' ? node : null;
}

function readYesNo(text: string) {
  if (text === 'yes' || text === 'no') return { value: text === 'yes', bounds: null };
  return text === '' || text === '–' ? { value: null, bounds: null } : { because: rowWords.yesNo(text), instead: null };
}

// Completion: what is offered at a cursor, and what is not.
import assert from 'node:assert/strict';
import { completions } from '../../src/assist/completion.ts';
import { opened } from './support.ts';

function offered(marked: string): readonly string[] {
  const { open, spot } = opened(marked);
  assert.equal(spot.text.kind, 'block');
  return completions(open, spot.text.kind === 'block' ? spot.text.number : 0, spot.offset, ['panel-standard.ampwright.md']).map(
    (c) => c.label,
  );
}

const rows: readonly (readonly [marked: string, has: readonly string[], hasNot: readonly string[]])[] = [
  ['I_n = 34 A\nx = |', ['I_n', 'fla_3ph', 'sqrt'], ['kW', 'plate', 'shall']],
  ['I_n = 34 A\nx = I|', ['I_n'], ['plate']],
  ['x = 5 |', ['kW', 'V', 'A'], ['I_AC3']],
  ['x: |', ['kW', 'ohm'], ['fla_3ph']],
  ['x = 5 V from |', ['plate', 'measurement', 'assumption'], ['kW', 'x']],
  ['K = first of |', ['contactors', 'wires'], ['kW']],
  ['K = first of contactors where |', ['I_AC3', 'type'], ['plate']],
  ['K = first of contactors where type is "K5"\nx = K.|', ['I_AC3', 'S_inrush'], ['fla_3ph', 'kW']],
  ['instrument DMM_7 ± 1 %\nx = 5 V by |', ['DMM_7'], ['x']],
  ['use "|', ['panel-standard.ampwright.md'], ['shall']],
  ['use "panel-standard.ampwright.md" for |', ['T_panel', 'margin'], ['shall']],
  ['|', ['shall', 'should', 'curve', 'action'], ['from']],
  ['x = 5 V |', ['from', 'because'], ['shall']],
  ['# a comment |', [], ['shall', 'I_n']],
];

describe('completion', () => {
  for (const [marked, has, hasNot] of rows) {
    it(`at ${JSON.stringify(marked)} offers ${has.join(', ') || 'nothing'}`, () => {
      const labels = offered(marked);
      for (const label of has) assert.ok(labels.includes(label), `${label} is missing in ${labels.slice(0, 30).join(', ')}`);
      for (const label of hasNot) assert.ok(!labels.includes(label), `${label} is offered`);
    });
  }
});

// Published values on motors, balance, starting and control circuits against the trade library.
import assert from 'node:assert/strict';
import { balance } from './cases/balance.ts';
import { coils } from './cases/coils.ts';
import { duty } from './cases/duty.ts';
import { motors } from './cases/motors.ts';
import { necMotorTables } from './cases/nec-motor-tables.ts';
import { starting } from './cases/starting.ts';
import { motorAndCoilIds } from './ids-motors-and-coils.ts';
import { notComputed } from './not-computed.ts';
import { checkCase } from './support.ts';

const groups = { motors, 'motor tables of the NEC': necMotorTables, balance, starting, coils, 'duty and power factor': duty };

describe('published values', () => {
  for (const [title, cases] of Object.entries(groups)) {
    describe(title, () => {
      cases.forEach(checkCase);
    });
  }

  it('are each checked, or have a reason why not', () => {
    const checked = new Set(Object.values(groups).flatMap((cases) => cases.map((c) => c.id)));
    const missing = motorAndCoilIds.filter((id) => !checked.has(id) && !Object.hasOwn(notComputed, id));
    assert.deepEqual(missing, []);
  });

  it('are not both checked and excused', () => {
    const both = Object.values(groups).flatMap((cases) => cases.filter((c) => Object.hasOwn(notComputed, c.id)).map((c) => c.id));
    assert.deepEqual(both, []);
  });

  it('name their source and carry a tolerance that fits it', () => {
    for (const { id, source, expected, tolerance = 0 } of Object.values(groups).flat()) {
      assert.ok(source.length > 10, id);
      if (typeof expected !== 'string' && !(expected instanceof RegExp)) {
        assert.ok(tolerance >= 0 && tolerance <= 0.07 * Math.max(Math.abs(expected[0]), 0.1), `${id}: ${tolerance} of ${expected[0]}`);
      }
    }
  });
});

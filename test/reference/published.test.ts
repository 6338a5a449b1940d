// Published values against the trade library and the notation itself.
import assert from 'node:assert/strict';
import { balance } from './cases/balance.ts';
import { coils } from './cases/coils.ts';
import { conductors } from './cases/conductors.ts';
import { contactors } from './cases/contactors.ts';
import { contacts } from './cases/contacts.ts';
import { decidedIds } from './cases/decisions.ts';
import { duty } from './cases/duty.ts';
import { motors } from './cases/motors.ts';
import { necMotorTables } from './cases/nec-motor-tables.ts';
import { protection } from './cases/protection.ts';
import { runs } from './cases/runs.ts';
import { starting } from './cases/starting.ts';
import { uncertainty } from './cases/uncertainty.ts';
import { windings } from './cases/windings.ts';
import { contactToDecisionIds } from './ids-contacts-to-decisions.ts';
import { motorAndCoilIds } from './ids-motors-and-coils.ts';
import { notComputed } from './not-computed.ts';
import { checkCase } from './support.ts';

const groups = {
  motors,
  'motor tables of the NEC': necMotorTables,
  balance,
  starting,
  coils,
  'duty and power factor': duty,
  protection,
  contactors,
  contacts,
  conductors,
  'runs and their drop': runs,
  'windings and insulation': windings,
  uncertainty,
};

describe('published values', () => {
  for (const [title, cases] of Object.entries(groups)) {
    describe(title, () => {
      cases.forEach(checkCase);
    });
  }

  it('are each checked, or have a reason why not', () => {
    const checked = new Set([...Object.values(groups).flatMap((cases) => cases.map((c) => c.id)), ...decidedIds]);
    const missing = [...motorAndCoilIds, ...contactToDecisionIds].filter((id) => !checked.has(id) && !Object.hasOwn(notComputed, id));
    assert.deepEqual(missing, []);
  });

  it('are not both checked and excused', () => {
    const checked = [...Object.values(groups).flatMap((cases) => cases.map((c) => c.id)), ...decidedIds];
    assert.deepEqual(
      checked.filter((id) => Object.hasOwn(notComputed, id)),
      [],
    );
  });

  it('name their source and carry a tolerance that fits it', () => {
    for (const { id, source, expected, tolerance = 0, why } of Object.values(groups).flat()) {
      assert.ok(source.length > 10, id);
      if (typeof expected !== 'string' && !(expected instanceof RegExp) && why === undefined) {
        assert.ok(tolerance >= 0 && tolerance <= 0.07 * Math.max(Math.abs(expected[0]), 0.1), `${id}: ${tolerance} of ${expected[0]}`);
      }
    }
  });
});

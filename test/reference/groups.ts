// All published values that are checked, by subject, and their names.
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
import { unitTraps } from './cases/unit-traps.ts';
import { windings } from './cases/windings.ts';
import { PUBLISHED_CONVERSIONS } from './units.ts';

export const groups = {
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
  'traps of units': unitTraps,
};

/** Each once, however many checks share it; those of `units.ts` and of decisions have tests of their own. */
export const checkedIds: ReadonlySet<string> = new Set([
  ...Object.values(groups).flatMap((cases) => cases.map((c) => c.id)),
  ...decidedIds,
  ...PUBLISHED_CONVERSIONS.map((c) => c.id),
]);

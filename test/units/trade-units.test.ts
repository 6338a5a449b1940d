// Compound units that plates, tables and standards of the trade use: each is read whole and printed as it is written.
import assert from 'node:assert/strict';
import { parseUnit } from '../../src/units/read-unit.ts';

const UNITS: Readonly<Record<string, string>> = {
  conductors: 'ohm/km ohm/kft ohm·mm²/km ohm·cmil/ft µohm·m m/(ohm·mm²) V/(A·km) A/mm² µF/km kcmil mm²',
  motors: 'kW hp kVA/hp N·m lbf·ft lbf·in ozf·in kg·m² lb·ft² rpm rev/s rad/s² V/Hz kgf·m/kW',
  contacts: 'mohm µohm mV/A V²/K² K/W W/(m²·K) J/(kg·K) nm µm',
  control: 'VA var W·h kvar·h A·h mAh ohm/V mA µF mH mJ',
  protection: 'A²·s kA²·s A·s^(1/2)/mm² kA ms 1/K %/K %/degC',
  plant: '1/h 1/year cfm gpm m³/h L/s L/min psi kgf/cm² mbar Btu/h mg/L mol/L mm/rev',
};

for (const [use, units] of Object.entries(UNITS)) {
  describe(`units for ${use}`, () => {
    for (const text of units.split(' ')) it(text, () => assert.equal(parseUnit(text)?.text, text));
  });
}

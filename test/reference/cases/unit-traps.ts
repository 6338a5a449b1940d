// Published traps of units: what is refused, and what is meant instead; steps of wire gauge as ratios.
import { type PublishedCase, row } from '../support.ts';

const SCALE = 'common practice: degrees Celsius are points on an interval scale';
const TRIANGLE = 'common practice: power triangle';
const B258 = 'ASTM B258, rule of the gauge (from memory): 39 steps from 0.005 in to 0.46 in';

export const unitTraps: readonly PublishedCase[] = [
  row('temp-trap-1', SCALE, '40 degC / 20 degC', /a point of temperature/i),
  row('temp-trap-1', SCALE, '40 degC - 20 degC', [20, 'K']),
  row('temp-trap-1', SCALE, '(40 degC - absolute_zero) / (20 degC - absolute_zero)', [1.0682, '1'], 0.00005),
  row('temp-trap-2', SCALE, '20 degC + 30 degC', /Two points of temperature can't be added/),
  row('temp-trap-2', SCALE, '20 degC + 30 K', [50, 'degC']),
  row('unit-trap-2', TRIANGLE, 'sqrt((10 kVA)^2 - (8 kW)^2)', [6, 'kvar'], 0.0005),
  row('u-1_AWG_step_to_area_ratio', B258, 'awg_area(10) / awg_area(11)', [1.260977, '1'], 5e-7),
  row('u-6_AWG_steps_to_diameter_ratio', B258, 'awg_diameter(10) / awg_diameter(16)', [2.005032, '1'], 5e-7),
];

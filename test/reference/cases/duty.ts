// Power factor, duty and heating of motors as handbooks print them.
import { type PublishedCase, row } from '../support.ts';

const BIRD = 'J. O. Bird, Electrical Circuit Theory and Technology';
const MEHTA = 'V. K. Mehta and R. Mehta, Principles of Power System';
const GUPTA = 'J. B. Gupta, Elements of Electric Drives';

export const duty: readonly PublishedCase[] = [
  row('pf-01', `${BIRD}, ch. 16, example 12, p. 253`, 'fla_1ph(4.8 kW, 240 V, 80 %, 0.95)', [26.32, 'A'], 0.005),
  row('pf-01', `${BIRD}, ch. 16, example 12, p. 253`, 'pf_correction(input_power(4.8 kW, 80 %), 0.625, 0.95)', [5.52, 'kvar'], 0.005),
  row('pf-01', `${BIRD}, ch. 16, example 12, p. 253`, 'pf_correction(input_power(4.8 kW, 80 %), 0.625, 0.95) / 240 V', [23, 'A'], 0.05),
  row(
    'pf-01',
    `${BIRD}, ch. 16, example 12, p. 253`,
    'capacitor_1ph(pf_correction(input_power(4.8 kW, 80 %), 0.625, 0.95), 240 V, 50 Hz)',
    [305, 'µF'],
    0.5,
  ),
  row('pf-02', `${BIRD}, ch. 16, example 11, p. 252`, 'reactive_power_1ph(240 V, 50 A, 0.6) / 240 V', [40, 'A'], 0.5),
  row('pf-02', `${BIRD}, ch. 16, example 11, p. 252`, 'fla_1ph(active_power_1ph(240 V, 50 A, 0.6), 240 V, 100 %, 1)', [30, 'A'], 0.5),
  row(
    'pf-03',
    `${MEHTA}, example 6.2, p. 109`,
    'capacitor_1ph(pf_correction(active_power_1ph(400 V, 31.7 A, 0.7), 0.7, 0.9), 400 V, 50 Hz)',
    [94.6, 'µF'],
    0.05,
  ),
  {
    id: 'pf-05',
    source: "a capacitor maker's worked example, tangents as printed (brand left out)",
    expression: 'pf_correction(164.6 kW, cos(atan(0.593)), cos(atan(0.328)))',
    expected: [44, 'kvar'],
    tolerance: 0.5,
    why: 'its average power factor adds apparent powers plainly; the arithmetic from there on is right',
  },
  row(
    'pf-08',
    `${MEHTA}, example 6.9, p. 113: a synchronous motor of 80 kW brings 200 kW from 0.8 to 0.9`,
    '200 kW * tan_phi(0.8) - 280 kW * tan_phi(0.9)',
    [14.39, 'kvar'],
    0.005,
  ),
  row('pf-08', `${MEHTA}, example 6.9, p. 113`, 'hypot(80 kW, 200 kW * tan_phi(0.8) - 280 kW * tan_phi(0.9))', [81.28, 'kVA'], 0.005),
  row(
    'pf-12',
    'arithmetic: Q = P (tan φ₁ − tan φ₂); 55.30 is in print where the tangents are rounded',
    'pf_correction(100 kW, 0.75, 0.95)',
    [55.32, 'kvar'],
    0.01,
  ),
  row(
    'rms-01',
    'I. Kosow, Electric Machinery and Transformers, example 13.7, p. 466',
    'rms_power([200 hp, 20 hp, 100 hp], [5 min, 5 min, 10 min], 10 min, 1/3)',
    [114, 'hp'],
    0.5,
  ),
  row(
    'rms-01',
    'I. Kosow, Electric Machinery and Transformers, example 13.7, p. 466: next size',
    'standard_rating_nema(rms_power([200 hp, 20 hp, 100 hp], [5 min, 5 min, 10 min], 10 min, 1/3))',
    [125, 'hp'],
  ),
  row('th-01', `${GUPTA}, example 47, p. 145`, 'final_rise(20 K, 34 K)', [66.67, 'K'], 0.005),
  row(
    'th-01',
    `${GUPTA}, example 47, p. 145: readings after one and two hours`,
    'thermal_time_constant(20 K, 34 K, 1 h)',
    [2.8, 'h'],
    0.05,
  ),
  row('th-02', `${GUPTA}, example 54, p. 149`, 'final_rise(20 K, 30 K)', [40, 'K'], 0.5),
  row(
    'th-02',
    `${GUPTA}, example 54, p. 149: readings after a half hour and an hour`,
    'thermal_time_constant(20 K, 30 K, 30 min)',
    [43.28, 'min'],
    0.005,
  ),
  row(
    'th-06',
    `${GUPTA}, example 56, p. 151: readings after a half hour and an hour`,
    'rise_after(final_rise(20 K, 35 K), thermal_time_constant(20 K, 35 K, 30 min), 2 h)',
    [54.7, 'K'],
    0.05,
  ),
];

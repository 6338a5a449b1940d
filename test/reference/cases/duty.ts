// Power factor, duty and heating of motors as handbooks print them.
import type { PublishedCase } from '../support.ts';

const BIRD = 'J. O. Bird, Electrical Circuit Theory and Technology';
const MEHTA = 'V. K. Mehta and R. Mehta, Principles of Power System';
const GUPTA = 'J. B. Gupta, Elements of Electric Drives';

export const duty: readonly PublishedCase[] = [
  {
    id: 'pf-01',
    source: `${BIRD}, ch. 16, example 12, p. 253`,
    expression: 'fla_1ph(4.8 kW, 240 V, 80 %, 0.95)',
    expected: [26.32, 'A'],
    tolerance: 0.005,
  },
  {
    id: 'pf-01',
    source: `${BIRD}, ch. 16, example 12, p. 253`,
    expression: 'pf_correction(input_power(4.8 kW, 80 %), 0.625, 0.95)',
    expected: [5.52, 'kvar'],
    tolerance: 0.005,
  },
  {
    id: 'pf-01',
    source: `${BIRD}, ch. 16, example 12, p. 253`,
    expression: 'pf_correction(input_power(4.8 kW, 80 %), 0.625, 0.95) / 240 V',
    expected: [23, 'A'],
    tolerance: 0.05,
  },
  {
    id: 'pf-01',
    source: `${BIRD}, ch. 16, example 12, p. 253`,
    expression: 'capacitor_1ph(pf_correction(input_power(4.8 kW, 80 %), 0.625, 0.95), 240 V, 50 Hz)',
    expected: [305, 'µF'],
    tolerance: 0.5,
  },
  {
    id: 'pf-02',
    source: `${BIRD}, ch. 16, example 11, p. 252`,
    expression: 'reactive_power_1ph(240 V, 50 A, 0.6) / 240 V',
    expected: [40, 'A'],
    tolerance: 0.5,
  },
  {
    id: 'pf-02',
    source: `${BIRD}, ch. 16, example 11, p. 252`,
    expression: 'fla_1ph(active_power_1ph(240 V, 50 A, 0.6), 240 V, 100 %, 1)',
    expected: [30, 'A'],
    tolerance: 0.5,
  },
  {
    id: 'pf-03',
    source: `${MEHTA}, example 6.2, p. 109`,
    expression: 'capacitor_1ph(pf_correction(active_power_1ph(400 V, 31.7 A, 0.7), 0.7, 0.9), 400 V, 50 Hz)',
    expected: [94.6, 'µF'],
    tolerance: 0.05,
  },
  {
    id: 'pf-05',
    source: "a capacitor maker's worked example, tangents as printed (brand left out)",
    expression: 'pf_correction(164.6 kW, cos(atan(0.593)), cos(atan(0.328)))',
    expected: [44, 'kvar'],
    tolerance: 0.5,
    why: 'its average power factor adds apparent powers plainly; the arithmetic from there on is right',
  },
  {
    id: 'pf-08',
    source: `${MEHTA}, example 6.9, p. 113: a synchronous motor of 80 kW brings 200 kW from 0.8 to 0.9`,
    expression: '200 kW * tan_phi(0.8) - 280 kW * tan_phi(0.9)',
    expected: [14.39, 'kvar'],
    tolerance: 0.005,
  },
  {
    id: 'pf-08',
    source: `${MEHTA}, example 6.9, p. 113`,
    expression: 'hypot(80 kW, 200 kW * tan_phi(0.8) - 280 kW * tan_phi(0.9))',
    expected: [81.28, 'kVA'],
    tolerance: 0.005,
  },
  {
    id: 'pf-12',
    source: 'arithmetic: Q = P (tan φ₁ − tan φ₂); 55.30 is in print where the tangents are rounded',
    expression: 'pf_correction(100 kW, 0.75, 0.95)',
    expected: [55.32, 'kvar'],
    tolerance: 0.01,
  },
  {
    id: 'rms-01',
    source: 'I. Kosow, Electric Machinery and Transformers, example 13.7, p. 466',
    expression: 'rms_power([200 hp, 20 hp, 100 hp], [5 min, 5 min, 10 min], 10 min, 1/3)',
    expected: [114, 'hp'],
    tolerance: 0.5,
  },
  {
    id: 'rms-01',
    source: 'I. Kosow, Electric Machinery and Transformers, example 13.7, p. 466: next size',
    expression: 'standard_rating_nema(rms_power([200 hp, 20 hp, 100 hp], [5 min, 5 min, 10 min], 10 min, 1/3))',
    expected: [125, 'hp'],
  },
  {
    id: 'th-01',
    source: `${GUPTA}, example 47, p. 145`,
    expression: 'final_rise(20 K, 34 K)',
    expected: [66.67, 'K'],
    tolerance: 0.005,
  },
  {
    id: 'th-01',
    source: `${GUPTA}, example 47, p. 145: readings after one and two hours`,
    expression: 'thermal_time_constant(20 K, 34 K, 1 h)',
    expected: [2.8, 'h'],
    tolerance: 0.05,
  },
  {
    id: 'th-02',
    source: `${GUPTA}, example 54, p. 149`,
    expression: 'final_rise(20 K, 30 K)',
    expected: [40, 'K'],
    tolerance: 0.5,
  },
  {
    id: 'th-02',
    source: `${GUPTA}, example 54, p. 149: readings after a half hour and an hour`,
    expression: 'thermal_time_constant(20 K, 30 K, 30 min)',
    expected: [43.28, 'min'],
    tolerance: 0.005,
  },
  {
    id: 'th-06',
    source: `${GUPTA}, example 56, p. 151: readings after a half hour and an hour`,
    expression: 'rise_after(final_rise(20 K, 35 K), thermal_time_constant(20 K, 35 K, 30 min), 2 h)',
    expected: [54.7, 'K'],
    tolerance: 0.05,
  },
];

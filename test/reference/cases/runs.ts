// Resistance, its temperature and voltage drop of runs, as handbooks and field formulas give them.
import { type PublishedCase, row } from '../support.ts';

const BIRD = 'J. O. Bird, Electrical Circuit Theory and Technology, ch. 3';
const KULSHRESHTHA = 'D. C. Kulshreshtha, Basic Electrical Engineering, example 2.17, p. 31';
const MEHTA = 'V. K. Mehta and R. Mehta, Principles of Power System, example 10.1, p. 233';
const FIELD = 'American field formula 1.73·K·I·D/CM with K = 12.9 ohm·cmil/ft for copper';

const temperature: readonly PublishedCase[] = [
  row('alpha-01', 'IEC 60028, soft copper at 20 °C', 'the alpha_20 of conductor_metals where metal is "copper"', [0.00393, '1/K']),
  row('alpha-02', KULSHRESHTHA, 'alpha_at(0.00393 1/K, 0 degC)', [0.00426, '1/K'], 1e-5),
  row('rt-01', `${BIRD}, example 9, p. 27`, 'resistance_from_to(27 ohm, 35 degC, 0 degC, 1 / (0.0038 1/K))', [23.83, 'ohm'], 0.005),
  row('rt-02', `${BIRD}, example 11, p. 28`, 'resistance_from_to(10 ohm, 20 degC, 100 degC, 1 / (0.004 1/K) - 20 K)', [13.2, 'ohm'], 0.05),
  row('rt-03', `${BIRD}, example 8, p. 27`, 'resistance_from_to(100 ohm, 0 degC, 70 degC, 1 / (0.0043 1/K))', [130.1, 'ohm'], 0.05),
  row('rt-05', KULSHRESHTHA, 'resistance_from_to(126 ohm, 20 degC, -35 degC, 1 / (0.00426 1/K))', [98.8, 'ohm'], 0.005),
  row(
    'rt-06',
    'C. R. Robertson, Fundamental Electrical and Electronic Principles, example 1.18, p. 23',
    'resistance_from_to(250 ohm, 15 degC, 45 degC, 1 / (0.00428 1/K))',
    [280.2, 'ohm'],
    0.05,
  ),
];

const resistance: readonly PublishedCase[] = [
  row('rho-01', `${BIRD}, example 7, p. 26`, 'wire_resistance(1.7e-8 ohm·m, 1200 m, pi / 4 * (12 mm)^2)', [0.18, 'ohm'], 0.0005),
  row(
    'rho-02',
    `${BIRD}, example 5, p. 25, from the area back to the resistance`,
    'wire_resistance(0.02 µohm·m, 40 m, 3.2 mm²)',
    [0.25, 'ohm'],
    0.004,
  ),
  row(
    'rho-04',
    'IEC 60228 explained: standard annealed copper, stranding factor 1.03',
    '1.03 * wire_resistance(17.241 ohm·mm²/km, 1 km, 2.5 mm²) / 1 km',
    [7.1, 'ohm/km'],
    0.005,
  ),
];

const drop: readonly PublishedCase[] = [
  row('vd-01', 'drop formula of AS/NZS 3008.1.1: √3·I·Z·L', 'voltage_drop_3ph(75 A, 0.2 ohm/km * 350 m, 0 ohm, 1)', [9.09, 'V'], 0.005),
  row(
    'vd-01',
    'drop formula of AS/NZS 3008.1.1: √3·I·Z·L',
    'voltage_drop_3ph(75 A, 0.2 ohm/km * 350 m, 0 ohm, 1) / 400 V',
    [2.27, '%'],
    0.005,
  ),
  row('vd-02', FIELD, 'voltage_drop_3ph(22 A, wire_resistance(12.9 ohm·cmil/ft, 160 ft, 10380 cmil), 0 ohm, 1)', [7.577, 'V'], 0.001),
  row(
    'vd-03',
    'NFPA 70 (NEC), Chapter 9, Table 8: resistance times area',
    '(the R_cu of nec_chapter_9_table_8 where size is "14" and stranding is "solid") * 4110 cmil',
    [12.62, 'ohm·cmil/ft'],
    0.005,
  ),
  row('vd-05', MEHTA, 'sending_voltage(33 kV, 1100 kW / (33 kV * 0.8), 5 ohm, 7.5 ohm, 0.8, 1)', [33709, 'V'], 0.5),
  row(
    'vd-05',
    MEHTA,
    '(33 kV * 0.8 + 1100 kW / (33 kV * 0.8) * 10 ohm) / sending_voltage(33 kV, 1100 kW / (33 kV * 0.8), 5 ohm, 7.5 ohm, 0.8, 1)',
    [0.7955, '1'],
    1e-4,
  ),
];

export const runs: readonly PublishedCase[] = [...temperature, ...resistance, ...drop];

// Starting currents, torques, times and dips as handbooks print them.
import { type PublishedCase, row } from '../support.ts';

const HUBERT = 'C. I. Hubert, Electric Machines';
const SINGH = 'Tarlok Singh, Electrical Machines II';
const THERAJA = 'B. L. and A. K. Theraja, Electrical Technology: AC and DC Machines';
const KOSOW = 'I. Kosow, Electric Machinery and Transformers';
const GUPTA = 'J. B. Gupta, Elements of Electric Drives';
const ROUNDED_5252 = 'the book works with the rounded 5252 for 33 000/2π = 5252.113';

/** Slips of the curve for ac-05, closer together where the torque changes most. */
const SLIPS = [
  1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.42, 0.35, 0.3, 0.25, 0.21, 0.18, 0.155, 0.135, 0.12, 0.108, 0.098, 0.09, 0.082, 0.075, 0.069, 0.064, 0.059,
  0.054, 0.05,
]; // biome-ignore format: one list of numbers

export const starting: readonly PublishedCase[] = [
  row('ex-08', 'arithmetic with NFPA 70 (NEC) 2008, Table 430.7(B): 20 hp, letter G', 'locked_rotor_kva(20 hp, "G")', [125.8, 'kVA'], 0.05),
  {
    id: 'ex-08',
    source: 'arithmetic with NFPA 70 (NEC) 2008, Table 430.7(B): 20 hp, letter G',
    expression: 'locked_rotor_current_nec(20 hp, 460 V, "G", 3)',
    expected: [157.9, 'A'],
    tolerance: 0.5,
    why: 'where it is quoted, the divisor is written with 480 V, but the number belongs to 460 V',
  },
  row('ex-10', `${HUBERT}, example 5.18, p. 231`, 'locked_rotor_current(6.7 kVA/hp * 125 hp, 460 V, 3)', [1051.15, 'A'], 0.005),
  row('ex-11', `${HUBERT}, example 5.19, p. 233`, 'locked_rotor_per_hp(60 hp, 460 V, 1456.57 A, 3)', [19.34, 'kVA/hp'], 0.005),
  row('ex-11', `${HUBERT}, example 5.19, p. 233`, 'code_letter(60 hp, 460 V, 1456.57 A, 3)', 'T'),
  row(
    'ex-12',
    `${HUBERT}, example 5.21, p. 236 (intermediate value, by arithmetic)`,
    'locked_rotor_current(6.7 kVA/hp * 7.5 hp, 208 V, 3)',
    [139.5, 'A'],
    0.05,
  ),
  {
    id: 'st-01',
    source: `${HUBERT}, example 5.4, p. 185`,
    expression: 'shaft_torque(50 hp, 1760 rpm) - reduced_voltage_torque(shaft_torque(50 hp, 1760 rpm), 414 V, 460 V)',
    expected: [28.349, 'lbf·ft'],
    tolerance: 0.0015,
    why: ROUNDED_5252,
  },
  {
    id: 'st-01',
    source: `${HUBERT}, example 5.4, p. 185`,
    expression: 'reduced_voltage_torque(1.4 * shaft_torque(50 hp, 1760 rpm), 414 V, 460 V)',
    expected: [169.198, 'lbf·ft'],
    tolerance: 0.005,
    why: ROUNDED_5252,
  },
  {
    id: 'st-03',
    source: `${HUBERT}, example 5.8, p. 193`,
    expression: '1.2 * shaft_torque(75 hp, 1750 rpm)',
    expected: [270.1, 'lbf·ft'],
    tolerance: 0.015,
    why: ROUNDED_5252,
  },
  {
    id: 'st-03',
    source: `${HUBERT}, example 5.8, p. 193`,
    expression: '1.2 * shaft_torque(75 hp, 1750 rpm) * motor_frequency_ratio(230 V, 58 Hz, 240 V, 60 Hz)^2',
    expected: [265.47, 'lbf·ft'],
    tolerance: 0.015,
    why: ROUNDED_5252,
  },
  row(
    'st-04',
    `${HUBERT}, example 5.6, p. 190: slip goes with f/U² at constant torque`,
    'synchronous_speed(56.4 Hz, 6) * (1 - slip(1175 rpm, synchronous_speed(60 Hz, 6)) * (56.4 / 60) * (230 / 207)^2)',
    [1100.73, 'rpm'],
    0.005,
  ),
  row('st-04', `${HUBERT}, example 5.6, p. 190`, 'torque_power(shaft_torque(20 hp, 1175 rpm), 1100.728 rpm)', [18.736, 'hp'], 0.0005),
  row('st-06', `${KOSOW}, example 9.16, p. 313`, 'autotransformer_motor(252 A, 60 %)', [151.2, 'A'], 0.05),
  row('st-06', `${KOSOW}, example 9.16, p. 313`, 'autotransformer_line(252 A, 60 %)', [90.72, 'A'], 0.005),
  row('st-06', `${KOSOW}, example 9.16, p. 313`, 'autotransformer_torque(120 lbf·ft, 60 %)', [43.2, 'lbf·ft'], 0.05),
  row(
    'st-09',
    `${THERAJA}, example 35.15, p. 1336`,
    '150 N·m * torque_from_current(300 A, 60 A, slip(940 rpm, 1000 rpm))',
    [225, 'N·m'],
    0.5,
  ),
  row('st-09', `${THERAJA}, example 35.15, p. 1336`, 'star_delta_start(300 A)', [100, 'A'], 0.5),
  row('st-09', `${THERAJA}, example 35.15, p. 1336`, 'star_delta_torque(225 N·m)', [75, 'N·m'], 0.5),
  row('st-10', `${SINGH}, example 2.51, p. 189; ${THERAJA}, example 35.16`, 'torque_from_current(6 A, 1 A, 4 %) / 3', [48, '%'], 0.5),
  row('st-11', `${SINGH}, example 2.51, p. 189`, 'torque_from_current(autotransformer_motor(6 A, 70.7 %), 1 A, 4 %)', [72, '%'], 0.5),
  row('st-12', `${SINGH}, example 2.48, p. 187`, 'torque_from_current(5 A, 1 A, 4 %) / 3', [33.33, '%'], 0.005),
  row('st-13', `${SINGH}, example 2.48, p. 187`, 'torque_from_current(autotransformer_motor(5 A, 50 %), 1 A, 4 %)', [25, '%'], 0.5),
  row('st-16', `${THERAJA}, example 35.19, p. 1337`, 'star_delta_start(locked_rotor_from_ratio(100 A, 6.5))', [216.67, 'A'], 0.005),
  row('st-16', `${THERAJA}, example 35.19, p. 1337`, 'star_delta_torque(250 N·m)', [83.33, 'N·m'], 0.005),
  row('st-17', `${THERAJA}, example 35.19, p. 1337`, 'autotransformer_line(650 A, 60 %)', [234, 'A'], 0.5),
  row('st-17', `${THERAJA}, example 35.19, p. 1337`, 'autotransformer_motor(650 A, 60 %)', [390, 'A'], 0.5),
  row('st-17', `${THERAJA}, example 35.19, p. 1337`, 'autotransformer_torque(250 N·m, 60 %)', [90, 'N·m'], 0.5),
  {
    id: 'st-18',
    source: `${THERAJA}, example 35.17, p. 1337`,
    expression: 'torque_from_current(86.4 A, fla_3ph(11.2 kW, 400 V, 88 %, 0.85), 5 %) / 3',
    expected: [26.64, '%'],
    tolerance: 0.005,
    why: 'printed with slip 0.05, though 960 rpm on 50 Hz means 0.04 (then 21.3 %)',
  },
  row('st-21', `${HUBERT}, example 5.19, p. 233`, '460 V / (√3 * 0.547 ohm)', [485.52, 'A'], 0.005),
  row(
    'st-21',
    `${HUBERT}, example 5.19, p. 233: line current in delta is three times that in star`,
    'star_delta_start(1456.57 A)',
    [485.52, 'A'],
    0.005,
  ),
  row('st-21', `${HUBERT}, example 5.19, p. 233`, 'star_delta_torque(1.4 * shaft_torque(60 hp, 1750 rpm))', [84.03, 'lbf·ft'], 0.005),
  row(
    'st-22',
    `${HUBERT}, example 5.21, p. 236`,
    'starting_reactor(208 V, 48 A, 0.294 ohm, 0.809 ohm) / (2*pi * 60 Hz)',
    [4.444, 'mH'],
    0.0005,
  ),
  row('st-22', `${HUBERT}, example 5.21, p. 236`, '48 A * starting_reactor(208 V, 48 A, 0.294 ohm, 0.809 ohm)', [80.42, 'V'], 0.005),
  row(
    'st-23',
    `${HUBERT}, example 5.20, p. 235`,
    'starting_resistor(√3 * 132.79 V, 234 A, 0.0978 ohm, 0.2549 ohm)',
    [0.409, 'ohm'],
    0.0005,
  ),
  {
    id: 'st-23',
    source: `${HUBERT}, example 5.20, p. 235: voltage left at the motor`,
    expression: '234 A * hypot(0.0978 ohm, 0.2549 ohm)',
    expected: [63.88, 'V'],
    tolerance: 0.01,
    why: 'the impedances are printed to four places; 63.886 V from those',
  },
  row(
    'ac-02',
    `${GUPTA}, example 23, p. 80: 660 kgf·m of stored energy a kilowatt, 9.81 m/s²`,
    'start_time(2 * 37.5 * 660 * 9.81 N·m / (2*pi rad * 500 rpm)^2, 500 rpm, 2 * shaft_torque(37.5 kW, 500 rpm), shaft_torque(37.5 kW, 500 rpm))',
    [12.95, 's'],
    0.005,
  ),
  row(
    'ac-03',
    `${GUPTA}, example 21, p. 80: the printed inertia reaches the speed of one second's acceleration in one second`,
    'start_time(1.114 kg·m², 62.83 rad/s / (2*pi rad), 100 N·m, 30 N·m)',
    [1, 's'],
    0.0005,
  ),
  row(
    'ac-04',
    'exact factors of NIST SP 811: 60 g/2π = 307.24, in print as 307 and 308',
    'start_time(1 lb·ft², 1 rpm, 1 lbf·ft, 0 lbf·ft)',
    [0.003255, 's'],
    0.000005,
  ),
  {
    id: 'ac-05',
    source: 'G. K. Dubey, Fundamentals of Electrical Drives, example 6.7, p. 176: closed form of the time to 95 % of synchronous speed',
    expression: dubey(2200, 0.075, 0.12, 1, 100),
    expected: [1.108, 's'],
    tolerance: 0.003,
    why: 'the closed form rounds (1 − 0.05²) to 1 and ½ ln 20 to 1.5; the integral itself is 1.1056 s',
  },
  row('dip-01', 'arithmetic: divider of two impedances of one angle', 'start_dip(600 kVA, 5 MVA, cos(atan(4)), 4)', [10.7, '%'], 0.05),
  row(
    'dip-02',
    'common practice: short-circuit voltage times starting power over rating, as a divider',
    'start_dip(300 kVA, transformer_short_circuit_power(1000 kVA, 5.75 %), cos(atan(4)), 4)',
    [1.696, '%'],
    0.0005,
  ),
  row(
    'dip-02',
    'common practice: the linear rule, which forgets that the current falls with the voltage',
    '300 kVA / transformer_short_circuit_power(1000 kVA, 5.75 %)',
    [1.725, '%'],
    0.0005,
  ),
  row('dip-03', 'IEC 60909-0, network feeder, arithmetic', 'network_impedance(11 kV, 500 MVA, 1.05)', [0.254, 'ohm'], 0.0005),
  row('dip-04', 'IEC 60909-0, transformer, arithmetic', 'transformer_impedance(0.4 kV, 2.5 MVA, 6 %)', [0.00384, 'ohm'], 0.000005),
];

/** Dubey's no-load start (f = 50 Hz, six poles), its torque curve by Kloss's formula at the points of SLIPS. */
function dubey(U: number, R_1: number, R_2: number, X: number, J: number): string {
  const s_b = R_2 / Math.hypot(R_1, X);
  const M_b = `3 * (${U} V / √3)^2 / (2 * (2*pi rad * 1000 rpm) * (${R_1} ohm + hypot(${R_1} ohm, ${X} ohm)))`;
  const speeds = SLIPS.map((s) => `${+(1000 * (1 - s)).toFixed(9)} rpm`).join(', ');
  const torques = `torque_kloss(${M_b}, ${s_b}, [${SLIPS.join(', ')}])`;
  const none = SLIPS.map(() => '0 N·m').join(', ');
  return `start_time_curve(${J} kg·m², [${speeds}], ${torques}, [${none}])`;
}

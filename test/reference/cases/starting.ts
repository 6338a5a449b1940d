// Starting currents, torques, times and dips as handbooks print them.
import type { PublishedCase } from '../support.ts';

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
  {
    id: 'ex-08',
    source: 'arithmetic with NFPA 70 (NEC) 2008, Table 430.7(B): 20 hp, letter G',
    expression: 'locked_rotor_kva(20 hp, "G")',
    expected: [125.8, 'kVA'],
    tolerance: 0.05,
  },
  {
    id: 'ex-08',
    source: 'arithmetic with NFPA 70 (NEC) 2008, Table 430.7(B): 20 hp, letter G',
    expression: 'locked_rotor_current_nec(20 hp, 460 V, "G", 3)',
    expected: [157.9, 'A'],
    tolerance: 0.5,
    why: 'where it is quoted, the divisor is written with 480 V, but the number belongs to 460 V',
  },
  {
    id: 'ex-10',
    source: `${HUBERT}, example 5.18, p. 231`,
    expression: 'locked_rotor_current(6.7 kVA/hp * 125 hp, 460 V, 3)',
    expected: [1051.15, 'A'],
    tolerance: 0.005,
  },
  {
    id: 'ex-11',
    source: `${HUBERT}, example 5.19, p. 233`,
    expression: 'locked_rotor_per_hp(60 hp, 460 V, 1456.57 A, 3)',
    expected: [19.34, 'kVA/hp'],
    tolerance: 0.005,
  },
  {
    id: 'ex-11',
    source: `${HUBERT}, example 5.19, p. 233`,
    expression: 'code_letter(60 hp, 460 V, 1456.57 A, 3)',
    expected: 'T',
  },
  {
    id: 'ex-12',
    source: `${HUBERT}, example 5.21, p. 236 (intermediate value, by arithmetic)`,
    expression: 'locked_rotor_current(6.7 kVA/hp * 7.5 hp, 208 V, 3)',
    expected: [139.5, 'A'],
    tolerance: 0.05,
  },
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
  {
    id: 'st-04',
    source: `${HUBERT}, example 5.6, p. 190: slip goes with f/U² at constant torque`,
    expression:
      'synchronous_speed(56.4 Hz, 6) * (1 - slip(1175 rpm, synchronous_speed(60 Hz, 6)) * (56.4 / 60) * (230 / 207)^2)',
    expected: [1100.73, 'rpm'],
    tolerance: 0.005,
  },
  {
    id: 'st-04',
    source: `${HUBERT}, example 5.6, p. 190`,
    expression: 'torque_power(shaft_torque(20 hp, 1175 rpm), 1100.728 rpm)',
    expected: [18.736, 'hp'],
    tolerance: 0.0005,
  },
  {
    id: 'st-06',
    source: `${KOSOW}, example 9.16, p. 313`,
    expression: 'autotransformer_motor(252 A, 60 %)',
    expected: [151.2, 'A'],
    tolerance: 0.05,
  },
  {
    id: 'st-06',
    source: `${KOSOW}, example 9.16, p. 313`,
    expression: 'autotransformer_line(252 A, 60 %)',
    expected: [90.72, 'A'],
    tolerance: 0.005,
  },
  {
    id: 'st-06',
    source: `${KOSOW}, example 9.16, p. 313`,
    expression: 'autotransformer_torque(120 lbf·ft, 60 %)',
    expected: [43.2, 'lbf·ft'],
    tolerance: 0.05,
  },
  {
    id: 'st-09',
    source: `${THERAJA}, example 35.15, p. 1336`,
    expression: '150 N·m * torque_from_current(300 A, 60 A, slip(940 rpm, 1000 rpm))',
    expected: [225, 'N·m'],
    tolerance: 0.5,
  },
  {
    id: 'st-09',
    source: `${THERAJA}, example 35.15, p. 1336`,
    expression: 'star_delta_start(300 A)',
    expected: [100, 'A'],
    tolerance: 0.5,
  },
  {
    id: 'st-09',
    source: `${THERAJA}, example 35.15, p. 1336`,
    expression: 'star_delta_torque(225 N·m)',
    expected: [75, 'N·m'],
    tolerance: 0.5,
  },
  {
    id: 'st-10',
    source: `${SINGH}, example 2.51, p. 189; ${THERAJA}, example 35.16`,
    expression: 'torque_from_current(6 A, 1 A, 4 %) / 3',
    expected: [48, '%'],
    tolerance: 0.5,
  },
  {
    id: 'st-11',
    source: `${SINGH}, example 2.51, p. 189`,
    expression: 'torque_from_current(autotransformer_motor(6 A, 70.7 %), 1 A, 4 %)',
    expected: [72, '%'],
    tolerance: 0.5,
  },
  {
    id: 'st-12',
    source: `${SINGH}, example 2.48, p. 187`,
    expression: 'torque_from_current(5 A, 1 A, 4 %) / 3',
    expected: [33.33, '%'],
    tolerance: 0.005,
  },
  {
    id: 'st-13',
    source: `${SINGH}, example 2.48, p. 187`,
    expression: 'torque_from_current(autotransformer_motor(5 A, 50 %), 1 A, 4 %)',
    expected: [25, '%'],
    tolerance: 0.5,
  },
  {
    id: 'st-16',
    source: `${THERAJA}, example 35.19, p. 1337`,
    expression: 'star_delta_start(locked_rotor_from_ratio(100 A, 6.5))',
    expected: [216.67, 'A'],
    tolerance: 0.005,
  },
  {
    id: 'st-16',
    source: `${THERAJA}, example 35.19, p. 1337`,
    expression: 'star_delta_torque(250 N·m)',
    expected: [83.33, 'N·m'],
    tolerance: 0.005,
  },
  {
    id: 'st-17',
    source: `${THERAJA}, example 35.19, p. 1337`,
    expression: 'autotransformer_line(650 A, 60 %)',
    expected: [234, 'A'],
    tolerance: 0.5,
  },
  {
    id: 'st-17',
    source: `${THERAJA}, example 35.19, p. 1337`,
    expression: 'autotransformer_motor(650 A, 60 %)',
    expected: [390, 'A'],
    tolerance: 0.5,
  },
  {
    id: 'st-17',
    source: `${THERAJA}, example 35.19, p. 1337`,
    expression: 'autotransformer_torque(250 N·m, 60 %)',
    expected: [90, 'N·m'],
    tolerance: 0.5,
  },
  {
    id: 'st-18',
    source: `${THERAJA}, example 35.17, p. 1337`,
    expression: 'torque_from_current(86.4 A, fla_3ph(11.2 kW, 400 V, 88 %, 0.85), 5 %) / 3',
    expected: [26.64, '%'],
    tolerance: 0.005,
    why: 'printed with slip 0.05, though 960 rpm on 50 Hz means 0.04 (then 21.3 %)',
  },
  {
    id: 'st-21',
    source: `${HUBERT}, example 5.19, p. 233`,
    expression: '460 V / (√3 * 0.547 ohm)',
    expected: [485.52, 'A'],
    tolerance: 0.005,
  },
  {
    id: 'st-21',
    source: `${HUBERT}, example 5.19, p. 233: line current in delta is three times that in star`,
    expression: 'star_delta_start(1456.57 A)',
    expected: [485.52, 'A'],
    tolerance: 0.005,
  },
  {
    id: 'st-21',
    source: `${HUBERT}, example 5.19, p. 233`,
    expression: 'star_delta_torque(1.4 * shaft_torque(60 hp, 1750 rpm))',
    expected: [84.03, 'lbf·ft'],
    tolerance: 0.005,
  },
  {
    id: 'st-22',
    source: `${HUBERT}, example 5.21, p. 236`,
    expression: 'starting_reactor(208 V, 48 A, 0.294 ohm, 0.809 ohm) / (2*pi * 60 Hz)',
    expected: [4.444, 'mH'],
    tolerance: 0.0005,
  },
  {
    id: 'st-22',
    source: `${HUBERT}, example 5.21, p. 236`,
    expression: '48 A * starting_reactor(208 V, 48 A, 0.294 ohm, 0.809 ohm)',
    expected: [80.42, 'V'],
    tolerance: 0.005,
  },
  {
    id: 'st-23',
    source: `${HUBERT}, example 5.20, p. 235`,
    expression: 'starting_resistor(√3 * 132.79 V, 234 A, 0.0978 ohm, 0.2549 ohm)',
    expected: [0.409, 'ohm'],
    tolerance: 0.0005,
  },
  {
    id: 'st-23',
    source: `${HUBERT}, example 5.20, p. 235: voltage left at the motor`,
    expression: '234 A * hypot(0.0978 ohm, 0.2549 ohm)',
    expected: [63.88, 'V'],
    tolerance: 0.01,
    why: 'the impedances are printed to four places; 63.886 V from those',
  },
  {
    id: 'ac-02',
    source: `${GUPTA}, example 23, p. 80: 660 kgf·m of stored energy a kilowatt, 9.81 m/s²`,
    expression:
      'start_time(2 * 37.5 * 660 * 9.81 N·m / (2*pi rad * 500 rpm)^2, 500 rpm, 2 * shaft_torque(37.5 kW, 500 rpm), shaft_torque(37.5 kW, 500 rpm))',
    expected: [12.95, 's'],
    tolerance: 0.005,
  },
  {
    id: 'ac-03',
    source: `${GUPTA}, example 21, p. 80: the printed inertia reaches the speed of one second's acceleration in one second`,
    expression: 'start_time(1.114 kg·m², 62.83 rad/s / (2*pi rad), 100 N·m, 30 N·m)',
    expected: [1, 's'],
    tolerance: 0.0005,
  },
  {
    id: 'ac-04',
    source: 'exact factors of NIST SP 811: 60 g/2π = 307.24, in print as 307 and 308',
    expression: 'start_time(1 lb·ft², 1 rpm, 1 lbf·ft, 0 lbf·ft)',
    expected: [0.003255, 's'],
    tolerance: 0.000005,
  },
  {
    id: 'ac-05',
    source: 'G. K. Dubey, Fundamentals of Electrical Drives, example 6.7, p. 176: closed form of the time to 95 % of synchronous speed',
    expression: dubey(2200, 0.075, 0.12, 1, 100),
    expected: [1.108, 's'],
    tolerance: 0.003,
    why: 'the closed form rounds (1 − 0.05²) to 1 and ½ ln 20 to 1.5; the integral itself is 1.1056 s',
  },
  {
    id: 'dip-01',
    source: 'arithmetic: divider of two impedances of one angle',
    expression: 'start_dip(600 kVA, 5 MVA, cos(atan(4)), 4)',
    expected: [10.7, '%'],
    tolerance: 0.05,
  },
  {
    id: 'dip-02',
    source: 'common practice: short-circuit voltage times starting power over rating, as a divider',
    expression: 'start_dip(300 kVA, transformer_short_circuit_power(1000 kVA, 5.75 %), cos(atan(4)), 4)',
    expected: [1.696, '%'],
    tolerance: 0.0005,
  },
  {
    id: 'dip-02',
    source: 'common practice: the linear rule, which forgets that the current falls with the voltage',
    expression: '300 kVA / transformer_short_circuit_power(1000 kVA, 5.75 %)',
    expected: [1.725, '%'],
    tolerance: 0.0005,
  },
  {
    id: 'dip-03',
    source: 'IEC 60909-0, network feeder, arithmetic',
    expression: 'network_impedance(11 kV, 500 MVA, 1.05)',
    expected: [0.254, 'ohm'],
    tolerance: 0.0005,
  },
  {
    id: 'dip-04',
    source: 'IEC 60909-0, transformer, arithmetic',
    expression: 'transformer_impedance(0.4 kV, 2.5 MVA, 6 %)',
    expected: [0.00384, 'ohm'],
    tolerance: 0.000005,
  },
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

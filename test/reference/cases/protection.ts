// Overload, branch device, feeder and trip class, as the National Electrical Code, examples and manuals print them.
import { type PublishedCase, row } from '../support.ts';

const NEC_430_52 = 'NFPA 70 (NEC) 2011, Table 430.52';
const NEC_430_32 = 'NFPA 70 (NEC) 2008, 430.32';
const HOLT = 'M. Holt, Electrical Calculations, 2002 NEC edition, p. 139';

const DEVICES = ['nontime-delay fuse', 'time-delay fuse', 'instantaneous-trip breaker', 'inverse-time breaker'];

/** Percent of the table current, in the order of DEVICES. */
const BRANCH = `
  ocpd-single-phase | single-phase | 300 175 800 250
  ocpd-AC-polyphase-other-than-wound-rotor | polyphase | 300 175 800 250
  ocpd-squirrel-cage-other-than-Design-B-energy-efficient | squirrel cage | 300 175 800 250
  ocpd-Design-B-energy-efficient | Design B energy-efficient | 300 175 1100 250
  ocpd-synchronous | synchronous | 300 175 800 250
  ocpd-wound-rotor | wound rotor | 150 150 800 150
  ocpd-direct-current-constant-voltage | direct current | 150 150 250 150
`;

const branch: readonly PublishedCase[] = BRANCH.trim()
  .split('\n')
  .flatMap((line) => {
    const [id, motor, percents] = line.split('|').map((part) => part.trim()) as [string, string, string];
    return percents.split(' ').map((percent, i) => ({
      id,
      source: NEC_430_52,
      expression: `branch_device_limit_nec(100 A, "${DEVICES[i]}", "${motor}")`,
      expected: [Number(percent), 'A'] as const,
    }));
  });

/** `case | table current | limit at 115 %`, all in A: every motor without a mark of service factor or rise. */
const OTHER_MOTORS = `
  ol115-1hp-230V 4.2 4.83
  ol115-1-1_2hp-230V 6 6.9
  ol115-2hp-230V 6.8 7.82
  ol115-3hp-230V 9.6 11.04
  ol115-5hp-230V 15.2 17.48
  ol115-5hp-460V 7.6 8.74
  ol115-7-1_2hp-230V 22 25.3
  ol115-7-1_2hp-460V 11 12.65
  ol115-10hp-230V 28 32.2
  ol115-10hp-460V 14 16.1
  ol115-15hp-230V 42 48.3
  ol115-20hp-460V 27 31.05
  ol115-25hp-230V 68 78.2
`;

const otherMotors: readonly PublishedCase[] = OTHER_MOTORS.trim()
  .split('\n')
  .map((line) => {
    const [id, current, limit] = line.trim().split(' ') as [string, string, string];
    return {
      id,
      source: "table of motor data of a starter maker's manual (brand left out)",
      expression: `overload_limit_nec(${current} A, 1, 80 K)`,
      expected: [Number(limit), 'A'] as const,
      tolerance: 0.0005,
    };
  });

const RATINGS = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600];
const LARGE_RATINGS = [700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000];

const standardRatings: readonly PublishedCase[] = [...RATINGS, ...LARGE_RATINGS].map((rating, i, all) => ({
  id: 'std-240.6',
  source: 'NFPA 70 (NEC), 240.6(A)',
  expression: `standard_device_nec(${i === 0 ? 1 : all[i - 1]! + 0.5} A)`,
  expected: [rating, 'A'],
}));

const examples: readonly PublishedCase[] = [
  row('ol-01', `${NEC_430_32}(A)(1)`, 'overload_limit_nec(100 A, 1.15, 80 K)', [125, 'A']),
  row('ol-02', `${NEC_430_32}(A)(1)`, 'overload_limit_nec(100 A, 1, 40 K)', [125, 'A']),
  row('ol-03', `${NEC_430_32}(A)(1)`, 'overload_limit_nec(100 A, 1, 80 K)', [115, 'A']),
  row('ol-04', `${NEC_430_32}(C); EC&M code quiz`, 'overload_maximum_nec(100 A, 1.15, 80 K)', [140, 'A']),
  row('ol-05', `${NEC_430_32}(C); EC&M code quiz`, 'overload_maximum_nec(100 A, 1.12, 80 K)', [130, 'A']),
  row('ol-06', `${NEC_430_32}(A)(2)`, 'thermal_protector_limit_nec(9 A) / 9 A', [170, '%']),
  row('ol-07', `${NEC_430_32}(A)(2)`, 'thermal_protector_limit_nec(9.1 A) / 9.1 A', [156, '%']),
  row('ol-07', `${NEC_430_32}(A)(2)`, 'thermal_protector_limit_nec(20 A) / 20 A', [156, '%']),
  row('ol-08', `${NEC_430_32}(A)(2)`, 'thermal_protector_limit_nec(20.1 A) / 20.1 A', [140, '%']),
  row('ex-02', 'worked example of a 5 hp, 230 V single-phase motor under the NEC', 'conductor_ampacity_nec(28 A)', [35, 'A'], 0.5),
  row(
    'ex-02',
    'worked example of a 5 hp, 230 V single-phase motor under the NEC',
    'branch_device_nec(28 A, "inverse-time breaker", "single-phase")',
    [70, 'A'],
  ),
  row('ex-04', 'worked example of four 5 hp motors under NEC 430.24', 'feeder_ampacity_nec([28 A, 28 A, 28 A, 28 A])', [119, 'A'], 0.5),
  row('ex-05', HOLT, 'conductor_ampacity_nec(16 A)', [20, 'A'], 0.5),
  row('ex-05', HOLT, 'overload_limit_nec(14 A, 1, 80 K)', [16.1, 'A'], 0.05),
  row('ex-05', HOLT, 'branch_device_nec(16 A, "inverse-time breaker", "single-phase")', [40, 'A']),
  row('ex-06', HOLT, 'feeder_ampacity_nec([40 A, 28 A])', [78, 'A'], 0.5),
  row('ex-13', 'NFPA 70 (NEC) 2011, 430.22, on Table 430.250', 'conductor_ampacity_nec(40 A)', [50, 'A'], 0.5),
];

/** `class t_min t_max`, s at 7.2 times the setting from cold, and the greatest time in min at 1.5 times from warm. */
const CLASSES = ['10A 2 10 2', '10 4 10 4', '20 6 20 8', '30 9 30 12'];

const tripClasses: readonly PublishedCase[] = CLASSES.flatMap((line) => {
  const [name, t_min, t_max, warm] = line.split(' ') as [string, string, string, string];
  const IEC = 'IEC 60947-4-1, trip classes';
  return [
    row(`trip-${name}`, `${IEC}, as a maker answers it (brand left out)`, `the t_min of trip_classes where class is "${name}"`, [
      Number(t_min),
      's',
    ]),
    row(`trip-${name}`, `${IEC}, as a maker answers it (brand left out)`, `the t_max of trip_classes where class is "${name}"`, [
      Number(t_max),
      's',
    ]),
    row(`trip15-${name}`, `${IEC}, test C (from memory)`, `the warm_limit of trip_classes where class is "${name}"`, [Number(warm), 'min']),
  ];
});

const STARTER_MANUAL = 'motor starter manual, current factors and tripping times of an electronic relay (brand left out)';

const relay: readonly PublishedCase[] = [
  row(
    'trip-105',
    'IEC 60947-4-1, limits of operation, test A (from memory)',
    'the result of overload_limits where test is "A"',
    'no trip in 2 h from cold',
  ),
  row('clsfac-5_or_10', STARTER_MANUAL, 'equal_heat_current(1 A, 10 s, 10 s)', [1, 'A'], 0.005),
  row('clsfac-15', STARTER_MANUAL, 'equal_heat_current(1 A, 15 s, 10 s)', [1.22, 'A'], 0.005),
  row('clsfac-20', STARTER_MANUAL, 'equal_heat_current(1 A, 20 s, 10 s)', [1.41, 'A'], 0.005),
  row('clsfac-25', STARTER_MANUAL, 'equal_heat_current(1 A, 25 s, 10 s)', [1.58, 'A'], 0.005),
  row('clsfac-30', STARTER_MANUAL, 'equal_heat_current(1 A, 30 s, 10 s)', [1.73, 'A'], 0.005),
  // One time constant and one pick-up, fitted once, give all five printed times.
  ...(['3 44.5', '4 24.2', '5 15.2', '6 10.5', '7.2 7.2'] as const).map((line) => {
    const [multiple, seconds] = line.split(' ') as [string, string];
    return row(`tt10-${multiple}`, STARTER_MANUAL, `trip_time_thermal(${multiple}, 0, 280 s, 1.15)`, [Number(seconds), 's'], 0.05);
  }),
];

export const protection: readonly PublishedCase[] = [...branch, ...otherMotors, ...standardRatings, ...examples, ...tripClasses, ...relay];

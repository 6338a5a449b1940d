// Unbalance of voltages and currents, derating and heating, as standards and handbooks print them.
import { type PublishedCase, row } from '../support.ts';

const HUBERT_5_14 = 'C. I. Hubert, Electric Machines, example 5.14, p. 211';
const PILLAY = 'P. Pillay and M. Manyage, Definitions of Voltage Unbalance, IEEE Power Engineering Review, May 2001, Table 1';
const MG_1_CURVE = 'NEMA MG 1, Figures 14-1 and 20-2: from memory, readings of a curve';
const PUMP_WORKSHEET = "a pump maker's owner manual, current unbalance worksheet (brand left out)";

export const balance: readonly PublishedCase[] = [
  row('vu-01', 'U.S. DOE, Motor Tip Sheet 7, Eliminate Voltage Unbalance', 'voltage_unbalance(462 V, 463 V, 455 V)', [1.1, '%'], 0.05),
  row('vu-02', 'NEMA MG 1, 14.36.2, example (from memory)', 'voltage_unbalance(460 V, 467 V, 450 V)', [1.96, '%'], 0.005),
  row('vu-03', HUBERT_5_14, 'voltage_imbalance(460 V, 455 V, 440 V)', [2.58, '%'], 0.005),
  row('vu-03', HUBERT_5_14, '110 K * (1 + imbalance_rise(2.58 %))', [124.64, 'K'], 0.1),
  row('vu-03', HUBERT_5_14, 'imbalance_derating(2.58 %)', [0.92, '1'], 0.01),
  {
    id: 'vu-03',
    source: HUBERT_5_14,
    expression: 'imbalance_derating(2.58 %) * 30 hp',
    expected: [27.6, 'hp'],
    tolerance: 0.3,
    why: 'the curve is read to 0.01, which is 0.3 hp here',
  },
  row('vu-04', HUBERT_5_14, '20 * life_halving(14.64408 K)', [7.25, '1'], 0.005),
  {
    id: 'vu-05',
    source: 'arithmetic by the definition of NEMA MG 1',
    expression: 'voltage_unbalance(480 V, 476 V, 472 V)',
    expected: [0.84, '%'],
    tolerance: 0.005,
    why: 'the spread over the mean, 1.68 %, is the usual mistake',
  },
  {
    id: 'vu-06',
    source: 'arithmetic by the definition of NEMA MG 1',
    expression: 'voltage_unbalance(400 V, 395 V, 388 V)',
    expected: [1.61, '%'],
    tolerance: 0.005,
    why: "a maker's page prints 1.45 %: it takes the highest voltage, though the lowest lies furthest from the mean",
  },
  row('vu-07', `${PILLAY}: least factor for 2 %`, 'unbalance_factor(408 V, 396 V, 396 V)', [2, '%'], 0.05),
  row('vu-07', `${PILLAY}: greatest factor for 2 %`, 'unbalance_factor(408 V, 392 V, 400 V)', [2.3, '%'], 0.05),
  {
    id: 'vu-10',
    source: `${PILLAY}: least factor for 20 %`,
    expression: 'unbalance_factor(480 V, 360 V, 360 V)',
    expected: [21, '%'],
    tolerance: 0.6,
    why: 'the paper prints 21 %; the phasor triangle of these voltages has 21.54 %',
  },
  row('vu-10', `${PILLAY}: greatest factor for 20 %`, 'unbalance_factor(480 V, 320 V, 400 V)', [23.8, '%'], 0.5),
  row(
    'vu-11',
    'IEC 61000-4-30 form on the voltages of Hubert, example 5.14, in 30-digit arithmetic',
    'unbalance_factor(460 V, 455 V, 440 V)',
    [2.649, '%'],
    0.0005,
  ),
  row('vu-12', 'identity: equal voltages have no negative sequence', 'unbalance_factor(400 V, 400 V, 400 V)', [0, '%']),
  row('vu-12', 'identity: equal voltages do not deviate from their mean', 'voltage_unbalance(400 V, 400 V, 400 V)', [0, '%']),
  row(
    'vu-13',
    'IEC 61000-4-30 form on the voltages of U.S. DOE, Motor Tip Sheet 7, in 30-digit arithmetic',
    'unbalance_factor(462 V, 463 V, 455 V)',
    [1.091, '%'],
    0.0005,
  ),
  row('vu-13', 'the same voltages by the definition of NEMA MG 1', 'voltage_unbalance(462 V, 463 V, 455 V)', [1.087, '%'], 0.0005),
  row('der-1pct', MG_1_CURVE, 'imbalance_derating(1 %)', [1, '1'], 0.02),
  row('der-2pct', MG_1_CURVE, 'imbalance_derating(2 %)', [0.95, '1'], 0.02),
  row('der-3pct', MG_1_CURVE, 'imbalance_derating(3 %)', [0.89, '1'], 0.02),
  row('der-4pct', MG_1_CURVE, 'imbalance_derating(4 %)', [0.82, '1'], 0.02),
  row('der-5pct', MG_1_CURVE, 'imbalance_derating(5 %)', [0.75, '1'], 0.02),
  row('der-2.58pct', HUBERT_5_14, 'imbalance_derating(2.58 %)', [0.92, '1'], 0.01),
  row('der-none', 'NEMA MG 1: operation above 5 % is not recommended', 'imbalance_derating(5.2 %)', /above 5 %/),
  row('cu-01', PUMP_WORKSHEET, 'current_imbalance(51 A, 46 A, 53 A)', [8, '%'], 0.05),
  row('cu-03', PUMP_WORKSHEET, 'current_imbalance(50 A, 49 A, 51 A)', [2, '%'], 0.05),
  row('cu-04', "a test instrument's user manual, motor loads (brand left out)", 'current_imbalance(33 A, 29 A, 34 A)', [9.4, '%'], 0.05),
];

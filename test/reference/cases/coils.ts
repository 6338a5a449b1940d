// Coils and control circuits: limits of operation, ratings, runs and capacitance as standards, notes and tables print them.
import { type PublishedCase, row } from '../support.ts';

const LIMITS = 'IEC 60947-4-1:2018, limits of operation (clause 8.2.1.2 from memory)';
const NEMA_COILS = 'coil ratings of contactors by NEMA size, currents as printed (brand left out)';

export const coils: readonly PublishedCase[] = [
  row('coil-01', LIMITS, 'min(operating_band(100 V))', [85, 'V']),
  row('coil-01', LIMITS, 'max(operating_band(100 V))', [110, 'V']),
  row('coil-02', LIMITS, 'min(dropout_band_ac(100 V))', [20, 'V']),
  row('coil-02', LIMITS, 'max(dropout_band_ac(100 V))', [75, 'V']),
  ...limits('coil-03', 230, [195.5, 253, 172.5, 46]),
  ...limits('coil-04', 24, [20.4, 26.4, 18, 4.8]),
  ...limits('coil-05', 120, [102, 132, 90, 24]),
  ...coil('coil-06', 208, 0.29, 0.07, [60.3, 14.6], 4.1),
  ...coil('coil-07', 120, 1.8, 0.25, [216, 30], 7.2),
  ...coil('coil-08', 208, 2.78, 0.21, [578.2, 43.7], null),
  row('coil-09', 'data sheet of a small IEC contactor (brand left out)', 'inrush_ratio(30 VA, 4.5 VA)', [6.67, '1'], 0.005),
  row(
    'ct-01',
    "transformer makers' selection guides: root of the sum of squares (common practice)",
    'transformer_inrush_rule(30 VA, 40 VA)',
    [50, 'VA'],
  ),
  row('ct-02', 'the same rule, arithmetic', 'transformer_inrush_rule(30 VA, 216 VA)', [218.1, 'VA'], 0.05),
  row(
    'ct-03',
    'the same rule, arithmetic',
    'transformer_inrush_rule(14.6 VA + 30 VA + 43.7 VA + 15 VA, 60.3 VA + 216 VA + 578.2 VA)',
    [860.7, 'VA'],
    0.1,
  ),
  row(
    'ln-01',
    "a maker's note on long control lines, length of both wires together (brand left out)",
    '2 * coil_run_estimate(200 VA, 230 V, 5 %, 1 / (57 m/(ohm·mm²) * 1.5 mm²))',
    [1130.7, 'm'],
    0.5,
  ),
  row(
    'ln-02',
    'the same form, arithmetic',
    '2 * coil_run_estimate(200 VA, 24 V, 5 %, 1 / (57 m/(ohm·mm²) * 1.5 mm²))',
    [12.31, 'm'],
    0.005,
  ),
  {
    id: 'cc-01',
    source: 'an estimation note on control cable length (brand left out)',
    expression: 'hold_in_length(4.5 VA, 110 V, 50 Hz, 0.26 µF/km, hold_in_factor(0.25))',
    expected: [910, 'm'],
    tolerance: 1,
    why: 'its sample line shows a drop-out ratio of 0.3, but the answer belongs to the 0.25 listed beside it',
  },
  row(
    'cc-04',
    "makers' form C = 500 S/U² in µF at 50 Hz: k = 500e-6 · 2π · 50",
    'hold_in_capacitance(4.5 VA, 230 V, 50 Hz, 500e-6 * 2*pi * 50)',
    [0.0425, 'µF'],
    0.00005,
  ),
  row(
    'cc-05',
    "makers' form C = 410 S/U² in µF at 60 Hz: k = 410e-6 · 2π · 60",
    'hold_in_capacitance(4.5 VA, 230 V, 60 Hz, 410e-6 * 2*pi * 60)',
    [0.0349, 'µF'],
    0.00006,
  ),
  row('vf-115', 'volts per hertz, arithmetic (common practice)', 'coil_flux_ratio(115 V, 50 Hz, 115 V, 60 Hz)', [1.2, '1'], 0.005),
  row('vf-err', 'arithmetic: 5/6 is 83.3 %, though 80 % is in print', 'coil_flux_ratio(100 V, 60 Hz, 100 V, 50 Hz)', [83.3, '%'], 0.05),
  row('vf-coil', 'U = 4.44 f N Φ: equal flux (common practice)', 'equal_flux_voltage(110 V, 50 Hz, 60 Hz)', [132, 'V'], 0.5),
];

/** Least and greatest pick-up voltage, greatest and least drop-out voltage of a rated control voltage. */
function limits(id: string, U_s: number, volts: readonly [number, number, number, number]): PublishedCase[] {
  const expressions = [
    `pickup_voltage(${U_s} V)`,
    `max(operating_band(${U_s} V))`,
    `max(dropout_band_ac(${U_s} V))`,
    `min(dropout_band_ac(${U_s} V))`,
  ];
  return expressions.map((expression, i) => ({
    id,
    source: `${LIMITS}, arithmetic`,
    expression,
    expected: [volts[i]!, 'V'],
    tolerance: 0.05,
  }));
}

/** A coil whose currents are printed: its powers give the currents back, and their ratio. */
function coil(
  id: string,
  U: number,
  I_inrush: number,
  I_sealed: number,
  [inrush, sealed]: readonly [number, number],
  ratio: number | null,
): PublishedCase[] {
  const current = (S: number, I: number): PublishedCase => ({
    id,
    source: NEMA_COILS,
    expression: `coil_current(${S} VA, ${U} V)`,
    expected: [I, 'A'],
    tolerance: 0.005,
  });
  const both = [current(inrush, I_inrush), current(sealed, I_sealed)];
  if (ratio === null) return both;
  const expression = `inrush_ratio(${inrush} VA, ${sealed} VA)`;
  return [...both, { id, source: NEMA_COILS, expression, expected: [ratio, '1'], tolerance: 0.05 }];
}

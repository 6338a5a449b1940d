// Winding temperature, insulation resistance and life, as handbooks and manuals print them.
import { type PublishedCase, row } from '../support.ts';

const BIRD = 'J. O. Bird, Electrical Circuit Theory and Technology';
const KOSOW = 'I. Kosow, Electric Machinery and Transformers';
const IEEE_43 = 'IEEE 43, insulation resistance of machines';
const IEC_RISE = 'IEC 60034-1, temperature rise by resistance';
const CLASSES = 'IEC 60085, thermal classes';
const CHART = "an insulation tester's manual, correction chart to 20 °C (brand left out)";

const temperatures: readonly PublishedCase[] = [
  row(
    'wr-01',
    'worked example of the 234.5 rule: 80 and 100 ohm',
    'winding_temperature(80 ohm, 100 ohm, 20 degC, 234.5 K)',
    [83.63, 'degC'],
    0.0051,
  ),
  row(
    'wr-01',
    'worked example of the 234.5 rule: 80 and 100 ohm',
    'winding_rise(80 ohm, 100 ohm, 20 degC, 20 degC, 234.5 K)',
    [63.63, 'K'],
    0.0051,
  ),
  {
    ...row(
      'wr-03',
      'worked example that takes 0.0043 1/K at 20 °C',
      'winding_temperature(50 ohm, 58 ohm, 20 degC, 1 / (0.0043 1/K) - 20 K)',
      [57, 'degC'],
      0.5,
    ),
    why: 'the coefficient of 0 °C at 20 °C: the book is 3.5 K low, and follows here by giving its k',
  },
  row(
    'wr-04',
    `${BIRD}, ch. 3, example 12, p. 28`,
    'winding_temperature(200 ohm, 240 ohm, 18 degC, 1 / (0.0039 1/K) - 18 K)',
    [69.28, 'degC'],
    0.005,
  ),
  row('wr-05', `${IEC_RISE}, superposition with 234.5`, 'winding_temperature(1 ohm, 1.2 ohm, 20 degC, 234.5 K)', [70.9, 'degC'], 0.05),
  row('wr-05', `${IEC_RISE}, superposition with 234.5`, 'winding_rise(1 ohm, 1.2 ohm, 20 degC, 20 degC, 234.5 K)', [50.9, 'K'], 0.05),
  row('wr-06', `${IEC_RISE}, 8.6.2`, 'winding_rise(1 ohm, 1.31 ohm, 25 degC, 30 degC, 235 K)', [75.6, 'K'], 0.05),
  row('wr-07', 'common practice: the 234.5 rule', 'resistance_from_to(0.15 ohm, 25 degC, 110 degC, 234.5 K)', [0.1991, 'ohm'], 5e-5),
];

const classes: readonly PublishedCase[] = [
  row('cls-A', `${CLASSES}; ${KOSOW}, examples 13.3 and 13.5`, 'insulation_limit("A")', [105, 'degC']),
  row('cls-E', `${CLASSES} (from memory)`, 'insulation_limit("E")', [120, 'degC']),
  row('cls-B', `${CLASSES}; ${KOSOW}, examples 13.3 and 13.5`, 'insulation_limit("B")', [130, 'degC']),
  row('cls-F', `${CLASSES}; ${KOSOW}, examples 13.3 and 13.5`, 'insulation_limit("F")', [155, 'degC']),
  row('cls-H', `${CLASSES} (from memory)`, 'insulation_limit("H")', [180, 'degC']),
];

const lives: readonly PublishedCase[] = [
  row('life-01', `${KOSOW}, example 13.1, p. 460`, '10 year * life_halving(125 degC - 105 degC)', [2.5, 'year'], 0.05),
  row('life-01', `${KOSOW}, example 13.1, p. 460`, '1 / life_halving(20 K)', [4, '1'], 0.05),
  row('life-02', `${KOSOW}, example 13.2, p. 460`, '10 year * life_halving(75 degC - 105 degC)', [80, 'year'], 0.5),
  row('life-02', `${KOSOW}, example 13.2, p. 460`, 'life_halving(-30 K)', [8, '1'], 0.5),
  row('life-03', `${KOSOW}, example 13.3, p. 461`, '5 year * life_halving(105 degC - 130 degC)', [28.3, 'year'], 0.05),
  row('life-04', `${KOSOW}, example 13.6, p. 464`, '10 year * life_halving(172 degC - 155 degC)', [3.08, 'year'], 0.005),
];

const insulation: readonly PublishedCase[] = [
  row('irf-10', CHART, 'insulation_halving(1 Mohm, 10 degC, 20 degC)', [0.5, 'Mohm'], 0.005),
  row('irf-20', CHART, 'insulation_halving(1 Mohm, 20 degC, 20 degC)', [1, 'Mohm'], 0.05),
  row('irf-30', CHART, 'insulation_halving(1 Mohm, 30 degC, 20 degC)', [2, 'Mohm'], 0.05),
  row('irf-40', CHART, 'insulation_halving(1 Mohm, 40 degC, 20 degC)', [4, 'Mohm'], 0.05),
  row('ir-03', `${IEEE_43}, halving per 10 K`, 'insulation_at_40c(1 Mohm, 30 degC, "thermoplastic")', [0.5, 'Mohm'], 0.005),
  row('ir-04', `${IEEE_43}, halving per 10 K`, 'insulation_at_40c(50 Mohm, 25 degC, "thermoplastic")', [17.68, 'Mohm'], 0.005),
  row('ir-05', `${IEEE_43}, Table 3 (from memory)`, 'insulation_minimum(0.46 kV, "before 1970")', [1.46, 'Mohm'], 0.005),
  row('ir-05', `${IEEE_43}, Table 3 (from memory)`, 'insulation_minimum(6.6 kV, "form-wound")', [100, 'Mohm']),
  row('ir-05', `${IEEE_43}, Table 3 (from memory)`, 'insulation_minimum(0.46 kV, "random-wound")', [5, 'Mohm']),
  row('pi-01', `${IEEE_43}: ten minutes over one`, 'polarization_index(100 Mohm, 250 Mohm)', [2.5, '1'], 0.05),
  row('pi-02', "a motor analyser's manual, alarm for classes B, F, H (brand left out)", 'polarization_index_minimum("F")', [2, '1']),
  row('dar-01', 'dielectric absorption ratio: one minute over half a minute', 'absorption_ratio(80 Mohm, 100 Mohm)', [1.25, '1'], 0.005),
];

export const windings: readonly PublishedCase[] = [...temperatures, ...classes, ...lives, ...insulation];

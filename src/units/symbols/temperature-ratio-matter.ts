// Temperature points and differences (grammar A1 to A3), plain ratios, amount of substance and light.
import { PLAIN } from '../dimension.ts';
import { type Definition, of, SI_BROCHURE, SP_811 } from './definition.ts';

const temperature = of({ K: 1 });
const pureNumbers = `${SI_BROCHURE}, 5.4.7`;

export const TEMPERATURE_RATIO_MATTER: readonly Definition[] = [
  // U+212A is the kelvin sign, equal to K after normalisation.
  { symbol: 'K', also: ['\u212A'], name: 'kelvin', dimension: temperature, prefixes: 'm µ', source: `${SI_BROCHURE}, Table 2` },
  { symbol: 'degC', also: ['°C', '℃'], name: 'degree Celsius', dimension: temperature, offset: 273.15, source: `${SI_BROCHURE}, Table 4` },
  {
    symbol: 'degF',
    also: ['°F', '℉'],
    name: 'degree Fahrenheit',
    dimension: temperature,
    size: 5 / 9,
    offset: (459.67 * 5) / 9,
    source: SP_811,
  },
  {
    symbol: 'degR',
    also: ['°R'],
    name: 'degree Rankine, a difference of one degree Fahrenheit',
    dimension: temperature,
    size: 5 / 9,
    source: SP_811,
  },
  { symbol: '%', name: 'percent', dimension: PLAIN, size: '0.01', source: pureNumbers },
  { symbol: 'ppm', name: 'part per million', dimension: PLAIN, size: '0.000001', source: pureNumbers },
  { symbol: 'mol', name: 'mole', dimension: of({ mol: 1 }), prefixes: 'k m µ n', source: `${SI_BROCHURE}, Table 2` },
  { symbol: 'cd', name: 'candela', dimension: of({ cd: 1 }), prefixes: 'k m', source: `${SI_BROCHURE}, Table 2` },
];

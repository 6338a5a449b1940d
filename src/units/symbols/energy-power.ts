// Energy, and the three kinds of power (grammar W1).
import { type Definition, of, SI_BROCHURE, SP_811 } from './definition.ts';

const energy = of({ kg: 1, m: 2, s: -2 });
const power = of({ kg: 1, m: 2, s: -3 });
const iec = 'IEC 80000-6';

export const ENERGY_POWER: readonly Definition[] = [
  { symbol: 'J', name: 'joule', dimension: energy, prefixes: 'G M k m µ n', source: `${SI_BROCHURE}, Table 4` },
  { symbol: 'Wh', name: 'watt hour', dimension: energy, size: '3600', prefixes: 'G M k m', source: SP_811 },
  { symbol: 'Btu', also: ['BTU'], name: 'British thermal unit (IT)', dimension: energy, size: '1055.05585262', source: SP_811 },
  { symbol: 'cal_IT', name: 'calorie (IT)', dimension: energy, size: '4.1868', prefixes: 'k', source: SP_811 },
  { symbol: 'cal_th', name: 'calorie (thermochemical)', dimension: energy, size: '4.184', prefixes: 'k', source: SP_811 },
  { symbol: 'erg', name: 'erg', dimension: energy, size: '1e-7', source: SP_811 },
  { symbol: 'W', name: 'watt', dimension: power, power: 'active', prefixes: 'G M k m µ n', source: `${SI_BROCHURE}, Table 4` },
  { symbol: 'VA', name: 'volt ampere', dimension: power, power: 'apparent', prefixes: 'G M k m µ', source: `${iec}, apparent power` },
  { symbol: 'var', name: 'var', dimension: power, power: 'reactive', prefixes: 'G M k m µ', source: `${iec}, reactive power` },
  // 550 · 0.3048 m · 4.448 221 615 260 5 N each second.
  { symbol: 'hp', name: 'horsepower (550 ft·lbf/s)', dimension: power, power: 'active', size: '745.69987158227022', source: SP_811 },
  { symbol: 'hp_electric', name: 'horsepower (electric, 746 W)', dimension: power, power: 'active', size: '746', source: SP_811 },
  { symbol: 'hp_metric', name: 'horsepower (metric)', dimension: power, power: 'active', size: '735.49875', source: SP_811 },
];

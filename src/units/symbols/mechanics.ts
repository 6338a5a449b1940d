// Mass, force, pressure and acceleration.
import { type Definition, of, SI_BROCHURE, SP_811 } from './definition.ts';

const mass = of({ kg: 1 });
const force = of({ kg: 1, m: 1, s: -2 });
const pressure = of({ kg: 1, m: -1, s: -2 });

export const MECHANICS: readonly Definition[] = [
  { symbol: 'g', name: 'gram', dimension: mass, size: '0.001', prefixes: 'k M m µ', source: `${SI_BROCHURE}, Table 2` },
  { symbol: 'tonne', name: 'tonne', dimension: mass, size: '1000', source: `${SI_BROCHURE}, Table 8` },
  { symbol: 'ton_short', name: 'short ton (2000 pounds)', dimension: mass, size: '907.18474', source: SP_811 },
  { symbol: 'lb', name: 'pound', dimension: mass, size: '0.45359237', source: SP_811 },
  { symbol: 'oz', name: 'ounce (avoirdupois)', dimension: mass, size: '0.028349523125', source: SP_811 },
  { symbol: 'N', name: 'newton', dimension: force, prefixes: 'M k da m µ', source: `${SI_BROCHURE}, Table 4` },
  { symbol: 'dyn', name: 'dyne', dimension: force, size: '0.00001', source: SP_811 },
  { symbol: 'kgf', name: 'kilogram-force', dimension: force, size: '9.80665', source: SP_811 },
  { symbol: 'lbf', name: 'pound-force', dimension: force, size: '4.4482216152605', source: SP_811 },
  { symbol: 'ozf', name: 'ounce-force', dimension: force, size: '0.27801385095378125', source: SP_811 },
  { symbol: 'Pa', name: 'pascal', dimension: pressure, prefixes: 'G M k h m µ', source: `${SI_BROCHURE}, Table 4` },
  { symbol: 'bar', name: 'bar', dimension: pressure, size: '100000', prefixes: 'm', source: SP_811 },
  { symbol: 'psi', name: 'pound-force per square inch', dimension: pressure, size: 4.4482216152605 / 0.00064516, source: SP_811 },
  { symbol: 'psf', name: 'pound-force per square foot', dimension: pressure, size: 4.4482216152605 / 0.09290304, source: SP_811 },
  { symbol: 'atm', name: 'standard atmosphere', dimension: pressure, size: '101325', source: SP_811 },
  { symbol: 'Torr', name: 'torr', dimension: pressure, size: 101325 / 760, prefixes: 'm', source: SP_811 },
  { symbol: 'inHg', name: 'inch of mercury (conventional)', dimension: pressure, size: '3386.388640341', source: SP_811 },
  { symbol: 'inH2O', name: 'inch of water (conventional)', dimension: pressure, size: '249.08891', source: SP_811 },
  { symbol: 'g_n', name: 'standard acceleration of free fall', dimension: of({ m: 1, s: -2 }), size: '9.80665', source: SP_811 },
];

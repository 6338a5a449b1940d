// Electricity and magnetism.
import { type Definition, of, SI_BROCHURE, SP_811 } from './definition.ts';

const voltage = of({ kg: 1, m: 2, s: -3, A: -1 });
const resistance = of({ kg: 1, m: 2, s: -3, A: -2 });
const conductance = of({ kg: -1, m: -2, s: 3, A: 2 });
const capacitance = of({ kg: -1, m: -2, s: 4, A: 2 });
const inductance = of({ kg: 1, m: 2, s: -2, A: -2 });
const charge = of({ s: 1, A: 1 });
const flux = of({ kg: 1, m: 2, s: -2, A: -1 });
const fluxDensity = of({ kg: 1, s: -2, A: -1 });
const named = `${SI_BROCHURE}, Table 4`;

export const ELECTRICITY: readonly Definition[] = [
  { symbol: 'A', name: 'ampere', dimension: of({ A: 1 }), prefixes: 'M k m µ n p', source: `${SI_BROCHURE}, Table 2` },
  { symbol: 'V', name: 'volt', dimension: voltage, prefixes: 'M k m µ n', source: named },
  // The Greek capital omega, and the ohm sign U+2126 that some keyboards make.
  { symbol: 'ohm', also: ['\u03A9', '\u2126'], name: 'ohm', dimension: resistance, prefixes: 'T G M k m µ n', source: named },
  { symbol: 'S', name: 'siemens', dimension: conductance, prefixes: 'M k m µ n p', source: named },
  { symbol: 'mho', name: 'mho', dimension: conductance, source: SP_811 },
  { symbol: 'F', name: 'farad', dimension: capacitance, prefixes: 'm µ n p', source: named },
  { symbol: 'H', name: 'henry', dimension: inductance, prefixes: 'k m µ n', source: named },
  { symbol: 'C', name: 'coulomb', dimension: charge, prefixes: 'M k m µ n p', source: named },
  { symbol: 'Ah', name: 'ampere hour', dimension: charge, size: '3600', prefixes: 'k m', source: SP_811 },
  { symbol: 'Wb', name: 'weber', dimension: flux, prefixes: 'm µ n', source: named },
  { symbol: 'T', name: 'tesla', dimension: fluxDensity, prefixes: 'm µ n', source: named },
  { symbol: 'gauss', name: 'gauss', dimension: fluxDensity, size: '0.0001', prefixes: 'k m', source: SP_811 },
  { symbol: 'maxwell', name: 'maxwell', dimension: flux, size: '1e-8', source: SP_811 },
  { symbol: 'oersted', name: 'oersted', dimension: of({ A: 1, m: -1 }), size: 1000 / (4 * Math.PI), source: SP_811 },
  { symbol: 'gilbert', name: 'gilbert', dimension: of({ A: 1 }), size: 10 / (4 * Math.PI), source: SP_811 },
];

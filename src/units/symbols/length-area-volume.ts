// Length, area and volume, with flow of volume.
import { type Definition, of, SI_BROCHURE, SP_811 } from './definition.ts';

const length = of({ m: 1 });
const area = of({ m: 2 });
const volume = of({ m: 3 });
const flow = of({ m: 3, s: -1 });

export const LENGTH_AREA_VOLUME: readonly Definition[] = [
  { symbol: 'm', name: 'metre', dimension: length, prefixes: 'k d c m µ n', source: `${SI_BROCHURE}, Table 2` },
  { symbol: 'in', name: 'inch', dimension: length, size: '0.0254', prefixes: 'µ', source: SP_811 },
  { symbol: 'mil', name: 'mil (0.001 inch)', dimension: length, size: '0.0000254', source: SP_811 },
  { symbol: 'ft', name: 'foot', dimension: length, size: '0.3048', prefixes: 'k', source: SP_811 },
  { symbol: 'ft_survey', name: 'US survey foot', dimension: length, size: 1200 / 3937, source: SP_811 },
  { symbol: 'yd', name: 'yard', dimension: length, size: '0.9144', source: SP_811 },
  { symbol: 'mi', name: 'mile', dimension: length, size: '1609.344', source: SP_811 },
  // The area of a circle one mil across, (π/4)·(25.4 µm)².
  { symbol: 'cmil', name: 'circular mil', dimension: area, size: (Math.PI / 4) * 6.4516e-10, prefixes: 'k', source: SP_811 },
  { symbol: 'L', name: 'litre', dimension: volume, size: '0.001', prefixes: 'h d c m µ', source: `${SI_BROCHURE}, Table 8` },
  { symbol: 'gal', name: 'US gallon', dimension: volume, size: '0.003785411784', source: SP_811 },
  { symbol: 'cfm', name: 'cubic foot per minute', dimension: flow, size: 0.028316846592 / 60, source: SP_811 },
  { symbol: 'gpm', name: 'US gallon per minute', dimension: flow, size: '0.0000630901964', source: SP_811 },
];

// Time, and what is counted in rotation: radians, cycles and turns are told apart (grammar R1 to R3).
import { type Definition, of, SI_BROCHURE, SP_811 } from './definition.ts';

const time = of({ s: 1 });
const accepted = `${SI_BROCHURE}, Table 8`;

export const TIME_ROTATION: readonly Definition[] = [
  { symbol: 's', name: 'second', dimension: time, prefixes: 'm µ n p', source: `${SI_BROCHURE}, Table 2` },
  { symbol: 'min', name: 'minute', dimension: time, size: '60', source: accepted },
  { symbol: 'h', name: 'hour', dimension: time, size: '3600', source: accepted },
  { symbol: 'd', name: 'day', dimension: time, size: '86400', source: accepted },
  { symbol: 'week', name: 'week', dimension: time, size: '604800', source: 'common practice' },
  { symbol: 'month', name: 'month (a twelfth of a year)', dimension: time, size: '2629800', source: 'common practice' },
  { symbol: 'year', name: 'year (365.25 days)', dimension: time, size: '31557600', source: 'IAU Style Manual (1989), Julian year' },
  { symbol: 'rad', name: 'radian', dimension: of({ rad: 1 }), prefixes: 'm µ', source: `${SI_BROCHURE}, Table 4` },
  { symbol: 'deg', also: ['°'], name: 'degree of angle', dimension: of({ rad: 1 }), size: Math.PI / 180, source: accepted },
  { symbol: 'cycle', name: 'cycle', dimension: of({ cycle: 1 }), source: 'common practice' },
  { symbol: 'Hz', name: 'hertz', dimension: of({ cycle: 1, s: -1 }), prefixes: 'G M k m µ', source: `${SI_BROCHURE}, Table 4` },
  { symbol: 'rev', name: 'revolution', dimension: of({ turn: 1 }), source: 'common practice' },
  { symbol: 'rpm', name: 'revolution per minute', dimension: of({ turn: 1, s: -1 }), size: 1 / 60, source: SP_811 },
];

// Conductor tables and wire gauges, value for value: IEC 60228, ASTM B258, NEC chapter 9.
import { type PublishedCase, row } from '../support.ts';

/** `area/mm²`, then the greatest resistance of classes 1, 2 and 5 at 20 °C, ohm/km. */
const METRIC = `
  0.5 36.0 36.0 39.0
  0.75 24.5 24.5 26.0
  1 18.1 18.1 19.5
  1.5 12.1 12.1 13.3
  2.5 7.41 7.41 7.98
  4 4.61 4.61 4.95
  6 3.08 3.08 3.30
  10 1.83 1.83 1.91
  16 1.15 1.15 1.21
  25 0.727 0.727 0.780
  35 0.524 0.524 0.554
  50 0.387 0.387 0.386
  70 0.268 0.268 0.272
  95 0.193 0.193 0.206
  120 0.153 0.153 0.161
  150 0.124 0.124 0.129
  185 0.101 0.0991 0.106
  240 0.0775 0.0754 0.0801
  300 0.0620 0.0601 0.0641
  400 0.0465 0.0470 0.0486
  500 – 0.0366 0.0384
  630 – 0.0283 0.0287
`;

const lines = (table: string): readonly (readonly string[])[] =>
  table
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/));

const metric: readonly PublishedCase[] = lines(METRIC).flatMap(([area, ...values]) =>
  values.flatMap((value, i) => {
    if (value === '–') return [];
    const expression = `resistance_iec_60228(${area} mm², ${[1, 2, 5][i]})`;
    return [row(`iec-${area}mm2`, 'IEC 60228:2004, Tables 1 to 3, plain copper', expression, [Number(value), 'ohm/km'])];
  }),
);

/** `t/°C` and the factor that brings a resistance to 20 °C. */
const FACTORS = '5 1.064  10 1.042  15 1.02  20 1  25 0.98  30 0.962  40 0.926  50 0.893  60 0.862  70 0.833  75 0.82  90 0.781  100 0.758';

const factors: readonly PublishedCase[] = FACTORS.split('  ').map((pair) => {
  const [t, factor] = pair.split(' ') as [string, string];
  return row(`kt-${t}C`, 'IEC 60228:2004, Table A.1', `temperature_factor_iec_60228(${t} degC)`, [Number(factor), '1'], 0.0006);
});

/** `gauge number d/in d/mm`; 4/0 is -3. The millimetres are 25.4 times the rounded inches. */
const GAUGES = `
  4_0 -3 0.46 11.684
  3_0 -2 0.4096 10.4038
  2_0 -1 0.3648 9.2659
  1_0 0 0.3249 8.2525
  1 1 0.2893 7.3482
  2 2 0.2576 6.543
  3 3 0.2294 5.8268
  4 4 0.2043 5.1892
  6 6 0.162 4.1148
  8 8 0.1285 3.2639
  10 10 0.1019 2.5883
  12 12 0.0808 2.0523
  14 14 0.0641 1.6281
  16 16 0.0508 1.2903
  18 18 0.0403 1.0236
  20 20 0.032 0.8128
  22 22 0.0253 0.6438
  24 24 0.0201 0.5105
  26 26 0.0159 0.4039
  28 28 0.0126 0.32
  30 30 0.01 0.254
  36 36 0.005 0.127
`;

const gauges: readonly PublishedCase[] = lines(GAUGES).flatMap(([name, n, inches, millimetres]) => [
  row(`awg-${name}`, 'ASTM B258, diameters', `awg_diameter(${n})`, [Number(inches), 'in'], 6e-5),
  { ...row(`awg-${name}`, 'ASTM B258, diameters', `awg_diameter(${n})`, [Number(millimetres), 'mm'], 0.0016), why: 'from rounded inches' },
]);

/** `gauge number area/cmil`. */
const AREAS = '4_0 -3 211600  1_0 0 105600  2 2 66360  4 4 41740  8 8 16510  10 10 10380  12 12 6530  14 14 4110';

const areas: readonly PublishedCase[] = AREAS.split('  ').flatMap((group) => {
  const [name, n, area] = group.split(' ') as [string, string, string];
  const size = name.replace('_', '/');
  const NEC_8 = 'NFPA 70 (NEC), Chapter 9, Table 8';
  return [
    row(`cm-${name}`, NEC_8, `awg_area(${n})`, [Number(area), 'cmil'], 0.001 * Number(area)),
    row(`cm-${name}`, NEC_8, `(first of nec_chapter_9_table_8 where size is "${size}").area`, [Number(area), 'cmil']),
  ];
});

/** `size stranding R_cu R_al` at 75 °C, ohm/kft. */
const NEC_8 = `
  14 solid 3.07 5.06
  12 solid 1.93 3.18
  10 solid 1.21 2.0
  8 solid 0.764 1.26
  6 stranded 0.491 0.808
  4 stranded 0.308 0.508
  3 stranded 0.245 0.403
  2 stranded 0.194 0.319
  1 stranded 0.154 0.253
  1/0 stranded 0.122 0.201
  2/0 stranded 0.0967 0.159
  3/0 stranded 0.0766 0.126
  4/0 stranded 0.0608 0.1
  250 stranded 0.0515 0.0847
  300 stranded 0.0429 0.0707
  350 stranded 0.0367 0.0605
  400 stranded 0.0321 0.0529
  500 stranded 0.0258 0.0424
`;

const direct: readonly PublishedCase[] = lines(NEC_8).flatMap(([size, stranding, copper, aluminium]) =>
  [`R_cu ${copper}`, `R_al ${aluminium}`].map((pair) => {
    const [column, value] = pair.split(' ') as [string, string];
    const expression = `the ${column} of nec_chapter_9_table_8 where size is "${size}" and stranding is "${stranding}"`;
    return row(`t8-${size!.replace('/', '_')}`, 'NFPA 70 (NEC), Chapter 9, Table 8', expression, [Number(value), 'ohm/kft']);
  }),
);

/** `size X_pvc X_steel R_cu_pvc R_cu_al R_cu_steel` at 75 °C and 60 Hz, ohm/kft; – where copies in circulation disagree. */
const NEC_9 = `
  14 0.058 0.073 3.1 3.1 3.1
  12 0.054 0.068 2.0 2.0 2.0
  10 0.05 0.063 1.2 1.2 1.2
  8 0.052 0.065 0.78 0.78 0.78
  6 0.051 0.064 0.49 0.49 0.49
  4 0.048 0.06 0.31 0.31 0.31
  2 0.045 0.057 0.19 0.2 0.2
  1 0.046 0.057 0.15 0.16 0.16
  1/0 0.044 0.055 0.12 – 0.12
  2/0 0.043 0.054 0.1 0.1 0.1
  3/0 0.042 0.052 0.077 0.082 0.079
  4/0 0.041 0.051 0.062 0.067 0.063
  250 0.041 0.052 0.052 0.057 0.054
  300 0.041 0.051 0.044 0.049 0.045
`;
const COLUMNS = ['X_pvc', 'X_steel', 'R_cu_pvc', 'R_cu_al', 'R_cu_steel'];

const alternating: readonly PublishedCase[] = lines(NEC_9).flatMap(([size, ...values]) =>
  values.flatMap((value, i) => {
    if (value === '–') return [];
    const expression = `the ${COLUMNS[i]} of nec_chapter_9_table_9 where size is "${size}"`;
    return [row(`t9-${size!.replace('/', '_')}`, 'NFPA 70 (NEC), Chapter 9, Table 9', expression, [Number(value), 'ohm/kft'])];
  }),
);

const disputed: PublishedCase = {
  ...row(
    't9-1_0',
    'NFPA 70 (NEC), Chapter 9, Table 9, 0.43 ohm/km',
    'the R_cu_al of nec_chapter_9_table_9 where size is "1/0"',
    [0.43, 'ohm/km'],
    0.005,
  ),
  why: 'one copy prints 0.12 ohm/kft beside this metric value, the others 0.13',
};

export const conductors: readonly PublishedCase[] = [...metric, ...factors, ...gauges, ...areas, ...direct, ...alternating, disputed];

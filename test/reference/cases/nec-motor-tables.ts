// Motor tables of the National Electrical Code, value for value: full-load and locked-rotor currents, code letters.
import type { PublishedCase } from '../support.ts';

const FLC_3PH = `
  flc3-0.5hp 0.5 4.4 2.5 2.4 2.2 1.1 0.9
  flc3-0.75hp 0.75 6.4 3.7 3.5 3.2 1.6 1.3
  flc3-1hp 1 8.4 4.8 4.6 4.2 2.1 1.7
  flc3-1.5hp 1.5 12 6.9 6.6 6 3 2.4
  flc3-2hp 2 13.6 7.8 7.5 6.8 3.4 2.7
  flc3-3hp 3 – 11 10.6 9.6 4.8 3.9
  flc3-5hp 5 – 17.5 16.7 15.2 7.6 6.1
  flc3-7.5hp 7.5 – 25.3 24.2 22 11 9
  flc3-10hp 10 – 32.2 30.8 28 14 11
  flc3-15hp 15 – 48.3 46.2 42 21 17
  flc3-20hp 20 – 62.1 59.4 54 27 22
  flc3-25hp 25 – 78.2 74.8 68 34 27
  flc3-30hp 30 – 92 88 80 40 32
  flc3-40hp 40 – 120 114 104 52 41
  flc3-50hp 50 – 150 143 130 65 52
  flc3-60hp 60 – 177 169 154 77 62
  flc3-75hp 75 – 221 211 192 96 77
  flc3-100hp 100 – 285 273 248 124 99
  flc3-125hp 125 – 359 343 312 156 125
  flc3-150hp 150 – 414 396 360 180 144
  flc3-200hp 200 – 552 528 480 240 192
  flc3-250hp 250 – – – – 302 242
  flc3-300hp 300 – – – – 361 289
  flc3-350hp 350 – – – – 414 336
  flc3-400hp 400 – – – – 477 382
  flc3-450hp 450 – – – – 515 412
  flc3-500hp 500 – – – – 590 472
`;

const FLC_1PH = `
  flc1-1_6hp 0.166667 4.4 2.5 2.4 2.2
  flc1-1_4hp 0.25 5.8 3.3 3.2 2.9
  flc1-1_3hp 0.333333 7.2 4.1 4 3.6
  flc1-1_2hp 0.5 9.8 5.6 5.4 4.9
  flc1-3_4hp 0.75 13.8 7.9 7.6 6.9
  flc1-1hp 1 16 9.2 8.8 8
  flc1-1-1_2hp 1.5 20 11.5 11 10
  flc1-2hp 2 24 13.8 13.2 12
  flc1-3hp 3 34 19.6 18.7 17
  flc1-5hp 5 56 32.2 30.8 28
  flc1-7-1_2hp 7.5 80 46 44 40
  flc1-10hp 10 100 57.5 55 50
`;

const LRC_1PH = `
  lrc1-1_2hp 0.5 58.8 32.5 29.4
  lrc1-3_4hp 0.75 82.8 45.8 41.4
  lrc1-1hp 1 96 53 48
  lrc1-1-1_2hp 1.5 120 66 60
  lrc1-2hp 2 144 80 72
  lrc1-3hp 3 204 113 102
  lrc1-5hp 5 336 186 168
  lrc1-7-1_2hp 7.5 480 265 240
  lrc1-10hp 10 600 332 300
`;

const LRC_3PH = `
  lrc3-1_2hp 0.5 40 23 22.1 20 10 8
  lrc3-3_4hp 0.75 50 28.8 27.6 25 12.5 10
  lrc3-1hp 1 60 34.5 33 30 15 12
  lrc3-1-1_2hp 1.5 80 46 44 40 20 16
  lrc3-2hp 2 100 57.5 55 50 25 20
  lrc3-3hp 3 – 73.6 71 64 32 25.6
  lrc3-5hp 5 – 105.8 102 92 46 36.8
  lrc3-7-1_2hp 7.5 – 146 140 127 63.5 50.8
  lrc3-10hp 10 – 186.3 179 162 81 64.8
  lrc3-15hp 15 – 267 257 232 116 93
  lrc3-20hp 20 – 334 321 290 145 116
  lrc3-25hp 25 – 420 404 365 183 146
  lrc3-30hp 30 – 500 481 435 218 174
  lrc3-40hp 40 – 667 641 580 290 232
  lrc3-50hp 50 – 834 802 725 363 290
  lrc3-60hp 60 – 1001 962 870 435 348
  lrc3-75hp 75 – 1248 1200 1085 543 434
  lrc3-100hp 100 – 1668 1603 1450 725 580
  lrc3-125hp 125 – 2087 2007 1815 908 726
  lrc3-150hp 150 – 2496 2400 2170 1085 868
  lrc3-200hp 200 – 3335 3207 2900 1450 1160
  lrc3-250hp 250 – – – – 1825 1460
  lrc3-300hp 300 – – – – 2200 1760
  lrc3-350hp 350 – – – – 2550 2040
  lrc3-400hp 400 – – – – 2900 2320
  lrc3-450hp 450 – – – – 3250 2600
  lrc3-500hp 500 – – – – 3625 2900
`;

const CODE_LETTERS = `
  code-A 0 3.14
  code-B 3.15 3.54
  code-C 3.55 3.99
  code-D 4 4.49
  code-E 4.5 4.99
  code-F 5 5.59
  code-G 5.6 6.29
  code-H 6.3 7.09
  code-J 7.1 7.99
  code-K 8 8.99
  code-L 9 9.99
  code-M 10 11.19
  code-N 11.2 12.49
  code-P 12.5 13.99
  code-R 14 15.99
  code-S 16 17.99
  code-T 18 19.99
  code-U 20 22.39
  code-V 22.4 –
`;

const THREE_PHASE = [115, 200, 208, 230, 460, 575];

export const necMotorTables: readonly PublishedCase[] = [
  ...currents(FLC_3PH, 'flc_nec_3ph', THREE_PHASE, 'NFPA 70 (NEC) 2008, Table 430.250'),
  ...currents(FLC_1PH, 'flc_nec_1ph', [115, 200, 208, 230], 'NFPA 70 (NEC) 1999, Table 430-148'),
  ...currents(LRC_1PH, 'lrc_nec_1ph', [115, 208, 230], 'NFPA 70 (NEC) 2008, Table 430.251(A)'),
  ...currents(LRC_3PH, 'lrc_nec_3ph', THREE_PHASE, 'NFPA 70 (NEC) 2008, Table 430.251(B)'),
  ...rows(CODE_LETTERS).flatMap(([id = '', from, to]) => codeLetter(id, from, to)),
];

/** Each current of each row; a dash is a place that the table leaves blank, and must be refused. */
function currents(table: string, name: string, voltages: readonly number[], source: string): PublishedCase[] {
  return rows(table).flatMap(([id = '', rating, ...cells]) =>
    cells.map((cell, i) => ({
      id,
      source,
      expression: `${name}(${rating} hp, ${voltages[i]} V)`,
      expected: cell === '–' ? /lists .* only/ : ([Number(cell), 'A'] as const),
    })),
  );
}

/** The band's ends; letter V is open upwards. */
function codeLetter(id: string, from = '', to = ''): PublishedCase[] {
  const letter = id.replace('code-', '');
  const source = 'NFPA 70 (NEC) 2008, Table 430.7(B)';
  const lower: PublishedCase = {
    id,
    source,
    expression: `the S_min of nec_430_7_b where code is "${letter}"`,
    expected: [Number(from), 'kVA/hp'],
  };
  const upper: PublishedCase = {
    id,
    source,
    expression: `locked_rotor_kva(1 hp, "${letter}")`,
    expected: to === '–' ? /open upwards/ : [Number(to), 'kVA'],
  };
  return [lower, upper];
}

function rows(table: string): string[][] {
  return table
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/));
}

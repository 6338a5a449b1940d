// Utilization categories, contact life and heat of bodies, as standards, catalogues and handbooks print them.
import { type PublishedCase, row } from '../support.ts';

const IEC_CATEGORIES = "IEC 60947-4-1, utilization categories, as printed in makers' catalogues (brands left out)";
const CONTACTOR_CATALOGUE = 'contactor catalogue, life with a share of inching, copper contacts (brand left out)';
const LIFE_FACTORS = 'contactor catalogue, factors on AC-4 life for a lower current (brand left out)';

/** `category`, then making/breaking multiples of I_e in the tests of durability and of capacity. */
const CATEGORIES = ['AC-1 1 1 1.5 1.5', 'AC-2 2.5 2.5 4 4', 'AC-3 6 1 10 8', 'AC-4 6 6 12 10'];

const categories: readonly PublishedCase[] = CATEGORIES.flatMap((line) => {
  const [category, ...multiples] = line.split(' ') as [string, ...string[]];
  const [makeLife, breakLife, make, open] = multiples.map(Number) as [number, number, number, number];
  const id = `cat-${category}`;
  return [
    row(id, IEC_CATEGORIES, `making_current("${category}", 100 A, "durability")`, [100 * makeLife, 'A']),
    row(id, IEC_CATEGORIES, `breaking_current("${category}", 100 A, "durability")`, [100 * breakLife, 'A']),
    row(id, IEC_CATEGORIES, `making_current("${category}", 100 A, "capacity")`, [100 * make, 'A']),
    row(id, IEC_CATEGORIES, `breaking_current("${category}", 100 A, "capacity")`, [100 * open, 'A']),
  ];
});

const definitions: readonly PublishedCase[] = [
  row('ac3-cap', IEC_CATEGORIES, 'making_current("AC-3", 1 A, "capacity")', [10, 'A']),
  row('ac3-cap', IEC_CATEGORIES, 'breaking_current("AC-3", 1 A, "capacity")', [8, 'A']),
  row(
    'cat-split',
    IEC_CATEGORIES,
    'the use of utilization_categories where category is "AC-3"',
    'cage motors: starting, switching off running',
  ),
  row('cat-AC-3e', 'IEC 60947-4-1:2018: multiples not seen in print', 'making_current("AC-3e", 100 A, "capacity")', /AC-3e is left out/),
];

/** Share of inching in %, printed life in millions, of contacts that make 1 million AC-3 or 0.01 million AC-4 operations. */
const MIXED = ['0 1 0.2', '20 0.05 0.01', '40 0.03 0.006', '60 0.02 0.006', '80 0.015 0.006'];

const mixed: readonly PublishedCase[] = [
  ...MIXED.map((line) => {
    const [share, life, tolerance] = line.split(' ').map(Number) as [number, number, number];
    return {
      ...row(`mix-${share}`, CONTACTOR_CATALOGUE, `mixed_duty_life(1e6, 1e4, ${share} %) / 1e6`, [life, '1'], tolerance),
      why: 'the printed life is rounded to one digit; the formula is that of another catalogue',
    };
  }),
  row(
    'mix-s',
    'contactor catalogue, life with a share of inching, sintered contacts (brand left out)',
    'mixed_duty_life(1.2e6, 3e4, 10 %) / 1e6',
    [0.25, '1'],
    0.015,
  ),
];

/** How many times smaller the current is than the one of the known life, and the printed factor on the life. */
const FACTORS = ['1 1', '1.5 1.7', '2 2.5', '2.5 3.5', '3 4.5', '4 7', '5 10'];

const lives: readonly PublishedCase[] = [
  ...FACTORS.map((line) => {
    const [ratio, factor] = line.split(' ').map(Number) as [number, number];
    return {
      ...row(
        `lifek-${ratio}`,
        LIFE_FACTORS,
        `electrical_life(60 A / ${ratio}, 60 A, 1, life_exponent(12 A, 10, 60 A, 1))`,
        [factor, '1'],
        0.08 * factor,
      ),
      why: 'one slope through the ends of the printed curve, whose middle it meets within 8 %',
    };
  }),
  ...FACTORS.map((line) => {
    const [ratio, factor] = line.split(' ').map(Number) as [number, number];
    const expression = `life_from_curve([12 A, 15 A, 20 A, 24 A, 30 A, 40 A, 60 A], [10, 7, 4.5, 3.5, 2.5, 1.7, 1], 60 A / ${ratio})`;
    return row(`lifek-${ratio}`, LIFE_FACTORS, expression, [factor, '1'], 0.05);
  }),
  row(
    'loglog-01',
    'common practice: half-way in log I is half-way in log N',
    'life_from_curve([10 A, 100 A], [1e6, 1e4], 31.6228 A)',
    [100000, '1'],
    1,
  ),
  row(
    'loglog-02',
    'common practice: straight line between two points, both axes logarithmic',
    'life_from_curve([9 A, 54 A], [2e6, 2e5], 27 A)',
    [487397, '1'],
    40,
  ),
];

const GUPTA_45 = 'J. B. Gupta, Elements of Electric Drives, example 45, p. 144';

const bodies: readonly PublishedCase[] = [
  row(
    'th-01',
    'J. B. Gupta, Elements of Electric Drives, example 47, p. 145',
    'short_time_load(1 h, thermal_time_constant(20 K, 34 K, 1 h), 1)',
    [2.38, '1'],
    0.005,
  ),
  row('th-05', GUPTA_45, 'final_rise_from_loss(12 hp_metric * (1 / 90 % - 1), 12 W/(m²·K), pi * 0.65 m * 1 m)', [40, 'K'], 0.5),
  row('th-05', GUPTA_45, 'body_time_constant(400 kg, 700 J/(kg·K), 12 W/(m²·K), pi * 0.65 m * 1 m)', [11427, 's'], 1),
];

export const contactors: readonly PublishedCase[] = [...categories, ...definitions, ...mixed, ...lives, ...bodies];

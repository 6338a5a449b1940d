// Millivolt drops, pole heat and contact temperatures, as articles and Holm's law give them.
import { type PublishedCase, row } from '../support.ts';

const HOOK = 'D. Hook, Contact resistance versus millivolt drop, NETA World';
const HOLM_LAW = "Kohlrausch's relation, R. Holm, Electric Contacts, 4th ed.: T_max² = T² + U²/4L, L = 2.44e-8 V²/K²";
const HOLM_TABLE = 'R. Holm, Electric Contacts, 4th ed., table of softening and melting voltages';

const drops: readonly PublishedCase[] = [
  row('mv-A', HOOK, 'drop_to_resistance(88 mV, 400 A)', [220, 'µohm'], 0.5),
  row('mv-A', HOOK, 'pole_loss(88 mV, 400 A)', [35.2, 'W'], 0.05),
  row('mv-B', HOOK, 'drop_to_resistance(86 mV, 400 A)', [215, 'µohm'], 0.5),
  row('mv-B', HOOK, 'pole_loss(86 mV, 400 A)', [34.4, 'W'], 0.05),
  row('mv-C', HOOK, 'drop_to_resistance(97 mV, 400 A)', [242.5, 'µohm'], 0.5),
  row('mv-C', HOOK, 'pole_loss(97 mV, 400 A)', [38.8, 'W'], 0.05),
  row('mv-50', HOOK, 'pole_limit(88 mV / 400 A, 86 mV / 400 A, 97 mV / 400 A) * 400 A', [129, 'mV'], 0.5),
  row('mv-50', HOOK, 'if pole_spread(88 mV / 400 A, 86 mV / 400 A, 97 mV / 400 A) <= 1.5 then "pass" else "fail"', 'pass'),
  row('mv-51', HOOK, 'pole_limit(29 µohm, 23 µohm, 96 µohm)', [34.5, 'µohm'], 0.05),
  row('mv-51', HOOK, 'if 96 µohm <= pole_limit(29 µohm, 23 µohm, 96 µohm) then "pass" else "fail"', 'fail'),
  row(
    'mv-53',
    "a breaker maker's bulletin on contact resistance (brand left out)",
    'pole_limit(130 µohm, 180 µohm, 150 µohm)',
    [195, 'µohm'],
    0.5,
  ),
  row(
    'mv-53',
    "a breaker maker's bulletin on contact resistance (brand left out)",
    'if pole_spread(130 µohm, 180 µohm, 150 µohm) <= 1.5 then "pass" else "fail"',
    'pass',
  ),
  row('pw-01', 'worked example on breaker contacts: 200 µΩ at 1,200 A', 'pole_loss(200 µohm * 1200 A, 1200 A)', [288, 'W'], 0.5),
  row('pw-02', 'the same example with 50 µΩ', 'pole_loss(50 µohm * 1200 A, 1200 A)', [72, 'W'], 0.5),
  row('pw-03', "a small contactor's sheet: 3 mΩ at 20 A (brand left out)", 'contactor_loss(1.2 W, 20 A, 20 A, 1, 0 W)', [1.2, 'W'], 0.05),
  row('pw-03', "a small contactor's sheet: 3 mΩ at 20 A (brand left out)", 'pole_impedance(1.2 W, 20 A)', [3, 'mohm'], 0.05),
];

/** `id U/V T/K T_max/K`. */
const SPOTS = `
  vt-0.01-300 0.01 300 301.7
  vt-0.03-300 0.03 300 315
  vt-0.05-300 0.05 300 340
  vt-0.1-300 0.1 300 438.7
  vt-0.1-293.15 0.1 293.15 434
  vt-0.12-293.15 0.12 293.15 483.2
  vt-0.2-293.15 0.2 293.15 704.1
  vt-0.37-293.15 0.37 293.15 1220.1
  vt-0.43-293.15 0.43 293.15 1407.3
`;

const spots: readonly PublishedCase[] = SPOTS.trim()
  .split('\n')
  .map((line) => {
    const [id, U, T, T_max] = line.trim().split(' ') as [string, string, string, string];
    const expression = `contact_spot_temperature(${U} V, absolute_zero + ${T} K) - absolute_zero`;
    return row(id, HOLM_LAW, expression, [Number(T_max), 'K'], 0.05);
  });

/** `id metal U_soft U_melt`, V; for the last two only the melting voltage was seen in print. */
const METALS = `
  holm-Cu copper 0.12 0.43
  holm-Ag silver 0.09 0.37
  holm-Au gold 0.08 0.43
  holm-Ni nickel 0.22 0.65
  holm-W tungsten 0.6 1.1
  holm-Sn tin 0.07 0.13
  holm-Al aluminium 0.1 0.3
  holm-Fe iron 0.21 0.6
  holm-Pt platinum 0.25 0.71
  holm-Zn zinc 0.1 0.17
  holm-Sn-melt tin – 0.13
  holm-W-melt tungsten – 1.1
`;

const metals: readonly PublishedCase[] = METALS.trim()
  .split('\n')
  .flatMap((line) => {
    const [id, metal, soft, melt] = line.trim().split(' ') as [string, string, string, string];
    const source = soft === '–' ? `${HOLM_TABLE}, melting voltage as quoted` : `${HOLM_TABLE} (from memory)`;
    const melting = row(id, source, `the U_melt of contact_metals where name is "${metal}"`, [Number(melt), 'V']);
    return soft === '–' ? [melting] : [row(id, source, `softening_voltage("${metal}")`, [Number(soft), 'V']), melting];
  });

const voltages: readonly PublishedCase[] = [
  row(
    'um-Cu-softening',
    `${HOLM_LAW}; copper softens at 463 K`,
    'contact_voltage_at(absolute_zero + 463 K, absolute_zero + 300 K)',
    [0.1102, 'V'],
    5e-5,
  ),
  row(
    'um-Cu-melting',
    `${HOLM_LAW}; copper melts at 1356 K`,
    'contact_voltage_at(absolute_zero + 1356 K, absolute_zero + 300 K)',
    [0.4131, 'V'],
    5e-5,
  ),
];

export const contacts: readonly PublishedCase[] = [...drops, ...spots, ...metals, ...voltages];

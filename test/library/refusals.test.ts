// What the library refuses, and the words in which it says what was likely meant.
import assert from 'node:assert/strict';
import { evaluate } from '../reference/support.ts';

const SURVEYS = '[2022-10-04, 2023-10-04, 2024-10-07, 2025-10-06]';

/** An expression and a part of the one error that it gives. */
const REFUSED: readonly (readonly [expression: string, words: string])[] = [
  ['fla_3ph(18.5 kW, 400 V, 92, 0.84)', 'for 92 percent write 92 % or 0.92; found eta = 92'],
  ['fla_3ph(18.5 kW, 400 V, 92 %, 1.2)', 'a power factor is above 0 and at most 1'],
  ['fla_3ph(18.5 kW, 400 V, 92 %, 84)', 'for 84 percent write 84 %'],
  ['fla_3ph(18.5 kW, 0 V, 92 %, 0.84)', 'take it from the plate'],
  ['fla_3ph(18.5, 400 V, 92 %, 0.84)', '`P` of `fla_3ph` wants kW'],
  ['voltage_imbalance(400 V, 0 V, 398 V)', 'at zero a line is missing'],
  ['active_power_3ph(0 V, 34.4 A, 0.84)', 'at zero volts a line is missing'],
  ['coil_current(80 VA, 0 V)', 'the control voltage is above zero'],
  ['voltage_drop_3ph(34.4 A, 0.42 ohm, 0 ohm, 84)', 'for 84 percent write 84 %'],
  ['flc_nec_3ph(27 hp, 480 V)', 'neighbours: 25 hp and 30 hp'],
  ['flc_nec_3ph(18.5 kW, 460 V)', 'rating = 24.81 hp; neighbours: 20 hp and 25 hp'],
  ['flc_nec_3ph(5 hp, 115 V)', 'lists 115 V to 2 hp only'],
  ['flc_nec_3ph(25 hp, 400 V)', 'a motor for 400 V 50 Hz is not in it'],
  ['flc_nec_3ph(0.5 hp, 2300 V)', 'lists 2300 V from 60 hp only'],
  ['flc_nec_1ph(15 hp, 230 V)', 'a motor that large has three phases'],
  ['lrc_nec_3ph(900 hp, 460 V)', 'end at 500 hp'],
  ['load_from_slip(900 rpm, 1460 rpm, 1500 rpm, 400 V, 400 V)', 'another number of poles'],
  ['imbalance_derating(2.58)', 'a percentage is written with its sign'],
  ['imbalance_derating(6 %)', 'not to run the motor'],
  ['category_current(34.4 A, 600, 5 %, 2)', 'not a percentage'],
  ['life_exponent(9 A, 2e5, 54 A, 2e6)', 'the wrong way round'],
  ['drop_to_resistance(12.4, 31 A)', '`U_drop` of `drop_to_resistance` wants V'],
  ['drop_to_resistance(-1 mV, 31 A)', 'swapped leads'],
  ['drop_to_resistance(12.4 V, 31 A)', 'V written where the meter said mV'],
  ['drop_to_resistance(12.4 mV, 0 A)', 'no current, no drop'],
  ['drop_reversed(6.1 mV, 6.0 mV, 20 A)', 'has the other sign'],
  ['drop_at_rated(4 mV, 10 A, 40 A)', 'below half the rated current'],
  ['contact_drop(3 mV, 31 A, 0.15 mohm)', 'the bulk resistance is too high'],
  ['softening_voltage("brass")', 'silver, copper'],
  ['infrared_at_rated(18 K, 10 A, 40 A, 1.8)', 'come back under load'],
  ['drift([2022-10-04, 2023-10-04], [0.40 mohm, 0.41 mohm])', 'at least four surveys'],
  [`time_to_limit(${SURVEYS}, [0.40 mohm, 0.42 mohm, 0.39 mohm, 0.41 mohm], 0.6 mohm)`, 'there is no trend yet'],
  [`time_to_limit(${SURVEYS}, [0.40 mohm, 0.42 mohm, 0.44 mohm, 0.46 mohm], 0.45 mohm)`, 'a date no longer helps'],
  ['making_current("AC-3e", 40 A, "capacity")', 'AC-3e is left out'],
  ['breaking_current("AC-15", 40 A, "capacity")', 'belong to auxiliary contacts'],
  ['breaking_current("AC-3", 40 A, "life")', 'the standard has three tests'],
  ['life_from_curve([10 A, 20 A], [1e6, 5e5], 30 A)', 'outside the points read from the curve'],
  ['years_of_service(1e6, 11 1/h, 6000)', 'such as 6000 h/year'],
  ['ambient_factor(85 degC, 40 degC, 80 degC, 0.5)', 'cool the enclosure'],
  ['altitude_factor(5200 m, [2000 m, 4000 m], [1, 0.9])', 'ask the maker'],
  ['parallel_poles_ac1(5)', 'one to four poles'],
  ['combination_ok(50 kA, 0, 415 V, 18 kA, 2, 400 V)', 'an untested pair has none'],
  ['resistance_at(1 ohm, 20 degC, "iron")', '"copper" and "aluminium"'],
  ['resistance_from_to(1 ohm, 20 degC, 70 degC, 254 K + 20 K)', 'k = 1/alpha - t'],
  ['resistance_iec_60228(3 mm², 5)', 'neighbours: 2.5 mm² and 4 mm²'],
  ['resistance_iec_60228(2.5 mm², 6)', 'the classes are 1 (solid)'],
  ['awg_area(1.5)', 'write 1/0 as 0'],
  ['size_nec_310_16(40 A, 70 degC)', 'the one that the terminals allow'],
  ['smallest_area(34.4 A, 3000 m, 20.6 ohm·mm²/km, 0.08 ohm/km, 0.3, 12 V, 3)', 'no amount of copper helps'],
  ['voltage_drop_exact(24 V, 100 A, 1 ohm, 0 ohm, 1, 1)', 'cannot carry this current'],
  ['adiabatic_area(10 kA, 6 s, 115 A·s^(1/2)/mm²)', 'the formula holds to 5 s'],
  ['overload_limit_nec(34 A, 0.9, 80 K)', '1.0 where the plate shows none'],
  ['branch_device_nec(34 A, "fuse", "squirrel cage")', '"nontime-delay fuse"'],
  ['branch_device_nec(34 A, "time-delay fuse", "cage motor")', 'squirrel cage'],
  ['trip_class_for(20 s, 6, 60 s)', 'no class waits so long'],
  ['trip_class_for(6 s, 6, 15 s)', 'trips too late for the stalled rotor'],
  ['trip_class_for(1 s, 6, 10 s)', 'ask for a faster electronic relay'],
  ['trip_time_thermal(1.1, 0, 280 s, 1.15)', 'the relay never trips'],
  ['short_circuit_i2t(10 kA, 3 ms, 50 Hz, 0.3)', 'let-through'],
  ['insulation_at_40c(100 Mohm, 5 degC, "thermosetting")', 'warm it above the dew point'],
  ['insulation_minimum(400 V, "modern")', '"random-wound"'],
  ['insulation_limit("C")', 'A, E, B, F, H'],
  ['polarization_index(6 Gohm, 9 Gohm)', 'the reading itself is the good news'],
  ['winding_temperature(1 ohm, 1.2 ohm, 20 degC, 254.5 K * 2)', '235 K for copper'],
  ['operations_per_year(220, 16, 120 s)', 'such as 220 d/year'],
  ['weld_detected("auxiliary", yes)', '"mirror"'],
];

describe('the library refuses what makes no sense', () => {
  for (const [expression, words] of REFUSED) {
    it(`${expression}: …${words}…`, () => {
      const { value, errors } = evaluate(`x = ${expression}`);
      assert.equal(value, null);
      assert.equal(errors.length, 1, errors.join('\n'));
      assert.ok(errors[0]!.includes(words), errors[0]);
    });
  }
});

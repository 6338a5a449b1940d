// What physics demands of the library's functions on contacts, contactors, conductors, protection and windings, on random values.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { evaluate } from '../reference/support.ts';

/** A value of the notation that must exist: a number in `unit`, or a text where the unit is `text`. */
function value(expression: string, unit: string): number {
  const { value: found, errors } = evaluate(`x: ${unit} = ${expression}`);
  assert.deepEqual(errors, [], expression);
  assert.ok(typeof found === 'number', expression);
  return found;
}

const holds = (condition: string): void => {
  const { value: found, errors } = evaluate(`x = ${condition}`);
  assert.deepEqual(errors, [], condition);
  assert.equal(found, true, condition);
};

/** Numbers with few digits, written as the notation wants them. */
const between = (from: number, to: number) =>
  fc.integer({ min: 0, max: 1000 }).map((n) => Number((from + ((to - from) * n) / 1000).toPrecision(6)));

const current = between(1, 600);
const pf = between(0.1, 1);
const temperature = between(-40, 150);

function law(title: string, arbitraries: readonly fc.Arbitrary<number>[], check: (...numbers: number[]) => void): void {
  it(title, () => {
    fc.assert(
      fc.property(fc.tuple(...arbitraries), (numbers) => check(...numbers)),
      { numRuns: 30, seed: 20261002 },
    );
  });
}

describe('the physics of contacts', () => {
  law('resistance from a drop gives the drop back', [between(0.1, 200), current], (mV, A) =>
    holds(`drop_to_resistance(${mV} mV, ${A} A) * ${A} A == ${mV} mV`),
  );
  law('heat of a pole is its resistance times the current squared', [between(0.1, 200), current], (mV, A) =>
    holds(`pole_loss(${mV} mV, ${A} A) == drop_to_resistance(${mV} mV, ${A} A) * (${A} A)^2`),
  );
  law('a thermal voltage cancels when the current is reversed', [between(1, 20), between(-0.3, 0.3), current], (mV, offset, A) =>
    holds(`drop_reversed(${mV} mV + ${offset} mV, -${mV} mV + ${offset} mV, ${A} A) == drop_to_resistance(${mV} mV, ${A} A)`),
  );
  law('spot temperature and contact voltage are each other’s inverse', [between(0.01, 0.6), temperature], (V, T) =>
    holds(`abs(contact_voltage_at(contact_spot_temperature(${V} V, ${T} degC), ${T} degC) - ${V} V) <= 1 µV`),
  );
  law('the worst pole is never better than the best', [between(0.1, 2), between(0.1, 2), between(0.1, 2)], (a, b, c) =>
    holds(
      `pole_spread(${a} mohm, ${b} mohm, ${c} mohm) >= 1 and pole_spread(${a} mohm, ${b} mohm, ${c} mohm) == pole_spread(${c} mohm, ${a} mohm, ${b} mohm)`,
    ),
  );
});

describe('the life of contacts', () => {
  law('a mixed duty lasts between all inching and none', [between(0, 1)], (p) => holds(`1e4 <= mixed_duty_life(1e6, 1e4, ${p}) <= 1e6`));
  law('a mixed duty’s current lies between running and inching', [current, between(1, 8), between(0, 1), between(1, 3)], (A, r, p, q) =>
    holds(`${A} A <= category_current(${A} A, ${r}, ${p}, ${q}) <= ${A} A * ${r}`),
  );
  law('current and life of a mixed duty agree on one durability curve', [between(2, 5), between(0.01, 0.99), between(1, 3)], (r, p, q) =>
    holds(
      `abs(electrical_life(category_current(40 A, ${r}, ${p}, ${q}), 40 A, 1e6, ${q}) / mixed_duty_life(1e6, 1e6 * ${r}^(-${q}), ${p}) - 1) <= 1e-9`,
    ),
  );
  law('a warmer place never carries more', [between(-20, 79), between(0.3, 1)], (T, q) =>
    holds(`0 < ambient_factor(${T} degC, 40 degC, 80 degC, ${q}) <= 1`),
  );
});

describe('the physics of conductors', () => {
  it('a conductor at 20 °C has the resistance of its table', () => {
    for (const metal of ['copper', 'aluminium']) holds(`resistance_per_length_at(4.95 ohm/km, 20 degC, "${metal}") == 4.95 ohm/km`);
  });
  law('resistance moved to another temperature and back is the same', [between(0.01, 100), temperature, temperature], (R, a, b) =>
    holds(
      `abs(resistance_from_to(resistance_from_to(${R} ohm, ${a} degC, ${b} degC, 234.5 K), ${b} degC, ${a} degC, 234.5 K) / ${R} ohm - 1) <= 1e-9`,
    ),
  );
  law(
    'winding temperature finds the temperature that made the resistance',
    [between(0.1, 10), between(0, 40), between(41, 150)],
    (R, cold, hot) =>
      holds(
        `abs(winding_temperature(${R} ohm, resistance_from_to(${R} ohm, ${cold} degC, ${hot} degC, 235 K), ${cold} degC, 235 K) - ${hot} degC) <= 1e-6 K`,
      ),
  );
  law('sending voltage and exact drop are each other’s inverse', [current, between(0, 0.1), between(0, 0.1), pf], (A, R, X, cos) => {
    const run = `${A} A, ${R} ohm, ${X} ohm, ${cos}, 3`;
    holds(`abs(sending_voltage(400 V, ${run}) - voltage_drop_exact(sending_voltage(400 V, ${run}), ${run}) - 400 V) <= 1 µV`);
  });
  law('the approximate drop is never more than the exact one', [between(1, 100), between(0, 0.1), between(0, 0.1), pf], (A, R, X, cos) =>
    holds(`voltage_drop_3ph(${A} A, ${R} ohm, ${X} ohm, ${cos}) <= voltage_drop_exact(400 V, ${A} A, ${R} ohm, ${X} ohm, ${cos}, 3)`),
  );
  law('the longest run uses up the drop', [current, between(0.1, 20), between(0, 0.2), pf], (A, r, x, cos) => {
    const run = `largest_run(${A} A, ${r} ohm/km, ${x} ohm/km, ${cos}, 12 V, 3)`;
    holds(`abs(voltage_drop_3ph(${A} A, ${r} ohm/km * ${run}, ${x} ohm/km * ${run}, ${cos}) - 12 V) <= 1 µV`);
  });
  law('the smallest area uses up the drop', [between(1, 60), between(10, 80), pf], (A, L, cos) => {
    const area = `smallest_area(${A} A, ${L} m, 20.6 ohm·mm²/km, 0.08 ohm/km, ${cos}, 12 V, 3)`;
    holds(`abs(voltage_drop_3ph(${A} A, wire_resistance(20.6 ohm·mm²/km, ${L} m, ${area}), 0.08 ohm/km * ${L} m, ${cos}) - 12 V) <= 1 µV`);
  });
  it('gauges shrink by one ratio, and the area of a gauge is that of its circle', () => {
    for (let n = -3; n < 40; n++) holds(`abs((awg_diameter(${n}) / awg_diameter(${n + 1}))^39 - 92) <= 1e-6`);
    assert.ok(Math.abs(value('awg_area(10)', 'mm²') - (Math.PI / 4) * 2.588187 ** 2) < 1e-4);
  });
});

describe('the arithmetic of protection', () => {
  law('a branch device is at least the calculated rating, and a standard one', [between(1, 300)], (A) => {
    const rating = `branch_device_nec(${A} A, "inverse-time breaker", "squirrel cage")`;
    holds(
      `branch_device_limit_nec(${A} A, "inverse-time breaker", "squirrel cage") <= ${rating} and standard_device_nec(${rating}) == ${rating}`,
    );
  });
  law('a short circuit heats more than its alternating part, and at most three times as much', [between(0.2, 5), between(0, 3)], (t, rx) =>
    holds(`(10 kA)^2 * ${t} s <= short_circuit_i2t(10 kA, ${t} s, 50 Hz, ${rx}) <= 3 * (10 kA)^2 * ${t} s`),
  );
  law('a preload shortens the time to trip', [between(2, 10), between(0, 1)], (multiple, preload) =>
    holds(`trip_time_thermal(${multiple}, ${preload}, 280 s, 1.15) <= trip_time_thermal(${multiple}, 0, 280 s, 1.15)`),
  );
  law(
    'the class that is chosen rides through the start and protects the rotor',
    [between(0.5, 1.5), between(4, 8), between(33, 90)],
    (start, ratio, locked) => {
      const row = `(first of trip_classes where class is trip_class_for(${start} s, ${ratio}, ${locked} s))`;
      holds(`${row}.t_min * (7.2 / ${ratio})^2 > ${start} s and ${row}.t_max * (7.2 / ${ratio})^2 < ${locked} s`);
    },
  );
});

describe('windings and safety functions', () => {
  law('insulation at 40 °C is what was read, and a warmer reading stands for more', [between(1, 5000), between(10, 84)], (R, T) => {
    for (const kind of ['thermoplastic', 'thermosetting']) {
      holds(`insulation_at_40c(${R} Mohm, 40 degC, "${kind}") == ${R} Mohm`);
      holds(`insulation_at_40c(${R} Mohm, ${T} degC, "${kind}") < insulation_at_40c(${R} Mohm, ${T} degC + 1 K, "${kind}")`);
    }
  });
  law('the mean time to dangerous failure is ten times the renewal time', [between(1e5, 2e7), between(1, 1e6)], (b, n) =>
    holds(`mttfd_from_b10d(${b}, ${n} 1/year) == 10 * t10d(${b}, ${n} 1/year)`),
  );
  law('two channels last longer than the worse and no longer than the better', [between(3, 100), between(3, 100)], (a, b) =>
    holds(`min(${a} year, ${b} year) <= mttfd_of_two(${a} year, ${b} year) <= max(${a} year, ${b} year)`),
  );
});

// Laws of motors: what goes in comes out, and what a practitioner mistypes is met with the trade's words.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { evaluate } from '../reference/support.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const number = (code: string, unit: string) => evaluate(`x: ${unit} = ${code}`).value as number;
const near = (a: number, b: number) => assert.ok(Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b)), `${a} is not ${b}`);

describe('motors', () => {
  it('give back the shaft power that their current came from', () => {
    fc.assert(
      fc.property(between(0.1, 500), between(100, 1000), between(0.3, 1), between(0.1, 1), (P, U, eta, pf) => {
        near(number(`shaft_power_3ph(${U} V, fla_3ph(${P} kW, ${U} V, ${eta}, ${pf}), ${eta}, ${pf})`, 'kW'), P);
      }),
      { numRuns: 30 },
    );
  });

  it('have powers at right angles', () => {
    fc.assert(
      fc.property(between(10, 1000), between(0.1, 500), between(0, 1), (U, I, pf) => {
        const power = (name: string, unit: string, last = '') => number(`${name}(${U} V, ${I} A${last})`, unit);
        const [P, Q] = [power('active_power_3ph', 'kW', `, ${pf}`), power('reactive_power_3ph', 'kvar', `, ${pf}`)];
        near(Math.hypot(P, Q), power('apparent_power_3ph', 'kVA'));
      }),
      { numRuns: 30 },
    );
  });

  it('turn torque into power and back', () => {
    fc.assert(
      fc.property(between(0.1, 500), between(10, 3600), (P, n) => {
        near(number(`torque_power(shaft_torque(${P} kW, ${n} rpm), ${n} rpm)`, 'kW'), P);
        near(number(`shaft_torque(${P} kW, ${n} rpm)`, 'N·m'), (P * 1000 * 60) / (2 * Math.PI * n));
      }),
      { numRuns: 30 },
    );
  });

  it('know their poles from their plate speed', () => {
    for (const [n, f, poles] of [
      [2950, 50, 2],
      [1455, 50, 4],
      [960, 50, 6],
      [720, 50, 8],
      [3550, 60, 2],
      [1760, 60, 4],
      [1140, 60, 6],
    ]) {
      assert.equal(number(`pole_count(${n} rpm, ${f} Hz)`, '1'), poles);
    }
  });

  it('carry the tolerance of a plate speed into the load', () => {
    const { value, errors } = evaluate('L = load_from_slip(1470 rpm, 1460 rpm, 1500 rpm, 400 V, 400 V)\nx: % = uncertainty_of(L)');
    assert.deepEqual(errors, []);
    near(value as number, (75 * 0.2) / Math.sqrt(3));
  });

  it('find the same end of a heat run from any two readings', () => {
    fc.assert(
      fc.property(between(20, 120), between(10, 200), between(0.3, 2), (end, tau, part) => {
        const rise = (t: number) => end * (1 - Math.exp(-t / tau));
        const [t, dT_1, dT_2] = [tau * part, rise(tau * part), rise(2 * tau * part)];
        assert.ok(Math.abs(number(`final_rise(${dT_1} K, ${dT_2} K)`, 'K') - end) < 1e-6 * end);
        assert.ok(Math.abs(number(`thermal_time_constant(${dT_1} K, ${dT_2} K, ${t} min)`, 'min') - tau) < 1e-6 * tau);
      }),
      { numRuns: 30 },
    );
  });

  const refusals: readonly (readonly [code: string, message: RegExp])[] = [
    ['fla_3ph(18.5 kW, 400 V, 92, 0.84)', /for 92 percent write 92 %/],
    ['fla_3ph(18.5 kW, 400 V, 92 %, 1.2)', /power factor is above 0 and at most 1/],
    ['fla_3ph(18.5 kW, 0 V, 92 %, 0.84)', /above zero/],
    ['synchronous_speed(50 Hz, 3)', /poles come in pairs/],
    ['synchronous_speed(50 Hz, 1)', /not of pole pairs/],
    ['power_factor_3ph(5 kW, 230 V, 8.6 A)', /from line to neutral/],
    ['load_from_current(10 A, 34 A, 400 V, 400 V)', /below half load/],
    ['load_from_slip(1505 rpm, 1460 rpm, 1500 rpm, 400 V, 400 V)', /generates/],
    ['flc_nec_3ph(22 hp, 460 V)', /neighbours: 20 hp and 25 hp/],
    ['flc_nec_3ph(15 kW, 460 V)', /neighbours: 20 hp and 25 hp/],
    ['flc_nec_3ph(600 hp, 460 V)', /end at 500 hp/],
    ['starts_per_hour_nema(22 hp, 4, 50 lb·ft²)', /neighbours: 20 hp and 25 hp/],
    ['flc_nec_3ph(20 hp, 400 V)', /440 to 480 V/],
    ['flc_nec_1ph(5 hp, 277 V)', /220 to 240 V/],
    ['standard_rating_iec(1200 kW)', /ends at 1000 kW/],
    ['locked_rotor_kva(20 hp, "V")', /open upwards/],
    ['locked_rotor_from_ratio(34.4 A, 248)', /not the current/],
    ['autotransformer_line(490 A, 65)', /write 65 %/],
    ['starts_per_hour_nema(25 hp, 8, 50 lb·ft²)', /2, 4 and 6 poles/],
    ['unbalance_factor(400 V, 400 V, 100 V) + unbalance_factor(400 V, 150 V, 150 V)', /close to a triangle/],
    ['imbalance_derating(2)', /2 % for two percent/],
    ['inrush_ratio(10 VA, 80 VA)', /wrong way round/],
    ['coil_run_limit(100 V, 110 V, 18 ohm/km, 0 ohm/km, 80 VA, 0.75, 110 V)', /no run is short enough/],
  ];
  for (const [code, message] of refusals) {
    it(`refuse ${code}`, () => assert.match(evaluate(`x = ${code}`).errors.join('\n'), message));
  }
});

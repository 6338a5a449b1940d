// Laws of starting: energy, impedances and the torque curve, against sums written out here.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { evaluate } from '../reference/support.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const number = (code: string, unit: string) => evaluate(`x: ${unit} = ${code}`).value as number;
const near = (a: number, b: number, tolerance = 1e-9) =>
  assert.ok(Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(b)), `${a} is not ${b}`);
const list = (values: readonly number[], unit: string) => `[${values.map((v) => `${v} ${unit}`).join(', ')}]`;

describe('starting', () => {
  it('takes as long over a curve of constant torques as with mean torques', () => {
    fc.assert(
      fc.property(between(0.1, 50), between(100, 3000), between(50, 500), between(0, 40), (J, n, M, M_load) => {
        const curve = `start_time_curve(${J} kg·m², ${list([0, n / 3, n], 'rpm')}, ${list([M, M, M], 'N·m')}, ${list([M_load, M_load, M_load], 'N·m')})`;
        near(number(curve, 's'), number(`start_time(${J} kg·m², ${n} rpm, ${M} N·m, ${M_load} N·m)`, 's'));
        near(number(curve, 's'), (J * 2 * Math.PI * n) / 60 / (M - M_load));
      }),
      { numRuns: 40 },
    );
  });

  it('says where a start has no end', () => {
    const stalled = 'start_time_curve(3 kg·m², [0 rpm, 500 rpm, 1000 rpm], [200 N·m, 90 N·m, 250 N·m], [20 N·m, 95 N·m, 100 N·m])';
    assert.match(evaluate(`x = ${stalled}`).errors.join(), /stalls/);
    assert.match(evaluate('x = start_time(3 kg·m², 1000 rpm, 90 N·m, 95 N·m)').errors.join(), /does not start/);
  });

  it('dips the supply as two impedances do, the same by power and by ohms', () => {
    fc.assert(
      fc.property(between(10, 900), between(0.1, 0.6), between(0, 20), (I, pf, xr) => {
        const Z = 400 / (Math.sqrt(3) * I);
        const Z_line = 0.02;
        const [R, X] = [Z_line / Math.hypot(1, xr), (Z_line * xr) / Math.hypot(1, xr)];
        const wanted = 1 - Z / Math.hypot(Z * pf + R, Z * Math.sqrt(1 - pf * pf) + X);
        near(number(`start_dip_line(400 V, ${I} A, ${pf}, ${R} ohm, ${X} ohm)`, '1'), wanted, 1e-8);
        near(number(`start_dip(${Math.sqrt(3) * 400 * I} VA, ${400 ** 2 / Z_line} VA, ${pf}, ${xr})`, '1'), wanted, 1e-8);
      }),
      { numRuns: 40 },
    );
  });

  it('balances the currents of an autotransformer', () => {
    fc.assert(
      fc.property(between(0.3, 1), (k) => {
        const at = (name: string) => number(`${name}(100 A, ${k})`, 'A');
        near(at('autotransformer_motor'), at('autotransformer_line') + at('autotransformer_star_point'));
      }),
      { numRuns: 20 },
    );
  });

  it('peaks at the breakdown slip', () => {
    fc.assert(
      fc.property(between(0.05, 0.4), between(0.01, 1), (s_b, s) => {
        near(number(`torque_kloss(100 N·m, ${s_b}, ${s_b})`, 'N·m'), 100);
        assert.ok(number(`torque_kloss(100 N·m, ${s_b}, ${s})`, 'N·m') <= 100 + 1e-9);
      }),
      { numRuns: 20 },
    );
  });

  it('allows fewer starts the heavier the load', () => {
    fc.assert(
      fc.property(between(0.1, 500), between(0.1, 500), (J_1, J_2) => {
        const starts = (J: number) => number(`starts_per_hour_nema(25 hp, 4, ${J} lb·ft²)`, '1/h');
        assert.ok(starts(Math.min(J_1, J_2)) >= starts(Math.max(J_1, J_2)) - 1e-12);
        assert.ok(starts(J_1) <= 8.8 + 1e-12);
      }),
      { numRuns: 20 },
    );
  });

  it('warms a motor in planned starts and running as full load does', () => {
    const [I_s, t_s, I_r, I_n, d, c] = [200, 2.4, 28, 34.4, 0.6, 1 / 3];
    const perHour = number(`starts_per_hour_rms(${I_s} A, ${t_s} s, ${I_r} A, ${I_n} A, ${d}, ${c})`, '1/h');
    const starts = perHour * t_s;
    const heat = starts * I_s ** 2 + d * 3600 * I_r ** 2;
    const shed = I_n ** 2 * (starts + d * 3600 + c * (3600 - d * 3600 - starts));
    near(heat, shed);
  });

  it('gives the letter whose band holds the starting power', () => {
    for (const [perHp, letter] of [
      [3, 'A'],
      [3.2, 'B'],
      [6.29, 'G'],
      [6.3, 'H'],
      [19.34, 'T'],
      [30, 'V'],
    ] as const) {
      const I = (perHp * 1000 * 20) / (Math.sqrt(3) * 460);
      assert.equal(evaluate(`x = code_letter(20 hp, 460 V, ${I} A, 3)`).value, letter);
    }
  });
});

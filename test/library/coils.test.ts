// Laws of coils and control circuits, against complex arithmetic written out here.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { evaluate } from '../reference/support.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const number = (code: string, unit: string) => evaluate(`x: ${unit} = ${code}`).value as number;
const near = (a: number, b: number) => assert.ok(Math.abs(a - b) <= 1e-8 * Math.max(1, Math.abs(b)), `${a} is not ${b}`);

describe('coils and control circuits', () => {
  it('divide the voltage as two impedances do', () => {
    fc.assert(
      fc.property(between(0, 20), between(0, 5), between(10, 400), between(0.1, 1), (R, X, S, pf) => {
        const Z = 110 ** 2 / S;
        const total = Math.hypot(Z * pf + R, Z * Math.sqrt(1 - pf * pf) + X);
        near(number(`coil_voltage(110 V, ${R} ohm, ${X} ohm, ${S} VA, ${pf}, 110 V)`, 'V'), (110 * Z) / total);
      }),
      { numRuns: 40 },
    );
  });

  it('have the asked voltage at the end of the longest run', () => {
    fc.assert(
      fc.property(between(1, 40), between(0, 1), between(10, 400), between(0.1, 1), between(0.5, 0.99), (r, x, S, pf, part) => {
        const L = number(`coil_run_limit(110 V, ${110 * part} V, ${r} ohm/km, ${x} ohm/km, ${S} VA, ${pf}, 110 V)`, 'km');
        const U = number(`coil_voltage(110 V, ${2 * r * L} ohm, ${2 * x * L} ohm, ${S} VA, ${pf}, 110 V)`, 'V');
        near(U, 110 * part);
      }),
      { numRuns: 40 },
    );
  });

  it('ask a transformer for no more than the plain sum, and no less than the difference', () => {
    fc.assert(
      fc.property(between(1, 500), between(0, 1), between(1, 500), between(0, 1), (S_1, pf_1, S_2, pf_2) => {
        const S = number(`transformer_demand([${S_1} VA], [${pf_1}], [${S_2} VA], [${pf_2}])`, 'VA');
        assert.ok(S <= (S_1 + S_2) * (1 + 1e-12) && S >= Math.abs(S_1 - S_2) * (1 - 1e-12), `${S}`);
      }),
      { numRuns: 40 },
    );
  });

  it('find the unloaded voltage at a transformer without load, and less the more is on it', () => {
    near(number('transformer_secondary(115 V, 110 V, 250 VA, 6 %, 2 %, 0 VA, 0.7)', 'V'), 115);
    fc.assert(
      fc.property(between(0, 1000), between(0, 1000), (S_1, S_2) => {
        const at = (S: number) => number(`transformer_secondary(115 V, 110 V, 250 VA, 6 %, 2 %, ${S} VA, 0.7)`, 'V');
        assert.ok(at(Math.min(S_1, S_2)) >= at(Math.max(S_1, S_2)) - 1e-9);
      }),
      { numRuns: 30 },
    );
  });

  it('take the next transformer size, the size itself included', () => {
    const sizes = [50, 100, 160, 250, 400];
    const list = `[${sizes.map((s) => `${s} VA`).join(', ')}]`;
    for (const S of [1, 50, 51, 160, 161, 400]) {
      near(number(`transformer_rating(${S} VA, ${list})`, 'VA'), sizes.find((s) => s >= S)!);
    }
    assert.match(evaluate(`x = transformer_rating(401 VA, ${list})`).errors.join(), /none of the sizes/);
  });

  it('hold in through twice the capacitance at half the power, and a quarter at twice the voltage', () => {
    const C = (S: number, U: number) => number(`hold_in_capacitance(${S} VA, ${U} V, 50 Hz, 0.167)`, 'nF');
    near(C(9, 110), 2 * C(4.5, 110));
    near(C(4.5, 220), C(4.5, 110) / 4);
  });
});

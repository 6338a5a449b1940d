// Laws of balance: what symmetry and the phasor triangle demand of the library's functions.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { evaluate } from '../reference/support.ts';

const near = (a: number, b: number, tolerance = 1e-9) => Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(a), Math.abs(b));
const volts = fc.double({ min: 360, max: 440, noNaN: true });
const number = (code: string) => evaluate(`x: 1 = ${code}`).value as number;

/** |U₂|/|U₁| of a triangle of line voltages, by complex numbers and the law of cosines. */
function phasorTriangle(a: number, b: number, c: number): number {
  const angle = Math.acos((a * a + b * b - c * c) / (2 * a * b));
  const [B_re, B_im] = [-b * Math.cos(angle), b * Math.sin(angle)];
  const [C_re, C_im] = [-a - B_re, -B_im];
  const sequence = (turn: number) => {
    const [re, im] = [-0.5, (turn * Math.sqrt(3)) / 2];
    return Math.hypot(a + re * B_re - im * B_im + re * C_re + im * C_im, re * B_im + im * B_re + re * C_im - im * C_re);
  };
  const [one, other] = [sequence(1), sequence(-1)];
  return Math.min(one, other) / Math.max(one, other);
}

describe('balance of voltages and currents', () => {
  it('finds no imbalance between equal values', () => {
    fc.assert(
      fc.property(volts, (U) => {
        assert.equal(number(`unbalance_factor(${U} V, ${U} V, ${U} V)`), 0);
        assert.ok(number(`voltage_unbalance(${U} V, ${U} V, ${U} V)`) < 1e-15);
        assert.ok(number(`current_imbalance(${U} A, ${U} A, ${U} A)`) < 1e-15);
      }),
      { numRuns: 30 },
    );
  });

  it('does not ask which line is which', () => {
    fc.assert(
      fc.property(volts, volts, volts, (a, b, c) => {
        for (const name of ['voltage_unbalance', 'unbalance_factor']) {
          const one = number(`${name}(${a} V, ${b} V, ${c} V)`);
          assert.ok(near(one, number(`${name}(${c} V, ${a} V, ${b} V)`)));
          assert.ok(near(one, number(`${name}(${b} V, ${a} V, ${c} V)`)));
        }
      }),
      { numRuns: 30 },
    );
  });

  it('gives the ratio of sequences that the phasor triangle has', () => {
    fc.assert(
      fc.property(volts, volts, volts, (a, b, c) => {
        assert.ok(near(number(`unbalance_factor(${a} V, ${b} V, ${c} V)`), phasorTriangle(a, b, c), 1e-8));
      }),
      { numRuns: 60 },
    );
  });

  it('keeps the factor between once and 2/√3 times the imbalance, up to small terms', () => {
    fc.assert(
      fc.property(volts, volts, volts, (a, b, c) => {
        const deviation = number(`voltage_unbalance(${a} V, ${b} V, ${c} V)`);
        const factor = number(`unbalance_factor(${a} V, ${b} V, ${c} V)`);
        assert.ok(factor >= deviation * 0.93 - 1e-12 && factor <= (deviation * 1.08 * 2) / Math.sqrt(3) + 1e-12, `${a} ${b} ${c}`);
      }),
      { numRuns: 60 },
    );
  });

  it('lets a motor give less the greater the imbalance', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true }), (x, y) => {
        const [less, more] = [Math.min(x, y), Math.max(x, y)];
        assert.ok(number(`imbalance_derating(${less} %)`) >= number(`imbalance_derating(${more} %)`) - 1e-12);
      }),
      { numRuns: 30 },
    );
  });

  it('tells supply from motor, whatever the other one adds', () => {
    const share = fc.double({ min: 0, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(share, share, (supply, motor) => {
        const rows = [0, 1, 2].map((line) =>
          [0, 1, 2].map((position) => 50 * (1 + (line === 0 ? supply : 0)) + (position === line ? 50 * motor : 0)),
        );
        const lists = rows.map((row) => `[${row.map((I) => `${I} A`).join(', ')}]`).join(', ');
        const wanted = supply > 2.01 * motor ? 'supply' : motor > 2.01 * supply ? 'motor' : null;
        if (wanted && Math.max(supply, motor) > 0.001) assert.equal(evaluate(`x = imbalance_source(${lists})`).value, wanted);
      }),
      { numRuns: 40 },
    );
  });

  it('carries the limits of a meter through a balanced reading', () => {
    const { errors, value } = evaluate('U = 400 V ± 0.5 %\nx: % = voltage_unbalance(U, U, U)');
    assert.deepEqual(errors, []);
    assert.equal(value, 0);
  });
});

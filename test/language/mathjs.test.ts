// The same expression through mathjs, units and all: another parser, another catalogue, another evaluation.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { all, create } from 'mathjs';
import type { Expression, QuantityLiteral } from '../../src/language/ast.ts';
import { parse } from '../../src/language/parser.ts';
import { evaluated, numberOf } from '../support/answers.ts';
import { NoValue, type Quantity, walkEntry } from '../support/tree-walk.ts';
import { GIVEN, wellTyped } from '../support/well-typed.ts';

const math = create(all!);
const given = new Map(parse(GIVEN).statements.flatMap((s) => (s.kind === 'entry' ? [[s.name.name, s.value] as const] : [])));

const FUNCTION: Readonly<Record<string, string>> = { ln: 'log' };
const UNIT: Readonly<Record<string, string>> = { min: 'minute', h: 'hour', µV: 'uV' };

function literal({ number, unit }: QuantityLiteral): string {
  const parts = unit?.parts.map(({ symbol, power }) => ` * (1 ${UNIT[symbol.symbol] ?? symbol.symbol})^(${power.num}/${power.den})`) ?? [];
  return `(${number}${parts.join('')})`;
}

/** The expression as mathjs writes it, names put in. */
function theirs(node: Expression): string {
  switch (node.kind) {
    case 'quantity':
      return literal(node);
    case 'name':
      return theirs(given.get(node.name)!);
    case 'group':
      return `(${theirs(node.inner)})`;
    case 'negate':
      return `(-${theirs(node.operand)})`;
    case 'squareRoot':
      return `sqrt(${theirs(node.operand)})`;
    case 'sum':
      return node.terms.map(({ sign, operand }, i) => `${i === 0 ? '' : sign < 0 ? ' - ' : ' + '}${theirs(operand)}`).join('');
    case 'product':
      return node.factors.map(({ inverse, operand }, i) => `${i === 0 ? '' : inverse ? ' / ' : ' * '}${theirs(operand)}`).join('');
    case 'power':
      return `(${theirs(node.base)})^(${theirs(node.exponent)})`;
    case 'call':
      return `${FUNCTION[node.callee.name] ?? node.callee.name}(${node.args.map((a) => theirs(a.value)).join(', ')})`;
    default:
      throw new Error(`${node.kind} is not written for mathjs`);
  }
}

/** mathjs's value in coherent SI. */
function valueInSI(text: string): number {
  const value: unknown = math.evaluate(text);
  return value instanceof math.Unit ? Number(value.toSI().toJSON().value) : Number(value);
}

function rightSide(code: string): Expression {
  const [statement] = parse(code).statements;
  assert.ok(statement?.kind === 'entry');
  return statement.value;
}

/** The bound on rounding errors of an expression; null where it has no value. */
function roundingOf(code: string): number | null {
  try {
    return (walkEntry(code, 'x') as Quantity).error;
  } catch (fault) {
    if (fault instanceof NoValue) return null;
    throw fault;
  }
}

describe('a compiled expression', () => {
  it('gives what mathjs gives, to 1e-12', () => {
    let compared = 0;
    fc.assert(
      fc.property(wellTyped(4, true), ({ text }) => {
        const code = `${GIVEN}\nx = ${text}`;
        const rounding = roundingOf(code);
        if (rounding === null) return;
        compared++;
        const fast = numberOf(evaluated(code), 'x');
        const slow = valueInSI(theirs(rightSide(`x = ${text}`)));
        assert.ok(Math.abs(fast - slow) <= Math.max(1e-12 * Math.abs(slow), 8 * rounding), `${text}: ${fast} is not ${slow}`);
      }),
      { numRuns: 600 },
    );
    assert.ok(compared > 350, `${compared} had a value`);
  });

  /** Formulas of the trade in both notations. */
  const check = (ours: string, mathjs: string) =>
    it(`${ours} is ${mathjs}`, () => {
      const slow = valueInSI(mathjs);
      assert.ok(Math.abs(numberOf(evaluated(`x = ${ours}`), 'x') - slow) <= 1e-12 * Math.abs(slow));
    });
  check('18.5 kW / (√3 * 400 V * 92.4 % * 0.84)', '18.5 kW / (sqrt(3) * 400 V * 0.924 * 0.84)');
  check('2*pi*50 Hz*10 mH', '2 * pi * 50 Hz * 10 mH');
  check('1/(2*pi*60 Hz*35 µF)', '1 / (2 * pi * 60 Hz * 35 uF)');
  check('hypot(4 ohm, 3.14 ohm)', 'sqrt((4 ohm)^2 + (3.14 ohm)^2)');
  check('18.5 kW / (2*pi rad * 1475 rpm)', '18.5 kW / (2 * pi * 1475 / (60 s))');
  check('0.5 * 0.2 kg·m² * (2*pi rad * 1475 rpm)^2', '0.5 * 0.2 kg m^2 * (2 * pi * 1475 / (60 s))^2');
  check('(150 A)^2 * 20 ms', '(150 A)^2 * 20 ms');
  check('18.1 ohm/km * 60 m * (1 + 0.00393 1/K * (70 degC - 20 degC))', '18.1 ohm / (1 km) * 60 m * (1 + 0.00393 * 50)');
  check('5 in * 3 ft', '5 inch * 3 ft');
  check('3 W·h / 20 min', '3 W hour / (20 minute)');
});

// The parser, rule by rule: how expressions hang together, and what each statement holds.
import assert from 'node:assert/strict';
import type { QuantityLiteral, Statement } from '../../src/language/ast.ts';
import { parse } from '../../src/language/parser.ts';
import { meaningOf, shape, shapeOf } from '../support/parsing.ts';

function check(rule: string, rows: readonly (readonly [text: string, expected: string])[]): void {
  describe(rule, () => {
    for (const [text, expected] of rows) it(`${text} is ${expected}`, () => assert.equal(shapeOf(text), expected));
  });
}

describe('expressions', () => {
  check('operators bind from `or`, loosest, to the dot, tightest (P1)', [
    ['a or b and not c < d + e * -f^g.h', '{a or {b and {not {c < {d + {e * {-{f ^ g.h}}}}}}}}'],
    ['a + b - c + d', '{a + b - c + d}'],
    ['a - (b - c)', '{a - ({b - c})}'],
    ['a * b / c * d', '{a * b / c * d}'],
    ['a + b * c', '{a + {b * c}}'],
    ['-x^2', '{-{x ^ 2}}'],
    ['2^-3^2', '{2 ^ {-{3 ^ 2}}}'],
    ['2^3^2', '{2 ^ {3 ^ 2}}'],
    ['2^-x', '{2 ^ {-x}}'],
    ['2^-1', '{2 ^ -1}'],
    ['x⁻¹ * (U/2)²', '{{x ^ -1} * {({U / 2}) ^ 2}}'],
    ['√3 * U', '{{√3} * U}'],
    ['√K.x + √f(x) + √(a)', '{{√K.x} + {√f(x)} + {√(a)}}'],
    ['√√x', '{√{√x}}'],
    ['x^√2', '{x ^ {√2}}'],
    ['not not a', '{not {not a}}'],
    ['a and b and c or d', '{{a and b and c} or d}'],
    ['not a == b', '{not {a == b}}'],
    ['a.b.c', 'a.b.c'],
    ['f(x).c', 'f(x).c'],
    ['row.P * runs.from', '{row.P * runs.from}'],
    ['yes or no', '{yes or no}'],
  ]);

  check('a minus belongs to the literal behind it, unless a power follows (L13)', [
    ['-5 degC', '-5 degC'],
    ['- 5 degC', '-5 degC'],
    ['-5^2', '{-{5 ^ 2}}'],
    ['-5²', '{-{5 ^ 2}}'],
    ['-5 m²', '-5 m²'],
    ['-(5 degC)', '{-(5 degC)}'],
    ['(-5)²', '{(-5) ^ 2}'],
    ['a -5 degC', '{a - 5 degC}'],
    ['a - -5 degC', '{a - -5 degC}'],
    ['2 * -5 K', '{2 * -5 K}'],
    ['--5', '{--5}'],
    ['-x', '{-x}'],
    ['-pi', '-pi'],
    ['-5 V ± 1 V', '-5 V ± 1 V'],
  ]);

  check('units and powers of literals (L2, L5, L6)', [
    ['1/2 s', '{1 / 2 s}'],
    ['2 A*K.I_AC3', '{2 A * K.I_AC3}'],
    ['10 W/(a + b)', '{10 W / ({a + b})}'],
    ['5 m^2 + (5 m)^2', '{5 m² + {(5 m) ^ 2}}'],
    ['0.00393 1/K * (T - T_0)', '{0.00393 1/K * ({T - T_0})}'],
    ['2*pi rad*f', '{2 * pi rad * f}'],
    ['5 m ^2', 'power-of-quantity'],
    ['5 m^n', 'power-of-quantity'],
    ['5 ^2', '{5 ^ 2}'],
    ['5^n', '{5 ^ n}'],
  ]);

  check('`if`, choices, look-ups and roots reach as far as they can (P2)', [
    ['if c then a else b + 1', '{if c then a else {b + 1}}'],
    ['if a then b else if c then d else e', '{if a then b else {if c then d else e}}'],
    ['if a then if b then c else d else e', '{if a then {if b then c else d} else e}'],
    ['1 + (if c then a else b)', '{1 + ({if c then a else b})}'],
    ['f(if c then a else b, 2)', 'f({if c then a else b}, 2)'],
    ['[if c then a else b]', '[{if c then a else b}]'],
    ['1 + if c then a else b', 'operand-needs-parentheses'],
    [
      'least I_AC3 of contactors where I_AC3 >= 1.1 * I_n and f == 50 Hz',
      '{least I_AC3 of contactors where {{I_AC3 >= {1.1 * I_n}} and {f == 50 Hz}}}',
    ],
    ['greatest P of motors', '{greatest P of motors}'],
    ['first of contactors where type is "K5"', '{first of contactors where {type is "K5"}}'],
    ['the R of wires where row.A == a', '{the R of wires where {row.A == a}}'],
    ['the from of runs where to is "x"', 'missing-value'],
    ['the from of runs where row.to is "x"', '{the from of runs where {row.to is "x"}}'],
    ['least to of runs', '{least to of runs}'],
    ['(the R of wires where A == a).x', '({the R of wires where {A == a}}).x'],
    ['root of t*t - 4 over t from -10 to 10', '{root of {{t * t} - 4} over t from -10 to 10}'],
    ['root * 2 + root', '{{root * 2} + root}'],
  ]);

  check('comparisons chain one way (P3, P5)', [
    ['0.85*U_s <= U_c <= 1.10*U_s', '{{0.85 * U_s} <= U_c <= {1.10 * U_s}}'],
    ['a < b <= c == d', '{a < b <= c == d}'],
    ['a > b >= c == d', '{a > b >= c == d}'],
    ['a == b == c', '{a == b == c}'],
    ['a < b > c', 'chain-turns'],
    ['a == b < c > d', 'chain-turns'],
    ['a != b != c', 'no-chain'],
    ['a is not "x" and b is "y"', '{{a is not "x"} and {b is "y"}}'],
    ['a is b < c', 'no-chain'],
    ['(a < b) == (c < d)', '{({a < b}) == ({c < d})}'],
  ]);

  check('arguments go by place, then by name (P8)', [
    ['f()', 'f()'],
    ['f (a, -1)', 'f(a, -1)'],
    ['coil_voltage(U_0 = 120 V, R = 5 ohm)', 'coil_voltage(U_0 = 120 V, R = 5 ohm)'],
    ['f(a, k = b == c)', 'f(a, k = {b == c})'],
    ['f(k = 1, a)', 'positional-behind-named'],
    ['f(a b)', 'missing-operator'],
    ['f(a,)', 'missing-value'],
    ['[a, b,]', '[a, b]'],
    ['[[a], [b]]', '[[a], [b]]'],
    ['[]', 'list-empty'],
  ]);

  check('limits stand behind literals (L10)', [
    ['400 V ± 2 %', '400 V ± 2 %'],
    ['400 V +/- 8 V', '400 V ± 8 V'],
    ['12.4 mV ± (1.5 % + 0.5 mV)', '12.4 mV ± 1.5 % + 0.5 mV'],
    ['5 V ± 1 V (k=2)', '5 V ± 1 V k 2'],
    ['5 V ± (1 % + 1 mV) (k = 2.87, nu = 4)', '5 V ± 1 % + 1 mV k 2.87 nu 4'],
    ['5 V ± 1 V (k=2, ν=4)', '5 V ± 1 V k 2 nu 4'],
    ['92 % within 91.3 % to 92.4 %', '92 % within 91.3 % to 92.4 %'],
    ['-5 degC within -6 degC to -4 degC', '-5 degC within -6 degC to -4 degC'],
    ['[5 V ± 1 V, -6 V, 7 V ± 1 %]', '[5 V ± 1 V, -6 V, 7 V ± 1 %]'],
    ['readings [12.1 mV, 12.4 mV] ± 0.1 mV', 'readings [12.1 mV, 12.4 mV] ± 0.1 mV'],
    ['readings [-1 V, 2 V]', 'readings [-1 V, 2 V]'],
    ['readings (U / I)', 'readings ({U / I})'],
    ['readings xs', 'readings xs'],
    ['readings [a, b] ± 1 V', 'readings [a, b] ± 1 V'],
    ['a +- b', '{a + {-b}}'],
    ['e + 10 V ± 1 V', 'uncertain-needs-name'],
    ['f(10 V ± 1 V)', 'uncertain-needs-name'],
    ['a where b', 'unexpected'],
  ]);

  it('has values in coherent SI, right to the bit (L16)', () => {
    const siOf = (text: string): number => {
      const [statement] = parse(`x = ${text}`).statements;
      assert.ok(statement?.kind === 'entry' && statement.value.kind === 'quantity', text);
      return statement.value.value;
    };
    assert.equal(siOf('0.1 kV'), siOf('100 V'));
    assert.equal(siOf('7 %'), 0.07);
    assert.equal(siOf('-5 degC'), 268.15);
    assert.equal(siOf('-40 degF'), siOf('-40 degC'));
    assert.equal(siOf('36 km/h'), 10);
    assert.equal(siOf('pi rad'), Math.PI);
    assert.equal(siOf('-pi'), -Math.PI);
    assert.equal(siOf('1e3 mm²'), 1e-3);
  });

  it('has half-widths as differences, and ends of limits as points', () => {
    const boundsOf = (text: string) => {
      const [statement] = parse(`x = ${text}`).statements;
      assert.ok(statement?.kind === 'entry' && statement.value.kind === 'quantity');
      return (statement.value as QuantityLiteral).bounds!;
    };
    const half = boundsOf('25 degC ± 2 degC');
    assert.ok(half.kind === 'plusminus' && half.parts[0]!.value === 2);
    const percent = boundsOf('400 V ± 2 %');
    assert.ok(percent.kind === 'plusminus' && percent.parts[0]!.value === 0.02 && percent.parts[0]!.unit?.text === '%');
    const ends = boundsOf('25 degC within 24 degC to 27 degC');
    assert.ok(ends.kind === 'within' && ends.from.value === 297.15 && ends.to.value === 300.15);
  });
});

describe('statements', () => {
  const only = <K extends Statement['kind']>(text: string, kind: K): Extract<Statement, { kind: K }> => {
    const { statements, problems } = parse(text);
    assert.deepEqual(problems, [], text);
    assert.equal(statements.length, 1, text);
    assert.equal(statements[0]!.kind, kind);
    return statements[0] as Extract<Statement, { kind: K }>;
  };
  const meaning = (text: string) => (meaningOf(text) as { statements: Record<string, unknown>[] }).statements[0]!;

  it('an entry has a name, a type, a value and clauses in any order', () => {
    const entry = only(
      'I_n: A = P / U because "why"\n  "what it is"\n  with P = 3 kW, U: V = 4 V from calculation "c" with k = 2',
      'entry',
    );
    assert.equal(entry.name.name, 'I_n');
    assert.ok(entry.type?.kind === 'unit' && entry.type.unit.text === 'A');
    assert.equal(shape(entry.value), '{P / U}');
    const { source, because, description, locals, needs } = entry.clauses;
    assert.deepEqual([source?.kind, source?.text.value, because?.value, description?.value], ['calculation', 'c', 'why', 'what it is']);
    assert.deepEqual(
      locals.map((l) => [l.name.name, l.type?.kind ?? null, shape(l.value)]),
      [
        ['P', null, '3 kW'],
        ['U', 'unit', '4 V'],
        ['k', null, '2'],
      ],
    );
    assert.deepEqual(needs, []);
  });

  it('what stands behind a colon is a unit, `1`, a word or a list of one', () => {
    const typeOf = (text: string) => meaning(`x: ${text} = a`)['type'];
    assert.deepEqual(typeOf('W/(m²·K)'), { kind: 'unit', unit: 'W/(m²·K)' });
    assert.deepEqual(typeOf('1'), { kind: 'unit', unit: '' });
    assert.deepEqual(typeOf('1/K'), { kind: 'unit', unit: '1/K' });
    assert.deepEqual(typeOf('text'), { kind: 'text' });
    assert.deepEqual(typeOf('[date]'), { kind: 'list', of: { kind: 'date' } });
    assert.deepEqual(typeOf('[ kW ]'), { kind: 'list', of: { kind: 'unit', unit: 'kW' } });
    assert.deepEqual(typeOf('[1]'), { kind: 'list', of: { kind: 'unit', unit: '' } });
  });

  it('a reading is taken by an instrument on a day', () => {
    const { reading } = only('U_a = 12.4 mV by DMM_7 on 2026-10-02 from measurement "survey"', 'entry');
    assert.deepEqual([reading?.instrument.name, reading?.on?.days], ['DMM_7', 20728]);
    assert.equal(only('U_a = 12.4 mV by DMM_7', 'entry').reading?.on, null);
  });

  it('a computed column has any word for a name', () => {
    const column = only('runs.from: m = 2 * L', 'column');
    assert.deepEqual([column.table.name, column.column.name, shape(column.value)], ['runs', 'from', '{2 * L}']);
  });

  it('a function has parameters with and without types, and needs with their messages', () => {
    const definition = only(
      'f(a: kW, b, c: [ohm], d: any, e: [any]): A = a needs a > 0 kW because "p", b < 1 needs c == d because "q" because "r"',
      'function',
    );
    assert.deepEqual(
      definition.parameters.map((p) => [
        p.name.name,
        p.type === null ? null : p.type.kind === 'list' ? `[${p.type.of.kind}]` : p.type.kind,
      ]),
      [
        ['a', 'unit'],
        ['b', null],
        ['c', '[unit]'],
        ['d', 'any'],
        ['e', '[any]'],
      ],
    );
    assert.deepEqual(
      definition.clauses.needs.map((n) => [shape(n.condition), n.because?.value ?? null]),
      [
        ['{a > 0 kW}', 'p'],
        ['{b < 1}', null],
        ['{c == d}', 'q'],
      ],
    );
    assert.equal(definition.clauses.because?.value, 'r');
    assert.equal(only('now() = 3', 'function').parameters.length, 0);
  });

  it('a requirement has rows, ranges and a concession', () => {
    const requirement = only(
      'should U >= 0.85 * U_n for each motors where P > 3 kW throughout U_0 from 104 V to 115 V, T from -5 degC to 40 degC\n' +
        '  accepted by "plant, A. Person" until 2027-03-31 because "spare on order" because "it matters"',
      'requirement',
    );
    assert.equal(requirement.force, 'should');
    assert.equal(requirement.forEach?.table.name, 'motors');
    assert.equal(shape(requirement.forEach!.where!), '{P > 3 kW}');
    assert.deepEqual(
      requirement.throughout.map((r) => [r.variable.name, shape(r.from), shape(r.to)]),
      [
        ['U_0', '104 V', '115 V'],
        ['T', '-5 degC', '40 degC'],
      ],
    );
    assert.deepEqual([requirement.concession?.by.value, requirement.concession?.because.value], ['plant, A. Person', 'spare on order']);
    assert.equal(requirement.clauses.because?.value, 'it matters');
  });

  it('a curve has traces, marks and limits with their labels, and a description that begins a line', () => {
    const curve = only(
      'curve drop(L): V "drop", 2 * L over L from 1 m to 500 m log\n  "what is shown"\n  mark L_run "this run", 20 m\n  limit 3 V "limit", a * L\n  mark 30 m',
      'curve',
    );
    const items = (list: typeof curve.marks) => list.map((i) => [shape(i.value), i.label?.value ?? null]);
    assert.deepEqual(
      curve.traces.map((t) => [shape(t.value), t.type?.kind ?? null, t.label?.value ?? null]),
      [
        ['drop(L)', 'unit', 'drop'],
        ['{2 * L}', null, null],
      ],
    );
    assert.deepEqual(items(curve.marks), [
      ['L_run', 'this run'],
      ['20 m', null],
      ['30 m', null],
    ]);
    assert.deepEqual(items(curve.limits), [
      ['3 V', 'limit'],
      ['{a * L}', null],
    ]);
    assert.deepEqual([curve.log, curve.over.variable.name, curve.clauses.description?.value], [true, 'L', 'what is shown']);
    assert.equal(only('curve f(L) over L from 0 m to 5 m', 'curve').log, false);
  });

  it('a tabulation has a step', () => {
    const tabulation = only('tabulate drop(L): V "drop", L^2 over L from 0 m to 50 m step 5 m because "why"', 'tabulation');
    assert.deepEqual([tabulation.traces.length, shape(tabulation.step), tabulation.clauses.because?.value], [2, '5 m', 'why']);
  });

  it('an instrument has limits and its calibration', () => {
    const instrument = only('instrument DMM_7 ± (1.5 % + 0.5 mV)   serial "B41"  calibrated 2026-03-01  due 2027-03-01', 'instrument');
    assert.deepEqual(
      [instrument.name.name, instrument.bounds?.kind, instrument.serial?.value, instrument.calibrated?.days, instrument.due?.days],
      ['DMM_7', 'plusminus', 'B41', 20513, 20878],
    );
  });

  it('an action has who and by when', () => {
    const action = only('action "Renew the pole set of K4" by "maintenance" due 2026-12-15', 'action');
    assert.deepEqual([action.text.value, action.by?.value, action.due?.days], ['Renew the pole set of K4', 'maintenance', 20802]);
  });

  it('a use names what it takes, or takes everything', () => {
    const use = only('use "panel-standard.ampwright.md" for a, η', 'use');
    assert.deepEqual([use.path.value, use.names?.map((n) => n.name)], ['panel-standard.ampwright.md', ['a', 'eta']]);
    assert.equal(only('use "x.ampwright.md"', 'use').names, null);
  });

  it('places are offsets in the text of the block', () => {
    const text = '# first\nx = 3 V + y.z\n  from plate "p"\n';
    const [statement] = parse(text).statements;
    assert.ok(statement?.kind === 'entry' && statement.value.kind === 'sum');
    const written = (at: { start: number; end: number }) => text.slice(at.start, at.end);
    const [first, second] = statement.value.terms;
    assert.deepEqual(
      [
        statement.at,
        statement.name.at,
        statement.value.at,
        first!.operand.at,
        second!.operator!,
        second!.operand.at,
        statement.clauses.source!.at,
      ].map(written),
      ['x = 3 V + y.z\n  from plate "p"', 'x', '3 V + y.z', '3 V', '+', 'y.z', 'from plate "p"'],
    );
  });

  it('clauses are told by their first token', () => {
    const text = 'x = 3 V from plate "from" because "b" with a = 1';
    const { tokens, clauseStarts } = parse(text);
    assert.deepEqual(
      clauseStarts.map((i) => text.slice(tokens[i]!.at.start, tokens[i]!.at.end)),
      ['from', 'because', 'with'],
    );
  });
});

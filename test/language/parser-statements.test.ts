// What each statement holds, and where its parts are.
import assert from 'node:assert/strict';
import type { Statement } from '../../src/language/ast.ts';
import { parse } from '../../src/language/parser.ts';
import { meaningOf, shape } from '../support/parsing.ts';

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

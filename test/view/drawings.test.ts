// The drawings: marks of status, the scale of a requirement, plots.
import assert from 'node:assert/strict';
import { gauge } from '../../src/view/gauge.ts';
import { statusMark } from '../../src/view/mark.ts';
import type { GaugeView } from '../../src/view/model.ts';
import { type ElementNode, toHtml } from '../../src/view/node.ts';
import { linearAxis, logAxis, tickText } from '../../src/view/plot/axis.ts';
import { apart } from '../../src/view/plot/labels.ts';
import { descriptionOf, plot } from '../../src/view/plot.ts';
import { rowOf } from '../support/shown.ts';

function all(tree: ElementNode, what: string): ElementNode[] {
  const children = tree.children.filter((c): c is ElementNode => typeof c !== 'string');
  return [...(tree.attributes.class?.split(' ').includes(what) ? [tree] : []), ...children.flatMap((c) => all(c, what))];
}

describe('the marks of status', () => {
  it('differ in shape', () => {
    const shapes = (['holds', 'fails', 'undecided', 'not calculated'] as const).map((s) => JSON.stringify(statusMark(s).children));
    assert.equal(new Set(shapes).size, 4);
  });
});

describe('the scale of a requirement', () => {
  const base: GaugeView = { value: 34.4, limit: 40, width: 0.7, allowed: 'below', fromZero: true, valueText: '34.40 A', limitText: '40 A' };
  const placed = (view: Partial<GaugeView>) => {
    const drawing = gauge({ ...base, ...view });
    const one = (name: string) => all(drawing, name)[0];
    return {
      value: Number(one('aw-gauge-value')!.attributes.points!.split(',')[0]),
      limit: Number(one('aw-gauge-limit')!.attributes.x1),
      band: one('aw-gauge-band'),
      out: one('aw-gauge-out')!,
      broken: one('aw-gauge-break') !== undefined,
      words: drawing.attributes['aria-label'],
    };
  };

  it('has the value on its side of the limit, the forbidden part beyond the limit', () => {
    const below = placed({});
    assert.ok(below.value < below.limit && Number(below.out.attributes.x) === below.limit);
    const above = placed({ value: 97, limit: 93.5, allowed: 'above' });
    assert.ok(above.value > above.limit && Number(above.out.attributes.x) < above.limit);
  });

  it('begins at zero in proportion where that leaves the margin to be seen', () => {
    const { value, limit, broken } = placed({});
    assert.ok(!broken);
    assert.ok(Math.abs((value - 6) / (limit - 6) - 34.4 / 40) < 0.01);
  });

  it('shows the neighbourhood of the limit where zero would hide the margin, and for temperatures', () => {
    assert.ok(placed({ value: 99.9, limit: 100, width: 0 }).broken);
    assert.ok(placed({ fromZero: false }).broken);
  });

  it('has a band as wide as the uncertainty, and none where there is none', () => {
    assert.equal(placed({ width: 0 }).band, undefined);
    const narrow = Number(placed({ width: 1 }).band!.attributes.width);
    const wide = Number(placed({ width: 2 }).band!.attributes.width);
    assert.ok(wide > 1.8 * narrow && wide < 2.2 * narrow);
  });

  it('stays a drawing whatever the numbers are', () => {
    for (const [value, limit] of [
      [0, 0],
      [-5, -4],
      [-5, 5],
      [1e-30, 1e30],
      [-1e300, 1e300],
    ] as const) {
      assert.doesNotMatch(toHtml(gauge({ ...base, value, limit, width: 0 })), /NaN|Infinity/, `${value} ${limit}`);
    }
  });

  it('says in words what it shows', () => {
    assert.equal(placed({}).words, '34.40 A, below the limit 40 A');
  });
});

describe('axes', () => {
  const ticks: readonly (readonly [value: number, step: number, text: string])[] = [
    [0, 100, '0'],
    [300, 100, '300'],
    [0.5, 0.1, '0.5'],
    [-20, 20, '−20'],
    [2e6, 1e6, '2·10⁶'],
    [1e7, 1e7, '10⁷'],
    [2e-5, 1e-5, '2·10⁻⁵'],
    [-0, 1, '0'],
  ];
  for (const [value, step, text] of ticks)
    it(`write ${value} in steps of ${step} as ${text}`, () => assert.equal(tickText(value, step), text));

  it('have readable ticks', () => {
    assert.deepEqual(
      linearAxis(0, 500, 0, 100, 5, true).ticks.map((t) => t.text),
      ['0', '100', '200', '300', '400', '500'],
    );
    assert.deepEqual(
      logAxis(0.1, 100, 0, 300).ticks.flatMap((t) => (t.text === '' ? [] : [t.text])),
      ['0.1', '1', '10', '100'],
    );
    assert.deepEqual(
      logAxis(1, 10, 0, 100).ticks.flatMap((t) => (t.text === '' ? [] : [t.text])),
      ['1', '2', '5', '10'],
    );
  });
});

describe('a plot', () => {
  const row = rowOf(
    'curve',
    'L_run = 60 m\ncurve 110 V - 0.05 V/m * L: V "warm", 110 V - 0.04 V/m * L: V "cold" over L from 0 m to 500 m\n  mark L_run "this run"\n  limit 93.5 V "pick-up"',
  );
  const drawing = plot(row, 640);

  it('has a trace for each curve, told apart by dashes, and its limit and marks', () => {
    assert.equal(all(drawing, 'aw-trace').length, 2);
    assert.equal(all(drawing, 'aw-limit').length, 1);
    assert.equal(all(drawing, 'aw-point').length, 2);
    assert.notEqual(all(drawing, 'aw-trace')[0]!.attributes.class, all(drawing, 'aw-trace')[1]!.attributes.class);
  });

  it('has a title and a description for a reader who does not see it', () => {
    assert.match(toHtml(drawing), /<title>.* over L from 0 m to 500 m<\/title><desc>/);
    assert.equal(
      descriptionOf(row),
      'warm goes from 110 V to 85 V. cold goes from 110 V to 90 V. Limit pick-up from 93.5 V to 93.5 V. this run at 60 m: 107 V, 107.6 V.',
    );
  });

  it('leaves a gap where a curve has no value', () => {
    const points = [0, 1, 2, 3].map((x) => ({ x, y: x === 1 ? null : x }));
    const gap = plot({ ...row, traces: [{ label: '', points }], limits: [], marks: [] }, 640);
    assert.equal(all(gap, 'aw-trace')[0]!.attributes.d!.match(/M/g)!.length, 2);
  });

  it('is drawn without numbers that are none, whatever the points are', () => {
    const cases = [
      [],
      [{ x: 0, y: null }],
      [{ x: 0, y: 5 }],
      [
        { x: 0, y: -1e300 },
        { x: 1, y: 1e300 },
      ],
    ];
    for (const points of cases) {
      assert.doesNotMatch(toHtml(plot({ ...row, traces: [{ label: 'a', points }], limits: [], marks: [] }, 320)), /NaN|Infinity/);
    }
  });

  it('keeps labels apart that would stand on one another', () => {
    const at = apart([{ at: 10 }, { at: 12 }, { at: 60 }]).map((l) => l.at);
    assert.ok(at[1]! - at[0]! >= 14 && at[2] === 60);
  });
});

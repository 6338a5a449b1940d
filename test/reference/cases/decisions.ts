// Requirements decided with a guard band, and what a result says of its own uncertainty, against published examples.
import type { Status } from '../../../src/run/result.ts';
import { GAUGE_BLOCK } from './uncertainty.ts';

const ILAC = 'ILAC-G8:09/2019, guard band w = U; zones pass, conditional pass, conditional fail, fail';
const GUM = 'JCGM 100:2008 (GUM)';

/** A requirement with its decision: what the guide calls conditional is undecided here. */
export interface PublishedDecision {
  readonly id: string;
  readonly source: string;
  readonly code: string;
  readonly status: Status;
}

const zone = (id: string, measured: string, unit: string, status: Status): PublishedDecision => ({
  id,
  source: ILAC,
  code: `y = ${measured}${unit} ± 1${unit} (k=2)\nshall y <= 10${unit}`,
  status,
});

export const decisions: readonly PublishedDecision[] = [
  zone('dec-01', '10', '', 'undecided'),
  zone('dec-02', '9', '', 'holds'),
  zone('dec-03', '9.4', ' µohm', 'undecided'),
  zone('dec-03', '9.0', ' µohm', 'holds'),
  zone('dec-zone-8.9', '8.9', '', 'holds'),
  zone('dec-zone-9.4', '9.4', '', 'undecided'),
  zone('dec-zone-10.5', '10.5', '', 'undecided'),
  zone('dec-zone-11.2', '11.2', '', 'fails'),
  { id: 'dec-06', source: `${ILAC}; TUR 4`, code: 'y = 0.75 ± 0.25 (k=2)\nshall y <= 1', status: 'holds' },
  { id: 'dec-06', source: `${ILAC}; TUR 4`, code: 'y = 0.76 ± 0.25 (k=2)\nshall y <= 1', status: 'undecided' },
];

/** The uncertainty that an entry shows: degrees of freedom, coverage factor, expanded uncertainty in its unit. */
export interface PublishedCoverage {
  readonly id: string;
  readonly source: string;
  readonly code: string;
  readonly entry: string;
  readonly nu: number | null;
  readonly k: readonly [value: number, tolerance: number];
  readonly why: string;
}

export const coverages: readonly PublishedCoverage[] = [
  {
    id: 'gum-h1-3',
    source: `${GUM}, H.1.6: 16.7 degrees of freedom`,
    code: GAUGE_BLOCK,
    entry: 'l',
    nu: 16,
    k: [2.17, 0.005],
    why: 'cut to a whole number (G.4.1); the guide goes on with 99 %, the notation states 95.45 %',
  },
  {
    id: 'gum-g4',
    source: `${GUM}, G.4.1, note 1: 19.0 degrees of freedom, U of 2.2 %`,
    code: 'x_1 = 1 ± 0.25 % (k=1, nu=9)\nx_2 = 1 ± 0.57 % (k=1, nu=4)\nx_3 = 1 ± 0.82 % (k=1, nu=14)\ny = x_1 * x_2 * x_3',
    entry: 'y',
    nu: 18,
    k: [2.2 / 1.03, 0.06],
    why: '18.999 cut to a whole number is 18; the guide rounds',
  },
  {
    id: 'k-2',
    source: `${GUM}, Table G.1: k = 2 for 95.45 % of a normal distribution`,
    code: 'a = 1 V ± 0.1 V (k=1)\ny = a + 1 V',
    entry: 'y',
    nu: null,
    k: [2, 0],
    why: 'without finite degrees of freedom',
  },
];

/** Contributions to the standard uncertainty of the gauge block of H.1, in nm. */
export const gaugeBlockBudget: readonly (readonly [input: string, nanometres: number, tolerance: number])[] = [
  ['l_s', 25, 0.05],
  ['d_theta', 16.599, 0.0005],
  ['d_2', 6.7, 0.05],
  ['d_0', 5.8, 0.05],
  ['d_1', 3.9, 0.05],
  ['d_alpha', 2.887, 0.0005],
];

export const decidedIds: readonly string[] = [...decisions.map((d) => d.id), ...coverages.map((c) => c.id), 'gum-h1-2'];

// Uncertainty of results, through the notation itself: the examples of the GUM, of QUAM and of measurement textbooks.
import { type PublishedCase, row } from '../support.ts';

const GUM = 'JCGM 100:2008 (GUM)';
const QUAM = 'EURACHEM/CITAC, Quantifying Uncertainty in Analytical Measurement, 3rd ed.';
const BELL = 'D. A. Bell, Electronic Instrumentation and Measurements, examples 2-5 and 2-6, p. 25';
const SAWHNEY = 'A. K. Sawhney and P. Sawhney, A Course in Mechanical Measurements and Instrumentation';
const HELFRICK = 'A. D. Helfrick and W. D. Cooper, Modern Electronic Instrumentation and Measurement Techniques, example 1-7, p. 6';

/** One published value with statements before it. */
const given = (statements: string, ...rest: Parameters<typeof row>): PublishedCase => ({ ...row(...rest), given: statements });

const H2 = `
Vs = [5.007 V, 4.994 V, 5.005 V, 4.990 V, 4.999 V]
Is = [19.663 mA, 19.639 mA, 19.640 mA, 19.685 mA, 19.678 mA]
phis = [1.0456 rad, 1.0438 rad, 1.0468 rad, 1.0428 rad, 1.0433 rad]
V = readings Vs
I = readings Is
phi = readings phis
Zs = Vs / Is
Rs = Zs * cos(phis)
Xs = Zs * sin(phis)
R = readings Rs
X = readings Xs
Z = readings Zs
r(a: [any], b: [any]) = sum((a - mean(a)) * (b - mean(b))) / sqrt(sum((a - mean(a))^2) * sum((b - mean(b))^2))
`;

const simultaneous: readonly PublishedCase[] = [
  given(H2, 'gum-h2-1', `${GUM}, H.2, Table H.2`, 'V', [4.999, 'V'], 5e-5),
  given(H2, 'gum-h2-1', `${GUM}, H.2, Table H.2`, 'uncertainty_of(V)', [0.0032, 'V'], 5e-5),
  given(H2, 'gum-h2-1', `${GUM}, H.2, Table H.2`, 'I', [19.661, 'mA'], 5e-5),
  given(H2, 'gum-h2-1', `${GUM}, H.2, Table H.2`, 'uncertainty_of(I)', [0.0095, 'mA'], 5e-5),
  given(H2, 'gum-h2-1', `${GUM}, H.2, Table H.2`, 'phi', [1.04446, 'rad'], 5e-6),
  given(H2, 'gum-h2-1', `${GUM}, H.2, Table H.2`, 'uncertainty_of(phi)', [0.00075, 'rad'], 5e-6),
  given(H2, 'gum-h2-2', `${GUM}, H.2, Table H.2`, 'r(Vs, Is)', [-0.36, '1'], 0.005),
  given(H2, 'gum-h2-2', `${GUM}, H.2, Table H.2`, 'r(Vs, phis)', [0.86, '1'], 0.005),
  given(H2, 'gum-h2-2', `${GUM}, H.2, Table H.2`, 'r(Is, phis)', [-0.65, '1'], 0.005),
  given(H2, 'gum-h2-3', `${GUM}, H.2, Table H.3`, 'R', [127.732, 'ohm'], 0.0005),
  given(H2, 'gum-h2-3', `${GUM}, H.2, Table H.3`, 'uncertainty_of(R)', [0.071, 'ohm'], 0.0005),
  given(H2, 'gum-h2-4', `${GUM}, H.2, Table H.3`, 'X', [219.85, 'ohm'], 0.005),
  given(H2, 'gum-h2-4', `${GUM}, H.2, Table H.3`, 'uncertainty_of(X)', [0.3, 'ohm'], 0.005),
  given(H2, 'gum-h2-5', `${GUM}, H.2, Table H.3`, 'Z', [254.26, 'ohm'], 0.005),
  given(H2, 'gum-h2-5', `${GUM}, H.2, Table H.3`, 'uncertainty_of(Z)', [0.24, 'ohm'], 0.005),
  given(H2, 'gum-h2-6', `${GUM}, H.2, Table H.3`, 'r(Rs, Xs)', [-0.588, '1'], 0.0005),
  given(H2, 'gum-h2-6', `${GUM}, H.2, Table H.3`, 'r(Rs, Zs)', [-0.485, '1'], 0.0005),
  given(H2, 'gum-h2-6', `${GUM}, H.2, Table H.3`, 'r(Xs, Zs)', [0.9925, '1'], 5e-5),
  given(H2, 'gum-h2-7', `${GUM}, H.2.4, second approach (from memory)`, 'R', [127.732, 'ohm'], 0.001),
  given(H2, 'gum-h2-7', `${GUM}, H.2.4, second approach (from memory)`, 'uncertainty_of(R)', [0.071, 'ohm'], 0.0015),
];

/** The gauge block of H.1; lengths in nm, every input with its degrees of freedom. */
export const GAUGE_BLOCK = `
l_s = 50000623 nm ± 25 nm (k=1, nu=18)
d = 215 nm
d_0 = 0 nm ± 5.8 nm (k=1, nu=24)
d_1 = 0 nm ± 3.9 nm (k=1, nu=5)
d_2 = 0 nm ± 6.7 nm (k=1, nu=8)
alpha_s = 11.5e-6 1/K ± 2e-6 1/K
d_alpha = 0 1/K ± 1e-6 1/K (k=1.7320508, nu=50)
d_theta = 0 K ± 0.05 K (k=1.7320508, nu=2)
theta = -0.1 K ± 0.2 K (k=1)
l: nm = l_s + d + d_0 + d_1 + d_2 - l_s * (d_alpha * theta + alpha_s * d_theta)
`;

const gaugeBlock: readonly PublishedCase[] = [
  given(GAUGE_BLOCK, 'gum-h1-1', `${GUM}, H.1`, 'l', [50000838, 'nm'], 0.5),
  given(GAUGE_BLOCK, 'gum-h1-1', `${GUM}, H.1`, 'uncertainty_of(l)', [32, 'nm'], 0.5),
];

const H3 = `
ts = [21.521 degC, 22.012 degC, 22.512 degC, 23.003 degC, 23.507 degC, 23.999 degC, 24.513 degC, 25.002 degC, 25.503 degC, 26.010 degC, 26.511 degC]
bs = [-0.171 K, -0.169 K, -0.166 K, -0.159 K, -0.164 K, -0.165 K, -0.156 K, -0.157 K, -0.159 K, -0.161 K, -0.160 K]
ds = ts - 20 degC
y_1 = fit(ds, bs, 0 K)
y_2 = slope(ds, bs)
b_30 = fit(ds, bs, 10 K)
`;

const line: readonly PublishedCase[] = [
  given(H3, 'gum-h3-1', `${GUM}, H.3, Table H.6`, 'y_1', [-0.1712, 'K'], 5e-5),
  given(H3, 'gum-h3-1', `${GUM}, H.3, Table H.6`, 'uncertainty_of(y_1)', [0.0029, 'K'], 5e-5),
  given(H3, 'gum-h3-1', `${GUM}, H.3, Table H.6`, 'y_2', [0.00218, '1'], 5e-6),
  given(H3, 'gum-h3-1', `${GUM}, H.3, Table H.6`, 'uncertainty_of(y_2)', [0.00067, '1'], 5e-6),
  given(H3, 'gum-h3-1', `${GUM}, H.3, Table H.6`, '-sum(ds) / sqrt(count(ds) * sum(ds^2))', [-0.93, '1'], 0.0005),
  given(H3, 'gum-h3-2', `${GUM}, H.3.4`, 'b_30', [-0.1494, 'K'], 5e-5),
  given(H3, 'gum-h3-2', `${GUM}, H.3.4`, 'uncertainty_of(b_30)', [0.0041, 'K'], 5e-5),
];

const A1 = `
m = 100.28 mg ± 0.05 mg (k=1)
P = 0.9999 ± 0.0001
V_flask = 100 mL ± 0.1 mL (k=2.4494897)
V_rep = 0 mL ± 0.02 mL (k=1)
V_T = 0 mL ± 0.084 mL
V = V_flask + V_rep + V_T
c: mg/L = m * P / V
`;

const A2 = `
m = 0.3888 g
lin_tare = 0 g ± 0.00015 g
lin_gross = 0 g ± 0.00015 g
P = 1.0 ± 0.0005
C = 12.0107 g/mol ± 0.0008 g/mol
H = 1.00794 g/mol ± 0.00007 g/mol
O = 15.9994 g/mol ± 0.0003 g/mol
K = 39.0983 g/mol ± 0.0001 g/mol
V = 18.64 mL
V_cal = 0 mL ± 0.03 mL (k=2.4494897)
V_T = 0 mL ± 0.006 mL (k=1)
rep = 1.0 ± 0.0005 (k=1)
M = 8 * C + 5 * H + 4 * O + K
c: mol/L = rep * (m + lin_tare + lin_gross) * P / (M * (V + V_cal + V_T))
`;

const chemistry: readonly PublishedCase[] = [
  given(A1, 'quam-a1', `${QUAM}, Example A1`, 'c', [1002.7, 'mg/L'], 0.05),
  given(A1, 'quam-a1', `${QUAM}, Example A1`, 'uncertainty_of(c)', [0.835, 'mg/L'], 0.0005),
  given(A1, 'quam-a1b', `${QUAM}, Example A1, budget`, 'c * uncertainty_of(V) / V', [0.6665, 'mg/L'], 5e-5),
  given(A1, 'quam-a1b', `${QUAM}, Example A1, budget`, 'c * uncertainty_of(m) / m', [0.49995, 'mg/L'], 5e-6),
  given(A1, 'quam-a1b', `${QUAM}, Example A1, budget`, 'c * uncertainty_of(P) / P', [0.0579, 'mg/L'], 5e-5),
  given(A2, 'quam-a2', `${QUAM}, Example A2`, 'c', [0.102136, 'mol/L'], 5e-7),
  given(A2, 'quam-a2', `${QUAM}, Example A2`, 'uncertainty_of(c)', [0.0001005, 'mol/L'], 5e-8),
];

const FACTORS = 'x_1 = 1 ± 0.25 % (k=1, nu=9)\nx_2 = 1 ± 0.57 % (k=1, nu=4)\nx_3 = 1 ± 0.82 % (k=1, nu=14)\ny = x_1 * x_2 * x_3';

const shapes: readonly PublishedCase[] = [
  given('a = 1 ± 0.05', 'rect-01', `${GUM}, 4.3.7: half-width over √3`, 'uncertainty_of(a)', [0.02887, '1'], 5e-6),
  given('a = 1 ± 0.1 (k=2.4495)', 'rect-02', `${GUM}, 4.3.9: half-width over √6`, 'uncertainty_of(a)', [0.04082, '1'], 5e-6),
  given('a = 0 K ± 0.5 K (k=1.4142)', 'rect-03', `${GUM}, H.1.3.4: half-width over √2`, 'uncertainty_of(a)', [0.3536, 'K'], 5e-5),
  given(
    'R = 12 mohm ± 0.5 mohm',
    'rect-04',
    'WMO, calibration of platinum thermometers: resolution of 1 mohm',
    'uncertainty_of(R)',
    [0.29, 'mohm'],
    0.005,
  ),
  given('R = 10.000742 ohm ± 129 µohm (k=2.576)', 'gum-res', `${GUM}, 4.3.4 (from memory)`, 'uncertainty_of(R)', [50, 'µohm'], 0.1),
  given('R = 10.000742 ohm ± 129 µohm (k=2.576)', 'gum-res', `${GUM}, 4.3.4 (from memory)`, 'uncertainty_of(R) / R', [5e-6, '1'], 5e-8),
  given(FACTORS, 'gum-g4', `${GUM}, G.4.1, note 1 (from memory)`, 'uncertainty_of(y)', [1.03, '%'], 0.005),
  given('R_s = 1000 ohm ± 0.1 ohm (k=1)\nR = 10 * R_s', 'gum-522', `${GUM}, 5.2.2, example (from memory)`, 'R', [10000, 'ohm'], 0.5),
  given(
    'R_s = 1000 ohm ± 0.1 ohm (k=1)\nR = 10 * R_s',
    'gum-522',
    `${GUM}, 5.2.2, example (from memory)`,
    'uncertainty_of(R)',
    [1, 'ohm'],
    0.005,
  ),
];

const BRANCHES = 'R_1 = 100 ohm ± 0.1 ohm (k=1)\nR_2 = 50 ohm ± 0.03 ohm (k=1)\n';
const BELL_READINGS = 'V = [1.001 V, 1.002 V, 0.999 V, 0.998 V, 1.000 V]\ndV = V - mean(V)';
const SAWHNEY_READINGS =
  'T = [41.7 degC, 42.0 degC, 41.8 degC, 42.0 degC, 42.1 degC, 41.9 degC, 42.0 degC, 41.9 degC, 42.5 degC, 41.8 degC]\ndT = T - mean(T)\ns = readings dT';

const textbooks: readonly PublishedCase[] = [
  given(`${BRANCHES}R = R_1 + R_2`, 'rss-02', `${SAWHNEY}, example 3.39`, 'R', [150, 'ohm'], 0.5),
  given(`${BRANCHES}R = R_1 + R_2`, 'rss-02', `${SAWHNEY}, example 3.39`, 'uncertainty_of(R)', [0.1044, 'ohm'], 5e-5),
  given(`${BRANCHES}R = R_1 * R_2 / (R_1 + R_2)`, 'rss-03', `${SAWHNEY}, example 3.39`, 'R', [33.333, 'ohm'], 0.0005),
  given(`${BRANCHES}R = R_1 * R_2 / (R_1 + R_2)`, 'rss-03', `${SAWHNEY}, example 3.39`, 'uncertainty_of(R)', [0.01736, 'ohm'], 5e-6),
  given(
    'U = 100 V ± 1 % (k=1)\nR = 10 ohm ± 1 % (k=1)\nP = U^2 / R',
    'rss-04',
    `${SAWHNEY}, example 3.41`,
    'uncertainty_of(P) / P',
    [2.236, '%'],
    0.0005,
  ),
  given(
    'U = 100 V ± 1 % (k=1)\nI = 10 A ± 1 % (k=1)\nP = U * I',
    'rss-05',
    `${SAWHNEY}, example 3.41`,
    'uncertainty_of(P) / P',
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: as printed
    [1.414, '%'],
    0.0005,
  ),
  given(
    'U = 100 V ± 12 V (k=1)\nI = 10 A ± 2 A (k=1)\nR = U / I',
    'rss-07',
    `${SAWHNEY}, example 3.35`,
    'uncertainty_of(R)',
    [2.332, 'ohm'],
    0.0005,
  ),
  given(BELL_READINGS, 'lin-07', BELL, 'sum(abs(dV)) / count(V)', [0.0012, 'V'], 5e-5),
  given(BELL_READINGS, 'lin-07', BELL, 'sqrt(sum(dV^2) / count(V))', [0.0014, 'V'], 5e-5),
  given(BELL_READINGS, 'lin-07', BELL, '0.6745 * sqrt(sum(dV^2) / count(V))', [0.94, 'mV'], 0.02),
  given(SAWHNEY_READINGS, 'rss-09', `${SAWHNEY}, example 3.22`, 'mean(T)', [41.97, 'degC'], 0.005),
  given(SAWHNEY_READINGS, 'rss-09', `${SAWHNEY}, example 3.22`, 'sqrt(sum(dT^2) / count(T))', [0.21, 'K'], 0.005),
  given(SAWHNEY_READINGS, 'rss-09', `${SAWHNEY}, example 3.22`, 'uncertainty_of(s) * sqrt(count(T))', [0.221, 'K'], 0.0005),
  given(SAWHNEY_READINGS, 'rss-09', `${SAWHNEY}, example 3.22`, '0.6745 * uncertainty_of(s) * sqrt(count(T))', [0.149, 'K'], 0.0005),
  row('lin-11', HELFRICK, '100 V / 5 mA', [20000, 'ohm'], 0.5),
  row('lin-11', HELFRICK, '1 / (5 mA / 100 V - 1 / (1 kohm/V * 150 V))', [23077, 'ohm'], 0.5),
];

export const uncertainty: readonly PublishedCase[] = [...simultaneous, ...gaugeBlock, ...line, ...chemistry, ...shapes, ...textbooks];

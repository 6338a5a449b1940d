// Coverage factors: Student's t at 95.45 % two-sided, so that k is 2 for infinite degrees of freedom (JCGM 100, G.4 and table G.2).

/** k for 1 to 100 degrees of freedom: the two-sided 95.45 % quantile of the t distribution, to four places. */
const K = [
  13.9678, 4.5266, 3.3068, 2.8693, 2.6487, 2.5165, 2.4288, 2.3664, 2.3198, 2.2837,
  2.2549, 2.2314, 2.2118, 2.1953, 2.1812, 2.1689, 2.1583, 2.1489, 2.1405, 2.1330,
  2.1263, 2.1202, 2.1147, 2.1097, 2.1051, 2.1009, 2.0969, 2.0933, 2.0900, 2.0868,
  2.0839, 2.0812, 2.0787, 2.0763, 2.0740, 2.0719, 2.0699, 2.0680, 2.0662, 2.0645,
  2.0628, 2.0613, 2.0598, 2.0584, 2.0571, 2.0558, 2.0546, 2.0534, 2.0523, 2.0513,
  2.0502, 2.0492, 2.0483, 2.0474, 2.0465, 2.0456, 2.0448, 2.0440, 2.0433, 2.0425,
  2.0418, 2.0411, 2.0405, 2.0398, 2.0392, 2.0386, 2.0380, 2.0374, 2.0369, 2.0364,
  2.0358, 2.0353, 2.0348, 2.0344, 2.0339, 2.0334, 2.0330, 2.0326, 2.0321, 2.0317,
  2.0313, 2.0310, 2.0306, 2.0302, 2.0298, 2.0295, 2.0291, 2.0288, 2.0285, 2.0282,
  2.0278, 2.0275, 2.0272, 2.0269, 2.0267, 2.0264, 2.0261, 2.0258, 2.0256, 2.0253,
]; // biome-ignore format: a table

/** Coverage factor for effective degrees of freedom, cut down to a whole number; null is infinite. At least 1, above 100 it is 2. */
export function coverageFactor(nu: number | null): number {
  if (nu === null || nu > K.length) return 2;
  return K[Math.max(1, nu) - 1]!;
}

// Published values that no function of the library computes, each with the reason.

export const notComputed: Readonly<Record<string, string>> = {
  'hp-06': 'the water horsepower (746.043 W) is no unit of the catalogue: nobody rates a motor in it',
  'sc-02': 'symmetrical components of three phasors need complex numbers; the library works from magnitudes (unbalance_factor)',
  'ct-04': 'a guide value for an unknown inrush power factor, no calculation',
  'ct-05': "a rule for choosing a column of a maker's regulation chart; transformer_secondary works out the voltage instead",
  'cc-03': 'an observation (0.1 µF held a contactor in), no calculation',
  'pf-09': 'the motor of the example is given by its apparent power alone; the missing power factor is in the book only',
  'pf-11': 'a difference of two powers at one apparent power: plain arithmetic',
  'sf-01': 'service factor times rated power: plain arithmetic',
};

// Published conversion factors and temperatures, with the tolerance that their printed digits justify.

/** `number` in `unit` is `expected` in `to`, to within `tolerance` (in `to`; 0 where the publication calls the factor exact). */
export interface PublishedConversion {
  readonly id: string;
  readonly number: string;
  readonly unit: string;
  readonly to: string;
  readonly expected: number;
  readonly tolerance: number;
  readonly source: string;
}

const SP_811 =
  'A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units, NIST SP 811, 2008 edition, Appendix B.8';
const ON_SP_811 = `${SP_811}; arithmetic on its factors and formulas`;
const UCUM = 'G. Schadow and C. J. McDonald, The Unified Code for Units of Measure, version 2.2 (2024)';
const BROCHURE = 'The International System of Units (SI Brochure), 9th edition, BIPM 2019, Table 4';
const PRACTICE = 'common practice: arithmetic on the definitions';

type Row = readonly [id: string, number: string, unit: string, to: string, expected: number, tolerance: number, source: string];

const ROWS: readonly Row[] = [
  ['u-in_to_m', '1', 'in', 'm', 0.0254, 0, SP_811],
  ['u-ft_to_m', '1', 'ft', 'm', 0.3048, 0, SP_811],
  ['u-yd_to_m', '1', 'yd', 'm', 0.9144, 0, SP_811],
  ['u-mi_to_m', '1', 'mi', 'm', 1609.344, 0, SP_811],
  ['u-mil_0_001_in_to_m', '1', 'mil', 'm', 2.54e-5, 0, SP_811],
  ['u-microinch_to_m', '1', 'µin', 'm', 2.54e-8, 0, SP_811],
  ['u-US_survey_foot_to_m', '1', 'ft_survey', 'm', 0.3048006, 1.5e-7, SP_811],
  ['u-in2_to_m2', '1', 'in²', 'm²', 0.00064516, 0, SP_811],
  ['u-cmil_to_m2', '1', 'cmil', 'm²', 5.067075e-10, 2.5e-16, SP_811],
  ['u-cmil_to_mm2', '1', 'cmil', 'mm²', 0.0005067075, 2.5e-10, SP_811],
  ['u-kcmil_to_mm2', '1', 'kcmil', 'mm²', 0.5067075, 2.5e-7, SP_811],
  ['u-in3_to_m3', '1', 'in³', 'm³', 1.638706e-5, 8.2e-12, SP_811],
  ['u-ft3_to_m3', '1', 'ft³', 'm³', 0.02831685, 1.4e-8, SP_811],
  ['u-US_gal_to_m3', '1', 'gal', 'm³', 0.003785412, 1.9e-9, SP_811],
  ['u-US_gal_min_to_L_s', '1', 'gpm', 'L/s', 0.0630902, 3.2e-8, SP_811],
  ['u-ft3_min_CFM_to_m3_s', '1', 'cfm', 'm³/s', 0.0004719474, 2.4e-10, SP_811],
  ['u-ft_min_to_m_s', '1', 'ft/min', 'm/s', 0.00508, 0, SP_811],
  ['u-lb_to_kg', '1', 'lb', 'kg', 0.4535924, 2.3e-7, SP_811],
  ['u-oz_avoirdupois_to_kg', '1', 'oz', 'kg', 0.02834952, 1.4e-8, SP_811],
  ['u-lbf_to_N', '1', 'lbf', 'N', 4.448222, 2.2e-6, SP_811],
  ['u-ozf_to_N', '1', 'ozf', 'N', 0.2780139, 1.4e-7, SP_811],
  ['u-kgf_to_N', '1', 'kgf', 'N', 9.80665, 0, SP_811],
  ['u-dyn_to_N', '1', 'dyn', 'N', 1e-5, 0, SP_811],
  ['u-lbf_in_to_N_m', '1', 'lbf·in', 'N·m', 0.1129848, 5.6e-8, SP_811],
  ['u-ozf_in_to_N_m', '1', 'ozf·in', 'N·m', 0.007061552, 3.5e-9, SP_811],
  ['u-kgf_m_to_N_m', '1', 'kgf·m', 'N·m', 9.80665, 0, SP_811],
  ['u-ft_lbf_to_J', '1', 'ft·lbf', 'J', 1.355818, 6.8e-7, SP_811],
  ['u-lb_ft2_to_kg_m2', '1', 'lb·ft²', 'kg·m²', 0.04214011, 2.1e-8, SP_811],
  ['u-ft_lbf_min_to_W', '1', 'ft·lbf/min', 'W', 0.02259697, 1.1e-8, SP_811],
  ['u-psi_to_Pa', '1', 'psi', 'Pa', 6894.757, 0.0034, SP_811],
  ['u-psf_to_Pa', '1', 'psf', 'Pa', 47.88026, 2.4e-5, SP_811],
  ['u-bar_to_Pa', '1', 'bar', 'Pa', 100000.0, 0, SP_811],
  ['u-atm_to_Pa', '1', 'atm', 'Pa', 101325, 0, SP_811],
  ['u-kgf_cm2_to_Pa', '1', 'kgf/cm²', 'Pa', 98066.5, 0, SP_811],
  ['u-torr_to_Pa', '1', 'Torr', 'Pa', 133.3224, 6.7e-5, SP_811],
  ['u-inHg_conventional_to_Pa', '1', 'inHg', 'Pa', 3386.389, 0.0017, SP_811],
  ['u-inH2O_conventional_to_Pa', '1', 'inH2O', 'Pa', 249.0889, 0.00012, SP_811],
  ['u-Btu_IT_h_to_W', '1', 'Btu/h', 'W', 0.2930711, 1.5e-7, SP_811],
  ['u-Btu_IT_to_J', '1', 'Btu', 'J', 1055.05585262, 0, UCUM],
  ['u-kWh_to_J', '1', 'kWh', 'J', 3600000.0, 0, SP_811],
  ['u-Wh_to_J', '1', 'Wh', 'J', 3600, 0, SP_811],
  ['u-cal_IT_to_J', '1', 'cal_IT', 'J', 4.1868, 0, UCUM],
  ['u-erg_to_J', '1', 'erg', 'J', 1e-7, 0, SP_811],
  ['u-Ah_to_C', '1', 'Ah', 'C', 3600, 0, SP_811],
  ['u-gauss_to_T', '1', 'gauss', 'T', 0.0001, 0, SP_811],
  ['u-maxwell_to_Wb', '1', 'maxwell', 'Wb', 1e-8, 0, SP_811],
  ['u-oersted_to_A_m', '1', 'oersted', 'A/m', 79.57747, 4e-5, SP_811],
  ['u-gilbert_to_A', '1', 'gilbert', 'A', 0.7957747, 4e-7, SP_811],
  ['u-mho_to_S', '1', 'mho', 'S', 1, 0, SP_811],
  ['u-ohm_cmil_ft_to_ohm_m', '1', 'ohm·cmil/ft', 'ohm·m', 1.662426e-9, 8.3e-16, SP_811],
  ['u-min_to_s', '1', 'min', 's', 60, 0, SP_811],
  ['u-h_to_s', '1', 'h', 's', 3600, 0, SP_811],
  ['u-deg_to_rad', '1', 'deg', 'rad', 0.01745329, 8.7e-9, SP_811],
  ['u-W_in2_to_W_m2', '1', 'W/in²', 'W/m²', 1550.003, 0.00078, SP_811],
  ['u-oz_in2_to_kg_m2', '1', 'oz/in²', 'kg/m²', 43.94185, 2.2e-5, SP_811],
  ['u-1_rpm_to_rad_s', '1', 'rpm', 'rad/s', 0.1047198, 1e-7, ON_SP_811],
  ['u-1_rev_s_to_rpm', '1', 'rev/s', 'rpm', 60.0, 0, PRACTICE],
  ['u-1_ohm_kft_to_ohm_km', '1', 'ohm/kft', 'ohm/km', 3.28084, 3.3e-6, PRACTICE],
  ['u-1_hp_electric_to_kW', '1', 'hp_electric', 'kW', 0.746, 7.5e-7, ON_SP_811],
  ['u-1_kW_to_hp_550_ft_lbf_s', '1', 'kW', 'hp', 1.341022, 1.3e-6, SP_811],
  ['u-1_kW_to_hp_electric', '1', 'kW', 'hp_electric', 1.340483, 1.3e-6, SP_811],
  ['u-1_m2_to_cmil', '1', 'm²', 'cmil', 1973525000.0, 2000.0, ON_SP_811],
  ['u-1_var_to_W', '1', 'var', 'W', 1.0, 0, PRACTICE],
  ['u-1_N_m_to_lbf_ft', '1', 'N·m', 'lbf·ft', 0.7375621, 7.4e-7, ON_SP_811],
  ['u-1_N_m_to_lbf_in', '1', 'N·m', 'lbf·in', 8.850746, 8.9e-6, ON_SP_811],
  ['u-1_hp_metric_to_hp_electric', '1', 'hp_metric', 'hp_electric', 0.9859233, 9.9e-7, ON_SP_811],
  ['u-1_Wb_to_V_s', '1', 'Wb', 'V·s', 1.0, 0, BROCHURE],
  ['u-1_T_to_Wb_m2', '1', 'T', 'Wb/m²', 1.0, 0, BROCHURE],
  ['u-1_H_to_Wb_A', '1', 'H', 'Wb/A', 1.0, 0, BROCHURE],
  ['temp-pt-1', '40', 'degF', 'degC', 4.4444, 6e-5, ON_SP_811],
  ['temp-pt-2', '104', 'degF', 'degC', 40, 6e-5, ON_SP_811],
  ['temp-pt-3', '-40', 'degF', 'degC', -40, 6e-5, ON_SP_811],
  ['temp-pt-4', '212', 'degF', 'degC', 100, 6e-5, ON_SP_811],
  ['temp-pt-5', '167', 'degF', 'degC', 75, 6e-5, ON_SP_811],
  ['temp-pt-6', '25', 'degC', 'degF', 77, 6e-5, ON_SP_811],
  ['temp-pt-7', '0', 'degC', 'K', 273.15, 6e-5, ON_SP_811],
  ['temp-pt-8', '20', 'degC', 'K', 293.15, 6e-5, ON_SP_811],
  ['temp-pt-9', '75', 'degC', 'K', 348.15, 6e-5, ON_SP_811],
  ['temp-df-1', '10', 'K', 'degR', 18, 1e-9, ON_SP_811],
  ['temp-df-2', '18', 'degR', 'K', 10, 1e-9, ON_SP_811],
  ['temp-df-3', '80', 'K', 'degR', 144, 1e-9, ON_SP_811],
  ['temp-df-4', '105', 'K', 'degR', 189, 1e-9, ON_SP_811],
  ['temp-df-5', '1', 'degR', 'K', 0.5555556, 6e-8, ON_SP_811],
];

/** The published conversions under their ids. */
export const PUBLISHED_CONVERSIONS: readonly PublishedConversion[] = ROWS.map(([id, number, unit, to, expected, tolerance, source]) => ({
  id,
  number,
  unit,
  to,
  expected,
  tolerance,
  source,
}));

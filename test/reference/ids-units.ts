// Names of the published values on units and temperatures.

const NAMES = `
  u-in_to_m u-ft_to_m u-yd_to_m u-mi_to_m u-mil_0_001_in_to_m u-microinch_to_m u-US_survey_foot_to_m u-in2_to_m2
  u-cmil_to_m2 u-cmil_to_mm2 u-kcmil_to_mm2 u-in3_to_m3 u-ft3_to_m3 u-US_gal_to_m3 u-US_gal_min_to_L_s
  u-ft3_min_CFM_to_m3_s u-ft_min_to_m_s u-lb_to_kg u-oz_avoirdupois_to_kg u-lbf_to_N u-ozf_to_N u-kgf_to_N u-dyn_to_N
  u-lbf_in_to_N_m u-ozf_in_to_N_m u-kgf_m_to_N_m u-ft_lbf_to_J u-lb_ft2_to_kg_m2 u-ft_lbf_min_to_W u-psi_to_Pa
  u-psf_to_Pa u-bar_to_Pa u-atm_to_Pa u-kgf_cm2_to_Pa u-torr_to_Pa u-inHg_conventional_to_Pa u-inH2O_conventional_to_Pa
  u-Btu_IT_h_to_W u-Btu_IT_to_J u-kWh_to_J u-Wh_to_J u-cal_IT_to_J u-erg_to_J u-Ah_to_C u-gauss_to_T u-maxwell_to_Wb
  u-oersted_to_A_m u-gilbert_to_A u-mho_to_S u-gamma_to_T u-ohm_cmil_ft_to_ohm_m u-min_to_s u-h_to_s u-deg_to_rad
  u-W_in2_to_W_m2 u-oz_in2_to_kg_m2 u-1_rpm_to_rad_s u-1_rev_s_to_rpm u-1_ohm_kft_to_ohm_km u-1_hp_electric_to_kW
  u-1_kW_to_hp_550_ft_lbf_s u-1_kW_to_hp_electric u-1_m2_to_cmil u-1_AWG_step_to_area_ratio
  u-6_AWG_steps_to_diameter_ratio u-1_var_to_W u-1_N_m_to_lbf_ft u-1_N_m_to_lbf_in u-1_hp_metric_to_hp_electric
  u-1_Wb_to_V_s u-1_T_to_Wb_m2 u-1_H_to_Wb_A temp-pt-1 temp-pt-2 temp-pt-3 temp-pt-4 temp-pt-5 temp-pt-6 temp-pt-7
  temp-pt-8 temp-pt-9 temp-df-1 temp-df-2 temp-df-3 temp-df-4 temp-df-5 temp-trap-1 temp-trap-2 unit-trap-1 unit-trap-2
`;

export const unitIds: readonly string[] = NAMES.trim().split(/\s+/);

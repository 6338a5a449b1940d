// Names of the published values on motors, balance, starting and control circuits: each is checked or has its reason.

const NAMES = `
  mc-02 mc-03 mc-04 mc-05 mc-07 mc-08 mc-09 mc-10 mc-11 mc-14 mc-16 mc-17 hp-01 hp-03 hp-04 hp-06 hp-07 hp-09 sp-01
  sp-02 sp-03 flc3-0.5hp flc3-0.75hp flc3-1hp flc3-1.5hp flc3-2hp flc3-3hp flc3-5hp flc3-7.5hp flc3-10hp flc3-15hp
  flc3-20hp flc3-25hp flc3-30hp flc3-40hp flc3-50hp flc3-60hp flc3-75hp flc3-100hp flc3-125hp flc3-150hp flc3-200hp
  flc3-250hp flc3-300hp flc3-350hp flc3-400hp flc3-450hp flc3-500hp flc1-1_6hp flc1-1_4hp flc1-1_3hp flc1-1_2hp
  flc1-3_4hp flc1-1hp flc1-1-1_2hp flc1-2hp flc1-3hp flc1-5hp flc1-7-1_2hp flc1-10hp lrc1-1_2hp lrc1-3_4hp lrc1-1hp
  lrc1-1-1_2hp lrc1-2hp lrc1-3hp lrc1-5hp lrc1-7-1_2hp lrc1-10hp lrc3-1_2hp lrc3-3_4hp lrc3-1hp lrc3-1-1_2hp lrc3-2hp
  lrc3-3hp lrc3-5hp lrc3-7-1_2hp lrc3-10hp lrc3-15hp lrc3-20hp lrc3-25hp lrc3-30hp lrc3-40hp lrc3-50hp lrc3-60hp
  lrc3-75hp lrc3-100hp lrc3-125hp lrc3-150hp lrc3-200hp lrc3-250hp lrc3-300hp lrc3-350hp lrc3-400hp lrc3-450hp
  lrc3-500hp code-A code-B code-C code-D code-E code-F code-G code-H code-J code-K code-L code-M code-N code-P code-R
  code-S code-T code-U code-V ex-08 ex-10 ex-11 ex-12 vu-01 vu-02 vu-03 vu-04 vu-05 vu-06 vu-07 vu-10 vu-11 vu-12 vu-13
  sc-02 der-1pct der-2pct der-3pct der-4pct der-5pct der-2.58pct der-none cu-01 cu-03 cu-04 st-01 st-03 st-04 st-06
  st-09 st-10 st-11 st-12 st-13 st-16 st-17 st-18 st-21 st-22 st-23 ac-02 ac-03 ac-04 ac-05 dip-01 dip-02 dip-03 dip-04
  trip-10A trip-10 trip-20 trip-30 trip15-10A trip15-10 trip15-20 trip15-30 trip-105 clsfac-5_or_10 clsfac-15 clsfac-20
  clsfac-25 clsfac-30 tt10-3 tt10-4 tt10-5 tt10-6 tt10-7.2 coil-01 coil-02 coil-03 coil-04 coil-05 coil-06 coil-07
  coil-08 coil-09 ct-01 ct-02 ct-03 ct-04 ct-05 ln-01 ln-02 cc-01 cc-03 cc-04 cc-05 vf-460 vf-575 vf-115 vf-err vf-coil
  pf-01 pf-02 pf-03 pf-05 pf-08 pf-09 pf-11 pf-12 rms-01 th-01 th-02 th-05 th-06 sf-01
`;

export const motorAndCoilIds: readonly string[] = NAMES.trim().split(/\s+/);

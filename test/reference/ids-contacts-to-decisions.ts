// Names of the published values on protection, contacts, conductors, windings, contactors, uncertainty and decisions.

const NAMES = `
  ocpd-single-phase ocpd-AC-polyphase-other-than-wound-rotor ocpd-squirrel-cage-other-than-Design-B-energy-efficient
  ocpd-Design-B-energy-efficient ocpd-synchronous ocpd-wound-rotor ocpd-direct-current-constant-voltage ol-01 ol-02
  ol-03 ol-04 ol-05 ol-06 ol-07 ol-08 ol115-1hp-230V ol115-1-1_2hp-230V ol115-2hp-230V ol115-3hp-230V ol115-5hp-230V
  ol115-5hp-460V ol115-7-1_2hp-230V ol115-7-1_2hp-460V ol115-10hp-230V ol115-10hp-460V ol115-15hp-230V ol115-20hp-460V
  ol115-25hp-230V std-240.6 ex-02 ex-04 ex-05 ex-06 ex-08 ex-10 ex-11 ex-12 ex-13 trip-10A trip-10 trip-20 trip-30
  trip15-10A trip15-10 trip15-20 trip15-30 trip-105 clsfac-5_or_10 clsfac-15 clsfac-20 clsfac-25 clsfac-30 tt10-3
  tt10-4 tt10-5 tt10-6 tt10-7.2 mv-A mv-B mv-C mv-50 mv-51 mv-53 pw-01 pw-02 pw-03 vt-0.01-300 vt-0.03-300 vt-0.05-300
  vt-0.1-300 vt-0.1-293.15 vt-0.12-293.15 vt-0.2-293.15 vt-0.37-293.15 vt-0.43-293.15 um-Cu-softening um-Cu-melting
  holm-Cu holm-Ag holm-Au holm-Ni holm-W holm-Sn holm-Al holm-Fe holm-Pt holm-Zn holm-Sn-melt holm-W-melt holm-AgCdO
  run-01 lim-01 iec-0.5mm2 iec-0.75mm2 iec-1mm2 iec-1.5mm2 iec-2.5mm2 iec-4mm2 iec-6mm2 iec-10mm2 iec-16mm2 iec-25mm2
  iec-35mm2 iec-50mm2 iec-70mm2 iec-95mm2 iec-120mm2 iec-150mm2 iec-185mm2 iec-240mm2 iec-300mm2 iec-400mm2 iec-500mm2
  iec-630mm2 kt-5C kt-10C kt-15C kt-20C kt-25C kt-30C kt-40C kt-50C kt-60C kt-70C kt-75C kt-90C kt-100C awg-4_0
  awg-3_0 awg-2_0 awg-1_0 awg-1 awg-2 awg-3 awg-4 awg-6 awg-8 awg-10 awg-12 awg-14 awg-16 awg-18 awg-20 awg-22 awg-24
  awg-26 awg-28 awg-30 awg-36 cm-4_0 cm-1_0 cm-2 cm-4 cm-8 cm-10 cm-12 cm-14 t8-14 t8-12 t8-10 t8-8 t8-6 t8-4 t8-3
  t8-2 t8-1 t8-1_0 t8-2_0 t8-3_0 t8-4_0 t8-250 t8-300 t8-350 t8-400 t8-500 t9-14 t9-12 t9-10 t9-8 t9-6 t9-4 t9-2 t9-1
  t9-1_0 t9-2_0 t9-3_0 t9-4_0 t9-250 t9-300 alpha-01 alpha-02 rt-01 rt-02 rt-03 rt-05 rt-06 rho-01 rho-02 rho-04 vd-01
  vd-02 vd-03 vd-05 vd-06 wr-01 wr-03 wr-04 wr-05 wr-06 wr-07 cls-A cls-E cls-B cls-F cls-H life-01 life-02 life-03
  life-04 tr-02 tr-03 ir-01 irf-10 irf-20 irf-30 irf-40 irf-50 irf-60 ir-03 ir-04 ir-05 pi-01 pi-02 dar-01 ac3-cap
  cat-AC-1 cat-AC-2 cat-AC-3 cat-AC-4 cat-AC-3e cat-split mix-0 mix-20 mix-40 mix-60 mix-80 mix-s lifek-1 lifek-1.5
  lifek-2 lifek-2.5 lifek-3 lifek-4 lifek-5 loglog-01 loglog-02 rms-01 th-01 th-02 th-05 th-06 gum-h2-1 gum-h2-2
  gum-h2-3 gum-h2-4 gum-h2-5 gum-h2-6 gum-h2-8 gum-h2-7 gum-h1-1 gum-h1-2 gum-h1-3 gum-h1-4 gum-h1-5 gum-h1-6 gum-h3-1
  gum-h3-2 quam-a1 quam-a1b quam-a2 rect-01 rect-02 rect-03 rect-04 gum-res gum-g4 gum-522 lin-02 lin-03 lin-04 lin-06
  lin-07 lin-08 lin-09 lin-11 rss-02 rss-03 rss-04 rss-05 rss-07 rss-09 rss-11 rss-12 dec-01 dec-02 dec-03
  dec-zone-8.9 dec-zone-9.4 dec-zone-10.5 dec-zone-11.2 dec-04 dec-05 dec-06 k-1 k-1.96 k-2 k-2.576 k-3 t95-1 t95-2
  t95-4 t95-5 t95-8 t95-10 t95-16 t95-20 t95-50
`;

export const contactToDecisionIds: readonly string[] = NAMES.trim().split(/\s+/);

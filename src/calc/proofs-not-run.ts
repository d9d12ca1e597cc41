// Published rows that no calculation is held against, each with the reason.
import type { NotRun } from './proof.ts';

export const notRun: readonly NotRun[] = [
  {
    table: 'values-thread-geometry',
    rows: /^jis_equiv_/,
    why: 'a comparison in words; the table of classes takes the weaker class',
  },
  {
    table: 'values-bolt-torque',
    rows: /^old_M_/,
    why: 'an older edition, 6 to 8 % below the one used here; plausibility only',
  },
  { table: 'values-bolt-torque', rows: /^ac4313_/, why: 'a band of plausibility that follows no one formula' },
  {
    table: 'values-thread-strip',
    rows: /^tm_int_factor$/,
    why: 'factor of a short form that is not used here, since it errs to the unsafe side',
  },
  { table: 'values-thread-strip', rows: /^rule_/, why: 'a rule of thumb from memory without tolerance' },
  {
    table: 'values-torque-tools',
    rows: /^iso6789_points$|^ac4313_cal$/,
    why: 'how often and where a wrench is checked: text, nothing is worked out',
  },
  {
    table: 'values-engine',
    rows: /^khu1513_approx$/,
    why: 'the approximate form, 0.1 % below; timing uses the exact one',
  },
  {
    table: 'values-chain',
    rows: /^wear_19pin_1\.5$/,
    why: 'the printed whole millimetre contradicts its own percentage (289 against 290.0)',
  },
  {
    table: 'values-tyres',
    rows: /^od_real_/,
    why: 'measured sizes from memory; the source says not to test against them',
  },
  {
    table: 'values-tyres',
    rows: /^(?:dot_324_year|dot_digits|tin_|us|uk_)/,
    why: 'a rule in words or a count; nothing is worked out',
  },
  {
    table: 'values-electrical',
    rows: /^r20_c2_/,
    why: 'solid and seven-strand wire, which is not used in a loom; not held',
  },
  {
    table: 'values-electrical',
    rows: /^awg\d+_I$/,
    why: 'open chassis wiring without tolerance; the basis does not fit a loom',
  },
  { table: 'values-electrical', rows: /^thin_I_/, why: 'a catalogue rating without tolerance; shown with its basis' },
  { table: 'values-electrical', rows: /^plug_/, why: 'a chart to be quoted; nothing is worked out' },
  { table: 'values-electrical', rows: /^dV_midmarch_pc$/, why: 'refers to a row that is not held' },
  {
    table: 'values-wear-fits',
    rows: /^(?:gap_rule|clr_rule|gap_pol|shim_niss_n)/,
    why: 'a rule, a printed band, or a count of sizes; nothing is worked out',
  },
];

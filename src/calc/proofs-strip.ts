// Rows on thread stripping and torque tools.
import type { Proof } from './proof.ts';

const strip = 'values-thread-strip';
const tools = 'values-torque-tools';

const setting: Proof['given'] = (_, inputs, row) => {
  const [force, length] = (row.cells['unit'] ?? '').includes('N*m')
    ? ['N·m', 'mm']
    : [(row.cells['unit'] ?? '').replace('*', '·'), 'in'];
  return {
    torque: inputs['T'] + ' ' + force,
    length: inputs['L'] + ' ' + length,
    extension: inputs['E'] + ' ' + length,
    angle: (inputs['angle_deg'] ?? '0') + '°',
  };
};

export const stripProofs: readonly Proof[] = [
  {
    table: strip,
    rows: /^(M\d+)_dmin$/,
    calculation: 'thread-strip',
    output: 'bolt major diameter',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: strip,
    rows: /^(M\d+)_d2min$/,
    calculation: 'thread-strip',
    output: 'bolt pitch diameter',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: strip,
    rows: /^(M\d+)_D1max$/,
    calculation: 'thread-strip',
    output: 'nut minor diameter',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: strip,
    rows: /^(M\d+)_D2max$/,
    calculation: 'thread-strip',
    output: 'nut pitch diameter',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: strip,
    rows: /^(M\d+)_As_int$/,
    calculation: 'thread-strip',
    output: 'female shear area',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: strip,
    rows: /^(M\d+)_As_ext$/,
    calculation: 'thread-strip',
    output: 'bolt shear area',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: strip,
    rows: /^(M\d+)_Le_alu$/,
    calculation: 'thread-strip',
    output: 'engagement needed',
    given: (parts, inputs) => ({
      thread: parts[1] ?? '',
      tensile: inputs['Rm_nut'] + ' MPa',
      'shear share': inputs['shear_ratio'] ?? '',
      'breaking load': String(Number(inputs['As']) * Number(inputs['Rm_bolt'])) + ' N',
    }),
  },
  {
    table: strip,
    rows: /^M(\d+)_Fstrip_1p5d$/,
    calculation: 'thread-strip',
    output: 'strip load',
    given: (parts) => ({
      thread: 'M' + parts[1],
      into: 'aluminium',
      engagement: String(1.5 * Number(parts[1])) + ' mm',
    }),
  },
  {
    table: strip,
    rows: /^unc_1_4_J$/,
    calculation: 'thread-strip',
    output: 'strength ratio',
    given: () => ({ thread: '1/4-20 UNC', tensile: '30 ksi', 'bolt tensile': '120 ksi' }),
  },
  {
    table: strip,
    rows: /^unc_1_4_Q$/,
    calculation: 'thread-strip',
    output: 'engagement for the bolt',
    unit: 'in',
    given: () => ({ thread: '1/4-20 UNC', tensile: '30 ksi', 'bolt tensile': '120 ksi' }),
  },
  {
    table: tools,
    rows: /^ext_tm9254$/,
    calculation: 'wrench-torque',
    output: 'torque',
    unit: 'lbf·in',
    given: (_, inputs) => ({
      setting: inputs['setting'] + ' lbf·in',
      length: inputs['L'] + ' in',
      extension: inputs['E'] + ' in',
    }),
  },
  { table: tools, rows: /^ext_/, calculation: 'wrench-setting', output: 'setting', given: setting },
  {
    table: tools,
    rows: /^iso6789_upto10$/,
    calculation: 'wrench-range',
    output: 'tolerance',
    given: () => ({ torque: '5 N·m', least: '2 N·m', greatest: '10 N·m' }),
  },
];

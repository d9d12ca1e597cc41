// Rows on torque, stripping and torque tools.
import { cellNumber } from '../table/table.ts';
import type { Proof } from './proof.ts';
import { unified } from './proof-names.ts';
import { readThread } from './thread.ts';
import { pitchDiameter, rootDiameter, stressArea } from './thread-geometry.ts';
import { workOut } from './work.ts';

const torque = 'values-bolt-torque';
const strip = 'values-thread-strip';
const tools = 'values-torque-tools';

const yieldOf = (row: string): string => String(cellNumber('bolt-classes', row, 'yield')) + ' MPa';

/** Long-form preload at a share of yield, for a metric thread. */
function atYield(
  name: string | undefined,
  mark: string,
  friction: string | undefined,
): Readonly<Record<string, string>> {
  const thread = readThread(name ?? '');
  if (thread === undefined) return {};
  const millimetres = (value: number): string => String(value) + ' mm';
  return {
    yield: yieldOf(mark),
    'stress area': String(stressArea(thread)) + ' mm²',
    'pitch diameter': millimetres(pitchDiameter(thread)),
    'root diameter': millimetres(rootDiameter(thread)),
    pitch: millimetres(thread.pitch),
    friction: friction ?? '',
  };
}

const longForm: Proof['given'] = (_, inputs) => ({
  preload: inputs['F_kN'] + ' kN',
  pitch: inputs['P_mm'] + ' mm',
  'pitch diameter': inputs['d2_mm'] + ' mm',
  'head diameter': inputs['DKm_mm'] + ' mm',
  'thread friction': inputs['mu_t'] ?? '',
  'head friction': inputs['mu_b'] ?? '',
});

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

export const fastenerProofs: readonly Proof[] = [
  {
    table: torque,
    rows: /^wentzell_6_[14]$/,
    calculation: 'nut-factor-torque',
    output: 'torque',
    unit: 'lbf·in',
    given: (_, inputs) => ({
      preload: String(Number(inputs['As_in2']) * Number(inputs['Sp_psi']) * Number(inputs['fraction'])) + ' lbf',
      diameter: inputs['d_in'] + ' in',
      factor: inputs['K'] ?? '',
    }),
  },
  {
    table: torque,
    rows: /^wentzell_6_2$/,
    calculation: 'turn-angle',
    output: 'turn',
    given: (_, inputs) => ({
      stress: inputs['F_over_As_psi'] + ' psi',
      grip: inputs['L_in'] + ' in',
      modulus: inputs['E_psi'] + ' psi',
      pitch: inputs['pitch_in'] + ' in',
    }),
  },
  {
    table: torque,
    rows: /^shigley_8_3c$/,
    calculation: 'screw-torque',
    output: 'torque',
    unit: 'lbf·in',
    given: (_, inputs) => ({
      preload: inputs['Fi_lbf'] + ' lbf',
      diameter: inputs['d_in'] + ' in',
      pitch: String(1 / Number(inputs['tpi'])) + ' in',
      'thread friction': inputs['f'] ?? '',
      'collar friction': inputs['fc'] ?? '',
    }),
  },
  {
    table: torque,
    rows: /^mil60_K$/,
    calculation: 'screw-torque',
    output: 'handbook factor',
    given: (_, inputs) => ({
      preload: '1 kN',
      diameter: inputs['d_in'] + ' in',
      pitch: inputs['p_in'] + ' in',
      'thread friction': inputs['mu_t'] ?? '',
      'collar friction': inputs['mu_c'] ?? '',
    }),
  },
  {
    table: torque,
    rows: /^K_(\w+)$/,
    calculation: 'nut-factor-torque',
    output: 'torque',
    given: () => ({}),
    computed: (parts) => surfaceFactor(parts[1] ?? ''),
  },
  {
    table: torque,
    rows: /^preload_reusable$/,
    calculation: 'bolt-strength',
    output: 'preload',
    given: () => ({}),
    computed: () => preloadShare(),
  },
  {
    table: torque,
    rows: /^tm_(uncert|relax)$/,
    calculation: 'preload-band',
    output: 'preload',
    given: () => ({}),
    computed: (parts) => scatterOf(parts[1] ?? ''),
  },
  {
    table: torque,
    rows: /^vdi_F_(M[\d.x]+)_([\d.]+)_mu([\d.]+)$/,
    calculation: 'assembly-preload',
    output: 'preload',
    given: (parts) => atYield(parts[1], parts[2] ?? '', parts[3]),
  },
  {
    table: torque,
    rows: /^a2_70_F_(M\d+)_mu([\d.]+)$/,
    calculation: 'assembly-preload',
    output: 'preload',
    given: (parts) => atYield(parts[1], 'A2-70', parts[2]),
  },
  { table: torque, rows: /^(?:vdi|a2_70)_M_/, calculation: 'bolt-torque', output: 'torque', given: longForm },
  {
    table: torque,
    rows: /^j429_F_(.+)_g(\d)$/,
    calculation: 'bolt-strength',
    output: 'preload',
    unit: 'lbf',
    given: (parts) => ({ thread: unified(parts[1]), class: 'grade ' + parts[2] }),
  },
  {
    table: torque,
    rows: /^j429_T_/,
    calculation: 'nut-factor-torque',
    output: 'torque',
    given: () => ({}),
    computed: (_, inputs, row) => j429Torque(inputs, row.cells['unit'] ?? ''),
  },
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

function surfaceFactor(name: string): number | undefined {
  const surfaces: Readonly<Record<string, string>> = {
    black: 'black',
    zinc: 'zinc plated',
    cad: 'cadmium plated',
    antiseize: 'anti-seize',
  };
  const worked = workOut('nut-factor-torque', { preload: '1 kN', diameter: '1 mm', surface: surfaces[name] ?? '' });
  return worked.figures['torque']?.quantity;
}

function preloadShare(): number | undefined {
  const { figures } = workOut('bolt-strength', { thread: 'M8', class: '8.8' });
  const [preload, proof] = [figures['preload'], figures['proof load']];
  return preload === undefined || proof === undefined ? undefined : preload.quantity / proof.quantity;
}

function scatterOf(kind: string): number | undefined {
  const preload = workOut('preload-band', { torque: '1 N·m', factor: '0.2', diameter: '5 mm' }).figures['preload'];
  if (preload?.band === undefined) return undefined;
  const scatter = preload.band.high / preload.quantity - 1;
  return kind === 'uncert' ? scatter : 1 - preload.band.low / (preload.quantity * (1 - scatter));
}

function j429Torque(inputs: Readonly<Record<string, string>>, unit: string): number | undefined {
  const worked = workOut('nut-factor-torque', {
    preload: inputs['F_lbf'] + ' lbf',
    diameter: inputs['d_in'] + ' in',
    factor: inputs['K'] ?? '',
  });
  const torque = worked.figures['torque'];
  return torque === undefined ? undefined : torque.quantity / (unit === 'lbf*ft' ? 1.3558179483314 : 0.112984829027617);
}

// Rows on torque and preload.
import { cellNumber } from '../table/table.ts';
import type { Proof } from './proof.ts';
import { unified } from './proof-names.ts';
import { readThread } from './thread.ts';
import { pitchDiameter, rootDiameter, stressArea } from './thread-geometry.ts';
import { workOut } from './work.ts';

const torque = 'values-bolt-torque';

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

export const torqueProofs: readonly Proof[] = [
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

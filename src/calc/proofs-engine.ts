// Rows on displacement, compression, timing, premix and cranking.
import type { Proof } from './proof.ts';

const engine = 'values-engine';

const crankDrive = (inputs: Readonly<Record<string, string>>): Readonly<Record<string, string>> => ({
  stroke: inputs['stroke_mm'] + ' mm',
  rod: inputs['rod_mm'] + ' mm',
});
const burette: Proof['given'] = (_, inputs) => ({
  bore: inputs['bore_mm'] + ' mm',
  stroke: inputs['stroke_mm'] + ' mm',
  clearance: inputs['Vc_cm3'] + ' cc',
});
const twoPressures: Proof['given'] = (_, inputs) => ({
  first: inputs['pa'] + ' bar',
  'first at': inputs['fa'] ?? '',
  second: inputs['pb'] + ' bar',
  'second at': inputs['fb'] ?? '',
  exponent: inputs['n'] ?? '',
});

export const engineProofs: readonly Proof[] = [
  {
    table: engine,
    rows: /^disp_mathur$/,
    calculation: 'displacement',
    output: 'displacement',
    given: (_, inputs) => ({
      bore: inputs['bore_mm'] + ' mm',
      stroke: inputs['stroke_mm'] + ' mm',
      cylinders: inputs['n'] ?? '',
    }),
  },
  {
    table: engine,
    rows: /^disp_kates$/,
    calculation: 'displacement',
    output: 'displacement',
    unit: 'in³',
    given: (_, inputs) => ({ bore: inputs['bore_in'] + ' in', stroke: inputs['stroke_in'] + ' in', cylinders: '1' }),
  },
  {
    table: engine,
    rows: /^(?:disp_gupta_r|r_rajput38|r_mathur23)$/,
    calculation: 'compression-ratio',
    output: 'ratio',
    given: burette,
  },
  {
    table: engine,
    rows: /^t2_gupta$/,
    calculation: 'compression-state',
    output: 'temperature',
    unit: '°C',
    given: (_, inputs) => ({ ratio: inputs['r'] + ':1', temperature: inputs['T1'] + ' K' }),
  },
  {
    table: engine,
    rows: /^t2_/,
    calculation: 'compression-state',
    output: 'temperature',
    given: (_, inputs) => ({ ratio: inputs['r'] + ':1', temperature: inputs['T1'] + ' K' }),
  },
  {
    table: engine,
    rows: /^p2_/,
    calculation: 'compression-state',
    output: 'pressure',
    given: (_, inputs) => ({
      ratio: inputs['r'] + ':1',
      pressure: inputs['p1'] + ' bar',
      exponent: inputs['gamma'] ?? '',
    }),
  },
  {
    table: engine,
    rows: /^r_rajput312$/,
    calculation: 'ratio-from-pressures',
    output: 'ratio',
    given: (_, inputs) => ({
      first: '1 bar',
      'first at': '0',
      second: inputs['pr'] + ' bar',
      'second at': '1',
      exponent: inputs['gamma'] ?? '',
    }),
  },
  {
    table: engine,
    rows: /^r_(?:raj1726|mat210)$/,
    calculation: 'ratio-from-pressures',
    output: 'ratio',
    given: twoPressures,
  },
  {
    table: engine,
    rows: /^stroke_mat161$/,
    calculation: 'piston-speed',
    output: 'mean',
    value: (_, inputs) => Number(inputs['v_m_min']) / 60,
    given: (_, inputs, row) => ({ stroke: row.cells['value'] + ' cm', revolutions: inputs['N'] + ' rpm' }),
  },
  {
    table: engine,
    rows: /^khu153_v$/,
    calculation: 'piston-speed',
    output: 'greatest',
    given: (_, inputs) => ({
      stroke: String(2 * Number(inputs['r_mm'])) + ' mm',
      rod: inputs['l_mm'] + ' mm',
      revolutions: inputs['N'] + ' rpm',
    }),
  },
  {
    table: engine,
    rows: /^pos_S/,
    calculation: 'piston-position',
    output: 'position',
    given: (_, inputs) => ({ ...crankDrive(inputs), angle: inputs['deg'] + '°' }),
  },
  {
    table: engine,
    rows: /^inv_S/,
    calculation: 'crank-angle',
    output: 'angle',
    given: (_, inputs) => ({ ...crankDrive(inputs), position: inputs['x_mm'] + ' mm' }),
  },
  {
    table: engine,
    rows: /^mix_us_(\d+)$/,
    calculation: 'oil-in-fuel',
    output: 'oil',
    unit: 'US fl oz',
    given: (parts) => ({ fuel: '1 US gal', ratio: parts[1] + ':1' }),
  },
  {
    table: engine,
    rows: /^mix_imp_(\d+)$/,
    calculation: 'oil-in-fuel',
    output: 'oil',
    unit: 'imp fl oz',
    given: (parts) => ({ fuel: '1 imp gal', ratio: parts[1] + ':1' }),
  },
  {
    table: engine,
    rows: /^mix_L_(\d+)$/,
    calculation: 'oil-in-fuel',
    output: 'oil',
    unit: 'ml',
    given: (parts) => ({ fuel: '1 l', ratio: parts[1] + ':1' }),
  },
  {
    table: engine,
    rows: /^mix_50_12gal$/,
    calculation: 'oil-in-fuel',
    output: 'oil',
    unit: 'US fl oz',
    given: () => ({ fuel: '12 US gal', ratio: '50:1' }),
  },
  {
    table: engine,
    rows: /^crank_r([\d.]+)_n([\d.]+)_p(\d+)$/,
    calculation: 'cranking-pressure',
    output: 'pressure',
    given: (parts) => ({ ratio: parts[1] + ':1', exponent: parts[2] ?? '', ambient: parts[3] + ' Pa' }),
  },
];

// Rows on chain, tyres, wear and spokes.
import { cellNumber } from '../table/table.ts';
import type { Proof } from './proof.ts';

const chain = 'values-chain';
const tyres = 'values-tyres';
const wear = 'values-wear-fits';
const spokes = 'values-spokes';

const links: Proof['given'] = (_, inputs) => ({
  pitch: inputs['p_mm'] + ' mm',
  small: inputs['z1'] ?? '',
  large: inputs['z2'] ?? '',
  centre: (inputs['C_mm'] ?? String(Number(inputs['C_p']) * Number(inputs['p_mm']))) + ' mm',
});
const centre: Proof['given'] = (_, inputs) => ({
  pitch: inputs['p_mm'] + ' mm',
  small: inputs['z1'] ?? '',
  large: inputs['z2'] ?? '',
  links: inputs['links'] ?? '',
});
const shim: Proof['given'] = (_, inputs) => ({
  old: inputs['old'] + ' mm',
  measured: inputs['measured'] + ' mm',
  wanted: inputs['target'] + ' mm',
  ...(inputs['step'] === undefined ? {} : { step: inputs['step'] + ' mm' }),
});
const spoke: Proof['given'] = (_, inputs) => ({
  rim: inputs['R'] + ' mm',
  flange: inputs['r'] + ' mm',
  offset: inputs['o'] + ' mm',
  crossing: inputs['X'] ?? '',
  spokes: inputs['n'] ?? '',
  hole: inputs['s'] + ' mm',
});

export const rollingProofs: readonly Proof[] = [
  {
    table: chain,
    rows: /^(\d{3})_(pitch|width|roller)$/,
    calculation: 'chain-length',
    output: 'links',
    given: () => ({}),
    computed: (parts) => cellNumber('chain-sizes', parts[1] ?? '', parts[2] ?? ''),
  },
  {
    table: chain,
    rows: /^wear_200N_(\d+)$/,
    calculation: 'chain-wear',
    output: 'industrial limit',
    given: (parts) => ({ length: '254 mm', pitches: '20', pitch: '12.7 mm', teeth: parts[1] ?? '' }),
  },
  {
    table: chain,
    rows: /^wear_mc$/,
    calculation: 'chain-wear',
    output: 'common limit',
    given: () => ({ length: '254 mm', pitches: '20', pitch: '12.7 mm' }),
  },
  {
    table: chain,
    rows: /^wear_19pin_([\d.]+)$/,
    calculation: 'chain-worn-length',
    output: 'length',
    given: (parts) => ({ pitches: '18', pitch: '15.875 mm', elongation: parts[1] + ' %' }),
  },
  {
    table: chain,
    rows: /^len20_(\d)_(58|12)$/,
    calculation: 'chain-worn-length',
    output: 'length',
    given: (parts) => ({
      pitches: '20',
      pitch: parts[2] === '58' ? '15.875 mm' : '12.7 mm',
      elongation: parts[1] + ' %',
    }),
  },
  { table: chain, rows: /^(?:jin301_C|mc_C_.*)$/, calculation: 'chain-centre', output: 'centre', given: centre },
  { table: chain, rows: /^(?:jin302_links|mc_links_.*)$/, calculation: 'chain-length', output: 'exact', given: links },
  { table: chain, rows: /^jin303_L$/, calculation: 'chain-length', output: 'length', given: links },
  { table: chain, rows: /^khu1123_L$/, calculation: 'chain-length', output: 'length', unit: 'm', given: links },
  {
    table: chain,
    rows: /^khu1123_p$/,
    calculation: 'sprocket-diameter',
    output: 'diameter',
    value: () => 600,
    given: () => ({ pitch: '47.1 mm', teeth: '40' }),
  },
  {
    table: chain,
    rows: /^pcd_(\d+)_([\d.]+)$/,
    calculation: 'sprocket-diameter',
    output: 'diameter',
    given: (parts) => ({ teeth: parts[1] ?? '', pitch: parts[2] + ' mm' }),
  },
  {
    table: tyres,
    rows: /^li_(\d+)$/,
    calculation: 'tyre-marking',
    output: 'load',
    given: (parts) => ({ marking: '120/90-18 ' + parts[1] + 'H' }),
  },
  {
    table: tyres,
    rows: /^speed_([A-Z])$/,
    calculation: 'tyre-marking',
    output: 'speed',
    given: (parts) => ({ marking: '120/90-18 65' + parts[1] }),
  },
  {
    table: tyres,
    rows: /^od_(\d+)_(\d+)_(\d+)$/,
    calculation: 'tyre-marking',
    output: 'diameter',
    given: (parts) => ({ marking: parts[1] + '/' + parts[2] + '-' + parts[3] }),
  },
  {
    table: tyres,
    rows: /^od_(\d\.\d+)_(\d+)$/,
    calculation: 'tyre-marking',
    output: 'diameter',
    given: (parts) => ({ marking: parts[1] + '-' + parts[2] }),
  },
  {
    table: tyres,
    rows: /^dot_(324)$/,
    calculation: 'tyre-date',
    output: 'week',
    given: (parts) => ({ code: parts[1] ?? '' }),
  },
  {
    table: tyres,
    rows: /^dot_(\d{4})$/,
    calculation: 'tyre-date',
    output: 'year',
    given: (parts) => ({ code: parts[1] ?? '' }),
    value: (row) => Number((row.cells['value'] ?? '').split(' to ')[1]),
  },
  {
    table: tyres,
    rows: /^md_min$/,
    calculation: 'tread-depth',
    output: 'least',
    given: () => ({ depth: '2 mm', rules: 'us-md' }),
  },
  {
    table: tyres,
    rows: /^de_min$/,
    calculation: 'tread-depth',
    output: 'least',
    given: () => ({ depth: '2 mm', rules: 'de' }),
  },
  { table: wear, rows: /^shim_kaw$/, calculation: 'shim', output: 'shim', given: shim },
  { table: wear, rows: /^shim_niss_\d/, calculation: 'shim', output: 'exact', given: shim },
  {
    table: wear,
    rows: /^shim_hon$/,
    calculation: 'shim',
    output: 'shim',
    given: (_, inputs) => ({
      measured: inputs['reading'] + ' mm',
      wanted: inputs['mid'] + ' mm',
      step: inputs['sizes_step'] + ' mm',
    }),
  },
  {
    table: wear,
    rows: /^gap_bore_wear$/,
    calculation: 'ring-gap',
    output: 'added',
    given: () => ({ bore: '50 mm', growth: '0.1 mm' }),
  },
  {
    table: wear,
    rows: /^wear_lin$/,
    calculation: 'wear-to-limit',
    output: 'left',
    given: () => ({ distances: '0 km; 12000 km', readings: '50.000 mm; 50.042 mm', limit: '50.100 mm', first: 'new' }),
  },
  { table: spokes, rows: /^spoke_/, calculation: 'spoke-length', output: 'length', given: spoke },
  {
    table: spokes,
    rows: /^cos32x3$/,
    calculation: 'spoke-length',
    output: 'factor',
    given: () => ({ rim: '270 mm', flange: '30 mm', offset: '30 mm', crossing: '3', spokes: '32' }),
  },
];

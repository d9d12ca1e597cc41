// Rows on the atmosphere, humid air, saturation pressure, mixture, batteries and wires.
import { cellNumber } from '../table/table.ts';
import type { Proof } from './proof.ts';

const air = 'values-atmosphere';
const electrical = 'values-electrical';
const states: Readonly<Record<string, readonly [string, string]>> = {
  T: ['temperature', 'K'],
  t: ['temperature', '°F'],
  p: ['pressure', ''],
  rho: ['density', ''],
};

/** One proof for each quantity of an altitude row. */
function altitude(rows: RegExp, letter: string, unit: string, given: Proof['given']): Proof {
  const [output, own] = states[letter] ?? ['', ''];
  const symbol = unit === '' ? own : unit;
  const base = { table: air, rows, calculation: 'standard-atmosphere', output, given } as const;
  return symbol === '' ? base : { ...base, unit: symbol };
}

const geometric: Proof['given'] = (parts) => ({ altitude: parts[1] + ' m', kind: 'geometric' });
const geopotential: Proof['given'] = (parts) => ({ altitude: parts[1] + ' m', kind: 'geopotential' });
const feet: Proof['given'] = (parts) => ({ altitude: parts[1] + ' ft', kind: 'geopotential' });
const wet: Proof['given'] = (parts) => ({
  temperature: parts[1] + ' °C',
  pressure: parts[2] + ' Pa',
  humidity: parts[3] + ' %',
});

/** Density by the gas law from a book's own pressure and temperature; the constant cancels. */
const dry = (bars: string | undefined, celsius: string | undefined): string =>
  String((Number(bars) * 1e5) / (287.055 * (Number(celsius) + 273.15))) + ' kg/m³';

export const airProofs: readonly Proof[] = [
  altitude(/^(?:ussa|meh)_Z([\d.]+)_T$/, 'T', '', geometric),
  altitude(/^ussa_Z([\d.]+)_p$/, 'p', '', geometric),
  altitude(/^meh_Z([\d.]+)_p$/, 'p', 'bar', geometric),
  altitude(/^(?:ussa|meh)_Z([\d.]+)_rho$/, 'rho', '', geometric),
  altitude(/^iso_H([\d.]+)_T$/, 'T', '', geopotential),
  altitude(/^iso_H([\d.]+)_p$/, 'p', '', geopotential),
  altitude(/^iso_H([\d.]+)_rho$/, 'rho', '', geopotential),
  altitude(/^ft(\d+)_t$/, 't', '', feet),
  altitude(/^ft(\d+)_p$/, 'p', 'psi', feet),
  { table: air, rows: /^(?:cipm|psy)_(\d+)_(\d+)_(\d+)$/, calculation: 'humid-air', output: 'density', given: wet },
  {
    table: air,
    rows: /^hoist_(\d+)$/,
    calculation: 'humid-air',
    output: 'density',
    given: (parts) => ({ temperature: parts[1] + ' °C', pressure: '760 mmHg', 'dew point': '10 °C' }),
  },
  {
    table: air,
    rows: /^psat_magnus_(-?\d+)$/,
    calculation: 'saturation-pressure',
    output: 'magnus',
    given: (parts) => ({ temperature: parts[1] + ' °C' }),
  },
  {
    table: air,
    rows: /^psat_(?:buck|iapws)_(-?[\d.]+)$/,
    calculation: 'saturation-pressure',
    output: 'buck',
    given: (parts) => ({ temperature: parts[1] + ' °C' }),
  },
  {
    table: air,
    rows: /^af_/,
    calculation: 'mixture-shift',
    output: 'ratio',
    given: (_, inputs) => ({
      ratio: inputs['AF0'] ?? '',
      'density before': dry(inputs['p1_bar'], inputs['t1_C']),
      'density now': dry(inputs['p2_bar'], inputs['t2_C']),
    }),
  },
  {
    table: air,
    rows: /^jet_rho_([\d.]+)$/,
    calculation: 'jet-change',
    output: 'bore scale',
    given: (parts) => ({
      jet: '100',
      numbering: 'bore',
      'density before': '1 kg/m³',
      'density now': parts[1] + ' kg/m³',
    }),
  },
  {
    table: electrical,
    rows: /^ocv(12|6)_(\d+)$/,
    calculation: 'rested-volts',
    output: 'volts',
    given: (parts) => ({ charge: parts[2] + ' %', cells: parts[1] === '12' ? '6' : '3' }),
  },
  {
    table: electrical,
    rows: /^sg_(\d+)$/,
    calculation: 'rested-volts',
    output: 'gravity',
    given: (parts) => ({ charge: parts[1] + ' %', cells: '6' }),
  },
  {
    table: electrical,
    rows: /^sgcorr_(\d+)F$/,
    calculation: 'battery-gravity',
    output: 'correction',
    given: (parts) => ({ gravity: '1.200', temperature: parts[1] + ' °F' }),
  },
  {
    table: electrical,
    rows: /^sgcorr_ex$/,
    calculation: 'battery-gravity',
    output: 'corrected',
    given: () => ({ gravity: '1.240', temperature: '30 °F' }),
  },
  {
    table: electrical,
    rows: /^r20_c5_([\d.]+)$/,
    calculation: 'volt-drop',
    output: 'drop',
    given: (parts) => ({ current: '1 A', length: '1000 m', area: parts[1] + ' mm²' }),
  },
  {
    table: electrical,
    rows: /^kt_(\d+)$/,
    calculation: 'hot-resistance',
    output: 'factor',
    given: (parts) => ({ resistance: '1 Ω', measured: parts[1] + ' °C' }),
  },
  {
    table: electrical,
    rows: /^awg(\d+)_r$/,
    calculation: 'wire-gauge',
    output: 'per 1000 ft',
    given: (parts) => ({ gauge: parts[1] ?? '' }),
  },
  {
    table: electrical,
    rows: /^awg(\d+)_d$/,
    calculation: 'wire-gauge',
    output: 'diameter',
    given: (parts) => ({ gauge: parts[1] ?? '' }),
  },
  {
    table: electrical,
    rows: /^pvc_I_([\d.]+)$/,
    calculation: 'wire-size',
    output: 'area',
    given: () => ({}),
    computed: (parts) => cellNumber('cable-sizes', parts[1] + ' mm²', 'loom rating'),
  },
  {
    table: electrical,
    rows: /^pvc_dV_/,
    calculation: 'volt-drop',
    output: 'drop',
    given: (_, inputs) => ({
      current: inputs['I_A'] + ' A',
      length: inputs['length_m'] + ' m',
      'ohms per metre': inputs['R_ohm_per_m'] + ' Ω',
    }),
  },
];

// Rows on threads and the strength of bolts.
import type { Proof } from './proof.ts';
import { classAt, inch, unified } from './proof-names.ts';
import { readThread } from './thread.ts';
import { whitworthDepth } from './thread-geometry.ts';

const strength = 'values-fastener-strength';
const geometry = 'values-thread-geometry';

export const threadProofs: readonly Proof[] = [
  {
    table: strength,
    rows: /^sp_(.+)$/,
    calculation: 'bolt-strength',
    output: 'proof stress',
    given: (parts) => classAt(parts[1]),
  },
  {
    table: strength,
    rows: /^rm_min_(.+)$/,
    calculation: 'bolt-strength',
    output: 'tensile strength',
    given: (parts) => classAt(parts[1]),
  },
  {
    table: strength,
    rows: /^ry_min_(.+)$/,
    calculation: 'bolt-strength',
    output: 'yield strength',
    given: (parts) => classAt(parts[1]),
  },
  {
    table: strength,
    rows: /^as_(M.+)$/,
    calculation: 'thread-geometry',
    output: 'nominal area',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: strength,
    rows: /^fp_(M[\d.x]+)_(.+)$/,
    calculation: 'bolt-strength',
    output: 'proof load',
    given: (parts) => ({ thread: parts[1] ?? '', class: parts[2] ?? '' }),
  },
  {
    table: strength,
    rows: /^fm_(M[\d.x]+)_(.+)$/,
    calculation: 'bolt-strength',
    output: 'breaking load',
    given: (parts) => ({ thread: parts[1] ?? '', class: parts[2] ?? '' }),
  },
  {
    table: strength,
    rows: /^iso3506_rp_(.+)$/,
    calculation: 'bolt-strength',
    output: 'yield strength',
    given: (parts) => classAt(parts[1]),
  },
  {
    table: strength,
    rows: /^iso3506_rm_(.+)$/,
    calculation: 'bolt-strength',
    output: 'tensile strength',
    given: (parts) => classAt(parts[1]),
  },
  {
    table: strength,
    rows: /^j429_(\d)_tensile$/,
    calculation: 'bolt-strength',
    output: 'tensile strength',
    given: (parts) => ({ thread: '3/8-16 UNC', class: 'grade ' + parts[1] }),
    unit: 'ksi',
  },
  {
    table: strength,
    rows: /^j429_(\d)_proof$/,
    calculation: 'bolt-strength',
    output: 'proof stress',
    given: (parts) => ({ thread: '3/8-16 UNC', class: 'grade ' + parts[1] }),
    unit: 'ksi',
  },
  {
    table: strength,
    rows: /^j429_(\d)_yield$/,
    calculation: 'bolt-strength',
    output: 'yield strength',
    given: (parts) => ({ thread: '3/8-16 UNC', class: 'grade ' + parts[1] }),
    unit: 'ksi',
  },
  {
    table: strength,
    rows: /^j429_fp_(.+)_g(\d)$/,
    calculation: 'bolt-strength',
    output: 'proof load',
    given: (parts) => ({ thread: unified(parts[1]), class: 'grade ' + parts[2] }),
    unit: 'lbf',
  },
  {
    table: geometry,
    rows: /^H_P([\d.]+)$/,
    calculation: 'thread-geometry',
    output: 'triangle height',
    given: (parts) => ({ thread: 'M10x' + parts[1] }),
  },
  {
    table: geometry,
    rows: /^(M.+)_d2$/,
    calculation: 'thread-geometry',
    output: 'pitch diameter',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: geometry,
    rows: /^(M.+)_D1$/,
    calculation: 'thread-geometry',
    output: 'minor diameter',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: geometry,
    rows: /^(M.+)_d3$/,
    calculation: 'thread-geometry',
    output: 'root diameter',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: geometry,
    rows: /^pitch_(M\d+)$/,
    calculation: 'thread-geometry',
    output: 'pitch',
    given: (parts) => ({ thread: parts[1] ?? '' }),
  },
  {
    table: geometry,
    rows: /^at_(.+)$/,
    calculation: 'thread-geometry',
    output: 'stress area',
    given: (parts) => ({ thread: unified(parts[1]) }),
    unit: 'in²',
  },
  {
    table: geometry,
    rows: /^(bs[wfc])_(\d+_\d+)_tpi$/,
    calculation: 'thread-geometry',
    output: 'pitch',
    given: () => ({}),
    computed: (parts) => perInch(parts),
  },
  {
    table: geometry,
    rows: /^(bs[wfc])_(\d+_\d+)_eff$/,
    calculation: 'thread-geometry',
    output: 'pitch diameter',
    given: (parts) => ({ thread: inch(parts[2]) + ' ' + parts[1] }),
    unit: 'in',
  },
  {
    table: geometry,
    rows: /^(bs[wfc])_(\d+_\d+)_core$/,
    calculation: 'thread-geometry',
    output: 'root diameter',
    given: (parts) => ({ thread: inch(parts[2]) + ' ' + parts[1] }),
    unit: 'in',
  },
  {
    table: geometry,
    rows: /^(bs[wfc])_(\d+_\d+)_as$/,
    calculation: 'thread-geometry',
    output: 'stress area',
    given: (parts) => ({ thread: inch(parts[2]) + ' ' + parts[1] }),
  },
  {
    table: geometry,
    rows: /^(bs[wc])_angle$/,
    calculation: 'thread-geometry',
    output: 'pitch',
    given: () => ({}),
    computed: (parts) => readThread('1/4 ' + parts[1])?.angle,
  },
  {
    table: geometry,
    rows: /^whit_depth_factor$/,
    calculation: 'thread-geometry',
    output: 'pitch diameter',
    given: () => ({}),
    computed: () => whitworthDepth,
  },
  {
    table: geometry,
    rows: /^jis_(\d+T)$/,
    calculation: 'bolt-strength',
    output: 'tensile strength',
    given: (parts) => classAt(parts[1]),
  },
];

function perInch(parts: RegExpExecArray): number | undefined {
  const thread = readThread(inch(parts[2]) + ' ' + (parts[1] ?? ''));
  return thread === undefined ? undefined : 25.4 / thread.pitch;
}

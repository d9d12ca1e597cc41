// What a published row was worked from: `bore_mm=68; mu_t=0.12` is how a file is typed, `bore 68 mm; μ of the thread 0.12` how a page says it.
import { asSet, behindNumber } from './published-unit.ts';

/** How the end of a key names the unit of its value. */
const units: Readonly<Record<string, string>> = {
  mm: 'mm',
  m: 'm',
  in: 'in',
  in2: 'in2',
  cm3: 'cm3',
  kN: 'kN',
  lbf: 'lbf',
  psi: 'psi',
  bar: 'bar',
  A: 'A',
  C: 'degC',
  deg: 'deg',
  m_min: 'm/min',
  ohm_per_m: 'Ω/m',
  p: 'pitches',
};

/** Keys that say little by themselves. */
const names: Readonly<Record<string, string>> = {
  mu_t: 'μ of the thread',
  mu_b: 'μ under the head',
  mu_c: 'μ of the collar',
  gamma: 'γ',
  theta: 'θ',
  F_over_As: 'F/As',
  tpi: 'threads per inch',
};

// The longest ending first, so that `v_m_min` is metres a minute.
const ending = new RegExp(`^(.+)_(${Object.keys(units).toSorted(byLength).join('|')})$`, 'u');

function byLength(one: string, other: string): number {
  return other.length - one.length;
}

function named(key: string): string {
  return names[key] ?? key.replaceAll('_', ' ');
}

function inputAsSet(input: string): string {
  const [key = '', value] = input.split('=');
  if (value === undefined) return asSet(input);
  if (key === 'deg') return `${value}°`;
  const parts = ending.exec(key);
  const unit = units[parts?.[2] ?? ''] ?? '';
  return `${named(parts?.[1] ?? key)} ${value}${behindNumber(unit)}`;
}

/** The inputs of a published row in words, as they are parted in the file: by `; `. */
export function inputsAsSet(inputs: string): string {
  return inputs
    .split(/;\s*/u)
    .filter((one) => one !== '')
    .map(inputAsSet)
    .join('; ');
}

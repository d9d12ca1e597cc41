// Conversion factors against GNU units (when it is installed) and against the published rows.
import { execFileSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { inUnit, of } from '../../src/quantity/quantity.ts';
import type { Unit } from '../../src/quantity/quantity.ts';
import { dimensions, units } from '../../src/quantity/units.ts';
import { anyUnitOf, unitOf } from '../../src/quantity/unit-spelling.ts';
import { table } from '../../src/table/table.ts';

/** Our symbol to the name in GNU units; a symbol not listed is not compared (shares, counts, gauge marks). */
const gnuNames: Readonly<Record<string, string>> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  µm: 'micron',
  in: 'inch',
  thou: 'mil',
  ft: 'foot',
  'mm²': 'mm^2',
  'cm²': 'cm^2',
  'in²': 'in^2',
  l: 'litre',
  ml: 'ml',
  cc: 'cm^3',
  'in³': 'in^3',
  'imp gal': 'brgallon',
  'US gal': 'usgallon',
  'imp qt': 'brquart',
  'US qt': 'usquart',
  'imp pt': 'brpint',
  'US pt': 'uspint',
  'imp fl oz': 'brfluidounce',
  'US fl oz': 'usfluidounce',
  kg: 'kg',
  g: 'g',
  lb: 'lb',
  oz: 'oz',
  N: 'N',
  kN: 'kN',
  kgf: 'kgf',
  lbf: 'lbf',
  'N·m': 'N m',
  'N·cm': 'N cm',
  'N·mm': 'N mm',
  'kgf·m': 'kgf m',
  'kgf·cm': 'kgf cm',
  'lbf·ft': 'lbf ft',
  'lbf·in': 'lbf in',
  'ozf·in': 'lbf in/16',
  MPa: 'MPa',
  GPa: 'GPa',
  'kgf/mm²': 'kgf/mm^2',
  psi: 'psi',
  ksi: 'ksi',
  'tonf/in²': '2240 lbf/in^2',
  bar: 'bar',
  kPa: 'kPa',
  'kgf/cm²': 'kgf/cm^2',
  hPa: 'hPa',
  mbar: 'millibar',
  inHg: 'inHg',
  mmHg: 'mmHg',
  atm: 'atm',
  'N/mm': 'N/mm',
  'kgf/mm': 'kgf/mm',
  'lbf/in': 'lbf/in',
  'kg/m³': 'kg/m^3',
  'g/cm³': 'g/cm^3',
  rad: 'radian',
  arcmin: 'arcmin',
  h: 'hour',
  min: 'minute',
  d: 'day',
  wk: 'week',
  km: 'km',
  mi: 'mile',
  'km/h': 'km/hour',
  mph: 'mile/hour',
  rpm: '2 pi radian/minute',
  'l/min': 'l/min',
  'l/h': 'l/hour',
  W: 'W',
  kW: 'kW',
  hp: 'hp',
  PS: 'metrichorsepower',
  Ah: 'A hour',
  V: 'V',
  A: 'A',
  Ω: 'ohm',
  µF: 'microfarad',
};

const si: Partial<Record<string, string>> = {
  length: 'm',
  area: 'm^2',
  volume: 'm^3',
  mass: 'kg',
  force: 'N',
  torque: 'N m',
  stress: 'Pa',
  'gauge pressure': 'Pa',
  'absolute pressure': 'Pa',
  stiffness: 'N/m',
  density: 'kg/m^3',
  angle: 'radian',
  duration: 's',
  'running time': 's',
  'calendar time': 's',
  'distance ridden': 'm',
  speed: 'm/s',
  'rotation speed': 'radian/s',
  flow: 'm^3/s',
  power: 'W',
  charge: 'coulomb',
  voltage: 'V',
  current: 'A',
  resistance: 'ohm',
  capacitance: 'farad',
};

function gnuUnits(): boolean {
  try {
    return execFileSync('units', ['--version'], { encoding: 'utf8' }).includes('GNU Units');
  } catch {
    return false;
  }
}

const installed = gnuUnits();
if (!installed) console.log('GNU units is not installed: factors are compared with the published rows only');

describe.skipIf(!installed)('factors agree with GNU units', () => {
  const pairs = dimensions.flatMap((dimension) =>
    units[dimension].flatMap((unit): readonly [string, string, string, number][] => {
      const [theirs, base] = [gnuNames[unit.symbol], si[dimension]];
      return theirs === undefined || base === undefined
        ? []
        : [[unit.symbol + ' of ' + dimension, theirs, base, unit.factor]];
    }),
  );
  test('most units are compared', () => expect(pairs.length).toBeGreaterThan(70));
  test.each(pairs)('%s', (_, theirs, base, factor) => {
    const answer = Number(execFileSync('units', ['-t', '-o', '%.15g', theirs, base], { encoding: 'utf8' }));
    expect(Math.abs(factor / answer - 1)).toBeLessThan(1e-9);
  });
});

/** `1 lbf*ft in N*m`: from and to as the table writes them. */
function unitsOfRow(text: string): readonly [Unit, Unit] | undefined {
  const parts = /^1 (.+?)(?: \(.*\))? in (.+)$/.exec(text);
  const read = (name: string): Unit | undefined => {
    const plain = name.replace('metric hp', 'PS').replace('mile/imp gal', 'mpg imp').replace('mile/US gal', 'mpg US');
    if (/Pa|psi|bar|Hg|kgf\/cm2/.test(plain))
      return unitOf(plain, /ksi|MPa|mm2/.test(text) ? 'stress' : 'gauge pressure');
    return anyUnitOf(plain);
  };
  const [from, to] = [read(parts?.[1] ?? ''), read(parts?.[2] ?? '')];
  return from === undefined || to === undefined ? undefined : [from, to];
}

describe('factors agree with the published rows', () => {
  const rows = table('values-units').rows.filter((row) => (row.cells['quantity'] ?? '').startsWith('1 '));
  test('rows are there', () => expect(rows.length).toBeGreaterThan(20));
  test.each(rows.map((row) => [row.id, row] as const))('%s', (_, row) => {
    const pair = unitsOfRow(row.cells['quantity'] ?? '');
    expect(pair, row.cells['quantity']).toBeDefined();
    if (pair === undefined) return;
    const [from, to] = pair;
    const across = pair.map((unit) =>
      unit.dimension === 'length' || unit.dimension === 'distance ridden' ? 'far' : unit.dimension,
    );
    expect(across[0]).toBe(across[1]);
    expect(Math.abs(inUnit(of(1, from), to) / Number(row.cells['value']) - 1)).toBeLessThan(1e-9);
  });
  test('the scales of temperature, and fuel use the other way round', () => {
    const [f, c] = [anyUnitOf('°F'), anyUnitOf('°C')];
    const [imp, metric] = [anyUnitOf('mpg imp'), anyUnitOf('l/100 km')];
    if (f === undefined || c === undefined || imp === undefined || metric === undefined)
      throw new Error('units are missing');
    expect(inUnit(of(32, f), c)).toBeCloseTo(0, 9);
    expect(inUnit(of(68, f), c)).toBeCloseTo(20, 9);
    expect(inUnit(of(50, imp), metric)).toBeCloseTo(5.64962, 4);
  });
});

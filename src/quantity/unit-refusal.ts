// Why a unit is not taken, with the unit that was probably meant: named near misses first, then the nearest spelling.
import type { Dimension, Refusal, Unit } from './quantity.ts';
import { anyUnitOf, spellingEntries, spellingKey } from './unit-spelling.ts';
import { dimensions, units } from './units.ts';

/** Words that name two units of different size. */
const torn: Readonly<Record<string, readonly [string, string]>> = {
  gal: ['imp gal', 'US gal'],
  gals: ['imp gal', 'US gal'],
  gallon: ['imp gal', 'US gal'],
  gallons: ['imp gal', 'US gal'],
  pt: ['imp pt', 'US pt'],
  pts: ['imp pt', 'US pt'],
  pint: ['imp pt', 'US pt'],
  pints: ['imp pt', 'US pt'],
  qt: ['imp qt', 'US qt'],
  qts: ['imp qt', 'US qt'],
  quart: ['imp qt', 'US qt'],
  quarts: ['imp qt', 'US qt'],
  floz: ['imp fl oz', 'US fl oz'],
  fluidounce: ['imp fl oz', 'US fl oz'],
  fluidounces: ['imp fl oz', 'US fl oz'],
  mpg: ['mpg imp', 'mpg US'],
};

/** Slips with a name: the word, the dimension it was written for, what was meant. */
const slips: Partial<Readonly<Record<Dimension, Readonly<Record<string, string>>>>> = {
  torque: {
    'lbf/ft': 'lbf·ft',
    'lb/ft': 'lbf·ft',
    'lbs/ft': 'lbf·ft',
    'ft/lb': 'lbf·ft',
    'ft/lbs': 'lbf·ft',
    'ft/lbf': 'lbf·ft',
    'lbf/in': 'lbf·in',
    'lb/in': 'lbf·in',
    'in/lb': 'lbf·in',
    'in/lbs': 'lbf·in',
    'n/m': 'N·m',
    'n/cm': 'N·cm',
    'kgf/m': 'kgf·m',
    'kg/m': 'kgf·m',
    'm/kg': 'kgf·m',
    'kgf/cm': 'kgf·cm',
    'kg/cm': 'kgf·cm',
    'cm/kg': 'kgf·cm',
    kg: 'kgf·m',
    kgs: 'kgf·m',
    kgf: 'kgf·m',
    lb: 'lbf·ft',
    lbs: 'lbf·ft',
    lbf: 'lbf·ft',
    n: 'N·m',
    ft: 'lbf·ft',
  },
  'gauge pressure': {
    lb: 'psi',
    lbs: 'psi',
    lbf: 'psi',
    pounds: 'psi',
    kg: 'kgf/cm²',
    kgs: 'kgf/cm²',
    kgf: 'kgf/cm²',
    'kg/cm': 'kgf/cm²',
  },
  charge: { a: 'Ah', amp: 'Ah', amps: 'Ah' },
  'distance ridden': { m: 'mi' },
  stiffness: { 'n·mm': 'N/mm', nmm: 'N/mm', lbin: 'lbf/in', kgmm: 'kgf/mm' },
  speed: { km: 'km/h', mi: 'mph', miles: 'mph' },
};

/** Edits (insert, drop, change, swap neighbours) from one word to another. */
function edits(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = swapped ? (before[j - 2] ?? 0) + 1 : Infinity;
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, change, swap));
    }
    before = row;
    row = next;
  }
  return row[b.length] ?? 0;
}

/** The unit whose spelling is nearest, when it is near enough to be a slip of the pen. */
export function nearestUnit(text: string, among: readonly Dimension[]): Unit | undefined {
  const key = spellingKey(text).toLowerCase();
  let best: Unit | undefined;
  let least = Math.max(1, Math.floor(key.length / 3)) + 1;
  for (const dimension of among) {
    for (const [spelling, unit] of spellingEntries(dimension)) {
      const far = spelling.length < 2 ? Infinity : edits(key, spelling.toLowerCase());
      if (far < least) [best, least] = [unit, far];
    }
  }
  return best;
}

/** The first few symbols of a dimension, for a hint. */
export function symbolsOf(dimension: Dimension): string {
  return units[dimension]
    .slice(0, 5)
    .map((unit) => unit.symbol)
    .join(', ');
}

/** `a torque`, `an angle`. */
export function aKind(dimension: Dimension): string {
  return (/^[aeiou]/.test(dimension) ? 'an ' : 'a ') + dimension;
}

/** The signs of a ratio are no units that stand behind a number. */
function howWritten(dimension: Dimension): string {
  if (dimension === 'ratio') return 'a ratio is written 25:1 or 1:25';
  return `units of ${dimension}: ${symbolsOf(dimension)}`;
}

/** Why `text` is not a unit of `dimension` (of any dimension when undefined); `number` is repeated in the hint. */
export function unitRefusal(text: string, number: string, dimension: Dimension | undefined): Refusal {
  const key = spellingKey(text).toLowerCase();
  const both = torn[key];
  if (both !== undefined && (dimension === undefined || dimension === 'volume' || dimension === 'fuel use')) {
    // A gallon has 160 fluid ounces in Britain and 128 in America, so the ounces are nearly alike.
    const apart = key.includes('oz') ? 'a twenty-fifth' : 'a fifth';
    const message = `“${text}” may be ${both[0]} or ${both[1]}, which differ by ${apart}`;
    return { code: 'unit-unknown', message, hint: `write “${number} ${both[0]}” or “${number} ${both[1]}”` };
  }
  const slip = dimension === undefined ? slips.torque?.[key] : slips[dimension]?.[key];
  const elsewhere = anyUnitOf(text);
  if (slip !== undefined) {
    const code = elsewhere === undefined ? 'unit-unknown' : 'unit-wrong';
    const kind = dimension ?? 'torque';
    return { code, message: `“${text}” is not a unit of ${kind}; “${slip}” is`, hint: `write “${number} ${slip}”` };
  }
  if (elsewhere !== undefined && dimension !== undefined) {
    const message = `“${text}” is a unit of ${elsewhere.dimension}; ${aKind(dimension)} is wanted here`;
    return { code: 'unit-wrong', message, hint: howWritten(dimension) };
  }
  const near = nearestUnit(text, dimension === undefined ? dimensions : [dimension]);
  if (near !== undefined) {
    return {
      code: 'unit-unknown',
      message: `“${text}” is not a unit known here`,
      hint: `did you mean “${number} ${near.symbol}”?`,
    };
  }
  const message = `“${text}” is not a unit known here`;
  if (dimension === undefined) return { code: 'unit-unknown', message };
  return { code: 'unit-unknown', message, hint: howWritten(dimension) };
}

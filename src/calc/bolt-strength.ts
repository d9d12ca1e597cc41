// Strength of a bolt by the mark on its head: proof load, breaking load, and how much preload it should be given.
import { kilonewton, megapascal, newton, one } from '../quantity/units.ts';
import { cellNumber, published, table } from '../table/table.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying, words } from './input.ts';
import { readThread } from './thread.ts';
import { nominalArea } from './thread-geometry.ts';

/** Share of the proof load for a joint that is undone again (Shigley equation 8-31); 0.90 for one that is not. */
export const reusableShare = 0.75;
export const permanentShare = 0.9;

/**
 * The row of the table bolt-classes for a mark (`8.8`, `A2-70`, `grade 5`, `7T`) at a diameter in mm; undefined when the
 * mark is not known or the class is not made in this size.
 */
export function boltClass(mark: string, diameter: number): string | undefined {
  const plain = mark.trim().replace(/^(?:class|sae|j429)\s*/i, '');
  const graded = /^(?:grade|gr\.?)\s*(\d)$/i.exec(plain);
  const name =
    graded === null ? plain.toUpperCase().replace(/^(A[24])\s*-?\s*(\d\d)$/, '$1-$2') : 'grade ' + (graded[1] ?? '');
  const large = name === '8.8' && diameter > 16 ? '8.8 over 16' : name;
  const from = cellNumber('bolt-classes', large, 'from');
  const to = cellNumber('bolt-classes', large, 'to');
  if (from === undefined || to === undefined || diameter < from || diameter > to) return undefined;
  return large;
}

/** Proof, yield and tensile strength of a class, MPa. Where no proof stress is published, the yield stands for it. */
export function strengths(
  classRow: string,
): { readonly proof: number; readonly yield: number; readonly tensile: number } | undefined {
  const yielding = cellNumber('bolt-classes', classRow, 'yield');
  const tensile = cellNumber('bolt-classes', classRow, 'tensile');
  if (yielding === undefined || tensile === undefined) return undefined;
  return { proof: cellNumber('bolt-classes', classRow, 'proof') ?? yielding, yield: yielding, tensile };
}

export const boltStrength = calculation({
  id: 'bolt-strength',
  name: 'Bolt strength and preload',
  purpose: 'What a bolt carries by the mark on its head, and the preload to aim at.',
  formula: 'F_p = S_p · Aₛ,nom;  F_m = R_m · Aₛ,nom;  F = 0.75 F_p (undone again), 0.90 F_p (permanent)',
  inputs: {
    thread: words('', 'thread'),
    class: words('', 'mark on the head'),
    joint: words('', 'joint', { among: ['reusable', 'permanent'], optional: true }),
    share: quantity('', 'share of the proof load, when not by rule', one, { optional: true, above: 0, high: 1 }),
  },
  outputs: {
    'proof stress': result('S_p', 'proof stress', megapascal, 0),
    'yield strength': result('R_e', 'least yield', megapascal, 0),
    'tensile strength': result('R_m', 'least tensile strength', megapascal, 0),
    'proof load': result('F_p', 'proof load', newton, 0),
    'breaking load': result('F_m', 'least breaking load', newton, 0),
    preload: result('F', 'preload to aim at', kilonewton, 2),
    standard: saying('standard'),
  },
  range:
    'Diameters that the class is made in; −50 to +150 °C. T marks of old JIS state tensile strength only and are taken as the weaker ISO class.',
  source: 'ISO 898-1, SAE J429, ISO 3506-1, JIS B 1051 annex; preload by Shigley, equation 8-31.',
  tables: ['bolt-classes', 'values-fastener-strength', 'values-thread-geometry', 'values-bolt-torque'],
  cautions: ['book-torque', 'dry-thread-figure'],
  example: {
    given: { thread: 'M8', class: '8.8' },
    gives: { 'proof stress': '580 MPa', 'proof load': '21 228 N', preload: '15.92 kN' },
  },
  work: (given) => {
    const thread = readThread(given.words('thread'));
    const row = thread === undefined ? undefined : boltClass(given.words('class'), thread.diameter);
    const strength = row === undefined ? undefined : strengths(row);
    if (thread === undefined || row === undefined || strength === undefined) {
      given.doubt(
        'calculation-value-wrong',
        'no strength is known for “' + given.words('class') + '” on “' + given.words('thread') + '”',
      );
      return {};
    }
    const proof =
      published('bolt-classes', row, 'proof', megapascal) ?? published('bolt-classes', row, 'yield', megapascal);
    if (proof !== undefined) given.use('S_p', 'proof stress', proof);
    const area = nominalArea(thread);
    const stronger = cellNumber('bolt-classes', row, 'proof to');
    const band = stronger === undefined ? {} : { low: strength.proof, high: stronger };
    if (stronger !== undefined)
      given.remark('The mark states tensile strength only: the proof stress is a band, and the weaker end is used.');
    const rule = given.words('joint') === 'permanent' ? permanentShare : reusableShare;
    const share = given.maybe('share', one) ?? rule;
    return {
      'proof stress': { value: strength.proof, ...band },
      'yield strength': strength.yield,
      'tensile strength': strength.tensile,
      'proof load': strength.proof * area,
      'breaking load': strength.tensile * area,
      preload: (share * strength.proof * area) / 1000,
      standard: table('bolt-classes').byId.get(row)?.cells['standard'] ?? '',
    };
  },
});

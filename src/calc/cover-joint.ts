// The weaker of bolt and tapped thread, and the load that it is trusted with.
import type { Figure } from '../figure/figure.ts';
import { megapascal } from '../quantity/units.ts';
import { cellNumber, published, table } from '../table/table.ts';
import { boltClass, reusableShare, strengths } from './bolt-strength.ts';
import type { Thread } from './thread.ts';
import { stressArea } from './thread-geometry.ts';
import { femaleShear, shearLimits } from './thread-strip.ts';

/** Of the strip load of a tapped thread: half, our choice, since an old thread is not a new one. */
const threadShare = 0.5;
const unmarkedClass = '4.8';
const usualEngagement = 1.5;
/** Major diameter of the tapped hole of a wire thread insert over the bolt's: 1.0825 pitches (form of the insert thread, memory). */
const insertGrowth = 1.0825;

/**
 * The row of female-threads for what the owner wrote: `aluminium`, `alloy crankcase`, `cast iron`, `steel nut`. Undefined for what
 * is not known; no load is then offered.
 */
export function femaleMaterial(text: string): string | undefined {
  const plain = text.toLowerCase();
  if (/alumini?um|alloy|light metal|casing|crankcase/.test(plain)) return 'aluminium';
  if (/cast iron|\biron\b/.test(plain)) return 'cast iron';
  return table('female-threads').rows.find((row) => plain.includes(row.id))?.id;
}

export interface Joint {
  /** Greatest preload in N. */
  readonly preload: number;
  readonly governs: string;
  readonly remarks: readonly string[];
  readonly used: readonly { readonly symbol: string; readonly name: string; readonly figure: Figure }[];
}

function threadLoad(thread: Thread, material: string, insert: boolean, engagement: number): number {
  const tensile = cellNumber('female-threads', material, 'tensile') ?? 0;
  const share = cellNumber('female-threads', material, 'shear share') ?? 0;
  const hole = insert ? { ...thread, diameter: thread.diameter + insertGrowth * thread.pitch } : thread;
  return threadShare * tensile * share * femaleShear(hole, shearLimits(hole)) * engagement;
}

/** What the owner left out and how it was taken, in sentences. */
function assumptions(mark: string, into: string, engagement: number | undefined): readonly string[] {
  return [
    ...(mark === '' ? ['The bolt is taken as class 4.8, the weakest in use, since no mark is given.'] : []),
    ...(into === '' ? ['It is taken as tapped into cast aluminium, the weaker case, since nothing is said.'] : []),
    ...(engagement === undefined ? ['The length of engagement is taken as 1.5 diameters.'] : []),
  ];
}

/**
 * The load that a joint is trusted with: 0.75 of the bolt's proof load or half the strip load of the female thread, whichever is
 * less. `mark` and `into` may be '' (then 4.8 and cast aluminium); `engagement` in mm. Undefined for a mark or a material that is
 * not known.
 */
export function coverJoint(
  thread: Thread,
  mark: string,
  into: string,
  engagement: number | undefined,
): Joint | undefined {
  const row = boltClass(mark || unmarkedClass, thread.diameter);
  const strength = row === undefined ? undefined : strengths(row);
  const material = into === '' ? 'aluminium' : femaleMaterial(into);
  if (row === undefined || strength === undefined || material === undefined) return undefined;
  const bolt = reusableShare * strength.proof * stressArea(thread);
  const insert = /insert/i.test(into);
  const female = threadLoad(thread, material, insert, engagement ?? usualEngagement * thread.diameter);
  const proof =
    published('bolt-classes', row, 'proof', megapascal) ?? published('bolt-classes', row, 'yield', megapascal);
  const tensile = published('female-threads', material, 'tensile', megapascal);
  const governs = female < bolt ? 'thread in ' + material : 'bolt';
  return {
    preload: Math.min(bolt, female),
    governs,
    remarks: [...assumptions(mark, into, engagement), 'What governs: the ' + governs + '.'],
    used: [
      ...(proof === undefined ? [] : [{ symbol: 'S_p', name: 'proof stress of the bolt', figure: proof }]),
      ...(tensile === undefined
        ? []
        : [{ symbol: 'R_m', name: 'tensile strength of the female thread', figure: tensile }]),
    ],
  };
}

// A computed torque band for covers, brackets and trim: never more than the weaker of bolt and tapped thread can take.
import type { Figure } from '../figure/figure.ts';
import { isOf } from '../figure/kind.ts';
import { megapascal, millimetre, newton, newtonMetre, one } from '../quantity/units.ts';
import { cellNumber, published, table } from '../table/table.ts';
import { boltClass, reusableShare, strengths } from './bolt-strength.ts';
import { longTorque } from './bolt-torque.ts';
import { calculation } from './calculation.ts';
import type { Values, Worked } from './calculation.ts';
import { quantity, result, saying, words } from './input.ts';
import { readThread } from './thread.ts';
import type { Thread } from './thread.ts';
import { pitchDiameter, stressArea } from './thread-geometry.ts';
import { femaleShear, shearLimits } from './thread-strip.ts';

/** Of the strip load of a tapped thread: half, our choice, since an old thread is not a new one. */
const threadShare = 0.5;
/** The bottom of the band still gives this share of the preload at the highest friction (our choice). */
const leastShare = 0.5;
const unmarkedClass = '4.8';
const usualEngagement = 1.5;

/** Mean diameter of the bearing face, mm: from the table of hexagon bolts, else 1.28 d. */
function headDiameter(thread: Thread): number {
  const row = 'M' + String(thread.diameter);
  const face = thread.series === 'M' ? cellNumber('bearing-faces', row, 'face') : undefined;
  const hole = thread.series === 'M' ? cellNumber('bearing-faces', row, 'hole') : undefined;
  return face === undefined || hole === undefined ? 1.28 * thread.diameter : (face + hole) / 2;
}

/** The row of female-threads for what the owner wrote: `aluminium`, `alloy crankcase`, `cast iron`. */
export function femaleMaterial(text: string): string | undefined {
  const plain = text.toLowerCase();
  if (/alumini?um|alloy|light metal/.test(plain)) return 'aluminium';
  if (/iron/.test(plain)) return 'cast iron';
  return table('female-threads').rows.find((row) => plain.includes(row.id))?.id;
}

export const coverTorqueBand = calculation({
  id: 'cover-torque',
  name: 'Torque band for covers, brackets and trim',
  purpose: 'A torque for a fastener that only holds a cover, a bracket or trim, where no maker’s value is known.',
  formula:
    'F = min(0.75 S_p Aₛ, 0.5 τ A);  T_high = F · [P/2π + μ_low (d₂/(2 cos α/2) + D_K/2)];  T_low = 0.5 F · [P/2π + μ_high (…)]',
  inputs: {
    thread: words('', 'thread'),
    class: words('', 'mark on the head', { optional: true }),
    into: words('', 'tapped into', { optional: true }),
    threads: words('', 'threads', { optional: true, among: ['dry', 'oiled', 'locked', 'plated'] }),
    engagement: quantity('L', 'length of engagement', millimetre, { optional: true, above: 0 }),
  },
  outputs: {
    torque: result('T', 'torque', newtonMetre, 1),
    preload: result('F', 'greatest preload allowed', newton, 0),
    governs: saying('what governs'),
  },
  range:
    'Covers, brackets and trim only. Not for anything that carries a rider, turns, brakes, steers or holds pressure. An unmarked bolt is taken as 4.8; without a length of engagement 1.5 d is taken.',
  source:
    'ISO 898-1 strength; 0.75 of proof load by Shigley, equation 8-31; friction of VDI 2230 and long form of torque; strip strength by FED-STD-H28/2B with half of it used (our choice).',
  tables: ['bolt-classes', 'friction', 'female-threads', 'bearing-faces', 'thread-tolerances'],
  example: {
    given: { thread: 'M6', class: '4.8', into: 'aluminium', threads: 'dry' },
    gives: { torque: '4.3 to 5.3 N·m', governs: 'bolt' },
  },
  work: (given) => {
    const thread = readThread(given.words('thread'));
    const mark = given.words('class') || unmarkedClass;
    const row = thread === undefined ? undefined : boltClass(mark, thread.diameter);
    const strength = row === undefined ? undefined : strengths(row);
    if (thread === undefined || row === undefined || strength === undefined) {
      given.doubt(
        'calculation-value-wrong',
        'no torque is offered for “' + given.words('thread') + '”, mark “' + mark + '”',
      );
      return {};
    }
    if (given.words('class') === '')
      given.remark('The bolt is taken as class 4.8, the weakest in use, since no mark is given.');
    const bolt = reusableShare * strength.proof * stressArea(thread);
    const female = threadLoad(
      given.words('into'),
      thread,
      given.maybe('engagement', millimetre) ?? usualEngagement * thread.diameter,
    );
    const preload = Math.min(bolt, female ?? Infinity);
    const state = given.words('threads') || 'dry';
    if (given.words('threads') === '') given.remark('Threads are taken as dry; oiled threads need less.');
    const friction = [cellNumber('friction', state, 'low') ?? 0, cellNumber('friction', state, 'high') ?? 0] as const;
    const proof = published('bolt-classes', row, 'yield', megapascal);
    if (proof !== undefined) given.use('R_e', 'least yield of the class', proof);
    for (const side of ['low', 'high'] as const) {
      const used = published('friction', state, side, one);
      if (used !== undefined) given.use('μ_' + side, 'friction, ' + state, used);
    }
    const at = (load: number, mu: number): number =>
      longTorque(load, thread.pitch, pitchDiameter(thread), mu, mu, headDiameter(thread), thread.angle);
    const high = at(preload, friction[0]);
    const low = at(leastShare * preload, friction[1]);
    const governs =
      female !== undefined && female < bolt ? 'thread in ' + (femaleMaterial(given.words('into')) ?? '') : 'bolt';
    given.remark('What governs: the ' + governs + '.');
    return { torque: { value: (low + high) / 2, low: Math.min(low, high), high }, preload, governs };
  },
});

/** Greatest load in N that a tapped thread is trusted with; undefined when what it is cut in is not known. */
function threadLoad(into: string, thread: Thread, engagement: number): number | undefined {
  const material = femaleMaterial(into);
  if (material === undefined) return undefined;
  const tensile = cellNumber('female-threads', material, 'tensile') ?? 0;
  const share = cellNumber('female-threads', material, 'shear share') ?? 0;
  return threadShare * tensile * share * femaleShear(thread, shearLimits(thread)) * engagement;
}

export interface CoverFastener {
  readonly thread: string;
  readonly propertyClass?: string;
  readonly into?: string;
  readonly threads?: 'dry' | 'oiled' | 'locked' | 'plated';
  readonly engagement?: Figure<'length'>;
}

/** The whole result for a fastener marked cover, bracket or trim: torque band, preload, and what governs. */
export function coverTorqueWorked(fastener: CoverFastener): Worked {
  const values: Values = {
    thread: fastener.thread,
    class: fastener.propertyClass,
    into: fastener.into,
    threads: fastener.threads,
    engagement: fastener.engagement,
  };
  return coverTorqueBand.run(values);
}

/**
 * A torque band (N·m) with its working for a fastener marked cover, bracket or trim; undefined when the thread or the
 * class is not known. The caller answers for the mark: no other fastener is to be asked for.
 */
export function coverTorque(fastener: CoverFastener): Figure<'torque'> | undefined {
  const torque = coverTorqueWorked(fastener).figures['torque'];
  return torque !== undefined && isOf(torque, 'torque') ? torque : undefined;
}

// A computed torque band for covers, brackets and trim: never more than the weaker of bolt and tapped thread can take.
import type { Figure } from '../figure/figure.ts';
import { isOf } from '../figure/kind.ts';
import { millimetre, newton, newtonMetre, one } from '../quantity/units.ts';
import { cellNumber, published } from '../table/table.ts';
import { longTorque } from './bolt-torque.ts';
import { calculation } from './calculation.ts';
import type { Values, Worked } from './calculation.ts';
import { coverJoint } from './cover-joint.ts';
import type { Given } from './given.ts';
import type { Inputs } from './input.ts';
import { quantity, result, saying, words } from './input.ts';
import { readThread } from './thread.ts';
import type { Thread } from './thread.ts';
import { pitchDiameter } from './thread-geometry.ts';

/** The bottom of the band still gives this share of the preload at the highest friction (our choice). */
const leastShare = 0.5;

/** Mean diameter of the bearing face, mm: from the table of hexagon bolts, else 1.28 d. */
function headDiameter(thread: Thread): number {
  const row = 'M' + String(thread.diameter);
  const face = thread.series === 'M' ? cellNumber('bearing-faces', row, 'face') : undefined;
  const hole = thread.series === 'M' ? cellNumber('bearing-faces', row, 'hole') : undefined;
  return face === undefined || hole === undefined ? 1.28 * thread.diameter : (face + hole) / 2;
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
    'Covers, brackets and trim only. Not for anything that carries a rider, turns, brakes, steers or holds pressure. An unmarked bolt is taken as 4.8, an unnamed female thread as cast aluminium, an unknown length of engagement as 1.5 d. Nothing is offered for a mark or a material that is not known.',
  source:
    'ISO 898-1 strength; 0.75 of proof load by Shigley, equation 8-31; friction of VDI 2230 and long form of torque; strip strength by FED-STD-H28/2B with half of it used (our choice).',
  tables: ['bolt-classes', 'friction', 'female-threads', 'bearing-faces', 'thread-tolerances'],
  cautions: ['book-torque', 'dry-thread-figure', 'aluminium-thread'],
  example: {
    given: { thread: 'M6', class: '4.8', into: 'aluminium', threads: 'dry' },
    gives: { torque: '4.3 to 5.3 N·m', governs: 'bolt' },
  },
  work: (given) => {
    const thread = readThread(given.words('thread'));
    const joint =
      thread === undefined
        ? undefined
        : coverJoint(thread, given.words('class'), given.words('into'), given.maybe('engagement', millimetre));
    if (thread === undefined || joint === undefined) {
      const told = ['thread', 'class', 'into'] as const;
      given.doubt(
        'calculation-value-wrong',
        'no torque is offered for ' + told.map((name) => name + ' “' + given.words(name) + '”').join(', '),
      );
      return {};
    }
    const state = given.words('threads') || 'dry';
    for (const { symbol, name, figure } of joint.used) given.use(symbol, name, figure);
    for (const remark of joint.remarks) given.remark(remark);
    if (given.words('threads') === '') given.remark('Threads are taken as dry; oiled threads need less.');
    const friction = frictionOf(given, state);
    const at = (load: number, mu: number): number =>
      longTorque(load, thread.pitch, pitchDiameter(thread), mu, mu, headDiameter(thread), thread.angle);
    const high = at(joint.preload, friction.low);
    const low = at(leastShare * joint.preload, friction.high);
    const torque = { value: (low + high) / 2, low: Math.min(low, high), high };
    return { torque, preload: joint.preload, governs: joint.governs };
  },
});

/** Least and greatest friction of a state of the threads, noted in the working. */
function frictionOf(given: Pick<Given<Inputs>, 'use'>, state: string): { readonly low: number; readonly high: number } {
  const of = (side: 'low' | 'high'): number => {
    const used = published('friction', state, side, one);
    if (used !== undefined) given.use('μ_' + side, 'friction, ' + state, used);
    return used?.quantity ?? 0;
  };
  return { low: of('low'), high: of('high') };
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

// The order in which the fasteners of a head or cover are tightened, from their positions: crosswise or as a spiral, inside outwards.
import { millimetre } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { list, saying, words } from './input.ts';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

interface Placed {
  readonly index: number;
  readonly radius: number;
  readonly angle: number;
}

/** Fasteners nearer together in radius than this part of the largest radius are one ring. */
const ringWidth = 0.15;

function place(spots: readonly Spot[]): readonly Placed[] {
  const middle = {
    x: spots.reduce((sum, spot) => sum + spot.x, 0) / spots.length,
    y: spots.reduce((sum, spot) => sum + spot.y, 0) / spots.length,
  };
  return spots.map((spot, index) => ({
    index,
    radius: Math.hypot(spot.x - middle.x, spot.y - middle.y),
    angle: Math.atan2(spot.y - middle.y, spot.x - middle.x),
  }));
}

/** Rings from the inside outwards. */
function ringsOf(placed: readonly Placed[]): readonly (readonly Placed[])[] {
  const sorted = placed.toSorted((a, b) => a.radius - b.radius || a.angle - b.angle);
  const width = ringWidth * (sorted.at(-1)?.radius ?? 0);
  const rings: Placed[][] = [];
  for (const one of sorted) {
    const ring = rings.at(-1);
    const first = ring?.[0];
    if (ring === undefined || first === undefined || one.radius - first.radius > width) rings.push([one]);
    else ring.push(one);
  }
  return rings;
}

/** Angle between two directions, 0 to π. */
function between(a: number, b: number): number {
  const turn = Math.abs(a - b) % (2 * Math.PI);
  return turn > Math.PI ? 2 * Math.PI - turn : turn;
}

/** Each next one is the most opposite to the last; of equals the one furthest from all that are done. */
function crossRing(ring: readonly Placed[], before: Placed | undefined): readonly Placed[] {
  const left = [...ring];
  const done: Placed[] = [];
  let last = before;
  while (left.length > 0) {
    const from = last;
    const merit = (one: Placed): number =>
      (from === undefined ? 0 : Math.round(between(one.angle, from.angle) * 1e6) * 1e3) +
      done.reduce((sum, other) => sum + between(one.angle, other.angle), 0);
    const next = left.toSorted((a, b) => merit(b) - merit(a) || a.index - b.index)[0];
    if (next === undefined) break;
    left.splice(left.indexOf(next), 1);
    done.push(next);
    last = next;
  }
  return done;
}

/**
 * Indexes of the fasteners in tightening order, innermost ring first. `crosswise`: each is opposite to the one before;
 * `spiral`: round each ring in turn. Every fastener comes exactly once.
 */
export function tighteningOrder(spots: readonly Spot[], kind: 'crosswise' | 'spiral'): readonly number[] {
  const rings = ringsOf(place(spots));
  if (kind === 'spiral')
    return rings.flatMap((ring) => ring.toSorted((a, b) => a.angle - b.angle).map((one) => one.index));
  const order: Placed[] = [];
  for (const ring of rings) order.push(...crossRing(ring, order.at(-1)));
  return order.map((one) => one.index);
}

export const tighteningSequence = calculation({
  id: 'tightening-order',
  name: 'Tightening order',
  purpose:
    'An order for a head or cover that the book gives none for: in stages, inside outwards, crosswise or as a spiral.',
  formula: 'rings by distance from the middle; in each ring the most opposite next',
  inputs: {
    x: list('x', 'positions across', millimetre),
    y: list('y', 'positions along', millimetre),
    kind: words('', 'kind of order', { optional: true, among: ['crosswise', 'spiral'] }),
  },
  outputs: { order: saying('order, by the number of the position given') },
  range: 'The maker’s order governs. Undo in the opposite order.',
  source: 'Common practice of the trade.',
  tables: [],
  cautions: ['head-cold'],
  example: { given: { x: '0 mm; 60 mm; 60 mm; 0 mm', y: '0 mm; 0 mm; 60 mm; 60 mm' }, gives: { order: '1, 3, 2, 4' } },
  work: (given) => {
    const [x, y] = [given.list('x', millimetre), given.list('y', millimetre)];
    if (x.length !== y.length) {
      given.doubt('calculation-value-wrong', 'there must be as many positions across as along');
      return {};
    }
    const spots = x.map((one, index) => ({ x: one, y: y[index] ?? 0 }));
    const kind = given.words('kind') === 'spiral' ? 'spiral' : 'crosswise';
    return {
      order: tighteningOrder(spots, kind)
        .map((index) => String(index + 1))
        .join(', '),
    };
  },
});

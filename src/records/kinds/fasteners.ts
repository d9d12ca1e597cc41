// Fasteners of a maker's file. Without a maker's torque the blank stays a blank; only cover, bracket and trim may get a computed band.
import type { Fastener, ScrewPosition } from '../model.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import { entry, group, may, need, or } from '../shapes/fields.ts';
import { quantity, range, taken } from '../shapes/measured.ts';
import { choice, id, list, mapOf, number, text, yesNo } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { sourceFields } from './source-of.ts';

export const threadStates = ['dry', 'oiled', 'locked'] as const;

const lengths: Shape<Fastener['lengths']> = andThen(
  mapOf(number(1, 99, 'whole'), 'lengths, each with how many'),
  (found, _spot, desk) =>
    found.flatMap(({ key, value, spot }) => {
      const length = taken(readQuantity(key, 'length'), spot, desk);
      return length === undefined ? [] : [{ length, count: value }];
    }),
);

/** Measured with a calliper from the middle of the first hole; left and below are written with a minus. */
const position: Shape<ScrewPosition> = group({
  right: need(quantity('length', '62.5 mm'), 'to the right of the first hole', { example: '62.5 mm' }),
  up: need(quantity('length', '-8 mm'), 'above the first hole', { example: '-8 mm' }),
  length: may(quantity('length', '45 mm'), 'length of the screw of this hole'),
});

export const fastener = entry({
  id: need(id, 'its permanent id', { example: 'cylinder-head-nut' }),
  name: need(text, 'what it is called on sheets', { example: 'Cylinder head nuts' }),
  of: may(text, 'the part it holds', { example: 'cylinder head' }),
  thread: may(text, 'its thread', { example: 'M8x1.25' }),
  length: may(quantity('length', '30 mm'), 'its length'),
  lengths: or(lengths, [], 'lengths, where they differ', { example: '{30 mm: 5, 45 mm: 4}' }),
  positions: may(list(position), 'where each hole lies, the first at 0 mm and 0 mm, seen from outside'),
  count: may(number(1, 999, 'whole'), 'how many', { example: '8' }),
  class: may(text, 'property class or grade as marked on it', { example: '"8.8"' }),
  into: may(text, 'what the female thread is cut in', { example: 'aluminium' }),
  duty: may(choice('cover', 'bracket', 'trim'), 'only these may get a computed torque band'),
  torque: may(range('torque', '2.2 kgf·m'), 'the maker’s torque, `?` when the book gives none'),
  threads: may(choice(...threadStates), 'how the threads are when that torque is used'),
  stages: or(list(quantity('torque', '1.1 kgf·m')), [], 'stages, lowest first', { example: '[1.1 kgf·m, 2.2 kgf·m]' }),
  order: may(text, 'in which order', { example: 'crosswise, from inside outwards' }),
  locking: may(text, 'how it is locked', { example: 'tab washer' }),
  singleUse: or(yesNo, false, 'always new'),
  disturbs: or(list(text), [], 'what must be proved again once it was touched'),
  ...sourceFields,
});

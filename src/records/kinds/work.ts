// Off and on: one line an action, the verb is the key. What is opened by one verb stays open until another closes it.
import { readQuantity } from '../../quantity/read-quantity.ts';
import type { Verb, WorkEntry } from '../model.ts';
import { entry, may } from '../shapes/fields.ts';
import { day, money, quantity, taken } from '../shapes/measured.ts';
import { choice, mapOf, number, text, yesNo } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { threadStates } from './fasteners.ts';
import { verbLine } from './verb-key.ts';

/** Each verb, in the order of the manual. */
export const verbs = [
  'removed',
  'refitted',
  'replaced',
  'lost',
  'loosened',
  'tightened',
  'drained',
  'filled',
  'disconnected',
  'connected',
  'opened',
  'closed',
  'sent out',
  'come back',
  'fitted temporarily',
  'taken away',
] as const satisfies readonly Verb[];

const fastenerCounts: Shape<WorkEntry['fasteners']> = andThen(
  mapOf(number(1, 999, 'whole'), 'ids of fasteners, each with how many'),
  (found) => found.map(({ key, value }) => ({ id: key, count: value })),
);

const keysBeside = entry({
  bag: may(text, 'the bag it went into', { example: '3' }),
  fromBag: may(text, 'the bag it came out of', { example: '3' }),
  fasteners: may(fastenerCounts, 'fasteners that went with it', { example: '{cylinder-head-nut: 8}' }),
  count: may(number(1, 999, 'whole'), 'how many'),
  where: may(text, 'where it is kept or fitted'),
  wayRound: may(text, 'which way round it was', { example: 'arrow to the front' }),
  quantity: may(quantity('volume', '600 ml'), 'how much came out or went in'),
  grade: may(text, 'what kind went in', { example: 'SAE 10W-30' }),
  ratio: may(quantity('ratio', '25:1'), 'petrol to oil'),
  to: may(text, 'the torque aimed at, or the firm it went to', { example: '2.2 kgf·m' }),
  threads: may(choice(...threadStates), 'how the threads were'),
  wrench: may(text, 'id of the wrench', { example: 'click-wrench' }),
  result: may(choice('reached', 'yielded', 'stripped', 'by feel'), 'what the torque did'),
  promised: may(day, 'when it is to be back'),
  price: may(money, 'what it costs'),
  note: may(text, 'your own words'),
  done: may(yesNo, 'no: still to be done, in a job that has begun', { example: 'no' }),
});

export const workEntry: Shape<WorkEntry> = andThen(
  verbLine(verbs, text, keysBeside),
  ({ verb, object, rest }, spot, desk) => {
    const { fasteners = [], to, ...others } = rest;
    const line = { verb, thing: object, fasteners, ...others };
    if (to === undefined || to === '?') return line;
    if (verb !== 'tightened') return { ...line, to };
    const torque = taken(readQuantity(to, 'torque'), { up: spot, key: 'to' }, desk);
    return torque === undefined ? undefined : { ...line, torque };
  },
);

// Lines of a service schedule: the same in a maker's file and in the general schedules of content.
import type { ServiceLine, Source } from '../model.ts';
import { entry, group, may, need, or } from '../shapes/fields.ts';
import { quantity } from '../shapes/measured.ts';
import { choice, id, list, mapOf, scalar, text, yesNo } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { interval } from './interval.ts';
import { sourceFields, withSource } from './source-of.ts';

const firstKeys = group({
  at: need(interval, 'when it is first done', { example: '500 mi' }),
  after: or(choice('new', 'running-in'), 'new', 'what that counts from'),
});
/** `{at: 500 mi, after: running-in}`, or the step alone. */
const first: typeof firstKeys = {
  read: (tree, spot, desk) => firstKeys.read(typeof tree === 'string' ? { at: tree } : tree, spot, desk),
  told: { kind: 'either', of: [firstKeys.told, interval.told] },
};

const severeStep: Shape<ServiceLine['severe'][string]> = {
  read: (tree, spot, desk) => (scalar(tree, spot, desk) === 'at once' ? 'at once' : interval.read(tree, spot, desk)),
  told: { kind: 'either', of: [{ kind: 'choice', words: ['at once'] }, interval.told] },
};
const severe = andThen(mapOf(severeStep, 'kinds of hard use: dust, water, short trips …'), (found) =>
  Object.fromEntries(found.map(({ key, value }) => [key, value])),
);

const serviceKeys = entry({
  id: need(id, 'its permanent id', { example: 'gearbox-oil-change' }),
  item: need(text, 'what is served', { example: 'Gearbox oil' }),
  action: need(choice('inspect', 'adjust', 'clean', 'renew', 'lubricate', 'tighten', 'measure'), 'what is done', {
    key: 'do',
    example: 'renew',
  }),
  first: may(first, 'the one-time first service', { example: '{at: 500 mi, after: running-in}' }),
  every: may(interval, 'the step; whichever comes first counts', { example: '2000 mi or 6 months' }),
  second: may(interval, 'an odd second step, on the clock from the start of the chart', { example: '3500 mi' }),
  thenFrom: may(interval, 'after the end of the chart repeat from this column', { example: '1000 mi' }),
  onlyIf: may(choice('no distance service that year'), 'done yearly only if no service by distance was'),
  includes: or(list(id), [], 'ids of services that are done with it'),
  wear: may(id, 'id of the limit at which it is renewed, in place of a step', { example: 'lining-thickness' }),
  severe: or(severe, {}, 'shorter steps under hard use', { example: '{dust: 500 mi, water: at once}' }),
  grace: may(quantity('share', '10 %'), 'how far it may be overrun'),
  afterStorage: or(yesNo, false, 'due again after a lay-up'),
  partOf: may(text, 'a rebuilt one of these starts it afresh', { example: 'engine' }),
  unknown: or(choice('due now', 'inspect'), 'due now', 'what to do when it is not known when it was last done'),
  source: may(text, 'where this line is from, where the lines of a schedule differ', { example: 'common practice' }),
  uses: or(list(text), [], 'fluids and parts it needs', { example: '[gearbox-oil]' }),
  ...sourceFields,
});

/** No grace for what stops you, holds you up or keeps metal apart, whatever is written. */
const noGrace = /\b(?:brakes?|tyres?|tires?|oil)\b/iu;

/** Lines of one schedule, with its source and basis. */
export function toServices(
  found: readonly NonNullable<ReturnType<typeof serviceKeys.read>>[],
  book: Source,
  basis: ServiceLine['basis'],
): readonly ServiceLine[] {
  return found.map(({ onlyIf, grace, source, ...line }) => ({
    ...withSource(line, source === undefined ? book : { ...book, remark: source }),
    onlyIfNoDistanceService: onlyIf !== undefined,
    grace: grace === undefined || noGrace.test(line.item) ? 0 : grace.quantity,
    basis,
  }));
}

export const serviceLines = list(serviceKeys);

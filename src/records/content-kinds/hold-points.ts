// content/hold-points: points past which work does not go without release, each a list of checks with its reason.
import type { HoldPoint } from '../content-model.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { interval } from '../kinds/interval.ts';
import { entry, may, need, or } from '../shapes/fields.ts';
import { choice, id, list, number, text, yesNo } from '../shapes/plain.ts';
import { andThen } from '../shapes/shape.ts';
import { applies } from './applies.ts';

const check = andThen(
  entry({
    id: need(id, 'its permanent id', { example: 'stop-switch-opens' }),
    check: need(text, 'what is checked', { example: 'The engine can be stopped by the switch' }),
    why: need(text, 'the reason', { example: 'A stuck throttle is stopped by hand or not at all.' }),
    proof: need(choice('look', 'value', 'photo', 'done', 'feel'), 'how it is proved', { example: 'done' }),
    unit: may(text, 'unit of the value to write down', { example: 'ml' }),
    undoneBy: or(list(text), [], 'things, settings or limits that void the proof when touched'),
    goodFor: may(interval, 'how long a proof stands, whichever comes first'),
    eachTime: may(yesNo, 'looked at anew each time: no record proves it, and it holds nothing'),
    caution: may(id, 'id of a caution'),
    applies: or(applies, {}, 'machines it is for'),
  }),
  ({ check: words, ...rest }) => ({ text: words, ...rest }),
);

export const holdPointsKind = defineRecord<HoldPoint>({
  id: 'hold point',
  purpose: 'A point past which work does not go without release.',
  files: 'content/hold-points/*.md',
  matches: (file) => /(?:^|\/)hold-points\/.+\.md$/u.test(file),
  shape: andThen(
    entry({
      point: need(id, 'its permanent id', { key: 'hold point', example: 'before-live-kick' }),
      title: need(text, 'its title'),
      order: need(number(0, 99), 'the order of the points', { example: '3' }),
      applies: or(applies, {}, 'machines it is for'),
      checks: need(list(check), 'the checks'),
    }),
    ({ point, ...rest }) => ({ id: point, ...rest }),
  ),
});

// Something that was left over on the bench: its name alone, or what could be measured of it.
import type { LeftOverThing } from '../model.ts';
import { entry, may } from '../shapes/fields.ts';
import { quantity } from '../shapes/measured.ts';
import { number, text } from '../shapes/plain.ts';
import type { Shape } from '../shapes/shape.ts';

const keys = entry({
  name: may(text, 'what it is', { example: 'washer' }),
  thread: may(text, 'its thread', { example: 'M6' }),
  length: may(quantity('length', '25 mm'), 'its length below the head'),
  count: may(number(1, 999, 'whole'), 'how many', { example: '1' }),
});

export const leftOver: Shape<LeftOverThing> = {
  read: (tree, spot, desk) => keys.read(typeof tree === 'string' ? { name: tree } : tree, spot, desk),
  told: { kind: 'either', of: [{ kind: 'text', written: 'what it is' }, keys.told] },
};

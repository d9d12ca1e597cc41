// Numbers stamped on the machine, character by character, in the makers' own forms.
import type { StampedNumber } from '../model.ts';
import { entry, may, need, or } from '../shapes/fields.ts';
import { mapOf, text, yesNo } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';

const asKeys = entry({
  stamped: need(text, 'the number, character by character; `?` while it has not been read', { example: 'LP175-04417' }),
  knownBy: or(text, '', 'how it is known', { example: 'read from the headstock' }),
  photo: may(text, 'a photo of it', { example: 'photos/frame-number.jpg' }),
  private: or(yesNo, false, 'kept out of the buyer’s copy'),
});

/** `{stamped: …}` with its keys, or the number alone. */
const stamped: typeof asKeys = {
  read: (tree, spot, desk) => asKeys.read(typeof tree === 'string' ? { stamped: tree } : tree, spot, desk),
  told: { kind: 'either', of: [asKeys.told, text.told] },
};

export const numbers: Shape<readonly StampedNumber[]> = andThen(
  mapOf(stamped, 'frame, engine, registration, key, or a name of your own'),
  (found) => found.map(({ key, value: { at: _at, ...rest } }) => ({ name: key, ...rest })),
);

// instruments.yaml: measuring tools and wrenches, with what they can tell apart and when they were last checked.
import type { Dimension } from '../../quantity/quantity.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import { dimensions } from '../../quantity/units.ts';
import type { Instrument } from '../model.ts';
import { entry, may, need, or, wholeFile } from '../shapes/fields.ts';
import { anyQuantity, day } from '../shapes/measured.ts';
import { choice, id, list, text } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { rangeAt, rangeText } from './limits.ts';
import { defineRecord } from './record-kind.ts';
import { format } from './format.ts';

/** `4 %` of the reading, or `0.01 mm` either way. */
const accuracy: Shape<NonNullable<Instrument['accuracy']>> = andThen(text, (words, spot, desk) => {
  const share = words.includes('%') ? readQuantity(words, 'share') : undefined;
  if (share?.ok === true) return { share: share.value.quantity };
  const absolute = anyQuantity.read(words, spot, desk);
  return absolute === undefined ? undefined : { absolute };
});

const instrument: Shape<Instrument> = andThen(
  entry({
    id: need(id, 'its permanent id', { example: 'feeler-gauge' }),
    name: need(text, 'what it is called on sheets', { example: 'Feeler gauges' }),
    measures: may(choice<Dimension>(...dimensions), 'the kind of quantity', { example: 'length' }),
    resolution: may(anyQuantity, 'the smallest step it shows', { example: '0.05 mm' }),
    accuracy: may(accuracy, 'how far it may be out, as a value or a share', { example: '0.01 mm' }),
    range: may(rangeText, 'what it reaches', { example: '10 to 60 N·m' }),
    checked: may(day, 'when it was last checked', { example: '2024-01-06' }),
  }),
  ({ range, ...rest }, spot, desk) => {
    const reach = rangeAt(range, rest.measures, spot, 'range', desk);
    return { ...rest, ...(reach === undefined ? {} : { range: reach }) };
  },
);

export const instrumentsKind = defineRecord<readonly Instrument[]>({
  id: 'instruments',
  purpose: 'Your measuring tools and wrenches; a file beside the machine folders is shared by all of them.',
  files: 'instruments.yaml',
  matches: (file) => file === 'instruments.yaml' || file === '../instruments.yaml',
  shape: andThen(
    wholeFile({
      splitpin: need(format, 'the version of the format', { example: '1' }),
      instruments: or(list(instrument), [], 'the instruments'),
    }),
    ({ instruments }) => instruments,
  ),
});

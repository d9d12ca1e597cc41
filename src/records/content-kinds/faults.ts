// content/faults: the no-start card: what is seen, what it means, the next cheap test.
import type { NoStartLine } from '../content-model.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { entry, may, need, or, wholeFile } from '../shapes/fields.ts';
import { choice, id, list, text } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { applies } from './applies.ts';

const line: Shape<NoStartLine> = entry({
  group: need(choice('spark', 'fuel', 'compression', 'air'), 'which of the four is looked at', { example: 'spark' }),
  saw: need(text, 'what is seen'),
  means: need(text, 'what it means'),
  next: need(text, 'the next cheap test'),
  caution: may(id, 'id of a caution'),
  applies: or(applies, {}, 'machines it is for'),
});

export const faultsKind = defineRecord<readonly NoStartLine[]>({
  id: 'faults',
  purpose: 'The no-start card.',
  files: 'content/faults/*.md',
  matches: (file) => /(?:^|\/)faults\/.+\.md$/u.test(file),
  shape: andThen(
    wholeFile({
      title: may(text, 'a title for the page'),
      noStart: need(list(line), 'lines of the no-start card'),
    }),
    ({ noStart }) => noStart,
  ),
});

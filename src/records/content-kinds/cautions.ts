// content/cautions: one line each, three grades.
import type { Caution } from '../content-model.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { entry, may, need, wholeFile } from '../shapes/fields.ts';
import { choice, id, list, text } from '../shapes/plain.ts';
import { andThen } from '../shapes/shape.ts';

const caution = entry({
  id: need(id, 'its permanent id', { example: 'petrol' }),
  grade: need(choice('WARNING', 'CAUTION', 'NOTE'), 'WARNING for a person, CAUTION for the machine, NOTE', {
    example: 'WARNING',
  }),
  line: need(text, 'one line, said to the person at the bike', { example: 'Petrol vapour burns.' }),
});

export const cautionsKind = defineRecord<readonly Caution[]>({
  id: 'cautions',
  purpose: 'Cautions that steps and checks name.',
  files: 'content/cautions/*.md',
  matches: (file) => /(?:^|\/)cautions\/.+\.md$/u.test(file),
  shape: andThen(
    wholeFile({
      title: may(text, 'a title for the page'),
      cautions: need(list(caution), 'the cautions'),
    }),
    ({ cautions }) => cautions,
  ),
});

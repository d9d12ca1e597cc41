// story.md: the story in the owner's own words; front matter is optional here and only here.
import { may } from '../shapes/fields.ts';
import { group } from '../shapes/fields.ts';
import { text } from '../shapes/plain.ts';
import { defineRecord } from './record-kind.ts';

export const storyKind = defineRecord<{ readonly title?: string }>({
  id: 'story',
  purpose: 'The story in your own words, printed first in the history.',
  files: 'story.md',
  matches: (file) => file === 'story.md',
  shape: group({ title: may(text, 'a title') }),
});

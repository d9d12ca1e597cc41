// content/pages and content/words.yaml: pages of the manual, and our words in both spellings.
import type { Content } from '../content-model.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { group, need, wholeFile } from '../shapes/fields.ts';
import { id, list, text } from '../shapes/plain.ts';
import { andThen } from '../shapes/shape.ts';

export const pagesKind = defineRecord<{ readonly page: string; readonly title: string }>({
  id: 'page',
  purpose: 'A page of the manual.',
  files: 'content/pages/*.md',
  matches: (file) => /(?:^|\/)pages\/.+\.md$/u.test(file),
  shape: group({
    page: need(id, 'its permanent id', { example: 'formats' }),
    title: need(text, 'its title'),
  }),
});

const pair = group({
  uk: need(text, 'the British word', { example: 'tyre' }),
  us: need(text, 'the American word', { example: 'tire' }),
});

export const wordsKind = defineRecord<Content['words']>({
  id: 'words',
  purpose: 'Words that differ between the two spellings.',
  files: 'content/words.yaml',
  matches: (file) => /(?:^|\/)words\.yaml$/u.test(file),
  shape: andThen(wholeFile({ words: need(list(pair), 'pairs, the British word first') }), ({ words }) => words),
});

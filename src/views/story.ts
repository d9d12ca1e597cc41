// The story in the owner's own words.
import { heading, lines } from './wording/blocks.ts';
import { defineView } from './view.ts';

export const story = defineView({
  id: 'story',
  purpose: 'The story of the machine in the owner’s own words.',
  needs: 'machine',
  options: [],
  blocks: ({ book, say, prose }) => {
    const { story: told } = book.records;
    const head = heading(2, say('Story'), 'story');
    if (told === undefined) return [head, lines([say('No story is written down.')])];
    return [head, { type: 'prose', paragraphs: prose(told.body) }];
  },
});

// A sentence of the sheet's own: what it is for, how it is used.
import { paragraphs } from './wording/blocks.ts';
import { defineView } from './view.ts';

export const note = defineView({
  id: 'note',
  purpose: 'A sentence that tells how the sheet is used.',
  needs: 'machine',
  options: ['of'],
  blocks: ({ options, say }) => [paragraphs(say(options['of'] ?? ''))],
});

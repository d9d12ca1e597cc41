// The heading of a part of a sheet, worded in the sheet's own file.
import { anchor, heading } from './wording/blocks.ts';
import { defineView } from './view.ts';

export const partHeading = defineView({
  id: 'heading',
  purpose: 'The heading of a part of a sheet.',
  needs: 'machine',
  options: ['of'],
  blocks: ({ options, say }) => {
    const text = options['of'] ?? '';
    return [heading(1, say(text), anchor('part', text))];
  },
});

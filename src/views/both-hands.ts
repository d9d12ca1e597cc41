// Two signatures with their dates: who hands over and who takes over. A signed sheet is not used again.
import type { Block } from '../sheet/sheet.ts';
import { paragraphs } from './wording/blocks.ts';
import { defineView } from './view.ts';

export const bothHands = defineView({
  id: 'both-hands',
  purpose: 'Signature and date of who hands over and of who takes over.',
  needs: 'machine',
  options: [],
  blocks: ({ say }): readonly Block[] => [
    paragraphs(say('Signed by both. A correction is one line through, initials, date; once signed, a new sheet.')),
    {
      type: 'signature',
      lines: [
        { role: say('Hands over'), id: 'signed/hands-over' },
        { role: say('Takes over'), id: 'signed/takes-over' },
      ],
    },
  ],
});

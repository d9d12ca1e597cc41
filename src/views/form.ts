// A form of content by its id: lines to tick, to grade and to write beside, with what speaks against each and where it is asked for.
import type { Block } from '../sheet/sheet.ts';
import { anchor, heading } from './wording/blocks.ts';
import { formBlocks, formNamed } from './wording/form.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';

export const form = defineView({
  id: 'form',
  purpose:
    'The lines of one form that are for this machine; `write` heads columns to write in, parted by |, `numbered` counts them.',
  needs: 'machine',
  options: ['of', 'write', 'numbered'],
  blocks: (context): readonly Block[] => {
    const { options } = context;
    const found = formNamed(context, options['of']);
    if (found === undefined) return [];
    const write = (options['write'] ?? '').split('|').map((head) => head.trim());
    const choice = { write: write.filter((head) => head !== ''), numbered: options['numbered'] === 'yes' };
    const blocks = formBlocks(context, found, choice);
    if (blocks.length === 0) return [];
    return [heading(2, ours(context, found.at, found.title), anchor(found.id)), ...blocks];
  },
});

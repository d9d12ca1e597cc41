// A buyer's copy says what it is and where to begin, on its first page and on the cover of its history; the owner's own binder says nothing here.
import type { Block, Inline, Text } from '../sheet/sheet.ts';
import { joined, paragraphs } from './wording/blocks.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const whoseCopyView = defineView({
  id: 'whose-copy',
  purpose: 'In a copy for the next owner: that it is one, what is left out of it, and what to read first.',
  needs: 'machine',
  options: [],
  blocks: (context) => (context.book.copy === 'buyer' ? [whoseCopy(context), readFirst(context)] : []),
});

/** So that a mark in a line is not taken for a gap in the work. */
export function whoseCopy({ say }: ViewContext): Block {
  return paragraphs(
    say(
      'Buyer’s copy. Left out: names, addresses, telephone numbers, signatures, key numbers, papers and whatever else its owner kept private. “(left out)” and “?” stand in its place; nothing else was changed.',
    ),
  );
}

/** In the order in which it can hurt: what is wrong, what is due, what the clock is worth, how it is ridden, and only then the story. */
function readFirst({ say }: ViewContext): Block {
  const to = (text: string, reference: string): readonly Inline[] => [{ kind: 'link', text: say(text), to: reference }];
  const first: Text = joined(
    [
      to('Known faults', 'sheet:known-faults'),
      to('What is due', 'page:service.html'),
      to('Odometer statement', 'sheet:odometer-statement'),
      to('First-ride talk', 'sheet:first-ride-talk'),
      to('History', 'sheet:history'),
    ],
    '; ',
  );
  const forms = to('how the records are written, for going on with them', 'page:formats.html');
  return paragraphs(joined([`${say('To be read first')}: `, first, '. ', `${say('And')} `, forms, '.'], ''));
}

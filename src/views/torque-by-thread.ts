// The fasteners by thread: who holds a screw in the hand finds what it may be, and its row in the table.
import type { Block, Inline } from '../sheet/sheet.ts';
import { heading, lines } from './wording/blocks.ts';
import { threadText } from './wording/fastener.ts';
import { grouped } from './wording/grouped.ts';
import { defineView } from './view.ts';

export const torqueByThread = defineView({
  id: 'torque-by-thread',
  purpose: 'Threads, each with the fasteners that have it, leading to their rows in the torque table.',
  needs: 'machine',
  options: [],
  blocks: ({ book, say }): readonly Block[] => {
    const threads = grouped(book.torque, ({ fastener }) => threadText(fastener.thread ?? ''));
    if (threads.size < 2) return [];
    const sorted = [...threads].toSorted(([one], [other]) => inOrder(one, other));
    return [
      heading(2, say('By thread'), 'by-thread'),
      lines(
        sorted.map(([thread, those]) => [
          { kind: 'strong', text: `${thread === '' ? say('thread not recorded') : thread}: ` },
          ...those.flatMap(({ fastener }, index): readonly Inline[] => [
            ...(index === 0 ? [] : ['; ']),
            { kind: 'link', text: fastener.name, to: `page:torque.html#torque-${fastener.id}` },
          ]),
        ]),
      ),
    ];
  },
});

/** Kind of thread, then size: `M6` before `M10`; what is not recorded last. */
function inOrder(one: string, other: string): number {
  if (one === '' || other === '') return one === other ? 0 : one === '' ? 1 : -1;
  return one.localeCompare(other, 'en', { numeric: true });
}

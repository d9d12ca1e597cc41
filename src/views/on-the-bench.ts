// The bench as it stands: every bag and tub that is not empty, drawn with what is in it; beside them what lies in no bag, and what is away.
import type { OpenLine } from '../book/book.ts';
import type { Block } from '../sheet/sheet.ts';
import { benchMarks, type Vessel } from './wording/bench-drawing.ts';
import { heading } from './wording/blocks.ts';
import { workThing } from './wording/work.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** Widths in millimetres: for a page, and for a screen in the hand. */
const broad = { width: 168, across: 4 } as const;
const slim = { width: 84, across: 2 } as const;

export const onTheBench = defineView({
  id: 'on-the-bench',
  purpose: 'The bench with its bags and tubs and what each holds, as a drawing; the list stands below it.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => {
    const { say } = context;
    const all = vessels(context);
    if (all.length === 0) return [];
    const drawn = benchMarks(all, broad);
    return [
      heading(2, say('On the bench'), 'on-the-bench'),
      {
        type: 'drawing',
        title: say('Bags and tubs with what is in them, by the records; not to scale.'),
        description: `${all.map(said).join('. ')}.`,
        ...drawn,
        sketch: benchMarks(all, slim),
      },
    ];
  },
});

/** What the drawing shows, in words. */
function said({ name, holds }: Vessel): string {
  return `${name}: ${holds.join(', ')}`;
}

function vessels(context: ViewContext): readonly Vessel[] {
  const { book, say } = context;
  const full = book.off.bags.filter((bag) => !bag.emptied);
  const bagged = full.map(({ bag, contents }): Vessel => {
    const isBag = /^\d/u.test(bag);
    return {
      name: isBag ? `${say('Bag')} ${bag}` : bag,
      shape: isBag ? 'bag' : 'tub',
      holds: names(context, contents),
    };
  });
  const inBags = new Set(full.flatMap(({ contents }) => contents));
  const rest = book.off.open.filter((line) => !inBags.has(line));
  const loose = rest.filter(({ state, entry }) => state === 'off' && entry.verb !== 'lost');
  const away = rest.filter(({ state }) => state === 'sent out');
  return [
    ...bagged,
    ...(loose.length === 0 ? [] : [{ name: say('In no bag'), shape: 'open', holds: names(context, loose) } as const]),
    ...(away.length === 0 ? [] : [{ name: say('Away'), shape: 'away', holds: names(context, away) } as const]),
  ];
}

function names({ book }: ViewContext, lines: readonly OpenLine[]): readonly string[] {
  return lines.map(({ entry }) => workThing(book, entry));
}

// The way back: what is off, in the order in which it goes on, to where the machine can be pushed and to where its engine can run.
import { backText, goals, nothingOff, thenText } from '../book/plan/way-back-text.ts';
import { wayBack as wayBackTo } from '../book/plan/way-back.ts';
import type { BackStep, Goal, WayBack } from '../book/plan/way-back.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, heading, paragraphs, row, sentence, stack } from './wording/blocks.ts';
import { cautionRow } from './wording/caution.ts';
import { withDates } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { itemName } from './wording/named.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const wayBack = defineView({
  id: 'way-back',
  purpose: 'The shortest way back from what is off now: to where it can be pushed, and to where the engine can run.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { book, say } = context;
    if (book.off.open.length === 0) return [];
    return goals.flatMap(({ goal, title }) => {
      const way = wayBackTo(book, goal);
      const then = thenText(way);
      return stack(
        heading(2, say(title), `way-back-${goal}`),
        table(context, way, goal),
        aside(context, way),
        then === undefined ? undefined : paragraphs(sentence(`${say(then)}.`)),
      );
    });
  },
});

/** Where in the work a caution counts; petrol by its name, a figure of the book where one is tightened to. */
function cautionsOf(context: ViewContext, { line, tighten }: BackStep): readonly Row[] {
  const fuel = line.state === 'empty' && /fuel|petrol|gasoline|tank/iu.test(line.entry.thing);
  const pinned = tighten.some(({ fastener }) => /split pin|tab washer/iu.test(fastener.locking ?? ''));
  return [...(fuel ? cautionRow(context, 'petrol') : []), ...(pinned ? cautionRow(context, 'new-pin') : [])];
}

function stepRows(context: ViewContext, steps: readonly BackStep[], goal: Goal): readonly Row[] {
  return steps.flatMap((step, index) => {
    const [what = '', ...more] = backText(context.book, step);
    return [
      ...cautionsOf(context, step),
      row(
        { box: 'tick', id: `back/${goal}/${String(index)}` },
        [{ kind: 'strong', text: sentence(what) }],
        withDates(more.join('; ')),
        [jobTitle(step.line.job)],
      ),
    ];
  });
}

function table(context: ViewContext, { steps }: WayBack, goal: Goal): Block {
  const { say } = context;
  return {
    type: 'table',
    columns: [
      column(say('Done'), 1, 'centre'),
      column(say('In this order'), 5),
      column(say('Where it lies, what it needs'), 8),
      column(say('Taken off in'), 4),
    ],
    rows: stepRows(context, steps, goal),
    empty: sentence(say(`${nothingOff}.`)),
    use: 'work',
  };
}

function aside({ book, say }: ViewContext, { aside: rest }: WayBack): readonly Block[] {
  if (rest.length === 0) return [];
  const things = [...new Set(rest.map(({ entry }) => itemName(book, entry.thing)))];
  return [paragraphs(`${say('Open as well, and not counted for this')}: ${things.join(', ')}.`)];
}

// The running-in plan: where it began, what holds until where on the clock, and what is to be done when; each with how it stands.
import type { Mark, RunInLine } from '../book/plan/running-in.ts';
import { runningIn } from '../book/plan/running-in.ts';
import { printFigure } from '../figure/print.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { column, heading, joined, paragraphs, row, stack } from './wording/blocks.ts';
import { cautionRow } from './wording/caution.ts';
import { countOf } from './wording/count.ts';
import { jobDate, jobNamed } from './wording/job.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const runningInPlan = defineView({
  id: 'running-in-plan',
  purpose:
    'Running in since the last new bore, piston, crank or chain: until where, what is to be done when, and how it stands.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => {
    const { book, say, options } = context;
    const plan = runningIn(book);
    const open = ({ marks }: RunInLine): boolean => marks.some(({ state }) => state === 'now' || state === 'to come');
    const shown = options['of'] === 'open' ? plan.lines.filter(open) : plan.lines;
    if (options['of'] === 'open' && shown.length === 0) return [];
    return stack(
      heading(2, say('Running in, as it stands'), 'running-in-plan'),
      began(context, plan),
      shown.length === 0 && plan.beginning === undefined ? undefined : table(context, shown),
    );
  },
});

function began({ book, say }: ViewContext, { beginning }: ReturnType<typeof runningIn>): Block {
  if (beginning === undefined)
    return paragraphs(
      say('No new bore, piston or crank is on record: nothing of the engine is run in, by the records.'),
    );
  const { machine, job } = beginning;
  const at = machine === undefined ? say('at a distance that is not known') : `${say('at')} ${printFigure(machine)}`;
  const now = book.odometer.now.machine;
  const since = machine === undefined || now === undefined ? undefined : `${say('now')} ${printFigure(now)}`;
  return paragraphs(joined([joined([`${say('Began with')} `, jobNamed(job)], ''), at, since]));
}

function table(context: ViewContext, shown: readonly RunInLine[]): Block {
  const { say } = context;
  return {
    type: 'table',
    columns: [
      column(say('Done'), 1, 'centre'),
      column(say('What'), 7),
      column(say('When'), 4),
      column(say('How it stands'), 5),
    ],
    rows: shown.flatMap((one) => rowsOf(context, one)),
    empty: say('Nothing of it is on record.'),
    use: 'work',
  };
}

function rowsOf(context: ViewContext, { line, marks }: RunInLine): readonly Row[] {
  const caution = line.caution === undefined ? [] : cautionRow(context, line.caution);
  const rows = marks.map((mark, index) =>
    row(
      {
        box: 'tick',
        id: `running-in/${line.id}/${String(index)}`,
        done: mark.state === 'done' || mark.state === 'over',
      },
      index === 0 ? ours(context, line.at, line.text) : '',
      when(context, mark, line.until !== undefined),
      stands(context, mark),
    ),
  );
  return [...caution, ...rows];
}

/** `until 24 977 mi on the clock`, `after 1 heat cycle`; a distance that is past is told as the machine's own. */
function when({ say }: ViewContext, mark: Mark, until: boolean): Text {
  const word = until ? say('until') : say('at');
  if (mark.cycles !== undefined)
    return `${say('after')} ${countOf(mark.cycles, say('heat cycle'), say('heat cycles'))}`;
  if (mark.onClock !== undefined) return `${word} ${printFigure(mark.onClock)} ${say('on the clock')}`;
  return mark.machine === undefined
    ? say('not known')
    : `${word} ${printFigure(mark.machine)} ${say('of the machine')}`;
}

function stands({ say }: ViewContext, { state, left, by }: Mark): Text {
  if (by !== undefined) return joined([say('done'), [jobDate(by)]], ' ');
  if (state === 'now') return [{ kind: 'strong', text: say('now: no record names it since') }];
  if (state === 'to come') return left === undefined ? say('to come') : `${printFigure(left)} ${say('left')}`;
  return say(state);
}

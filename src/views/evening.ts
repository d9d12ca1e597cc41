// The evening: what can be done in so many minutes with what is here, why not the rest, and what would free most.
import { besideTime } from '../book/plan/beside-time.ts';
import type { Evening } from '../book/plan/evening.ts';
import { eveningOf } from '../book/plan/evening.ts';
import { minutesText } from '../book/plan/estimate.ts';
import type { PlannedJob } from '../book/plan/plan-of-work.ts';
import { freesText, obstacleText, readyText, unlockText } from '../book/plan/plan-text.ts';
import { freesAny, nothingByItself, worthSaying } from '../book/plan/unlock.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { column, heading, lines, paragraphs, row, stack } from './wording/blocks.ts';
import { withDates } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** As long as an evening is where nobody says otherwise. */
const usual = 90;

export const evening = defineView({
  id: 'evening',
  purpose:
    'What can be done in so many minutes, alone or with a helper, with what is here; why not the rest; what would free most.',
  needs: 'machine',
  options: ['minutes'],
  blocks: (context) => {
    const { book, say, options } = context;
    const minutes = /^\d{1,4}$/u.test(options['minutes'] ?? '') ? Number(options['minutes']) : usual;
    const [alone, two] = [false, true].map((helper) => eveningOf(book, { minutes, helper }));
    if (alone === undefined || two === undefined) return [];
    const more = two.tonight.filter(({ job }) => !alone.tonight.some((one) => one.job === job));
    return stack(
      heading(2, `${say('This evening, in')} ${minutesText(minutes)}, ${say('alone')}`, 'this-evening'),
      tonight(context, alone),
      more.length === 0
        ? undefined
        : [heading(3, say('With a helper, besides or instead'), 'with-a-helper'), table(context, more, 'with-helper')],
      notTonight(context, alone),
      unlock(context, alone),
    );
  },
});

function tonight(context: ViewContext, one: Evening): readonly Block[] {
  const { say } = context;
  const reckon = one.timeNotKnown;
  return stack(
    table(context, one.tonight, 'tonight'),
    one.tonight.length === 0 ? undefined : paragraphs(`${minutesText(one.left)} ${say('left over')}.`),
    reckon.length === 0
      ? undefined
      : [
          heading(3, say('Nothing in the way, but nobody has said how long it takes'), 'time-not-known'),
          lines(
            reckon.map(({ job }): Text => [
              jobTitle(job),
              ...(job.next === undefined ? [] : [`: ${say('next')}, ${job.next}`]),
            ]),
          ),
        ],
  );
}

function said(texts: readonly string[]): string {
  return withDates(texts.join('; '));
}

function table({ say }: ViewContext, jobs: readonly PlannedJob[], id: string): Block {
  return {
    type: 'table',
    columns: [column(say('Done'), 1, 'centre'), column(say('Job'), 5), column(say('Because'), 10)],
    rows: jobs.map((one) => row({ box: 'tick', id: `${id}/${one.job.id}` }, [jobTitle(one.job)], said(readyText(one)))),
    empty: say('Nothing that is planned can be finished in it.'),
    use: 'work',
  };
}

/** A band a job, then its obstacles line by line, so that each can be struck out with a pencil. */
function obstacles({ say }: ViewContext, { notTonight: all, asked, left }: Evening): readonly Row[] {
  return all.flatMap(({ planned, because }): readonly Row[] => [
    { kind: 'band', text: [jobTitle(planned.job)] },
    ...because.map((one, index) => {
      const text = withDates(obstacleText(one));
      // Nothing takes away that work takes its time.
      if (one.kind === 'time' && one.minutes !== undefined) return row('', text);
      return row({ box: 'tick', id: `gone/${planned.job.id}/${String(index)}` }, text);
    }),
    ...besideTime(planned, because, asked, left).map((text) => row('', say(text))),
    ...planned.perhaps.map(({ part }) => row('', `${part.part}: ${say('only if')} ${part.onlyIf ?? ''}`)),
  ]);
}

function notTonight(context: ViewContext, one: Evening): readonly Block[] {
  if (one.notTonight.length === 0) return [];
  const { say } = context;
  return [
    heading(2, say('Not this evening'), 'not-this-evening'),
    {
      type: 'table',
      columns: [column(say('Gone'), 1, 'centre'), column(say('What stands in the way'), 15)],
      rows: obstacles(context, one),
      empty: '',
      use: 'read',
    },
  ];
}

function unlock({ say }: ViewContext, { unlock: all, notTonight: rest }: Evening): readonly Block[] {
  // What frees the only job there is stands above it, line by line.
  if (rest.length < 2) return [];
  const rows = worthSaying(all).map((one) => row(withDates(unlockText(one)), freesText(one)));
  return [
    heading(2, say('What would free most'), 'what-would-free-most'),
    ...(freesAny(all) ? [] : [paragraphs(say(nothingByItself))]),
    {
      type: 'table',
      columns: [column(say('If this were here or done'), 8), column(say('Then'), 8)],
      rows,
      empty: '',
      use: 'read',
    },
  ];
}

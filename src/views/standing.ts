// How the machine stands today: which hold points are held, what is open, what is overdue, what asks for a person's eye, what is next.
import type { Block, Inline, Text } from '../sheet/sheet.ts';
import { fact, heading, joined, lines, stack } from './wording/blocks.ts';
import { countOf } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { jobNamed, jobTitle } from './wording/job.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const standing = defineView({
  id: 'standing',
  purpose: 'How the machine stands today: hold points, what is open, what is due, what is next.',
  needs: 'machine',
  options: [],
  blocks: (context) =>
    stack(heading(2, context.say('How it stands'), 'how-it-stands'), facts(context), points(context), plans(context)),
});

function lead(text: string, page: string): readonly Inline[] {
  return [{ kind: 'link', text, to: `page:${page}` }];
}

function facts({ book, say }: ViewContext): Block {
  const { off, due, queries, recordsDate } = book;
  const overdue = due.filter((one) => one.state === 'overdue' || one.state === 'due');
  const unknown = due.filter((one) => one.state === 'not known');
  return {
    type: 'facts',
    facts: [
      ...fact(say('Records up to'), dayText(recordsDate)),
      ...fact(
        say('Next'),
        off.next === undefined ? say('not written down') : joined([off.next.text, jobNamed(off.next.job)], ': '),
      ),
      ...fact(say('Still open'), lead(countOf(off.open.length, say('thing'), say('things')), 'off.html')),
      ...fact(say('Due or overdue'), lead(countOf(overdue.length, say('service'), say('services')), 'service.html')),
      ...fact(
        say('Never recorded here'),
        lead(countOf(unknown.length, say('service'), say('services')), 'service.html'),
      ),
      ...fact(
        say('For a person to look at'),
        lead(countOf(queries.length, say('thing'), say('things')), 'problems.html'),
      ),
    ],
  };
}

function points(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const inOrder = book.holds.toSorted((one, other) => one.point.order - other.point.order);
  const texts = inOrder.map((hold): Text => {
    const asked = hold.checks.filter((check) => check.state !== 'not for this machine');
    const open = asked.filter((check) => check.state === 'not proved' || check.state === 'undone').length;
    const title = ours(context, hold.point.at, hold.point.title);
    const state = hold.clear
      ? say('clear on the records')
      : open === 0
        ? say('held until every record can be read')
        : `${say('held')}, ${countOf(open, say('check open'), say('checks open'))}`;
    return [...lead(title, `hold-points.html#${hold.point.id}`), ': ', { kind: 'strong', text: state }];
  });
  return texts.length === 0 ? [] : [heading(3, say('Hold points'), 'points'), lines(texts)];
}

function plans({ book, say }: ViewContext): readonly Block[] {
  if (book.plans.length === 0) return [];
  return [heading(3, say('Planned'), 'planned'), lines(book.plans.map(({ job }): Text => [jobTitle(job)]))];
}

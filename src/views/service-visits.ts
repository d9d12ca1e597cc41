// Services by the days ahead: what falls due near each other is done in one go, nothing later than its grace allows.
import type { Visit } from '../book/book.ts';
import type { Row } from '../sheet/sheet.ts';
import { column, heading, joined, row, sentence, stack } from './wording/blocks.ts';
import { dayText } from './wording/day.ts';
import { ours } from './wording/ours.ts';
import { dueText } from './service-due.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const serviceVisits = defineView({
  id: 'service-visits',
  purpose: 'Services that fall near each other, put together on one day within their grace.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { book, say } = context;
    const visits = (book.visits ?? []).map((visit) => ahead(context, visit)).filter(({ lines }) => lines.length > 0);
    return stack(heading(2, say('Ahead by day; what is near is done together'), 'done-together'), {
      type: 'table',
      columns: [column(say('Item, what to do'), 6), column(say('Due'), 6)],
      rows: visits.flatMap((visit) => rowsOf(context, visit)),
      empty:
        book.visits === undefined || book.visits.length === 0
          ? say('No service has a day on which it falls due.')
          : say('Nothing but what is due already.'),
      use: 'read',
    });
  },
});

/** What is due already stands above; of today it is told what may as well be done with it. */
function ahead({ book }: ViewContext, visit: Visit): Visit {
  if (visit.day !== book.today) return visit;
  return { ...visit, lines: visit.lines.filter(({ state }) => state !== 'overdue' && state !== 'due') };
}

/** A visit: its day across the table, then one row a service. */
function rowsOf(context: ViewContext, visit: Visit): readonly Row[] {
  const { book, say } = context;
  const day = visit.day === book.today ? sentence(say('now, with what is due')) : dayText(visit.day);
  const rows = visit.lines.map((line) => {
    const item = ours(context, line.service.at, line.service.item);
    return row(joined([[{ kind: 'strong', text: item }], say(line.service.action)], ': '), dueText(context, line));
  });
  return [{ kind: 'band', text: [{ kind: 'strong', text: day }] }, ...rows];
}

// The service sheet: what is due now in working order, with what it takes, found and left, and room for what is next.
import { printRange } from '../figure/print.ts';
import type { DueLine } from '../book/book.ts';
import { dueWithin } from '../book/due/within.ts';
import { readInterval } from '../records/kinds/interval.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import type { ServiceLine } from '../records/model.ts';
import { column, fact, heading, joined, row, stack } from './wording/blocks.ts';
import { distanceText } from './wording/distance.ts';
import { ours } from './wording/ours.ts';
import { valueText, writtenText } from './wording/value.ts';
import { dueGroups, dueText, lastDone } from './service-due.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const wanted = new Set(dueGroups.slice(0, 4).map((group) => group.state));

export const serviceSheet = defineView({
  id: 'service-sheet',
  purpose: 'A sheet to work down: what is due, what it takes, found and left, a tick each.',
  needs: 'machine',
  options: ['of', 'within'],
  blocks: (context) => {
    const due = dueOn(context);
    return stack(head(context), table(context, due), tail(context));
  },
});

/** What is due now; all that is scheduled (`of: all`); or what falls due within a time or a distance (`within: 3 months or 300 mi`). */
function dueOn({ book, options }: ViewContext): readonly DueLine[] {
  if (options['of'] === 'all') return book.due;
  const horizon = readInterval(options['within'] ?? '');
  if (horizon.ok) return dueWithin(book.due, book.today, horizon.value);
  return book.due.filter((one) => wanted.has(one.state));
}

function head({ book, say }: ViewContext): readonly Block[] {
  const facts: Block = {
    type: 'facts',
    across: 2,
    facts: [...fact(say('Last on the clock'), distanceText(say, book.odometer.now))],
  };
  const today: Block = {
    type: 'grid',
    columns: [column(say('Date'), 3), column(say('On the clock today'), 3), column(say('Hand'), 3)],
    rows: 1,
  };
  return [facts, today];
}

/** What a service uses and sets: fluids with quantity and grade, settings with value and range. */
export function serviceNeeds(context: ViewContext, service: ServiceLine): string {
  const { book, say } = context;
  const texts = service.uses.map((id) => {
    const fluid = book.records.maker.fluids.find((one) => one.id === id);
    if (fluid !== undefined) {
      const quantity = fluid.quantity === undefined ? say('quantity not known') : writtenText(fluid.quantity);
      return [fluid.name, quantity, fluid.grade].filter((text) => text !== undefined).join(', ');
    }
    const setting = book.settings.get(id);
    if (setting === undefined)
      return book.limits.get(id)?.name ?? `${id.replaceAll('-', ' ')} (${say('not in the book')})`;
    const range = setting.range === undefined ? undefined : `(${printRange(setting.range)})`;
    return [setting.name, valueText(setting.value) ?? say('not known'), range]
      .filter((text) => text !== undefined)
      .join(' ');
  });
  return texts.join('; ');
}

function serviceRow(context: ViewContext, due: DueLine): Row {
  const { say } = context;
  const { service } = due;
  const limit = service.wear === undefined ? undefined : context.book.limits.get(service.wear)?.limit;
  const needs = [serviceNeeds(context, service), limit === undefined ? '' : `${say('limit')} ${printRange(limit)}`];
  const what = [say(service.action), ...needs.filter((text) => text !== '')].join('; ');
  return row(
    { box: 'tick', id: `service/${service.id}` },
    joined([[{ kind: 'strong', text: ours(context, service.at, service.item) }], what], ': '),
    { box: 'line', id: `service/${service.id}/found` },
    { box: 'line', id: `service/${service.id}/left` },
    joined([lastDone(context, due), dueText(context, due)], '; '),
  );
}

function table(context: ViewContext, due: readonly DueLine[]): Block {
  const { say } = context;
  return {
    type: 'table',
    columns: [
      column(say('Done'), 1, 'centre'),
      column(say('Item, what to do, what it takes'), 9),
      column(say('Found'), 3),
      column(say('Left'), 3),
      column(say('Last, due'), 5),
    ],
    rows: due.map((one) => serviceRow(context, one)),
    empty: say('Nothing is due by the records.'),
    use: 'work',
  };
}

function tail({ say }: ViewContext): readonly Block[] {
  return [
    heading(2, say('Last of all'), 'last-of-all'),
    {
      type: 'checklist',
      items: [
        {
          id: 'service/road-test',
          text: say('A short ride, then a look for leaks and loose things with the engine off'),
        },
        { id: 'service/entered', text: say('Entered in the records, with found and left') },
      ],
    },
    {
      type: 'grid',
      caption: say('Found besides'),
      columns: [
        column(say('What'), 6),
        column(say('Stops, limits until, not done, note'), 4),
        column(say('Record'), 2),
      ],
      rows: 2,
    },
  ];
}

// Rides: the last ones as recorded, then an empty grid in the unit of the clock, with fuel, oil, weather and what happened.
import type { Job, Ride } from '../records/model.ts';
import type { Block, Column } from '../sheet/sheet.ts';
import { column, heading, row } from './wording/blocks.ts';
import { spanText } from './wording/day.ts';
import { writtenText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** So many of the last rides are printed above the grid; the log has them all. */
const lastOnes = 4;

export const rideLog = defineView({
  id: 'ride-log',
  purpose: 'The last rides with clock, fuel and oil, and an empty grid for those to come.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => [...recorded(context), ...empty(context)],
});

function columns({ book, say }: ViewContext): readonly Column[] {
  const unit = book.records.machine.clock.at(-1)?.unit.symbol;
  const withUnit = (head: string): string => (unit === undefined ? say(head) : `${say(head)}, ${unit}`);
  return [
    column(say('Date'), 2.4),
    column(withUnit('Out'), 2, 'right'),
    column(withUnit('In'), 2, 'right'),
    column(say('Fuel'), 1.7, 'right'),
    column(say('Oil'), 1.7, 'right'),
    column(say('Weather'), 2.4),
    column(say('What happened, what to do'), 6),
  ];
}

/** Without the unit where the column has it. */
function onClock(context: ViewContext, value: Ride['out']): string {
  if (value === undefined) return '';
  const symbol = context.book.records.machine.clock.at(-1)?.unit.symbol;
  const text = writtenText(value);
  return symbol === value.unit.symbol ? text.replace(`\u00a0${symbol}`, '') : text;
}

function rideRow(context: ViewContext, job: Job, ride: Ride): ReturnType<typeof row> {
  return row(
    { text: [{ kind: 'link', text: spanText(job.date), to: `job:${job.id}` }] },
    onClock(context, ride.out),
    onClock(context, ride.in),
    ride.fuel === undefined ? '' : writtenText(ride.fuel),
    ride.oil === undefined ? '' : writtenText(ride.oil),
    ride.weather ?? '',
    ride.whatHappened ?? '',
  );
}

function recorded(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const rides = book.records.jobs.flatMap((job) => (job.ride === undefined ? [] : [{ job, ride: job.ride }]));
  return [
    heading(2, say('The last rides in the records'), 'last-rides'),
    {
      type: 'table',
      columns: columns(context),
      rows: rides.slice(-lastOnes).map(({ job, ride }) => rideRow(context, job, ride)),
      empty: say('No ride is recorded.'),
      use: 'read',
    },
  ];
}

function empty(context: ViewContext): readonly Block[] {
  return [
    heading(2, context.say('To be written down'), 'to-be-written-down'),
    { type: 'grid', columns: columns(context), rows: 10 },
  ];
}

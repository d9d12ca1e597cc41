// A ride and a run: out and in, fuel and oil, weather, what happened; and the run log, minute by minute.
import type { Job, Ride } from '../../records/model.ts';
import type { Block } from '../../sheet/sheet.ts';
import { column, fact, heading, paragraphs, row, sentence } from '../wording/blocks.ts';
import type { Fact } from '../wording/blocks.ts';
import { count } from '../wording/count.ts';
import { writtenText } from '../wording/value.ts';
import type { ViewContext } from '../view.ts';

/** Blocks of the ride and of the run log, or nothing. */
export function jobRun(context: ViewContext, job: Job, within: string): readonly Block[] {
  const { say } = context;
  const ride: readonly Block[] =
    job.ride === undefined
      ? []
      : [
          heading(3, say('Ride'), `${within}ride`),
          { type: 'facts', across: 3, facts: rideFacts(say, job.ride) },
          ...happened(job.ride),
        ];
  if (job.runLog.length === 0) return ride;
  return [
    ...ride,
    heading(3, say('Run log'), `${within}run-log`),
    {
      type: 'table',
      columns: [column(say('Minute'), 1, 'right'), column(say('Seen and heard'), 8)],
      rows: job.runLog.map((line) => row(count(line.minute), line.saw)),
      empty: '',
      use: 'read',
    },
  ];
}

/** A ride in one line: out and in, fuel, weather, what happened; nothing where there was none. */
export function rideWords({ say }: ViewContext, job: Job): readonly string[] {
  if (job.ride === undefined) return [];
  const facts = rideFacts(say, job.ride).map((one) => `${one.name} ${typeof one.value === 'string' ? one.value : ''}`);
  const told = [facts.join(', '), job.ride.whatHappened].filter((text) => text !== undefined && text !== '');
  return [`${say('Ride')}: ${told.join('; ')}`];
}

function happened({ whatHappened }: Ride): readonly Block[] {
  return whatHappened === undefined ? [] : [paragraphs(sentence(whatHappened))];
}

function rideFacts(say: (words: string) => string, ride: Ride): readonly Fact[] {
  return [
    ...fact(say('Out'), ride.out === undefined ? undefined : writtenText(ride.out)),
    ...fact(say('In'), ride.in === undefined ? undefined : writtenText(ride.in)),
    ...fact(say('Fuel'), ride.fuel === undefined ? undefined : writtenText(ride.fuel)),
    ...fact(say('Oil'), ride.oil === undefined ? undefined : writtenText(ride.oil)),
    ...fact(say('Weather'), ride.weather),
  ];
}

// What was read off a clock that machine.yaml does not describe: nothing is counted from it, and nobody would notice.
import type { Place, Problem } from '../../problem/problem.ts';
import { printFigure, written } from '../../figure/print.ts';
import type { Written } from '../../quantity/quantity.ts';
import type { InstrumentPeriod, Job, Reading } from '../../records/model.ts';
import type { Ground } from '../ground.ts';
import { plainName } from '../names.ts';
import { workDone } from '../work-by-verb.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

interface Shown {
  readonly reads: Written<'distance ridden'>;
  readonly at: Place;
}

/** The first reading that a record has of its clock. */
function shownIn({ file, odometer, ride }: Job): Shown | undefined {
  if (odometer !== undefined) return { reads: odometer, at: { file, path: ['odometer'] } };
  if (ride?.out !== undefined) return { reads: ride.out, at: { file, path: ['ride', 'out'] } };
  return ride?.in === undefined ? undefined : { reads: ride.in, at: { file, path: ['ride', 'in'] } };
}

/** How many periods began before or on the day where none of them covers it; undefined where one does. */
function gapOf(periods: readonly InstrumentPeriod[], day: string): number | undefined {
  const covered = periods.some(({ from, to }) => from.day <= day && (to === undefined || day <= to.day));
  return covered ? undefined : periods.filter(({ from }) => from.day <= day).length;
}

/** Asked once of each time that no clock is described for: its first reading stands for all. */
function outsidePeriods({ jobs, records }: Ground): readonly Problem[] {
  const { clock } = records.machine;
  const asked = new Set<number>();
  return jobs.flatMap((job) => {
    const shown = shownIn(job);
    const gap = shown === undefined ? undefined : gapOf(clock, job.date.from);
    if (shown === undefined || gap === undefined || asked.has(gap)) return [];
    asked.add(gap);
    const reads = printFigure(written(shown.reads, shown.at));
    const what =
      clock.length === 0
        ? 'machine.yaml describes no clock: only what it counted from one reading to the next is known'
        : 'machine.yaml describes no clock for that day: it is not counted';
    const hint = `write it under “clock” in machine.yaml: \`- {id: clock-of-${job.date.from.slice(0, 4)}, unit: ${shown.reads.unit.symbol}, from: {date: ${job.date.from}, reads: ${shown.reads.text}}}\``;
    return [query('clock-not-described', shown.at, `${reads} on ${job.date.from}, and ${what}`, hint)];
  });
}

const clockNames: ReadonlySet<string> = new Set(['speedometer', 'speedo', 'odometer', 'mileometer', 'clock']);

/** Another clock was fitted, and no period of machine.yaml begins with it. */
function changedUntold(ground: Ground): readonly Problem[] {
  const { clock } = ground.records.machine;
  const replaced = workDone(ground, 'replaced').map(({ job, entry }) => ({ job, thing: entry.thing, at: entry.at }));
  const fitted = ground.jobs.flatMap((job) =>
    job.parts.flatMap(({ part, state, at }) => (state === 'fitted' ? [{ job, thing: part, at }] : [])),
  );
  const asked = new Set<Job>();
  return [...replaced, ...fitted].flatMap(({ job, thing, at }) => {
    if (asked.has(job) || !clockNames.has(plainName(thing))) return [];
    if (clock.some(({ from }) => from.day >= job.date.from && from.day <= job.date.to)) return [];
    asked.add(job);
    const message = `${thing} changed on ${job.date.from}, and no clock of machine.yaml begins that day`;
    const hint =
      'end the old one under “clock” with what it read, and begin the new one with what it reads; if it is the same one mended, say so in an answer';
    return [query('clock-not-described', at, message, hint)];
  });
}

/** The one item that running hours are counted from. */
const runningHours = plainName('running-hours');
const saysClock = /\b(?:clock|odometer|mileometer|speedometer|hours?)\b/u;

/** Readings of an item of the owner’s own words that can only be a clock’s: a second one, a meter of hours. */
function underOwnName(ground: Ground): readonly Problem[] {
  const asked = new Set<string>();
  return ground.jobs.flatMap(({ readings }) =>
    readings.flatMap((reading) => {
      const name = ground.key(reading.item);
      if (asked.has(name) || name === runningHours || ground.limits.has(name) || ground.settings.has(name)) return [];
      const kind = saysClock.test(name) ? kindOf(reading) : undefined;
      if (kind === undefined) return [];
      asked.add(name);
      return kind === 'duration' || kind === 'running time'
        ? [
            query(
              'clock-not-described',
              reading.at,
              `${reading.item}: hours are counted only from readings of the item running-hours`,
              'if it is the hour meter, write `item: running-hours`',
            ),
          ]
        : [
            query(
              'clock-not-described',
              reading.at,
              `${reading.item}: machine.yaml does not describe this clock; nothing is counted from it`,
              'write the clock that counts for the machine under “clock” in machine.yaml, and its readings under `odometer`',
            ),
          ];
    }),
  );
}

function kindOf({ found, left }: Reading): string | undefined {
  const first = [...found, ...left].find(({ value }) => value.kind === 'read')?.value;
  const dimension = first?.kind === 'read' ? first.written.unit.dimension : undefined;
  return dimension === 'distance ridden' || dimension === 'duration' || dimension === 'running time'
    ? dimension
    : undefined;
}

/** All of them, in the order of the records. Linear. */
export const clockNotDescribed: Look = ({ ground }) => [
  ...outsidePeriods(ground),
  ...changedUntold(ground),
  ...underOwnName(ground),
];

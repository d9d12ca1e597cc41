// The odometer only goes forward while one instrument is on the machine; both places are named when it does not.
import type { Place, Problem } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import type { Written } from '../quantity/quantity.ts';
import type { InstrumentPeriod, Job, Records } from './model.ts';
import { below } from './reference.ts';
import { keptFlat } from './runs.ts';

interface Shown {
  readonly day: Day;
  readonly reads: Written<'distance ridden'>;
  readonly at: Place;
}

/** Readings that run backwards inside an instrument period, readings in another unit than the clock's, periods that overlap. */
export function checkClock({ machine, jobs }: Records): readonly Problem[] {
  const shown = shownByAll(jobs);
  return [
    ...overlaps(machine.clock),
    ...machine.clock.flatMap((period, i) => {
      const before = machine.clock[i - 1];
      const mine = shown.filter((one) => belongs(one, period, before));
      const ends = endsOf(period);
      return [
        ...otherUnit(mine, period),
        ...backwards([...ends.slice(0, 1), ...mine, ...ends.slice(1)], period),
        ...ridesBackwards(rides(jobs), period, before),
      ];
    }),
  ];
}

const shownByAll = keptFlat(shownBy);
const rides = keptFlat((job: Job) => (job.ride?.out === undefined || job.ride.in === undefined ? [] : [job]));

function shownBy(job: Job): readonly Shown[] {
  const top = { file: job.file, path: [] };
  const out = job.ride?.out;
  const back = job.ride?.in;
  // Of a job over several days the clock is that of the first; a ride's end is that of the last.
  return [
    ...(job.odometer === undefined ? [] : [{ day: job.date.from, reads: job.odometer, at: below(top, 'odometer') }]),
    ...(out === undefined ? [] : [{ day: job.date.from, reads: out, at: below(top, 'ride', 'out') }]),
    ...(back === undefined ? [] : [{ day: job.date.to, reads: back, at: below(top, 'ride', 'in') }]),
  ].toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.reads.quantity - b.reads.quantity));
}

/** On the day of a change the reading tells which clock it was: one under the old clock's last figure, or over the new one's first. */
function belongs(one: Shown, period: InstrumentPeriod, before: InstrumentPeriod | undefined): boolean {
  if (one.day < period.from.day || (period.to !== undefined && one.day > period.to.day)) return false;
  if (one.day === period.from.day && before?.to?.day === one.day) return !nearOld(one, before, period);
  const { to } = period;
  if (to === undefined || one.day !== to.day || to.reads === undefined) return true;
  return one.reads.quantity <= to.reads.quantity;
}

function nearOld(one: Shown, before: InstrumentPeriod, period: InstrumentPeriod): boolean {
  const last = before.to?.reads?.quantity;
  const first = period.from.reads?.quantity ?? 0;
  return last !== undefined && one.reads.quantity <= last && (one.reads.quantity < first || last < first);
}

function endsOf(period: InstrumentPeriod): readonly [] | readonly Shown[] {
  const first = period.from.reads;
  const last = period.to?.reads;
  const from =
    first === undefined ? [] : [{ day: period.from.day, reads: first, at: below(period.at, 'from', 'reads') }];
  if (period.to === undefined || last === undefined) return from;
  return [...from, { day: period.to.day, reads: last, at: below(period.at, 'to', 'reads') }];
}

/** A ride that ends lower than it began: readings of one day are put upwards, and would hide it. */
function ridesBackwards(
  jobs: readonly Job[],
  period: InstrumentPeriod,
  before: InstrumentPeriod | undefined,
): readonly Problem[] {
  return jobs.flatMap(({ file, date, ride }) => {
    if (ride?.out === undefined || ride.in === undefined || ride.in.quantity >= ride.out.quantity) return [];
    // On the day of a change nobody can tell which clock was read.
    if (date.from !== date.to || date.from === period.from.day || date.from === period.to?.day) return [];
    const place = (key: string): Place => ({ file, path: ['ride', key] });
    const [out, back] = [
      { day: date.from, reads: ride.out, at: place('out') },
      { day: date.to, reads: ride.in, at: place('in') },
    ];
    return belongs(out, period, before) && belongs(back, period, before) ? backwards([out, back], period) : [];
  });
}

function backwards(shown: readonly Shown[], period: InstrumentPeriod): readonly Problem[] {
  // A clock that turns over, or was set back, runs backwards without anybody's slip.
  if (period.state !== 'working' && period.state !== 'dead') return [];
  return shown.flatMap((now, i): readonly Problem[] => {
    const before = shown[i - 1];
    if (before === undefined || now.reads.quantity >= before.reads.quantity) return [];
    return [
      {
        code: 'odometer-went-back',
        severity: 'problem',
        at: now.at,
        message: `The clock reads ${now.reads.text} on ${now.day}, less than ${before.reads.text} on ${before.day}.`,
        hint: 'Correct the wrong one of the two; if the clock was changed or turned over, say so under `clock` in machine.yaml.',
        also: [{ at: before.at, message: `It read ${before.reads.text} here.` }],
      },
    ];
  });
}

function otherUnit(shown: readonly Shown[], period: InstrumentPeriod): readonly Problem[] {
  return shown
    .filter((one) => one.reads.unit.symbol !== period.unit.symbol)
    .map((one) => ({
      code: 'odometer-other-unit' as const,
      severity: 'problem' as const,
      at: one.at,
      message: `The clock on the machine that day counts ${period.unit.symbol}, but this is in ${one.reads.unit.symbol}.`,
      hint: `Write what the clock shows, in ${period.unit.symbol}.`,
      also: [{ at: below(period.at, 'unit'), message: 'Its unit is given here.' }],
    }));
}

function overlaps(clock: readonly InstrumentPeriod[]): readonly Problem[] {
  return clock.flatMap((period, i): readonly Problem[] => {
    const before = clock[i - 1];
    if (before === undefined || (before.to !== undefined && before.to.day <= period.from.day)) return [];
    return [
      {
        code: 'clock-periods-overlap',
        severity: 'problem',
        at: below(period.at, 'from'),
        message: `This clock went on before “${before.id}” came off.`,
        hint: 'Put the periods in order, oldest first, and end each before the next begins.',
        also: [{ at: before.at, message: 'The one before it.' }],
      },
    ];
  });
}

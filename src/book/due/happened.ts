// What happened to the machine that a schedule asks about: services done, rebuilds, storage, hard use, heat cycles, hours.
import type { Day } from '../../quantity/day.ts';
import type { Job, ServiceLine } from '../../records/model.ts';
import { changedFluids, type ChangedBy } from './changed-fluids.ts';
import { renewedParts } from './rebuilt.ts';
import { isServedBeforeRide } from './ride-of-record.ts';
import type { Ground } from '../ground.ts';
import { hasWords, plainName } from '../names.ts';
import type { OdometerWork } from '../odometer.ts';

/** A record as a schedule counts from it. */
export interface Moment {
  readonly job: Job;
  readonly order: number;
  readonly day: Day;
  /** Distance of the machine, metres; absent when no reading is near enough to tell. */
  readonly metres?: number;
  /** Running time on the hour meter, seconds. */
  readonly seconds?: number;
  /** Its record went on to a ride, which counts as ridden since; `metres` are those before it. */
  readonly beforeRide?: true;
}

export interface Happened {
  /** By id of the service line, oldest first. */
  readonly done: ReadonlyMap<string, readonly Moment[]>;
  /** Last service that is due by distance: the yearly check is not needed in its year. */
  readonly distanceService?: Moment;
  /** Last renewal by key of the part; `engine` for anything that makes a running-in. */
  readonly rebuilt: ReadonlyMap<string, Moment>;
  readonly stored?: Moment;
  readonly returned?: Moment;
  /** Last ride under a severe use, by its word. */
  readonly severe: ReadonlyMap<string, Moment>;
  readonly heat?: Moment;
  /** Last tightening by key of the fastener. */
  readonly tightened: ReadonlyMap<string, Moment>;
  readonly secondsNow?: number;
}

/** Every line that is done when a line is done: itself and what it includes, however deep. */
function withIncluded(lines: readonly ServiceLine[]): (id: string) => readonly string[] {
  const includes = new Map(lines.map((line) => [line.id, line.includes]));
  const known = new Map<string, readonly string[]>();
  return (id) => {
    const before = known.get(id);
    if (before !== undefined) return before;
    const all = new Set([id]);
    for (const one of all) for (const inner of includes.get(one) ?? []) all.add(inner);
    known.set(id, [...all]);
    return [...all];
  };
}

const none: readonly string[] = [];
const rideAfter = 0.5;

/** What a record ticked, and what its work says without a tick: a fluid that was changed. */
function servicesOf(job: Job, included: (id: string) => readonly string[], changed: ChangedBy): readonly string[] {
  let named = job.services;
  for (const entry of job.work) {
    const byWork = changed(entry);
    if (byWork.length > 0) named = [...named, ...byWork];
  }
  const [first, ...others] = named;
  if (first === undefined) return none;
  return others.length === 0 ? included(first) : [...new Set(named.flatMap(included))];
}

const hourMeter = plainName('running-hours');

/** The hour meter, kept as readings of the item `running-hours`. */
function secondsOf(job: Job, ground: Ground): number | undefined {
  for (const reading of job.readings) {
    if (ground.key(reading.item) !== hourMeter) continue;
    const value = [...reading.found, ...reading.left].at(-1)?.value;
    if (value?.kind === 'read') return value.written.quantity;
  }
  return undefined;
}

function severeWords(job: Job, words: readonly string[]): readonly string[] {
  if (job.ride === undefined || words.length === 0) return [];
  const said = `${job.ride.weather ?? ''} ${job.ride.whatHappened ?? ''}`;
  return words.filter((word) => hasWords(said, word));
}

const backInUse: ReadonlySet<string> = new Set(['return', 'waking']);

/** Where the services of a record count from, when its ride came after them. */
function beforeItsRide(job: Job, moment: Moment, odometer: OdometerWork): Moment {
  if (!isServedBeforeRide(job)) return moment;
  const metres = odometer.metresBefore(job.id, moment.day);
  return { ...moment, beforeRide: true, ...(metres === undefined ? {} : { metres }) };
}

/** Walks the records once. */
export function whatHappened(ground: Ground, odometer: OdometerWork, lines: readonly ServiceLine[]): Happened {
  const included = withIncluded(lines);
  const fluids = new Map(ground.maker.fluids.map((fluid) => [ground.key(fluid.id), fluid]));
  const changed = changedFluids(lines, fluids, ground.key);
  const byDistance = new Set(lines.filter((line) => line.every?.distance !== undefined).map((line) => line.id));
  const words = [...new Set(lines.flatMap((line) => Object.keys(line.severe)))];
  const done = new Map<string, Moment[]>();
  const rebuilt = new Map<string, Moment>();
  const severe = new Map<string, Moment>();
  const tightened = new Map<string, Moment>();
  const last: {
    distanceService?: Moment;
    stored?: Moment;
    returned?: Moment;
    heat?: Moment;
    runningIn?: Moment;
    secondsNow?: number;
  } = {};
  ground.jobs.forEach((job, order) => {
    const day = job.date.from;
    const metres = odometer.metresAt(job.id, day);
    const seconds = secondsOf(job, ground) ?? last.secondsNow;
    if (seconds !== undefined) last.secondsNow = seconds;
    const moment: { -readonly [K in keyof Moment]: Moment[K] } = { job, order, day };
    if (metres !== undefined) moment.metres = metres;
    if (seconds !== undefined) moment.seconds = seconds;
    const served = servicesOf(job, included, changed);
    const service = served.length === 0 ? moment : beforeItsRide(job, moment, odometer);
    for (const id of served) {
      const list = done.get(id) ?? [];
      list.push(service);
      done.set(id, list);
      if (byDistance.has(id)) last.distanceService = service;
    }
    for (const part of renewedParts(job, ground.key)) rebuilt.set(part, moment);
    // A ride that came after the services of its record stands between it and the next.
    for (const word of severeWords(job, words))
      severe.set(word, isServedBeforeRide(job) ? { ...moment, order: order + rideAfter } : moment);
    for (const entry of job.work) if (entry.verb === 'tightened') tightened.set(ground.key(entry.thing), moment);
    if (job.heatCycles > 0) last.heat = moment;
    if (job.kind === 'lay-up') last.stored = moment;
    if (backInUse.has(job.kind)) last.returned = moment;
    if (job.kind === 'running-in') last.runningIn ??= moment;
  });
  if (!rebuilt.has('engine') && last.runningIn !== undefined) rebuilt.set('engine', last.runningIn);
  const { runningIn: _first, ...rest } = last;
  return { done, rebuilt, severe, tightened, ...rest };
}

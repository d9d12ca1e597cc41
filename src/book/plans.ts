// A job that is not finished, as a sheet needs it: procedures for this machine, blanks with permanent ids, the next bag.
import type { Procedure, Step } from '../records/content-model.ts';
import type { Job, Reading, ReadingValue } from '../records/model.ts';
import { appliesTo } from './applies.ts';
import { nextBag } from './bags.ts';
import type { Blank, JobPlan, SeriesPoint } from './book.ts';
import type { Ground } from './ground.ts';
import type { SeriesWork } from './series.ts';
import { measureOf, verdictOf } from './verdict.ts';

/** States in which a job still needs its sheet. */
const unfinished: ReadonlySet<string> = new Set(['planned', 'under way', 'waiting']);

function forThisMachine(procedure: Procedure, ground: Ground): Procedure {
  const fits = (step: Step): boolean => appliesTo(step.applies, ground.records.machine.features);
  return { ...procedure, steps: procedure.steps.filter(fits), assembly: procedure.assembly.filter(fits) };
}

function proceduresOf(job: Job, ground: Ground): readonly Procedure[] {
  const known = job.procedures.flatMap((id) => ground.content.procedures.get(id) ?? []);
  const fitting = known.filter((procedure) => appliesTo(procedure.applies, ground.records.machine.features));
  return fitting.map((procedure) => forThisMachine(procedure, ground));
}

/** Items in the printed order: as the procedures come to them, then what the record names besides. An item the maker's data does not have is asked for only by the record itself. */
function itemsOf(job: Job, procedures: readonly Procedure[], ground: Ground): ReadonlyMap<string, string> {
  const items = new Map<string, string>();
  const add = (written: string): void => {
    const key = ground.key(written);
    if (!items.has(key)) items.set(key, ground.limits.get(key)?.id ?? ground.settings.get(key)?.id ?? written);
  };
  const known = (written: string): boolean =>
    ground.limits.has(ground.key(written)) || ground.settings.has(ground.key(written));
  const steps = procedures.flatMap((one) =>
    [...one.steps, ...one.assembly].flatMap((step) => [...step.measure, ...step.set]),
  );
  for (const item of [...steps, ...procedures.flatMap((one) => one.measure)]) if (known(item)) add(item);
  for (const reading of job.readings) add(reading.item);
  return items;
}

function likeness(item: string, position: string, condition: readonly string[]): string {
  return `${item}|${position}|${[...condition].toSorted().join(', ')}`;
}

/** The last reading of each item, position and condition. */
export type LastLike = ReadonlyMap<string, readonly SeriesPoint[]>;

/** Points that count (not struck, read), by item, position and condition, oldest first. */
export function likePoints(series: SeriesWork): LastLike {
  const found = new Map<string, SeriesPoint[]>();
  for (const [item, one] of series.byItem) {
    for (const point of one.points) {
      if (point.corrected !== undefined || point.value.kind !== 'read') continue;
      const keys = new Set([likeness(item, point.position, point.condition), `${item}|${point.position}|*`]);
      for (const like of keys) {
        const list = found.get(like) ?? [];
        list.push(point);
        found.set(like, list);
      }
    }
  }
  return found;
}

/** Positions of the maker's data; where it names none, those of this record, else those read before. */
function positionsOf(item: string, readings: readonly Reading[], { ground, series }: Maker): readonly string[] {
  const named = ground.limits.get(item)?.positions ?? [];
  const written = readings.flatMap((reading) => [...reading.found, ...reading.left].map((one) => one.position));
  const own = written.filter((position) => !(named.length > 0 && position === ''));
  const before = (series.byItem.get(item)?.points ?? []).map((point) => point.position);
  const all = [...new Set(named.length > 0 || own.length > 0 ? [...named, ...own] : before)];
  return all.length === 0 ? [''] : all;
}

function valueAt(readings: readonly Reading[], side: 'found' | 'left', position: string): ReadingValue | undefined {
  return readings.flatMap((reading) => reading[side]).findLast((one) => one.position === position);
}

interface Maker {
  readonly ground: Ground;
  readonly series: SeriesWork;
  readonly like: LastLike;
}

function blankOf(
  job: Job,
  item: string,
  name: string,
  position: string,
  readings: readonly Reading[],
  { ground, series, like }: Maker,
): Blank {
  const limit = series.limits.get(item);
  const setting = ground.settings.get(item);
  const written = readings.find((reading) => reading.condition.length > 0)?.condition;
  const condition = written ?? limit?.condition ?? setting?.condition ?? [];
  const wanted = condition.length === 0 ? `${item}|${position}|*` : likeness(item, position, condition);
  const last = like.get(wanted)?.findLast((point) => point.job !== job);
  const [found, left] = [valueAt(readings, 'found', position)?.value, valueAt(readings, 'left', position)?.value];
  const tool = readings.find((reading) => reading.instrument !== undefined)?.instrument;
  const instrument = tool === undefined ? undefined : ground.instruments.get(ground.key(tool));
  const filled = left !== undefined && left.kind !== 'unknown' ? left : found;
  const verdict = verdictOf(filled, measureOf(limit, setting), instrument);
  const value = setting?.value.kind === 'read' ? setting.value.written.unit.symbol : undefined;
  const id = `${job.id}/${name}/${position}`;
  return {
    id,
    foundId: `${id}/found`,
    leftId: `${id}/left`,
    item: name,
    name: limit?.name ?? setting?.name ?? name,
    position,
    ...(limit === undefined ? {} : { limit }),
    ...(setting === undefined ? {} : { setting }),
    unit: limit?.unit.symbol ?? setting?.range?.unit.symbol ?? value ?? unitOfPoint(last) ?? '',
    ...(last === undefined ? {} : { last }),
    ...(found === undefined ? {} : { found }),
    ...(left === undefined ? {} : { left }),
    ...(verdict === undefined ? {} : { verdict }),
  };
}

function unitOfPoint(point: SeriesPoint | undefined): string | undefined {
  return point?.value.kind === 'read' ? point.value.written.unit.symbol : undefined;
}

/**
 * The number that the job keeps for itself; else the next after every bag that another record fills or keeps, so that the numbers
 * of its sheet stay when the first of its own bags is written down.
 */
function firstBag(job: Job, ground: Ground): number {
  if (job.bagsFrom !== undefined) return job.bagsFrom;
  const others = ground.all.filter((one) => one !== job);
  const filled = others.flatMap((one) => one.work.map((entry) => entry.bag));
  const kept = others.flatMap((one) => (one.bagsFrom === undefined ? [] : [lastBagKept(one, one.bagsFrom, ground)]));
  return nextBag([...filled, ...kept.map(String)]);
}

/** The last number of those that a job keeps: one for each step that fills a bag. */
function lastBagKept(job: Job, from: number, ground: Ground): number {
  const steps = proceduresOf(job, ground).flatMap((procedure) => procedure.steps);
  return from + steps.filter((step) => step.bag).length - 1;
}

/** A plan for every unfinished job, in order. */
export function jobPlans(ground: Ground, series: SeriesWork): readonly JobPlan[] {
  const jobs = ground.all.filter((job) => unfinished.has(job.state));
  const maker: Maker = { ground, series, like: jobs.length === 0 ? new Map() : likePoints(series) };
  return jobs.map((job) => {
    const procedures = proceduresOf(job, ground);
    const bagFrom = firstBag(job, ground);
    const blanks = [...itemsOf(job, procedures, ground)].flatMap(([item, name]) => {
      const readings = job.readings.filter((reading) => ground.key(reading.item) === item);
      return positionsOf(item, readings, maker).map((position) => blankOf(job, item, name, position, readings, maker));
    });
    return { job, procedures, blanks, bagFrom };
  });
}

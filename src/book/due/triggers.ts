// What makes a service due now, whatever its interval: storage, hard use, a heat cycle on fresh nuts, wear at its limit.
import type { ServiceLine } from '../../records/model.ts';
import type { DueState, SeriesPoint } from '../book.ts';
import type { Ground } from '../ground.ts';
import type { SeriesWork } from '../series.ts';
import { isTooClose } from '../verdict.ts';
import type { Happened, Moment } from './happened.ts';
import { severeInterval } from './steps.ts';

export interface Trigger {
  readonly state: DueState;
  readonly why: string;
}

function afterStorage(line: ServiceLine, happened: Happened, last: Moment | undefined): Trigger | undefined {
  const { stored, returned } = happened;
  if (!line.afterStorage) return undefined;
  if (stored !== undefined && stored.order > (returned?.order ?? -1)) {
    return { state: 'coming', why: `laid up since ${stored.day}: to be done before it is used again` };
  }
  if (returned === undefined || (last !== undefined && last.order >= returned.order)) return undefined;
  return { state: 'due', why: `back from storage on ${returned.day} and not done since` };
}

function atOnce(line: ServiceLine, happened: Happened, last: Moment | undefined): Trigger | undefined {
  const hard = severeInterval(line, happened, last?.order ?? -1);
  if (hard?.interval !== 'at once') return undefined;
  return { state: 'due', why: `ridden in ${hard.word} since it was last done: at once after that` };
}

/** Nuts tightened and then run hot have to be tightened again, cold: once, until the service is entered. */
function afterHeat(
  line: ServiceLine,
  happened: Happened,
  last: Moment | undefined,
  ground: Ground,
): Trigger | undefined {
  if (line.action !== 'tighten' || happened.heat === undefined) return undefined;
  const fresh = line.uses.map((id) => happened.tightened.get(ground.key(id))).filter((one) => one !== undefined);
  const newest = fresh.toSorted((a, b) => b.order - a.order)[0];
  if (newest === undefined || newest.order >= happened.heat.order || (last?.order ?? -1) > newest.order)
    return undefined;
  return { state: 'due', why: `tightened ${newest.day}, run hot ${happened.heat.day}: to be tightened again, cold` };
}

function printed(point: SeriesPoint): string {
  const text = point.value.kind === 'read' ? point.value.written.text : '?';
  return point.position === '' ? text : `${point.position} ${text}`;
}

/** The newest counting reading of each position since the part was renewed. */
function newestReadings(line: ServiceLine, series: SeriesWork, ground: Ground): readonly SeriesPoint[] {
  const one = line.wear === undefined ? undefined : series.byItem.get(ground.key(line.wear));
  const renewed = one?.basis.at(-1)?.from;
  const newest = new Map<string, SeriesPoint>();
  for (const point of one?.points ?? []) {
    const counts =
      point.corrected === undefined && point.value.kind === 'read' && (renewed === undefined || point.day >= renewed);
    if (counts) newest.set(point.position, point);
  }
  return [...newest.values()];
}

/** Not worn to its limit: nothing is due; a line without an interval waits for its limit alone. */
function atEase(line: ServiceLine): DueState {
  return line.every === undefined && line.first === undefined ? 'at its limit' : 'not due';
}

function wearWithout(line: ServiceLine, series: SeriesWork, ground: Ground): Trigger {
  const one = line.wear === undefined ? undefined : series.byItem.get(ground.key(line.wear));
  const renewed = one?.basis.at(-1);
  if (renewed !== undefined)
    return { state: atEase(line), why: `renewed ${renewed.from} (${renewed.what}), not measured since` };
  const state = line.unknown === 'due now' ? 'due' : 'not known';
  return {
    state,
    why: `goes by wear, and no reading is on record: ${(line.wear ?? 'it').replaceAll('-', ' ')} to be looked at`,
  };
}

/** Renewed at its limit, by measuring and not by an interval. */
export function byWear(line: ServiceLine, series: SeriesWork, ground: Ground): Trigger | undefined {
  if (line.wear === undefined) return undefined;
  const points = newestReadings(line, series, ground);
  const past = points.filter((point) => point.verdict === 'past the limit');
  if (past.length > 0)
    return {
      state: 'overdue',
      why: `past its limit: ${past.map(printed).join(', ')} on ${past.at(-1)?.day ?? ''}`,
    };
  const close = points.filter((point) => isTooClose(point.verdict));
  if (close.length > 0)
    return {
      state: 'due',
      why: `too close to its limit to call: ${close.map(printed).join(', ')}`,
    };
  if (points.length === 0) return wearWithout(line, series, ground);
  return {
    state: atEase(line),
    why: `goes by wear; last read ${points.map(printed).join(', ')} on ${points.at(-1)?.day ?? ''}`,
  };
}

/** Everything besides the interval that speaks for doing it now. */
export function triggersOf(
  line: ServiceLine,
  happened: Happened,
  last: Moment | undefined,
  series: SeriesWork,
  ground: Ground,
): readonly Trigger[] {
  return [
    byWear(line, series, ground),
    atOnce(line, happened, last),
    afterHeat(line, happened, last, ground),
    afterStorage(line, happened, last),
  ].filter((one) => one !== undefined);
}

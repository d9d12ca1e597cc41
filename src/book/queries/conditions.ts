// Readings taken in another condition than the book asks for.
import { unlikeTo } from '../unlike.ts';
import type { Job, Reading, ReadingValue } from '../../records/model.ts';
import { keptByRun } from '../../records/runs.ts';
import type { Ground } from '../ground.ts';
import type { Namer } from '../names.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** The last record of a run that read each item, with its readings of it: one of them in the right condition is enough. */
const lastInRuns = keptByRun((run, keyOf: Namer): ReadonlyMap<string, readonly Reading[]> => {
  const last = new Map<string, { readonly job: Job; readonly readings: Reading[] }>();
  for (const job of run) {
    for (const reading of job.readings) {
      if (!reading.found.some(isRead) && !reading.left.some(isRead)) continue;
      const key = keyOf(reading.item);
      const known = last.get(key);
      if (known?.job === job) known.readings.push(reading);
      else last.set(key, { job, readings: [reading] });
    }
  }
  return new Map([...last].map(([key, { readings }]) => [key, readings]));
});

function lastReadings(ground: Ground): ReadonlyMap<string, readonly Reading[]> {
  return new Map(lastInRuns(ground.jobs, ground.key).flatMap((last) => [...last]));
}

function isRead({ value }: ReadingValue): boolean {
  return value.kind === 'read';
}

/** Read last in another condition than the book asks for, or in one that nobody wrote down. */
export const conditionOfReading: Look = ({ ground }) =>
  [...lastReadings(ground)].flatMap(([key, readings]) => {
    const wanted = ground.limits.get(key)?.condition ?? ground.settings.get(key)?.condition ?? [];
    const unlike = unlikeTo(wanted);
    const odd = readings.find((one) => one.condition.length === 0 || unlike(one.condition));
    const right = readings.some((one) => one.condition.length > 0 && !unlike(one.condition));
    if (wanted.length === 0 || odd === undefined || right) return [];
    const asks = wanted.join(', ');
    if (odd.condition.length === 0) {
      const message = `${odd.item}: the book asks for ${asks}, and the reading does not say how it was taken`;
      return [query('reading-without-condition', odd.at, message, 'write `condition:`')];
    }
    const message = `${odd.item}: read ${odd.condition.join(', ')}, and the book asks for ${asks}`;
    return [query('reading-in-other-condition', odd.at, message, 'read it again as the book says')];
  });

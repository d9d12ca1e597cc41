// Corrections: what else had used the wrong value, and corrections that correct nothing.
import type { Job } from '../../records/model.ts';
import { makeReach, othersOf } from '../disturbance.ts';
import type { Ground } from '../ground.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** A correction whose old value stands nowhere. */
export const correctionOfNothing: Look = ({ series }) =>
  series.corrections
    .filter((one) => one.replaced.length === 0)
    .map(({ correction }) =>
      query(
        'correction-of-nothing',
        correction.at,
        `no reading of ${correction.item} in ${correction.record} is ${correction.was}`,
        'write the old value as it stands there',
      ),
    );

/** Records that read an item, oldest first. */
function readersByItem(ground: Ground): ReadonlyMap<string, readonly Job[]> {
  const found = new Map<string, Job[]>();
  for (const job of ground.jobs) {
    for (const key of new Set(job.readings.map((reading) => ground.key(reading.item)))) {
      const list = found.get(key) ?? [];
      list.push(job);
      found.set(key, list);
    }
  }
  return found;
}

/** What was set or judged after the wrong value, and not again since it was corrected. */
export const correctedValueWasUsed: Look = ({ series, ground }) => {
  if (series.corrections.length === 0) return [];
  const reach = makeReach(ground);
  const readers = readersByItem(ground);
  const said = new Set<string>();
  return series.corrections.flatMap(({ correction, replaced, job }) => {
    const [first] = replaced;
    if (first === undefined) return [];
    const from = ground.order.get(first.job) ?? 0;
    const until = ground.order.get(job) ?? 0;
    const users = othersOf(ground.key(correction.item), reach).flatMap((item) => {
      const read = (readers.get(item) ?? []).filter((one) => (ground.order.get(one) ?? 0) >= from);
      const again = read.some((one) => (ground.order.get(one) ?? 0) >= until);
      return again ? [] : read.map((one) => `${item} (${one.date.from})`);
    });
    if (users.length === 0) return [];
    const message = `${correction.item} in ${correction.record} was ${correction.was} and is ${correction.is}; set after the wrong value: ${users.join(', ')}`;
    if (said.has(message)) return [];
    said.add(message);
    return [query('corrected-value-was-used', correction.at, message, 'check those again')];
  });
};

// What was adjusted between two readings: spokes pulled up, a setting changed, anything tightened that moves what is measured.
import { makeReach, othersOf, wasSet } from '../disturbance.ts';
import type { SeriesPoint } from '../book.ts';
import type { Ground } from '../ground.ts';

/** True when the item was adjusted after the first reading's record and not after the second's. */
export type Adjusted = (item: string, before: SeriesPoint, after: SeriesPoint) => boolean;

/** By key of the item, the orders of the records that adjusted what moves it. Linear in the records. */
function ordersByItem(ground: Ground): ReadonlyMap<string, readonly number[]> {
  const reach = makeReach(ground);
  const found = new Map<string, number[]>();
  const note = (key: string, order: number): void => {
    const list = found.get(key);
    if (list === undefined) found.set(key, [order]);
    else list.push(order);
  };
  for (const job of ground.jobs) {
    const order = ground.order.get(job) ?? 0;
    for (const entry of job.work) {
      if (entry.verb === 'tightened') for (const key of reach(ground.key(entry.thing))) note(key, order);
    }
    for (const reading of job.readings) {
      if (wasSet(reading)) for (const key of othersOf(ground.key(reading.item), reach)) note(key, order);
    }
  }
  return found;
}

/** Asked only where a reading went backwards, so the records are walked the first time that one did. */
export function adjustmentsOf(ground: Ground): Adjusted {
  let orders: ReadonlyMap<string, readonly number[]> | undefined;
  return (item, before, after) => {
    orders ??= ordersByItem(ground);
    const [from, to] = [ground.order.get(before.job) ?? 0, ground.order.get(after.job) ?? 0];
    return orders.get(item)?.some((order) => order > from && order <= to) === true;
  };
}

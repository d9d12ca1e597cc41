// Parts that are in two places, or paid for twice.
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { Job, PartEntry } from '../../records/model.ts';
import type { Found, Look } from './query.ts';
import { query } from './query.ts';

/** Given to another machine, and fitted here again with nothing said of its coming back. */
export const partOnTwoMachines: Look = ({ ground }) => {
  const away = new Map<string, { readonly to: string; readonly on: string }>();
  return ground.jobs.flatMap((job) => {
    const fitted = job.parts.flatMap((part) => {
      const key = ground.key(part.part);
      const gone = away.get(key);
      const got = part.movedFrom ?? part.from ?? part.price;
      if (part.movedTo !== undefined) away.set(key, { to: part.movedTo, on: job.date.from });
      else if (got !== undefined) away.delete(key);
      else if (gone !== undefined && part.state === 'fitted') return [{ thing: part.part, at: part.at, ...gone }];
      return [];
    });
    const refitted = job.work.flatMap((entry) => {
      const gone = away.get(ground.key(entry.thing));
      return gone !== undefined && entry.verb === 'refitted' ? [{ thing: entry.thing, at: entry.at, ...gone }] : [];
    });
    return [...fitted, ...refitted].map(({ thing, at, to, on }) =>
      query(
        'part-on-two-machines',
        at,
        `${thing} went to ${to} on ${on}, and is fitted here on ${job.date.from}`,
        'write `moved from:` when it came back',
      ),
    );
  });
};

interface Bought {
  readonly job: Job;
  readonly part: PartEntry;
}

/** Part entries whose price the sum counts, oldest first. */
function counted({ costs }: Found): readonly Bought[] {
  return costs.entries.flatMap(({ job, entry }) => ('part' in entry ? [{ job, part: entry }] : []));
}

function sameBuy(a: PartEntry, b: PartEntry): boolean {
  return a.number === b.number && a.price?.minor === b.price?.minor && a.price?.currency === b.price?.currency;
}

/** Priced when it came and priced again when it was fitted: one buy, counted twice. */
export const partCountedTwice: Look = (found) => {
  const here = new Map<string, Bought>();
  return counted(found).flatMap((one) => {
    const key = found.ground.key(one.part.part);
    const before = here.get(key);
    if (one.part.state !== 'fitted') {
      here.set(key, one);
      return [];
    }
    here.delete(key);
    if (
      before === undefined ||
      before.job === one.job ||
      !sameBuy(before.part, one.part) ||
      one.part.price === undefined
    )
      return [];
    const message = `${one.part.part}: ${formatMoney(one.part.price)} here and in ${before.job.id}, counted twice`;
    return [
      query('part-counted-twice', one.part.at, message, 'leave the price where it was paid, and take it out here'),
    ];
  });
};

/** Sent back, with its price still in the sum and no refund after it. */
export const returnedStillCounted: Look = (found) => {
  const { ground } = found;
  if (!ground.jobs.some((job) => job.parts.some((part) => part.state === 'returned'))) return [];
  const paid = new Map(counted(found).map(({ part }) => [ground.key(part.part), part]));
  const refunds = ground.jobs.flatMap((job) => job.money.filter((entry) => entry.kind === 'refund'));
  return ground.jobs.flatMap((job) =>
    job.parts.flatMap((part) => {
      if (part.state !== 'returned') return [];
      const key = ground.key(part.part);
      const price = paid.get(key)?.price;
      if (price === undefined) return [];
      const back = refunds.some(({ amount, for: what }) => amount.minor === price.minor || ground.key(what) === key);
      if (back) return [];
      const message = `${part.part} was returned, and its ${formatMoney(price)} are still counted`;
      return [query('returned-still-counted', part.at, message, 'write the refund under `money:`')];
    }),
  );
};

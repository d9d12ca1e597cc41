// Parts that are in two places, or paid for twice.
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { Job, PartEntry } from '../../records/model.ts';
import { keptFlat } from '../../records/runs.ts';
import type { Found, Look } from './query.ts';
import { query } from './query.ts';

/** Given to another machine, and fitted here again with nothing said of its coming back. */
export const partOnTwoMachines: Look = ({ ground }) => {
  // Hardly a machine gives a part away: then there is nothing to follow.
  if (movedAway(ground.jobs).length === 0) return [];
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
  return costs().entries.flatMap(({ job, entry }) =>
    job !== undefined && 'part' in entry ? [{ job, part: entry }] : [],
  );
}

/** Priced, and not yet fitted: only from here can one buy be priced again. */
const onTheWay = keptFlat(({ parts }: Job) =>
  parts.filter(({ price, state }) => price !== undefined && (state === 'ordered' || state === 'here')),
);

const returned = keptFlat(({ parts }: Job) => parts.filter(({ state }) => state === 'returned'));
const movedAway = keptFlat(({ parts }: Job) => parts.filter(({ movedTo }) => movedTo !== undefined));

/** Priced when it came and priced again when it was fitted: one buy, and the sum counts it once. */
export const partCountedTwice: Look = ({ ground, costs }) => {
  if (onTheWay(ground.all).length === 0) return [];
  return costs().pricedAgain.flatMap(({ part, before }) => {
    if (part.price === undefined) return [];
    const message = `${part.part}: ${formatMoney(part.price)} here and in ${before.id}, taken for one buy and counted once`;
    return [
      query(
        'part-counted-twice',
        part.at,
        message,
        'leave the price where it was paid; for a second buy, write another number',
      ),
    ];
  });
};

/** Sent back, with its price still in the sum and no refund after it. */
export const returnedStillCounted: Look = (found) => {
  const { ground } = found;
  if (returned(ground.jobs).length === 0) return [];
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

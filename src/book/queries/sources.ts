// Where the maker’s data comes from.
import { frameFits } from '../for-this-frame.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Data for other frame numbers that nothing for this one replaces. */
export const dataForOtherFrames: Look = ({ ground }) => {
  const { maker, machine } = ground.records;
  const kept = new Set(
    [
      ...ground.maker.fasteners,
      ...ground.maker.limits,
      ...ground.maker.settings,
      ...ground.maker.fluids,
      ...ground.maker.services,
    ].map((one) => one.id),
  );
  return [...maker.fasteners, ...maker.limits, ...maker.settings, ...maker.fluids, ...maker.services]
    .filter((one) => frameFits(one.source, machine) === 'out' && !kept.has(one.id))
    .map((one) =>
      query(
        'data-for-other-frames',
        one.at,
        `${one.id}: the book gives it for other frame numbers; left out`,
        'find the value for this frame number',
      ),
    );
};

/** A limit with no page to look it up on: one query a book. */
export const limitWithoutPage: Look = ({ ground }) => {
  const bare = ground.maker.limits.filter((limit) => limit.source.page === undefined);
  const books = new Map<string, (typeof bare)[number][]>();
  for (const limit of bare) books.set(limit.at.file, [...(books.get(limit.at.file) ?? []), limit]);
  return [...books.values()].flatMap((limits) => {
    const [first] = limits;
    if (first === undefined) return [];
    return [
      query(
        'limit-without-page',
        first.at,
        `no page is given for ${limits.map((limit) => limit.id).join(', ')}`,
        'write `page:`, so that it can be looked up again',
      ),
    ];
  });
};

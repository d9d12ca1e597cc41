// Where the maker’s data comes from.
import type { Source } from '../../records/model.ts';
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

/** Words by which a book says of itself that it is for no machine in particular. */
const general =
  /\b(?:general|generic|standard)\b.*\b(?:tables?|torques?|chart|values)\b|\b(?:tables?|torques?|chart)\b.*\bgeneral\b/iu;

/** A torque from a general table on a joint that is no cover, bracket or trim: such tables differ by two, and know nothing of the joint. */
export const torqueFromGeneralTable: Look = ({ ground }) =>
  ground.maker.fasteners
    .filter(({ duty, torque, source }) => duty === undefined && torque !== undefined && isGeneral(source))
    .map(({ name, at, source }) =>
      query(
        'torque-from-general-table',
        at,
        `${name}: its torque is from “${source.title}”, a general table, and it holds more than a cover`,
        'find the maker’s value, or leave `torque: "?"`: the blank keeps the hold point held',
      ),
    );

function isGeneral({ title, edition, remark }: Source): boolean {
  return [title, edition, remark].some((text) => text !== undefined && general.test(text));
}

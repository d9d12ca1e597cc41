// One thing measured under two names that are one slip apart: each has half of the history, and neither shows the wear.
import { nearest } from '../../records/nearest.ts';
import type { Series } from '../book.ts';
import { plainName } from '../names.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Shorter names are too easily like each other. */
const shortest = 5;

/** The name and what is left of it without any one letter: names one slip apart have one of these in common. */
function marks(name: string): readonly string[] {
  return [name, ...Array.from(name, (_letter, index) => name.slice(0, index) + name.slice(index + 1))];
}

/** Numbered or lettered things (`tappet 1`, `tappet 2`, `lamp a`) are meant to be different. */
function onlyTheirMark(one: string, other: string): boolean {
  const bare = (name: string): string => name.replaceAll(/\d+|\b\p{L}\b/gu, '');
  return bare(one) === bare(other);
}

/** Items of the owner's own words; the maker's ids are held to their spelling when they are read. Linear in the names. */
export const itemNamedTwoWays: Look = ({ series }) => {
  const first = new Map<string, Series>();
  return series.series.flatMap((one) => {
    if (one.limit !== undefined || one.setting !== undefined) return [];
    const name = plainName(one.item);
    if (name.length < shortest) return [];
    const own = marks(name);
    const alike = own.map((mark) => first.get(mark)).find((other) => other !== undefined && isSlip(other, name));
    for (const mark of own) if (!first.has(mark)) first.set(mark, one);
    const at = one.points[0]?.at;
    if (alike === undefined || at === undefined) return [];
    const message = `${one.item}: one letter from ${alike.item}, which is measured too (${alike.points[0]?.job.id ?? ''})`;
    return [query('item-named-two-ways', at, message, 'if both are one thing, give them one name')];
  });
};

function isSlip(other: Series, name: string): boolean {
  const known = plainName(other.item);
  return known !== name && !onlyTheirMark(known, name) && nearest(name, [known], 1).length > 0;
}

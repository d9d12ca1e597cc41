// Maker's data that no sheet asks for, because the procedures know it by another id: its blank and its figure would stay off the paper.
import { appliesTo } from '../applies.ts';
import type { Ground } from '../ground.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

type Kind = 'measured' | 'fastened';

/** One word in common says little: a bore may be that of a jet. */
const leastWords = 2;

/** `Clutch springs, free length` and `clutch-spring-free-length` have the same words. */
function wordsOf(text: string): ReadonlySet<string> {
  const words = text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  return new Set(words.map((word) => (word.length > 3 && !word.endsWith('ss') ? word.replace(/s$/u, '') : word)));
}

function isWithin(few: ReadonlySet<string>, many: ReadonlySet<string>): boolean {
  return few.size >= leastWords && [...few].every((word) => many.has(word));
}

/** Every id that a procedure for this machine gives a blank to, by what it is. */
function asked({ content, records }: Ground): Readonly<Record<Kind, ReadonlySet<string>>> {
  const { features } = records.machine;
  const procedures = [...content.procedures.values()].filter(({ applies }) => appliesTo(applies, features));
  const steps = procedures
    .flatMap((one) => [...one.steps, ...one.assembly])
    .filter(({ applies }) => appliesTo(applies, features));
  return {
    measured: new Set([
      ...procedures.flatMap(({ measure }) => measure),
      ...steps.flatMap((one) => [...one.measure, ...one.set]),
    ]),
    fastened: new Set(steps.flatMap(({ fasteners }) => fasteners)),
  };
}

/** The id that has the same words as a name, or all of them and fewest more; none where two are as near. */
function nearest(name: string, ids: Iterable<string>): string | undefined {
  const words = wordsOf(name);
  const near = [...ids]
    .map((id) => ({ id, its: wordsOf(id) }))
    .filter(({ its }) => isWithin(words, its) || isWithin(its, words))
    .map(({ id, its }) => ({ id, off: Math.abs(its.size - words.size) }))
    .toSorted((a, b) => a.off - b.off);
  const [first, second] = near;
  return second !== undefined && second.off === first?.off ? undefined : first?.id;
}

/** A fastener, limit or setting whose id no procedure names, and whose name is that of an id which the procedures ask for and no book gives. */
export const askedByAnotherId: Look = ({ ground }) => {
  const wanted = asked(ground);
  const { fasteners, limits, settings } = ground.maker;
  const look = (kind: Kind, data: readonly (typeof fasteners | typeof limits | typeof settings)[number][]) => {
    // A sheet finds a reading by its name as well, a fastener by its id alone.
    const same = kind === 'fastened' ? (id: string) => id : ground.key;
    const given = new Set(data.map(({ id }) => same(id)));
    const known = new Set([...wanted[kind]].map((id) => same(id)));
    const open = [...wanted[kind]].filter((id) => !given.has(same(id)));
    return data.flatMap(({ id, name, at }) => {
      if (known.has(same(id))) return [];
      const other = nearest(name, open);
      if (other === undefined) return [];
      const message = `${name} (${id}): the procedures ask for it as ${other}, so it is on none of their sheets`;
      return [query('asked-by-another-id', at, message, `write id: ${other}, here and where records name it`)];
    });
  };
  return [...look('measured', [...limits, ...settings]), ...look('fastened', fasteners)];
};

// Names of pages that differ even where two things have names alike.
import { anchor } from './blocks.ts';

/** An anchor for each thing, in their order; the second of the same name gets a number. */
export function uniqueAnchors<T>(things: readonly T[], nameOf: (thing: T) => string): ReadonlyMap<T, string> {
  const times = new Map<string, number>();
  const taken = new Set<string>();
  return new Map(
    things.map((thing) => {
      // A name is a file’s as well, and file systems end somewhere.
      const plain = anchor(nameOf(thing)).slice(0, 80);
      let name = plain;
      while (taken.has(name)) {
        const next = (times.get(plain) ?? 1) + 1;
        times.set(plain, next);
        name = `${plain}-${String(next)}`;
      }
      taken.add(name);
      return [thing, name] as const;
    }),
  );
}

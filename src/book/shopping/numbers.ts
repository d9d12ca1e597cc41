// Part numbers that were superseded: from the old one to the new and from the new one to the old, wherever one record says so.
import type { PartEntry } from '../../records/model.ts';

export interface NumbersOf {
  /** Numbers that this one took the place of, the nearest first. */
  readonly older: readonly string[];
  /** Numbers that took its place, the nearest first. */
  readonly newer: readonly string[];
}

/** Follows one link after another; a ring, which is a problem of its own, ends the walk. */
function walk(from: string, next: ReadonlyMap<string, string>): readonly string[] {
  const found: string[] = [];
  for (let here = next.get(from); here !== undefined && here !== from && !found.includes(here); here = next.get(here))
    found.push(here);
  return found;
}

/** What is known of the numbers of every part, both ways. */
export function superseded(parts: readonly PartEntry[]): (number: string) => NumbersOf {
  const older = new Map<string, string>();
  const newer = new Map<string, string>();
  for (const { number, bookNumber, supersedes } of parts) {
    const own = number ?? bookNumber;
    if (own === undefined || supersedes === undefined) continue;
    older.set(own, supersedes);
    newer.set(supersedes, own);
  }
  return (number) => ({ older: walk(number, older), newer: walk(number, newer) });
}

/** `P50-175, in the book 175-13101-50, now 175-13111-00 (was …)`: every number under which it may lie on a shelf. */
export function numbersText(part: PartEntry, of: (number: string) => NumbersOf): string {
  const { number, bookNumber } = part;
  const own = [...new Set([number, bookNumber].filter((one) => one !== undefined))];
  const others = own.map(of);
  const newer = [...new Set(others.flatMap((one) => one.newer))].filter((one) => !own.includes(one));
  const older = [...new Set(others.flatMap((one) => one.older))].filter((one) => !own.includes(one));
  return [
    ...(number === undefined ? [] : [number]),
    ...(bookNumber === undefined || bookNumber === number ? [] : [`in the book ${bookNumber}`]),
    ...(newer.length === 0 ? [] : [`now ${newer.join(', now ')}`]),
    ...(older.length === 0 ? [] : [`before ${older.join(', before ')}`]),
  ].join(', ');
}

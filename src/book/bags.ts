// Bags: what is in each now, and which are empty again.
import { byText } from './in-order.ts';
import type { BagLine, ClosedLine, OpenLine } from './book.ts';

/** Numbers as numbers, then words. */
export function byBag(a: string, b: string): number {
  const [left, right] = [Number(a), Number(b)];
  const numbers = Number.isFinite(left) && Number.isFinite(right);
  return numbers && left !== right ? left - right : byText(a, b);
}

function addTo(map: Map<string, OpenLine[]>, bag: string | undefined, line: OpenLine | undefined): void {
  if (bag === undefined) return;
  const list = map.get(bag) ?? [];
  if (line !== undefined) list.push(line);
  map.set(bag, list);
}

/** One line a bag that was ever named; a lost part is off but in no bag. */
export function bagLines(open: readonly OpenLine[], closed: readonly ClosedLine[]): readonly BagLine[] {
  const contents = new Map<string, OpenLine[]>();
  for (const line of closed) addTo(contents, line.entry.bag, undefined);
  for (const line of open) addTo(contents, line.entry.bag, line.entry.verb === 'lost' ? undefined : line);
  return [...contents.keys()].toSorted(byBag).map((bag) => {
    const inside = contents.get(bag) ?? [];
    return { bag, contents: inside, emptied: inside.length === 0 };
  });
}

/** The number of the next bag, over everything ever written: a number is not used twice while its label may be about. */
export function nextBag(bags: Iterable<string | undefined>): number {
  let highest = 0;
  for (const bag of bags) {
    const number = Number(bag);
    if (Number.isSafeInteger(number) && number > highest) highest = number;
  }
  return highest + 1;
}

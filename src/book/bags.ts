// Bags: what is in each now, and which are empty again.
import { byText } from './in-order.ts';
import { plainName } from './names.ts';
import type { BagLine, ClosedLine, OpenLine } from './book.ts';

/** Numbers as numbers, then words. */
export function byBag(a: string, b: string): number {
  const [left, right] = [Number(a), Number(b)];
  const numbers = Number.isFinite(left) && Number.isFinite(right);
  return numbers && left !== right ? left - right : byText(a, b);
}

function addTo(map: Map<string, OpenLine[]>, bag: string | undefined, line: OpenLine | undefined): void {
  if (bag === undefined) return;
  const list = map.get(bag);
  if (list === undefined) map.set(bag, line === undefined ? [] : [line]);
  else if (line !== undefined) list.push(line);
}

/** One line a bag that was ever named; a lost part is off but in no bag, and so is one that was sent out. */
export function bagLines(open: readonly OpenLine[], closed: readonly ClosedLine[]): readonly BagLine[] {
  const contents = new Map<string, OpenLine[]>();
  for (const line of closed) addTo(contents, line.entry.bag, undefined);
  const away = new Set(open.filter((line) => line.state === 'sent out').map((line) => plainName(line.entry.thing)));
  for (const line of open) {
    const elsewhere = line.entry.verb === 'lost' || away.has(plainName(line.entry.thing));
    addTo(contents, line.entry.bag, elsewhere ? undefined : line);
  }
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

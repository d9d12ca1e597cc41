// What is off and would have to be on: a test or a step that needs a thing fitted waits until it is back.
import type { OrderStep } from '../records/content-model.ts';
import type { Book, OpenLine } from './book.ts';
import { keptOfBook } from './kept-of-book.ts';
import { byItsFasteners, usualNames } from './names-of-machine.ts';
import { makeNamer, withoutSide } from './names.ts';
import type { Namer } from './names.ts';

/** Away from its place, whether it lies in a bag or at the reborer’s. */
const away: ReadonlySet<OpenLine['state']> = new Set(['off', 'sent out']);

interface NotOnIt {
  readonly lines: ReadonlyMap<string, OpenLine>;
  /** By a word that a step is named by: what must be on for that step. */
  readonly neededBy: ReadonlyMap<string, readonly string[]>;
  readonly key: Namer;
}

const notOnIt = keptOfBook((book): NotOnIt => {
  const key = makeNamer(book.records.maker);
  const usual = usualNames(book, key);
  const lines = new Map<string, OpenLine>();
  for (const line of book.off.open) {
    if (!away.has(line.state)) continue;
    const name = key(line.entry.thing);
    // One barrel of two is enough to have no compression, so a side counts for the thing.
    const names = [name, withoutSide(name)];
    for (const one of [...names, ...names.flatMap((each) => usual.get(each) ?? []), ...byItsFasteners(book, line, key)])
      if (!lines.has(one)) lines.set(one, line);
  }
  const neededBy = new Map<string, readonly string[]>();
  for (const { id, by, fitted = [] } of (book.content.orders ?? []).flatMap((order) => order.steps))
    for (const word of [id, ...by].map(key)) neededBy.set(word, [...(neededBy.get(word) ?? []), ...fitted]);
  return { lines, neededBy, key };
});

/** The first of the things that is off; undefined when none is, as far as the records say. */
export function firstNotOn(book: Book, things: readonly string[]): OpenLine | undefined {
  const { lines, key } = notOnIt(book);
  return things.map((thing) => lines.get(key(thing))).find((line) => line !== undefined);
}

/** The same for a check, a service or a reading by its id: what a step of the order that it is needs. */
export function notOnFor(book: Book, id: string): OpenLine | undefined {
  const { neededBy, key } = notOnIt(book);
  return firstNotOn(book, neededBy.get(key(id)) ?? []);
}

/** Things that a step takes off, by the procedures that it is. */
export function takenOffBy(book: Book, step: OrderStep): readonly string[] {
  return step.by.flatMap((id) => book.content.procedures.get(id)?.steps.flatMap(({ off }) => off) ?? []);
}

/** `cylinder head is off since 2024-07-13`. */
export function notOnText({ entry, since }: OpenLine): string {
  return `${entry.thing} off since ${since}`;
}

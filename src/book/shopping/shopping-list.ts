// The shopping list of one machine or of a workshop: by supplier, what holds a hold point first, each thing once whatever asks for it.
import type { HoldPoint } from '../../records/content-model.ts';
import type { PartEntry } from '../../records/model.ts';
import type { Book, OpenLine } from '../book.ts';
import { plainName } from '../names.ts';
import { impliedNeeds, isCovered } from './implied.ts';
import type { Implied } from './implied.ts';
import { partLines } from './part-lines.ts';
import type { PartLine } from './part-lines.ts';
import { needsOf, tripsFor } from './trips.ts';
import type { Trip } from './trips.ts';

export type Of<T> = T & { readonly machine: string };

export interface ShoppingList {
  readonly trips: readonly Trip[];
  readonly coming: readonly Of<PartLine>[];
  readonly here: readonly Of<PartLine>[];
  readonly away: readonly Of<OpenLine>[];
  /** Old parts that a deposit waits for. */
  readonly cores: readonly Of<PartLine>[];
  /** Used up by the jobs, on no list and in no drawer. */
  readonly implied: readonly Of<Implied>[];
  /** Where to buy is held: the point before money is spent. */
  readonly spendingHeld: readonly { readonly machine: string; readonly point: HoldPoint; readonly open: number }[];
}

/** The list over some machines. A workshop's own file is read with each of them; its stock counts once. */
export function shoppingList(books: readonly Book[]): ShoppingList {
  const all = books.map((book) => ({ book, machine: book.records.machine.name, lines: partLines(book) }));
  const needs = all.map(({ book, lines }) => needsOf(book, lines));
  const drawer = needs.flatMap(({ stock }) => stock);
  const inState = (state: PartEntry['state']): readonly Of<PartLine>[] =>
    all.flatMap(({ machine, lines }) =>
      lines.filter(({ part }) => part.state === state).map((line) => ({ ...line, machine })),
    );
  return {
    trips: tripsFor(needs),
    coming: inState('ordered'),
    here: inState('here'),
    away: all.flatMap(({ book, machine }) =>
      book.off.open.filter(({ state }) => state === 'sent out').map((line) => ({ ...line, machine })),
    ),
    cores: all.flatMap(({ book, machine }) => coresOf(book).map((line) => ({ ...line, machine }))),
    implied: all.flatMap(({ book, machine, lines }) =>
      impliedNeeds(book)
        .filter(
          (one) =>
            !isCovered(
              one,
              lines,
              drawer.map(({ part }) => part),
            ),
        )
        .map((one) => ({ ...one, machine })),
    ),
    spendingHeld: all.flatMap(({ book, machine }) => {
      const held = book.holds.find(({ point }) => point.id === 'before-spending');
      if (held === undefined || held.clear || held.released !== undefined || onTheRoad(book)) return [];
      return [{ machine, point: held.point, open: held.because?.length ?? 0 }];
    }),
  };
}

/** Once it is on the road the papers were looked at by others than us. */
function onTheRoad({ records }: Book): boolean {
  return records.jobs.some(
    ({ ride, state }) => ride !== undefined && ride.where !== 'private land' && state !== 'planned',
  );
}

/** Bought on exchange, and the old part is not back with them yet: by the last record that speaks of it. */
function coresOf(book: Book): readonly PartLine[] {
  const newest = new Map<string, PartLine>();
  for (const { job, part } of book.parts)
    if (part.core !== undefined)
      newest.set(plainName(part.part), { job, part, key: plainName(part.part), count: part.count });
  return [...newest.values()].filter(({ part }) => part.state !== 'wanted' && part.core?.returned === undefined);
}

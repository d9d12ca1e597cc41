// The shopping list of one machine or of a workshop: by supplier, what holds a hold point first, each thing once whatever asks for it.
import type { HoldPoint } from '../../records/content-model.ts';
import type { Fastener, Job, PartEntry, Supplier } from '../../records/model.ts';
import type { Book, OpenLine } from '../book.ts';
import { heldUntil } from '../held-until.ts';
import { byText } from '../in-order.ts';
import { plainName } from '../names.ts';
import { impliedNeeds, isCovered } from './implied.ts';
import type { Implied } from './implied.ts';
import { partLines } from './part-lines.ts';
import type { PartLine } from './part-lines.ts';
import { nextOpen } from './shop-hours.ts';
import type { OpenOn } from './shop-hours.ts';

/** Who asks for a thing. */
export interface AskedBy {
  readonly machine: string;
  readonly job: Job;
  readonly count: number;
}
export interface ToGet {
  readonly part: PartEntry;
  readonly count: number;
  readonly askedBy: readonly AskedBy[];
  readonly fastener?: Fastener;
  /** The earliest hold point that stays held until one of the jobs is done. */
  readonly holds?: HoldPoint;
  /** That point is held as things stand now; else it will be, once the job is begun. */
  readonly heldNow: boolean;
  /** It lies in the drawer. */
  readonly inDrawer: boolean;
}
export interface Trip {
  /** Empty where the parts name no supplier. */
  readonly name: string;
  readonly supplier?: Supplier;
  readonly next?: OpenOn;
  readonly toGet: readonly ToGet[];
}
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

interface Asked extends PartLine {
  readonly machine: string;
  readonly heldNow: boolean;
  readonly holds?: HoldPoint;
}

/** Equal things by number and size where they are known, else by name: asked for by two, bought in one go. */
function identity({ part, key }: Asked): string {
  const { number, bookNumber, size, from, onlyIf } = part;
  return [number ?? bookNumber ?? key, size ?? '', plainName(from ?? ''), onlyIf ?? ''].join('|');
}

function rank(holds: HoldPoint | undefined): number {
  return holds?.order ?? Number.MAX_SAFE_INTEGER;
}

function asksOf(book: Book, lines: readonly PartLine[]): readonly Asked[] {
  const { name: machine } = book.records.machine;
  const held = new Map<Job, HoldPoint | undefined>();
  return lines.map((line) => {
    if (!held.has(line.job)) held.set(line.job, heldUntil(book, line.job));
    const holds = held.get(line.job);
    const begun = line.job.state !== 'planned';
    const heldNow = begun && book.holds.some(({ point, clear }) => point.id === holds?.id && !clear);
    return { ...line, machine, heldNow, ...(holds === undefined ? {} : { holds }) };
  });
}

/** What was lost on the records and that no part is wanted for under its name. */
function lost(book: Book, lines: readonly PartLine[]): readonly PartLine[] {
  const named = new Set(lines.map(({ key }) => key));
  return book.off.open.flatMap(({ entry, job, remaining }): readonly PartLine[] => {
    const known = book.fasteners.get(entry.thing);
    const name = known?.name ?? entry.thing;
    if (entry.verb !== 'lost' || named.has(plainName(name))) return [];
    const note = entry.fromBag === undefined ? 'lost' : `lost with bag ${entry.fromBag}`;
    const count = remaining ?? entry.count ?? known?.count ?? 1;
    const part = { part: name, count, state: 'wanted', note, at: entry.at } as const;
    return [{ job, part, key: plainName(name), count, ...(known === undefined ? {} : { fastener: known }) }];
  });
}

function oneLine(asks: readonly Asked[], stock: ReadonlySet<string>): ToGet | undefined {
  const [first] = asks;
  if (first === undefined) return undefined;
  const holds = asks.map((one) => one.holds).toSorted((a, b) => rank(a) - rank(b))[0];
  return {
    part: first.part,
    count: asks.reduce((sum, { count }) => sum + count, 0),
    askedBy: asks.map(({ machine, job, count }) => ({ machine, job, count })),
    heldNow: asks.some(({ heldNow, holds: own }) => heldNow && own === holds),
    inDrawer: asks.some(({ key, part }) => stock.has(key) || (part.number !== undefined && stock.has(part.number))),
    ...(holds === undefined ? {} : { holds }),
    ...(first.fastener === undefined ? {} : { fastener: first.fastener }),
  };
}

function merged(asks: readonly Asked[], stock: ReadonlySet<string>): readonly ToGet[] {
  const groups = new Map<string, Asked[]>();
  for (const one of asks) {
    const group = groups.get(identity(one));
    if (group === undefined) groups.set(identity(one), [one]);
    else group.push(one);
  }
  return [...groups.values()].flatMap((group) => oneLine(group, stock) ?? []);
}

/** Pressing first, what may not be needed last. */
function inTheShop(a: ToGet, b: ToGet): number {
  const later = ({ part }: ToGet): number => (part.onlyIf === undefined ? 0 : 1);
  return later(a) - later(b) || rank(a.holds) - rank(b.holds) || byText(a.part.part, b.part.part);
}

function trips(books: readonly Book[], all: readonly ToGet[]): readonly Trip[] {
  const suppliers = books.flatMap(({ records }) => records.workshop?.suppliers ?? []);
  const today = books[0]?.today;
  const names = new Map(all.map(({ part }) => [plainName(part.from ?? ''), part.from ?? '']));
  const made = [...names].map(([key, name]): Trip => {
    const supplier = suppliers.find((one) => plainName(one.name) === key);
    const next = supplier === undefined || today === undefined ? undefined : nextOpen(supplier, today);
    const toGet = all.filter(({ part }) => plainName(part.from ?? '') === key).toSorted(inTheShop);
    return { name, toGet, ...(supplier === undefined ? {} : { supplier }), ...(next === undefined ? {} : { next }) };
  });
  const pressing = ({ toGet }: Trip): number => Math.min(...toGet.map(({ holds }) => rank(holds)));
  const soon = ({ next }: Trip): number => next?.inDays ?? 99;
  const unnamed = ({ name }: Trip): number => (name === '' ? 1 : 0);
  return made.toSorted(
    (a, b) => unnamed(a) - unnamed(b) || pressing(a) - pressing(b) || soon(a) - soon(b) || byText(a.name, b.name),
  );
}

/** The list over some machines. A workshop's own file is read with each of them; its stock counts once. */
export function shoppingList(books: readonly Book[]): ShoppingList {
  const all = books.map((book) => ({ book, machine: book.records.machine.name, lines: partLines(book) }));
  const drawer = books.flatMap(({ records }) => records.workshop?.stock ?? []).filter(({ count }) => count !== 0);
  const stock = new Set(
    drawer.flatMap(({ part, number }) => [plainName(part), ...(number === undefined ? [] : [number])]),
  );
  const asks = all.flatMap(({ book, lines }) =>
    asksOf(book, [...lines.filter(({ part }) => part.state === 'wanted'), ...lost(book, lines)]),
  );
  const inState = (state: PartEntry['state']): readonly Of<PartLine>[] =>
    all.flatMap(({ machine, lines }) =>
      lines.filter(({ part }) => part.state === state).map((line) => ({ ...line, machine })),
    );
  return {
    trips: trips(books, merged(asks, stock)),
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

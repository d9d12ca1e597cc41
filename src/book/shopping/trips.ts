// What some machines want, laid together by supplier: each thing once whatever asks for it, what holds a hold point first.
import type { Day } from '../../quantity/day.ts';
import type { HoldPoint } from '../../records/content-model.ts';
import type { Fastener, Job, PartEntry, StockLine, Supplier } from '../../records/model.ts';
import type { Book } from '../book.ts';
import { heldUntil } from '../held-until.ts';
import { byText } from '../in-order.ts';
import { plainName } from '../names.ts';
import { partLines } from './part-lines.ts';
import type { PartLine } from './part-lines.ts';
import { nextOpen } from './shop-hours.ts';
import type { OpenOn } from './shop-hours.ts';

/** As much of a record as a list leads to. */
type NamedJob = Pick<Job, 'id' | 'title'>;
/** As much of a hold point as a list says. */
type NamedPoint = Pick<HoldPoint, 'id' | 'title' | 'order'>;

/** Who asks for a thing. */
export interface AskedBy {
  readonly machine: string;
  readonly job: NamedJob;
  readonly count: number;
}
export interface ToGet {
  readonly part: PartEntry;
  readonly count: number;
  readonly askedBy: readonly AskedBy[];
  readonly fastener?: Fastener;
  /** The earliest hold point that stays held until one of the jobs is done. */
  readonly holds?: NamedPoint;
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

interface Asked {
  readonly part: PartEntry;
  readonly key: string;
  readonly count: number;
  readonly job: NamedJob;
  readonly machine: string;
  readonly heldNow: boolean;
  readonly holds?: NamedPoint;
  readonly fastener?: Fastener;
}

/** What one machine wants, and what it knows of shops and the drawer: plain data, small beside its book. */
export interface Needs {
  readonly today: Day;
  readonly asks: readonly Asked[];
  /** What lies in the drawer; what is used up is not in it. */
  readonly stock: readonly StockLine[];
  readonly suppliers: readonly Supplier[];
}

/** The needs of one machine; `lines` are its part lines, where they are known already. */
export function needsOf(book: Book, lines: readonly PartLine[] = partLines(book)): Needs {
  const { workshop } = book.records;
  return {
    today: book.today,
    asks: asksOf(book, [...lines.filter(({ part }) => part.state === 'wanted'), ...lost(book, lines)]),
    stock: (workshop?.stock ?? []).filter(({ count }) => count !== 0),
    suppliers: workshop?.suppliers ?? [],
  };
}

function asksOf(book: Book, lines: readonly PartLine[]): readonly Asked[] {
  const { name: machine } = book.records.machine;
  const held = new Map<Job, HoldPoint | undefined>();
  return lines.map(({ job, part, key, count, fastener }) => {
    if (!held.has(job)) held.set(job, heldUntil(book, job));
    const holds = held.get(job);
    const begun = job.state !== 'planned';
    return {
      part,
      key,
      count,
      job: { id: job.id, title: job.title },
      machine,
      heldNow: begun && book.holds.some(({ point, clear }) => point.id === holds?.id && !clear),
      ...(holds === undefined ? {} : { holds: { id: holds.id, title: holds.title, order: holds.order } }),
      ...(fastener === undefined ? {} : { fastener }),
    };
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

/** Equal things by number and size where they are known, else by name: asked for by two, bought in one go. */
function identity({ part, key }: Asked): string {
  const { number, bookNumber, size, from, onlyIf } = part;
  return [number ?? bookNumber ?? key, size ?? '', plainName(from ?? ''), onlyIf ?? ''].join('|');
}

function rank(holds: NamedPoint | undefined): number {
  return holds?.order ?? Number.MAX_SAFE_INTEGER;
}

function oneLine(asks: readonly Asked[], stock: ReadonlySet<string>): ToGet | undefined {
  const [first] = asks;
  if (first === undefined) return undefined;
  const holds = asks.map((one) => one.holds).toSorted((a, b) => rank(a) - rank(b))[0];
  return {
    part: first.part,
    count: asks.reduce((sum, { count }) => sum + count, 0),
    askedBy: asks.map(({ machine, job, count }) => ({ machine, job, count })),
    heldNow: asks.some(({ heldNow, holds: own }) => heldNow && own?.id === holds?.id),
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

/** One trip a supplier. A workshop's own file is read with each of its machines; its stock counts once. */
export function tripsFor(needs: readonly Needs[]): readonly Trip[] {
  const drawer = needs.flatMap((one) => one.stock);
  const stock = new Set(
    drawer.flatMap(({ part, number }) => [plainName(part), ...(number === undefined ? [] : [number])]),
  );
  const all = merged(
    needs.flatMap(({ asks }) => asks),
    stock,
  );
  const suppliers = needs.flatMap((one) => one.suppliers);
  const today = needs[0]?.today;
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

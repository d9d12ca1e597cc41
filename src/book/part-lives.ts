// The life of each part of the machine: every line of a record that speaks of it, in the order of the work.
import type { Job, PartEntry, Photo, Reading, WorkEntry } from '../records/model.ts';
import type { Book, OpenLine } from './book.ts';
import { byText, hasHappened, inOrder } from './in-order.ts';
import { hasWords, makeNamer, type Namer } from './names.ts';
import { systemOf, systems, type System } from './systems.ts';

/** One line of a life. */
export type LifeLine = { readonly job: Job } & (
  | { readonly kind: 'work'; readonly entry: WorkEntry }
  | { readonly kind: 'reading'; readonly reading: Reading }
  | { readonly kind: 'part'; readonly part: PartEntry }
);

export interface PartLife {
  /** What the part is matched by: two lives never have the same. */
  readonly key: string;
  /** As it was written first, an id of the maker’s data among them. */
  readonly name: string;
  readonly system: System;
  readonly lines: readonly LifeLine[];
  /** Off, loose, empty or away now. */
  readonly open: readonly OpenLine[];
}

const made = new WeakMap<Book, readonly PartLife[]>();

/** All lives, in the order of the systems, then of the names. Gathered once for a book; linear in the lines of the records. */
export function partLives(book: Book): readonly PartLife[] {
  const known = made.get(book);
  if (known !== undefined) return known;
  const lives = gather(book);
  made.set(book, lives);
  return lives;
}

/** Told by two records or more: what one record says of a part stands in that record. */
export function hasLife({ lines }: PartLife): boolean {
  return lines.some(({ job }) => job !== lines[0]?.job);
}

/** Said of more than that it was fitted: bought and fitted is told by the list of parts. */
export function isTold(life: PartLife): boolean {
  return life.lines.some((line) => line.kind !== 'part' || moved(line.part));
}

function moved(part: PartEntry): boolean {
  return part.movedFrom !== undefined || part.movedTo !== undefined;
}

/** Photos of the records of a life whose words name the part. */
export function photosOf(life: PartLife): readonly { readonly job: Job; readonly photo: Photo }[] {
  const jobs = [...new Set(life.lines.map(({ job }) => job))];
  return jobs.flatMap((job) =>
    job.photos.filter(({ caption }) => hasWords(caption, life.name)).map((photo) => ({ job, photo })),
  );
}

interface Growing {
  readonly name: string;
  readonly lines: LifeLine[];
}

function gather(book: Book): readonly PartLife[] {
  const key = makeNamer(book.records.maker);
  const owners = ownersOf(book, key);
  const lives = new Map<string, Growing>();
  const jobs = inOrder(book.records.jobs).filter(hasHappened);
  const parts = partsIn(jobs, key);
  const add = (name: string, line: LifeLine): void => {
    const at = key(name);
    const life = lives.get(at);
    if (life === undefined) lives.set(at, { name, lines: [line] });
    else if (life.lines.at(-1) !== line) life.lines.push(line);
  };
  const addToOwner = (thing: string, line: LifeLine): void => {
    const owner = owners.get(key(thing));
    if (owner !== undefined) add(owner, line);
    if (owner === undefined || parts.has(key(thing))) add(thing, line);
  };
  for (const job of jobs) {
    for (const entry of job.work) {
      const line = { kind: 'work', job, entry } as const;
      if (isOfFastener(entry)) addToOwner(entry.thing, line);
      else add(entry.thing, line);
      for (const { id } of entry.fasteners) addToOwner(id, line);
    }
    for (const reading of job.readings) {
      // What is read of no part, such as a pressure or a date code, is a series of readings and no part of the machine.
      const at = key(reading.item);
      if (owners.has(at) || parts.has(at)) addToOwner(reading.item, { kind: 'reading', job, reading });
    }
    for (const part of job.parts) if (isOn(part)) add(part.part, { kind: 'part', job, part });
  }
  const open = openLines(book, (thing) => (lives.has(key(thing)) ? key(thing) : key(owners.get(key(thing)) ?? thing)));
  const all = [...lives].map(([at, { name, lines }]) => ({
    key: at,
    name,
    system: systemOf(name),
    lines,
    open: open.get(at) ?? [],
  }));
  return all.toSorted((one, other) => place(one) - place(other) || byText(one.key, other.key));
}

/** Tightening a nut is told with what it holds; a plug that is taken out is a thing of its own. */
function isOfFastener({ verb }: WorkEntry): boolean {
  return verb === 'tightened' || verb === 'loosened';
}

/** What was taken off, put on or fitted: it has a life of its own, even where the book counts it among the fasteners. */
function partsIn(jobs: readonly Job[], key: Namer): ReadonlySet<string> {
  const parts = jobs.flatMap((job) => [
    ...job.work.filter((entry) => !isOfFastener(entry)).map(({ thing }) => key(thing)),
    ...job.parts.filter(isOn).map(({ part }) => key(part)),
  ]);
  return new Set(parts);
}

function place({ system }: PartLife): number {
  return systems.indexOf(system);
}

/** A part that is on the machine by the record, or went from it. */
function isOn({ state }: PartEntry): boolean {
  return state === 'fitted' || state === 'returned';
}

/** The part that a fastener, a measure or a setting is of, by the key of each: its lines are told with that part. */
function ownersOf({ records: { maker } }: Book, key: Namer): ReadonlyMap<string, string> {
  const named = [...maker.fasteners, ...maker.limits, ...maker.settings];
  return new Map(named.flatMap(({ id, of }) => (of === undefined ? [] : [[key(id), of] as const])));
}

function openLines({ off }: Book, keyOf: (thing: string) => string): ReadonlyMap<string, readonly OpenLine[]> {
  const open = new Map<string, OpenLine[]>();
  for (const line of off.open) {
    const at = keyOf(line.entry.thing);
    const those = open.get(at);
    if (those === undefined) open.set(at, [line]);
    else those.push(line);
  }
  return open;
}

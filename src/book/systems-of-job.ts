// Which systems of the machine a record is about, by the things it names.
import type { Job } from '../records/model.ts';
import type { Book } from './book.ts';
import { remembered } from './names.ts';
import { systemOf, systems, type System } from './systems.ts';

const made = new WeakMap<Book, ReadonlyMap<Job, ReadonlySet<System>>>();

/** The systems of each record: of what was worked on, measured and fitted; of its title where it names nothing. Made once for a book. */
export function systemsOfJobs(book: Book): ReadonlyMap<Job, ReadonlySet<System>> {
  const known = made.get(book);
  if (known !== undefined) return known;
  const { fasteners, limits, settings } = book;
  // Of a measure or a fastener its part decides, where the book names it.
  const systemBy = remembered((thing) =>
    systemOf((limits.get(thing) ?? settings.get(thing) ?? fasteners.get(thing))?.of ?? thing),
  );
  const all = new Map(book.records.jobs.map((job) => [job, systemsIn(job, systemBy)] as const));
  made.set(book, all);
  return all;
}

function systemsIn(job: Job, systemBy: (thing: string) => System): ReadonlySet<System> {
  const found = new Set<System>();
  for (const { thing } of job.work) found.add(systemBy(thing));
  for (const { item } of job.readings) found.add(systemBy(item));
  for (const { part } of job.parts) found.add(systemOf(part));
  if (found.size === 0) found.add(systemOf(job.title));
  return found;
}

/** Records of each system that any is about, in the order of the systems. */
export function jobsBySystem(book: Book, jobs: readonly Job[]): readonly (readonly [System, readonly Job[]])[] {
  const of = systemsOfJobs(book);
  const found = new Map<System, Job[]>(systems.map((system) => [system, []]));
  for (const job of jobs) for (const system of of.get(job) ?? []) found.get(system)?.push(job);
  return [...found].filter(([, those]) => those.length > 0);
}

// Which systems of the machine a record is about, by the things it names.
import { keptWith } from '../records/kept-with.ts';
import type { Job, MakerData } from '../records/model.ts';
import { keptFlat } from '../records/runs.ts';
import type { Book } from './book.ts';
import { forThisFrame } from './for-this-frame.ts';
import { keptOfBook } from './kept-of-book.ts';
import { remembered } from './names.ts';
import { systemOf, systems, type System } from './systems.ts';

type SystemBy = (thing: string) => System;

/** Of a measure or a fastener its part decides, where the maker's data names it. */
const systemsBy = keptWith(({ limits, settings, fasteners }: MakerData): SystemBy => {
  const parts = new Map([...fasteners, ...settings, ...limits].map(({ id, of }) => [id, of]));
  return remembered((thing) => systemOf(parts.get(thing) ?? thing));
});

const pairsIn = keptFlat((job: Job, systemBy: SystemBy) => [[job, systemsIn(job, systemBy)] as const]);

/** The systems of each record: of what was worked on, measured and fitted; of its title where it names nothing. Made once for a book. */
export const systemsOfJobs = keptOfBook(({ records }: Book): ReadonlyMap<Job, ReadonlySet<System>> => {
  const maker = forThisFrame(records.maker, records.machine);
  return new Map(pairsIn(records.jobs, systemsBy(maker)));
});

function systemsIn(job: Job, systemBy: SystemBy): ReadonlySet<System> {
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

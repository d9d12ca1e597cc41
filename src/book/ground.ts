// What every derivation stands on: the records in order, one namer, and the maker's data by id. Made once.
import type { Day } from '../quantity/day.ts';
import type { Content } from '../records/content-model.ts';
import { keptWith } from '../records/kept-with.ts';
import type { Fastener, Instrument, Job, Limit, MakerData, Records, Setting } from '../records/model.ts';
import { forThisFrame } from './for-this-frame.ts';
import { hasHappened, inOrder, knownOn, plansOfLater } from './in-order.ts';
import type { Namer } from './names.ts';
import { makeNamer } from './names.ts';

export interface Ground {
  /** As they were known on the day: without what was done later. */
  readonly records: Records;
  /** Records of work done after the day; nothing is worked out from them. */
  readonly later: readonly Job[];
  readonly content: Content;
  readonly today: Day;
  /** The maker's data that is for this frame number. */
  readonly maker: MakerData;
  readonly key: Namer;
  /** Every record, planned ones too, in order. */
  readonly all: readonly Job[];
  /** What has happened, in order. */
  readonly jobs: readonly Job[];
  readonly order: ReadonlyMap<Job, number>;
  readonly jobsById: ReadonlyMap<string, Job>;
  /** By key, see names.ts. */
  readonly limits: ReadonlyMap<string, Limit>;
  readonly settings: ReadonlyMap<string, Setting>;
  readonly fasteners: ReadonlyMap<string, Fastener>;
  readonly instruments: ReadonlyMap<string, Instrument>;
}

type ByKey<T> = (entries: readonly T[], key: Namer) => ReadonlyMap<string, T>;

/** The maker's data and the instruments stay the same while records change, and so do their maps. */
function byKey<T extends { readonly id: string }>(): ByKey<T> {
  return keptWith((entries: readonly T[], key: Namer) => new Map(entries.map((entry) => [key(entry.id), entry])));
}

const limitsByKey = byKey<Limit>();
const settingsByKey = byKey<Setting>();
const fastenersByKey = byKey<Fastener>();
const instrumentsByKey = byKey<Instrument>();

const laid = new WeakMap<Records, Ground>();

/** Sorts and indexes the records once, however many ask; every later step is linear in what it reads. `written` are all records, or those of a ground. */
export function layGround(written: Records, content: Content, today: Day): Ground {
  const before = laid.get(written);
  if (before !== undefined && before.content === content && before.today === today) return before;
  const made = layAnew(written, content, today);
  laid.set(written, made);
  laid.set(made.records, made);
  return made;
}

function layAnew(written: Records, content: Content, today: Day): Ground {
  const isKnown = knownOn(today);
  const later = inOrder(written.jobs.filter((job) => !isKnown(job)));
  const isPlanOf = plansOfLater(later);
  const known = (job: Job): boolean => isKnown(job) && !isPlanOf(job);
  const records = later.length === 0 ? written : { ...written, jobs: written.jobs.filter(known) };
  const maker = forThisFrame(records.maker, records.machine);
  const key = makeNamer(maker);
  const all = inOrder(records.jobs);
  return {
    records,
    later,
    content,
    today,
    maker,
    key,
    all,
    jobs: all.filter(hasHappened),
    order: new Map(all.map((job, index) => [job, index])),
    jobsById: new Map(all.map((job) => [job.id, job])),
    limits: limitsByKey(maker.limits, key),
    settings: settingsByKey(maker.settings, key),
    fasteners: fastenersByKey(maker.fasteners, key),
    instruments: instrumentsByKey(records.instruments, key),
  };
}

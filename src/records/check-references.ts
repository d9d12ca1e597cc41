// Names in jobs and makers' data that must lead to something on record. What content defines is checked in check-content-references.ts.
import type { Place, Problem } from '../problem/problem.ts';
import type { Instrument, Job, MakerData, Records, WorkEntry } from './model.ts';
import { keptWith } from './kept-with.ts';
import { below, namesOf, unknownReference, type Names } from './reference.ts';
import { keptFlat } from './runs.ts';
import { declaredUnread, unreadIds } from './unread-ids.ts';

/** The names that this folder knows. */
interface Known {
  readonly fasteners: Names;
  readonly fluids: Names;
  readonly measured: Names;
  readonly changeable: Names;
  readonly instruments: Names;
}

/** Fasteners, fluids, instruments, wrenches, limits and records that are named and do not exist. */
export function checkReferences(records: Records): readonly Problem[] {
  const { maker, instruments, jobs } = records;
  const lost = declaredUnread(records);
  const known = lost.length === 0 ? knownOf(maker, instruments) : namesKnown(maker, instruments, lost);
  return [...ofServices(records), ...ofContinued(records), ...ofJobs(jobs, known)];
}

function namesKnown(
  maker: MakerData,
  instruments: readonly Instrument[],
  lost: readonly { readonly id: string }[] = [],
): Known {
  const measured = [...maker.limits, ...maker.settings, ...lost];
  return {
    fasteners: namesOf([...maker.fasteners, ...lost]),
    fluids: namesOf([...maker.fluids, ...lost]),
    measured: namesOf(measured),
    changeable: namesOf([...maker.fasteners, ...measured]),
    instruments: namesOf([...instruments, ...lost]),
  };
}

const knownOf = keptWith((maker: MakerData, instruments: readonly Instrument[]) => namesKnown(maker, instruments));
const ofJobs = keptFlat(ofJob);

/** Records that go on from one that does not exist. */
function ofContinued(records: Records): readonly Problem[] {
  const going = records.jobs.filter((job) => job.continues !== undefined);
  if (going.length === 0) return [];
  const jobs = new Set([...records.jobs.map((job) => job.id), ...unreadIds(records)]);
  return going.flatMap(({ file, continues = '' }) =>
    unless(jobs, continues, 'job record', { file, path: [] }, 'continues'),
  );
}

function ofServices(records: Records): readonly Problem[] {
  const { maker } = records;
  const lost = declaredUnread(records);
  const services = namesOf([...maker.services, ...lost]).all;
  const limits = namesOf([...maker.limits, ...lost]).all;
  return maker.services.flatMap((line) => [
    ...line.includes.flatMap((id, i) => unless(services, id, 'service', line.at, 'includes', i)),
    ...(line.wear === undefined ? [] : unless(limits, line.wear, 'limit', line.at, 'wear')),
  ]);
}

function ofJob(job: Job, known: Known): readonly Problem[] {
  const problems: Problem[] = [];
  for (const entry of job.work) problems.push(...ofWork(entry, known));
  for (const repair of job.repairs) {
    problems.push(...unlessOwn(known.changeable, repair.of, 'fastener, limit or setting', repair.at, 'of'));
  }
  for (const { item, instrument, at } of job.readings) {
    problems.push(...unlessOwn(known.measured, item, 'limit or setting', at, 'item'));
    if (instrument !== undefined) problems.push(...tool(known, instrument, 'instrument', at));
  }
  return problems;
}

function ofWork(entry: WorkEntry, known: Known): readonly Problem[] {
  const { verb, thing, at } = entry;
  const problems: Problem[] = [];
  if (verb === 'loosened' || verb === 'tightened') {
    problems.push(...unlessOwn(known.fasteners, thing, 'fastener', at, verb));
  }
  if (verb === 'drained' || verb === 'filled') problems.push(...unlessOwn(known.fluids, thing, 'fluid', at, verb));
  for (const { id } of entry.fasteners) {
    // Points at the key of `fasteners: {id: count}`.
    const wrong = unless(known.fasteners.all, id, 'fastener', at, 'fasteners', id);
    problems.push(...wrong.map((problem) => ({ ...problem, at: { ...problem.at, atKey: true } })));
  }
  if (entry.wrench !== undefined) problems.push(...tool(known, entry.wrench, 'wrench', at));
  return problems;
}

/** A tool is named by its id; a borrowed one may be described in several words. */
function tool({ instruments }: Known, word: string, what: string, at: Place): readonly Problem[] {
  if (word.includes(' ') && instruments.isOwn(word)) return [];
  return unless(instruments.all, word, what, at, what);
}

function unlessOwn(names: Names, word: string, what: string, at: Place, key: string): readonly Problem[] {
  return names.all.has(word) || names.isOwn(word) ? [] : unless(names.all, word, what, at, key);
}

type Steps = readonly (string | number)[];

function unless(names: ReadonlySet<string>, word: string, what: string, at: Place, ...way: Steps): readonly Problem[] {
  return names.has(word) ? [] : [unknownReference(word, below(at, ...way), what, names)];
}

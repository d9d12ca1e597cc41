// Names in jobs and makers' data that must lead to something on record. What content defines is checked in check-content-references.ts.
import type { Problem } from '../problem/problem.ts';
import type { Job, Records, WorkEntry } from './model.ts';
import { below, isOwnWords, unknownReference } from './reference.ts';

/** The names that this folder knows. */
interface Known {
  readonly fasteners: ReadonlySet<string>;
  readonly fluids: ReadonlySet<string>;
  readonly measured: ReadonlySet<string>;
  readonly instruments: ReadonlySet<string>;
  readonly jobs: ReadonlySet<string>;
}

/** Fasteners, fluids, instruments, wrenches, limits and records that are named and do not exist. */
export function checkReferences(records: Records): readonly Problem[] {
  const known: Known = {
    fasteners: ids(records.maker.fasteners),
    fluids: ids(records.maker.fluids),
    measured: ids([...records.maker.limits, ...records.maker.settings]),
    instruments: ids(records.instruments),
    jobs: new Set([...records.jobs.map((job) => job.id), ...unreadJobs(records)]),
  };
  return [...ofServices(records), ...records.jobs.flatMap((job) => ofJob(job, known))];
}

function ofServices({ maker }: Records): readonly Problem[] {
  const services = ids(maker.services);
  const limits = ids(maker.limits);
  return maker.services.flatMap((line) => [
    ...line.includes.flatMap((id, i) =>
      services.has(id) ? [] : [unknownReference(id, below(line.at, 'includes', i), 'service', services)],
    ),
    ...(line.wear === undefined || limits.has(line.wear)
      ? []
      : [unknownReference(line.wear, below(line.at, 'wear'), 'limit', limits)]),
  ]);
}

function ofJob(job: Job, known: Known): readonly Problem[] {
  const top = { file: job.file, path: [] };
  const continues = job.continues;
  return [
    ...(continues === undefined || known.jobs.has(continues)
      ? []
      : [unknownReference(continues, below(top, 'continues'), 'job record', known.jobs)]),
    ...job.work.flatMap((entry) => ofWork(entry, known)),
    ...job.repairs.flatMap((repair) =>
      unlessOwn(
        repair.of,
        below(repair.at, 'of'),
        'fastener, limit or setting',
        new Set([...known.fasteners, ...known.measured]),
      ),
    ),
    ...job.readings.flatMap((reading) => [
      ...unlessOwn(reading.item, below(reading.at, 'item'), 'limit or setting', known.measured),
      ...(reading.instrument === undefined
        ? []
        : tool(reading.instrument, below(reading.at, 'instrument'), 'instrument', known)),
    ]),
  ];
}

function ofWork(entry: WorkEntry, known: Known): readonly Problem[] {
  const names = entry.verb === 'loosened' || entry.verb === 'tightened' ? known.fasteners : known.fluids;
  const what = names === known.fasteners ? 'fastener' : 'fluid';
  const named = ['loosened', 'tightened', 'drained', 'filled'].includes(entry.verb);
  return [
    ...(named ? unlessOwn(entry.thing, below(entry.at, entry.verb), what, names) : []),
    ...entry.fasteners.flatMap(({ id }) => (known.fasteners.has(id) ? [] : [unknownFastener(id, entry, known)])),
    ...(entry.wrench === undefined ? [] : tool(entry.wrench, below(entry.at, 'wrench'), 'wrench', known)),
  ];
}

/** Points at the key of `fasteners: {id: count}`. */
function unknownFastener(id: string, entry: WorkEntry, known: Known): Problem {
  const at = { ...below(entry.at, 'fasteners', id), atKey: true };
  return unknownReference(id, at, 'fastener', known.fasteners);
}

/** A tool is named by its id; a borrowed one may be described in several words. */
function tool(word: string, at: Problem['at'], what: string, known: Known): readonly Problem[] {
  if (known.instruments.has(word) || (word.includes(' ') && isOwnWords(word, known.instruments))) return [];
  return [unknownReference(word, at, what, known.instruments)];
}

function unlessOwn(word: string, at: Problem['at'], what: string, names: ReadonlySet<string>): readonly Problem[] {
  return names.has(word) || isOwnWords(word, names) ? [] : [unknownReference(word, at, what, names)];
}

function ids(list: readonly { readonly id: string }[]): ReadonlySet<string> {
  return new Set(list.map(({ id }) => id));
}

/** A record that could not be read is still there to be named: its own problem is told, not a second one. */
function unreadJobs({ unread }: Records): readonly string[] {
  return unread.map(({ file }) => file.replace(/^.*\//u, '').replace(/\.md$/u, '').normalize('NFC'));
}

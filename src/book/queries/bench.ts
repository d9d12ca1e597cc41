// The bench: things that were never put back on paper.
import type { Job } from '../../records/model.ts';
import type { ClosedLine, OpenLine } from '../book.ts';
import { stateInWords } from '../off-states.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Kinds of work that are done with things still off. */
const leavesOff: ReadonlySet<string> = new Set([
  'strip',
  'measuring',
  'machining',
  'intake',
  'buying',
  'lay-up',
  'cleaning',
  'waking',
  'handover',
]);

/** A closed record with open lines. */
export const doneWithThingsOpen: Look = ({ offWork }) => {
  const lines = offWork.off.open.filter(
    (line) => line.job.state === 'done' && !leavesOff.has(line.job.kind) && line.state !== 'sent out',
  );
  const byJob = groupLines(lines);
  return [...byJob].map(([job, open]) => {
    const things = open.map((line) => `${line.entry.thing} ${stateInWords(line.state)}`).join('; ');
    return query(
      'done-with-things-open',
      { file: job.file, path: ['state'] },
      `${job.title} is done, and on the records still: ${things}`,
      'write the entry that put it back',
    );
  });
};

function groupLines(lines: readonly OpenLine[]): ReadonlyMap<Job, readonly OpenLine[]> {
  const found = new Map<Job, OpenLine[]>();
  for (const line of lines) {
    const list = found.get(line.job) ?? [];
    list.push(line);
    found.set(line.job, list);
  }
  return found;
}

/** Fewer fasteners went back than came off. */
export const fastenersLeftOver: Look = ({ ground, offWork }) =>
  offWork.off.closed.flatMap((line) => {
    if (line.by.fasteners.length === 0) return [];
    const back = new Map(line.by.fasteners.map((one) => [ground.key(one.id), one.count]));
    const short = line.entry.fasteners.filter((one) => (back.get(ground.key(one.id)) ?? 0) < one.count);
    return short.map((one) =>
      query(
        'fasteners-left-over',
        line.by.at,
        `${line.entry.thing}: ${String(one.count)} of ${one.id} came off and ${String(back.get(ground.key(one.id)) ?? 0)} went back`,
        'find the place of the rest before it runs',
      ),
    );
  });

/** Whether a thing came off before another was put back: a bag may have been filled again since. */
function lay(one: OpenLine, { by, byJob }: ClosedLine, place: ReadonlyMap<Job, number>): boolean {
  if (one.job === byJob) return byJob.work.indexOf(one.entry) < byJob.work.indexOf(by);
  return (place.get(one.job) ?? 0) < (place.get(byJob) ?? 0);
}

/** A bag from which something was fitted while the rest stayed in it. */
export const bagHalfEmptied: Look = ({ ground, offWork }) => {
  const used = new Map(
    offWork.off.closed
      .filter((line) => line.entry.bag !== undefined && line.by.verb !== 'lost')
      .map((line) => [line.entry.bag, line]),
  );
  const place = new Map(ground.jobs.map((job, index) => [job, index]));
  return offWork.off.bags.flatMap((bag) => {
    const line = used.get(bag.bag);
    if (line === undefined) return [];
    const left = bag.contents.filter((one) => lay(one, line, place));
    if (left.length === 0) return [];
    const rest = left.map((one) => one.entry.thing).join(', ');
    return [
      query(
        'bag-half-emptied',
        line.by.at,
        `bag ${bag.bag} was opened for ${line.entry.thing}, and still holds ${rest}`,
        'look in the bag',
      ),
    ];
  });
};

/** Refitted while it was still away. */
export const backBeforeItCame: Look = ({ ground, offWork }) => {
  const away = new Map(
    offWork.off.open.filter((line) => line.state === 'sent out').map((line) => [ground.key(line.entry.thing), line]),
  );
  const refitted = offWork.off.closed.filter((line) => line.by.verb === 'refitted');
  const odd = refitted.flatMap((line) => {
    const out = away.get(ground.key(line.entry.thing));
    if (out === undefined || (ground.order.get(out.job) ?? 0) > (ground.order.get(line.byJob) ?? 0)) return [];
    return [
      query(
        'refitted-while-sent-out',
        line.by.at,
        `${line.by.thing} refitted, and it is still away at ${out.entry.to ?? 'a firm'} since ${out.since}`,
        'write when it came back',
      ),
    ];
  });
  const late = offWork.off.open.filter(
    (line) => line.state === 'sent out' && line.entry.promised !== undefined && line.entry.promised < ground.today,
  );
  return [
    ...odd,
    ...late.map((line) =>
      query(
        'promised-day-passed',
        line.entry.at,
        `${line.entry.thing} was promised for ${line.entry.promised ?? ''}`,
        'ask, and write the new day',
      ),
    ),
  ];
};

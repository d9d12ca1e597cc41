// Which fasteners are to be tightened again, and why: run hot since, due by distance, ridden since, or about to go together again.
import type { Job } from '../../records/model.ts';
import type { Book, DueLine, TorqueRow } from '../book.ts';

export type Reason =
  | { readonly why: 'run hot since'; readonly job: Job }
  | { readonly why: 'ridden since'; readonly job: Job }
  | { readonly why: 'going together'; readonly job: Job }
  | { readonly why: 'due'; readonly due: DueLine };

export interface CalledFor {
  /** Absent where the maker's data has no such fastener: spokes, nuts and bolts all round. */
  readonly row?: TorqueRow;
  readonly reason: Reason;
}

const pressing: ReadonlySet<DueLine['state']> = new Set(['overdue', 'due', 'not known', 'coming']);

/** Everything that is called for: hot joints first, then what carries the wheels, then what the schedule asks. */
export function calledFor(book: Book): readonly CalledFor[] {
  return [...hot(book), ...ridden(book), ...due(book)];
}

/** A nut, bolt or stud that holds the cylinder head; a plug does not. */
export function holdsTheHead({ fastener }: TorqueRow): boolean {
  return /\bcylinder head\b/i.test(`${fastener.of ?? ''} ${fastener.name}`) && /nut|bolt|stud/i.test(fastener.name);
}

function hot(book: Book): readonly CalledFor[] {
  return book.torque.filter(holdsTheHead).flatMap((row): readonly CalledFor[] => {
    const planned = book.plans.find(({ procedures }) =>
      procedures.some((one) => one.assembly.some((step) => step.fasteners.includes(row.fastener.id))),
    );
    if (planned !== undefined) return [{ row, reason: { why: 'going together', job: planned.job } }];
    const heat = heatSince(book, row);
    return heat === undefined ? [] : [{ row, reason: { why: 'run hot since', job: heat } }];
  });
}

/** The first heat cycle after the joint was made, where nobody has tightened it again since. */
function heatSince(book: Book, { fastener }: TorqueRow): Job | undefined {
  let made = false;
  let heat: Job | undefined;
  for (const job of book.records.jobs) {
    for (const { verb, thing, fasteners } of job.work) {
      if (thing !== fastener.id && thing !== fastener.of && !fasteners.some(({ id }) => id === fastener.id)) continue;
      if (verb !== 'tightened') [made, heat] = [false, undefined];
      else if (heat === undefined) made = true;
      else [made, heat] = [false, undefined];
    }
    if (made && heat === undefined && isHot(job)) heat = job;
  }
  return heat;
}

/** A ride heats an engine through as a run on the stand does. */
function isHot(job: Job): boolean {
  return job.heatCycles > 0 || (job.ride !== undefined && job.state !== 'planned');
}

const rolling = /spindle|axle|torque arm|handlebar|yoke|steering|swing|shock|damper|sprocket|calliper|caliper/i;

/** What wheels, bars and brakes hang on: tightened, then ridden, then neither tightened nor looked at since. */
function ridden(book: Book): readonly CalledFor[] {
  return book.torque.flatMap((row): readonly CalledFor[] => {
    const { last, fastener } = row;
    if (last === undefined || !rolling.test(`${fastener.of ?? ''} ${fastener.name}`)) return [];
    const after = book.records.jobs.slice(book.records.jobs.indexOf(last.job) + 1);
    const ride = after.find((job) => job.ride !== undefined);
    if (ride === undefined || after.some(looked)) return [];
    return [{ row, reason: { why: 'ridden since', job: ride } }];
  });
}

function looked(job: Job): boolean {
  return job.checks.some(({ check }) => check === 'nuts-after-first-ride') || job.services.includes('nuts-and-bolts');
}

function due(book: Book): readonly CalledFor[] {
  const lines = book.due.filter(({ service, state }) => service.action === 'tighten' && pressing.has(state));
  return lines.flatMap((line): readonly CalledFor[] => {
    const item = line.service.item.toLowerCase();
    const rows = book.torque.filter(({ fastener }) => item.includes(fastener.name.toLowerCase()));
    const reason = { why: 'due', due: line } as const;
    return rows.length === 0 ? [{ reason }] : rows.map((row) => ({ row, reason }));
  });
}

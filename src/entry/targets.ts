// The target of each blank of a job, by the same ids as its sheets print.
import { beforeId, checkId, hereId, lineId, partId, reachedId, stepFastenerId, stepId } from '../book/blank-ids.ts';
import type { Book, JobPlan } from '../book/book.ts';
import { nameInRecord } from '../book/own-words.ts';
import { numberedSteps, type NumberedStep } from '../book/numbered-steps.ts';
import { verbsOfPart } from '../book/verbs-of-part.ts';
import { plannedLines, type PlannedLine } from '../book/planned-lines.ts';
import type { Job } from '../records/model.ts';
import { footId } from './foot-blanks.ts';
import { machineTarget } from './machine-targets.ts';
import type { Target } from './target.ts';

type Pair = readonly [id: string, target: Target];

/** Targets that are known by the plan of the job; what is not among them is a tick or words without another key. */
export function targetsOf(book: Book, job: Job): ReadonlyMap<string, Target> {
  const plan = book.plans.find((one) => one.job.id === job.id);
  return new Map([
    ...checks(book, job),
    ...foot(job),
    ...(plan === undefined ? [] : ofPlan(book, plan)),
    ...ofLines(book, job),
    ...job.parts.map((part, index): Pair => [hereId(job.id, part.part), { kind: 'part', index }]),
  ]);
}

function ofPlan(book: Book, plan: JobPlan): readonly Pair[] {
  const { job } = plan;
  return [
    ...plan.blanks.flatMap(({ id, item, position }): readonly Pair[] => [
      [`${id}/found`, { kind: 'reading', item, position, side: 'found' }],
      [`${id}/left`, { kind: 'reading', item, position, side: 'left' }],
    ]),
    ...firstWins(numberedSteps(book, plan, 'steps').flatMap((one) => comingOff(book, job, one))),
    ...numberedSteps(book, plan, 'assembly').flatMap((one) => goingOn(book, job, one)),
    ...plan.procedures.flatMap((one) =>
      one.before.map((_, index): Pair => [beforeId(job.id, one.id, index + 1), { kind: 'tick' }]),
    ),
  ];
}

/** Bag, way round and fasteners are those that the sheet prints at the step; they go with its first part. */
function comingOff(book: Book, job: Job, one: NumberedStep): readonly Pair[] {
  const { step } = one;
  const fasteners = step.fasteners.flatMap((id) => {
    const count = book.fasteners.get(id)?.count;
    return count === undefined ? [] : [{ id, count }];
  });
  const beside = {
    ...(one.bag === undefined ? {} : { bag: String(one.bag) }),
    ...(step.wayRound === undefined ? {} : { wayRound: step.wayRound }),
    ...(fasteners.length === 0 ? {} : { fasteners }),
  };
  return step.off.flatMap((part, index): readonly Pair[] => {
    const thing = nameInRecord(book.records.maker, part);
    const { off, on } = verbsOfPart(book.records.maker, part);
    return [
      [partId(job.id, part, 'off'), { kind: 'work', line: { verb: off, thing, ...(index === 0 ? beside : {}) } }],
      [partId(job.id, part, 'on'), { kind: 'work', line: { verb: on, thing } }],
    ];
  });
}

/** Two procedures of one job may take the same part off: the bag it went into is the first one's, and so is each thing that only it says. */
function firstWins(pairs: readonly Pair[]): readonly Pair[] {
  const found = new Map<string, Target>();
  for (const [id, target] of pairs) {
    const before = found.get(id);
    const both = before?.kind === 'work' && target.kind === 'work';
    found.set(id, both ? { kind: 'work', line: { ...target.line, ...before.line } } : target);
  }
  return [...found];
}

function goingOn(book: Book, job: Job, one: NumberedStep): readonly Pair[] {
  return [
    [stepId(one.place), { kind: 'tick' }],
    ...one.step.fasteners.flatMap((fastener, index) => [
      ...torque(book, job, fastener),
      [stepFastenerId(one.place, index + 1), torqueTarget(book, fastener, false)] as const,
    ]),
  ];
}

function torque(book: Book, job: Job, fastener: string): readonly Pair[] {
  return [[reachedId(job.id, fastener), torqueTarget(book, fastener, true)]];
}

function torqueTarget(book: Book, fastener: string, reached: boolean): Target {
  return { kind: 'torque', fastener, thing: nameInRecord(book.records.maker, fastener), reached };
}

function ofLines(book: Book, job: Job): readonly Pair[] {
  const { away, back } = plannedLines(book, job);
  const tick = ({ entry, follows, done }: PlannedLine): Target => {
    const index = entry.at.path[1];
    if (follows || done || typeof index !== 'number')
      return { kind: 'work', line: { verb: entry.verb, thing: entry.thing } };
    return { kind: 'to do', index };
  };
  return [...away, ...back].flatMap((line) => {
    const id = lineId(job.id, line.entry.verb, line.entry.thing);
    return [
      [id, tick(line)] as const,
      ...line.fasteners.flatMap((fastener): readonly Pair[] => [
        ...torque(book, job, fastener),
        [`${id}/${fastener}`, torqueTarget(book, fastener, false)],
      ]),
    ];
  });
}

/** Every check of the machine's hold points, as it stands on a sheet of the machine and on one of the job. */
function checks(book: Book, job: Job): readonly Pair[] {
  return book.holds.flatMap((hold) =>
    hold.checks.flatMap(({ check }) =>
      [`${hold.point.id}/${check.id}`, checkId(job.id, check.id)].flatMap((id): readonly Pair[] => [
        [id, { kind: 'check', check: check.id, value: false }],
        [`${id}/value`, { kind: 'check', check: check.id, value: true }],
      ]),
    ),
  );
}

function foot(job: Job): readonly Pair[] {
  return (['state-left-in', 'next', 'hand', 'date', 'odometer', 'time', 'state'] as const).map((field): Pair => [
    footId(job.id, field),
    { kind: 'foot', field },
  ]);
}

/** The target of a blank that the plan does not know: rows of the sheet that nobody foresaw, columns of what went wrong, else a tick or words. */
export function otherTarget(book: Book, job: string, id: string, kind: 'value' | 'tick' | 'text'): Target {
  const known = machineTarget(book, id);
  if (known !== undefined) return known;
  const inside = id.startsWith(`${job}/`) ? id.slice(job.length + 1) : id;
  const spare = /^(spare-[^/]+)\/(off|on|part|fasteners|note)$/u.exec(inside);
  if (spare?.[1] !== undefined && spare[2] !== undefined) return { kind: 'spare', row: spare[1], asked: spare[2] };
  const honest = /^honest\/(\d+)\/([123])$/u.exec(inside);
  const column = (['missing', 'broken', 'sent out'] as const)[Number(honest?.[2]) - 1];
  if (honest?.[1] !== undefined && column !== undefined) return { kind: 'honest', row: honest[1], column };
  return kind === 'tick' ? { kind: 'tick' } : { kind: 'words' };
}

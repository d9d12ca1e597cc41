// The due list: every service line of this machine with its state, what comes first, and why; overdue first.
import type { ServiceLine } from '../../records/model.ts';
import type { DistanceAt, DueLine, DueState } from '../book.ts';
import { frameFits } from '../for-this-frame.ts';
import type { Ground } from '../ground.ts';
import { byText } from '../in-order.ts';
import type { OdometerWork } from '../odometer.ts';
import type { SeriesWork } from '../series.ts';
import type { Bound, Now } from './bounds.ts';
import { boundsOf, rankOf, worse } from './bounds.ts';
import { dueFigures } from './due-figures.ts';
import type { Pace } from './pace.ts';
import { projectedDays, ridersPace } from './pace.ts';
import type { Happened, Moment } from './happened.ts';
import { whatHappened } from './happened.ts';
import { paceWords, stepBesides, stepSentence, unknownHistory } from './sentences.ts';
import { graceOf, serviceLines } from './services.ts';
import type { Next, Step } from './steps.ts';
import { nextStep } from './steps.ts';
import { triggersOf } from './triggers.ts';

interface Desk {
  readonly ground: Ground;
  readonly odometer: OdometerWork;
  readonly series: SeriesWork;
  readonly happened: Happened;
  readonly now: Now;
  readonly pace: Pace | undefined;
}

/** What the interval says, before storage, wear and hard use have their word. */
interface Counted {
  readonly state: DueState;
  /** The sentence, put together when it is asked for: a list of two hundred lines prints a few of them. */
  readonly why?: () => string | undefined;
  /** What of it no figure says, likewise. */
  readonly besides?: () => readonly string[];
  readonly figures: Partial<Pick<DueLine, 'dueDay' | 'dueAt' | 'dueOnClock' | 'left' | 'projected'>>;
  /** Share of the interval used; orders lines of one state. */
  readonly used: number;
}

function countStep(step: Step, line: ServiceLine, desk: Desk): Counted {
  const bounds = boundsOf(step, desk.now, graceOf(line));
  const known = dueFigures(step, bounds, line, desk.odometer);
  const left = bounds.find((one) => one.kind === 'distance')?.left ?? 0;
  const projected = projectedDays(left, desk.pace, desk.ground.today);
  const figures = projected === undefined ? known : { ...known, projected };
  const why = (): string => stepSentence(step, bounds, figures, desk.odometer.unit);
  const besides = (): readonly string[] => stepBesides(step, bounds, figures, desk.odometer.unit);
  const state = bounds.reduce<DueState | undefined>(
    (worst, one) => (worst === undefined ? one.state : worse(worst, one.state)),
    undefined,
  );
  return { state: state ?? 'not known', why, besides, figures, used: bounds[0]?.used ?? 0 };
}

function counted(next: Next, line: ServiceLine, desk: Desk): Counted {
  if (next.kind === 'step') return countStep(next.step, line, desk);
  if (next.kind === 'once') return said('done once', 'done; once only');
  if (next.kind === 'none') return { state: 'not due', figures: {}, used: 0 };
  return said(line.unknown === 'due now' ? 'due' : 'not known', unknownHistory[line.unknown]);
}

/** No figure, one sentence. */
function said(state: DueState, words: string): Counted {
  return { state, why: () => words, besides: () => [words], figures: {}, used: 0 };
}

function frameNote(line: ServiceLine, desk: Desk): string | undefined {
  const fits = frameFits(line.source, desk.ground.records.machine);
  return fits === 'not known' ? 'whether this line is for this frame number is not known' : undefined;
}

/** A step from new is behind when a bound is past, or when its distance cannot be counted: then nothing says that it is not. */
function behind(step: Step, bounds: readonly Bound[]): boolean {
  const uncounted = step.interval.distance !== undefined && !bounds.some((bound) => bound.kind === 'distance');
  return uncounted || bounds.some((bound) => bound.left < 0);
}

function readingAt({ job, beforeRide }: Moment, odometer: OdometerWork): DistanceAt | undefined {
  return beforeRide === true ? odometer.readingBefore(job.id) : odometer.readingOf(job.id);
}

function dueLine(line: ServiceLine, desk: Desk): { readonly line: DueLine; readonly used: number } {
  const { happened, ground, now } = desk;
  const passed = (step: Step): boolean => behind(step, boundsOf(step, now, graceOf(line)));
  const step = counted(nextStep(line, happened, ground, passed), line, desk);
  const last = happened.done.get(line.id)?.at(-1);
  const triggers = triggersOf(line, happened, last, desk.series, ground);
  const state = triggers.reduce((worst, one) => worse(worst, one.state), step.state);
  const ordered = triggers.toSorted((a, b) => rankOf(a.state) - rankOf(b.state)).map((one) => one.why);
  const sentence = (): string =>
    [...ordered, step.why?.(), paceWords(step.figures.projected), frameNote(line, desk)]
      .filter((one) => one !== undefined)
      .join('; ');
  const distance =
    last === undefined
      ? undefined
      : (readingAt(last, desk.odometer)?.machine ?? desk.odometer.odometer.machineAt(last.day));
  const lastDone =
    last === undefined
      ? undefined
      : { job: last.job, day: last.day, ...(distance === undefined ? {} : { machineDistance: distance }) };
  let told: string | undefined;
  const due: DueLine = {
    service: line,
    state,
    ...(lastDone === undefined ? {} : { lastDone }),
    ...step.figures,
    get why() {
      return (told ??= sentence());
    },
    get besides() {
      return [...ordered, ...(step.besides?.() ?? []), frameNote(line, desk)].filter((one) => one !== undefined);
    },
  };
  return { line: due, used: step.used };
}

/** Linear in records plus lines. */
export function dueList(ground: Ground, odometer: OdometerWork, series: SeriesWork): readonly DueLine[] {
  const lines = serviceLines(ground);
  const happened = whatHappened(ground, odometer, lines);
  const { metresNow } = odometer;
  const { secondsNow } = happened;
  const now: Now = {
    today: ground.today,
    ...(metresNow === undefined ? {} : { metres: metresNow }),
    ...(secondsNow === undefined ? {} : { seconds: secondsNow }),
  };
  const desk: Desk = { ground, odometer, series, happened, now, pace: ridersPace(odometer, ground.jobs, ground.today) };
  return lines
    .map((line) => dueLine(line, desk))
    .toSorted(
      (a, b) =>
        rankOf(a.line.state) - rankOf(b.line.state) ||
        b.used - a.used ||
        byText(a.line.service.item, b.line.service.item),
    )
    .map((one) => one.line);
}

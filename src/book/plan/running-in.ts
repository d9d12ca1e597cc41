// Running in: where it began, what holds until which distance, and what is to be done at which distance or after which heat; on the clock fitted now.
import type { Figure } from '../../figure/figure.ts';
import { of } from '../../quantity/quantity.ts';
import { metreRidden } from '../../quantity/units.ts';
import type { FormLine } from '../../records/content-model.ts';
import type { Job } from '../../records/model.ts';
import { appliesTo } from '../applies.ts';
import type { Book, DistanceAt } from '../book.ts';
import { renewedParts } from '../due/rebuilt.ts';
import { hasHappened } from '../in-order.ts';
import { makeNamer } from '../names.ts';
import type { Namer } from '../names.ts';

export interface Beginning {
  readonly job: Job;
  /** The machine's distance there; absent when it is not known. */
  readonly machine?: Figure<'distance ridden'>;
}
export interface Mark {
  /** At a distance from the beginning; absent: after so many heat cycles. */
  readonly cycles?: number;
  readonly machine?: Figure<'distance ridden'>;
  /** On the clock fitted now, where it is still to come. */
  readonly onClock?: Figure<'distance ridden'>;
  readonly left?: Figure<'distance ridden'>;
  readonly state: 'to come' | 'now' | 'done' | 'over' | 'not known';
  /** The record that did it. */
  readonly by?: Job;
}
export interface RunInLine {
  readonly line: FormLine;
  readonly beginning: Beginning;
  readonly marks: readonly Mark[];
}
export interface RunningIn {
  readonly beginning?: Beginning;
  readonly lines: readonly RunInLine[];
}

type Distance = Figure<'distance ridden'>;

function distance(metres: number, like: Distance, formula: string): Distance {
  const inputs = [{ symbol: 'now', name: 'distance of the machine', figure: like }];
  const working = { calculation: 'running-in', formula, inputs, source: 'records, and the form of running-in' };
  return { quantity: of(metres, metreRidden), unit: like.unit, decimals: 0, origin: { kind: 'worked out', working } };
}

/** The machine's distance when a record began: its own reading, else the last one before it. */
function machineAt(job: Job, readings: readonly DistanceAt[]): Distance | undefined {
  const own = readings.find((one) => one.job === job.id)?.machine;
  return own ?? readings.findLast(({ day, machine }) => machine !== undefined && day <= job.date.from)?.machine;
}

/** The last record that made a part new; of the engine any part that makes a running-in. */
function beginningOf(book: Book, part: string | undefined, key: Namer): Beginning | undefined {
  const wanted = part === undefined ? 'engine' : key(part);
  const job = book.records.jobs.filter(hasHappened).findLast((one) => renewedParts(one, key).has(wanted));
  if (job === undefined) return undefined;
  const machine = machineAt(job, book.odometer.readings);
  return { job, ...(machine === undefined ? {} : { machine }) };
}

/** Everything that a record did, under every name that a line may call it by. */
function wordsOf(job: Job, key: Namer): ReadonlySet<string> {
  const words = [
    ...job.services,
    ...job.procedures,
    ...job.checks.map(({ check }) => check),
    ...job.readings.map(({ item }) => item),
    ...job.work.filter(({ verb }) => verb === 'tightened').map(({ thing }) => thing),
  ];
  return new Set(words.map(key));
}

interface Since {
  readonly after: readonly Job[];
  readonly book: Book;
  readonly key: Namer;
}

/** Heat cycles that the records hold: those counted, and every ride. */
function cyclesSince(jobs: readonly Job[]): number {
  return jobs.reduce((sum, { heatCycles, ride }) => sum + heatCycles + (ride === undefined ? 0 : 1), 0);
}

function markAt(metres: number, beginning: Beginning, holds: boolean, by: Job | undefined, { book }: Since): Mark {
  const now = book.odometer.now.machine;
  const done = by === undefined ? {} : { by };
  if (beginning.machine === undefined || now === undefined)
    return { state: by === undefined ? 'not known' : 'done', ...done };
  const machine = distance(
    beginning.machine.quantity + metres,
    beginning.machine,
    'target = beginning + distance of the form',
  );
  if (by !== undefined) return { machine, state: 'done', by };
  if (now.quantity >= machine.quantity) return { machine, state: holds ? 'over' : 'now' };
  const onClock = book.odometer.onClock(machine);
  const left = distance(machine.quantity - now.quantity, now, 'left = target − distance now');
  return { machine, state: 'to come', left, ...(onClock === undefined ? {} : { onClock }) };
}

/** The marks of one line: after heat first, then by distance; the first record that names it is the first mark's, the second the second's. */
function marksOf(line: FormLine, beginning: Beginning, since: Since): readonly Mark[] {
  const names = new Set((line.by ?? []).map(since.key));
  const doers = since.after.filter((job) => [...wordsOf(job, since.key)].some((word) => names.has(word)));
  const heat = cyclesSince(since.after);
  const hot = line.cycles === undefined ? [] : [hotMark(line.cycles, heat, names.has('heat cycle'), doers[0])];
  const ends = line.until === undefined ? [] : [markAt(line.until.quantity, beginning, true, undefined, since)];
  const along = (line.distances ?? []).map((one, index) =>
    markAt(one.quantity, beginning, false, doers[index + hot.length], since),
  );
  return [...hot, ...ends, ...along];
}

/** Cycles that are the thing itself are done when there were so many; what comes after heat is due then. */
function hotMark(cycles: number, heat: number, itself: boolean, by: Job | undefined): Mark {
  if (by !== undefined) return { cycles, state: 'done', by };
  if (heat < cycles) return { cycles, state: 'to come' };
  return { cycles, state: itself ? 'done' : 'now' };
}

/** The plan of a machine; without a beginning nothing is run in, by the records. */
export function runningIn(book: Book): RunningIn {
  const key = makeNamer(book.records.maker);
  const form = book.content.forms?.find(({ id }) => id === 'running-in');
  const beginning = beginningOf(book, undefined, key);
  const { features } = book.records.machine;
  const happened = book.records.jobs.filter(hasHappened);
  const lines = (form?.lines ?? []).flatMap((line): readonly RunInLine[] => {
    if (!appliesTo(line.applies, features)) return [];
    const from = line.newPart === undefined ? beginning : beginningOf(book, line.newPart, key);
    if (from === undefined) return [];
    const after = happened.slice(happened.indexOf(from.job) + 1);
    const marks = marksOf(line, from, { after, book, key });
    return marks.length === 0 ? [] : [{ line, beginning: from, marks }];
  });
  return { ...(beginning === undefined ? {} : { beginning }), lines };
}

/** Lines with something that is due now or still to come. */
export function stillRunningIn({ lines }: RunningIn): readonly RunInLine[] {
  return lines.filter(({ marks }) => marks.some(({ state }) => state === 'now' || state === 'to come'));
}

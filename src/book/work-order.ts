// The order of work: of the jobs that are open, which step must come first, which is on record already, and why.
import type { OrderEdge, OrderStep } from '../records/content-model.ts';
import type { Job } from '../records/model.ts';
import { edgesBy } from '../records/order-edges.ts';
import { appliesTo } from './applies.ts';
import type { Book, OpenLine } from './book.ts';
import { inOrder } from './in-order.ts';
import { keptOfBook } from './kept-of-book.ts';
import { makeNamer } from './names.ts';
import type { Namer } from './names.ts';
import { firstNotOn, takenOffBy } from './not-on-it.ts';
import { stepsOnRecord } from './steps-on-record.ts';
import type { OnRecord } from './steps-on-record.ts';

/** A step that an open job holds, or that must come before one that it holds. */
export interface StepToDo {
  readonly step: OrderStep;
  /** The open jobs that hold it; none: somebody has to do it besides. */
  readonly jobs: readonly Job[];
  /** Edges to steps of this list that wait for it. */
  readonly waiting: readonly OrderEdge[];
  /** Why an earlier proof of it does not count. */
  readonly but?: string;
  /** Off, and to be on before it can be done. */
  readonly notOn?: OpenLine;
}
export interface JobInOrder {
  readonly job: Job;
  readonly own: readonly OrderStep[];
  /** What must come before the job and is not on record, in order; edges lead to what waits for it. */
  readonly first: readonly StepToDo[];
  /** What must come after it, one step on, with the reason. */
  readonly after: readonly { readonly step: OrderStep; readonly why: string }[];
}
export interface WorkOrder {
  readonly steps: readonly StepToDo[];
  /** Open jobs, oldest first. */
  readonly jobs: readonly JobInOrder[];
}

const openStates: ReadonlySet<string> = new Set(['planned', 'under way', 'waiting', 'put aside']);

/** Open jobs: unfinished, and not gone on with in a later record. Oldest first. */
export function openJobs(book: Book): readonly Job[] {
  const continued = new Set(book.records.jobs.map((job) => job.continues));
  return inOrder(book.records.jobs.filter((job) => openStates.has(job.state) && !continued.has(job.id)));
}

/** What a job names that may be a step of the order, by key. */
function wordsOf(job: Job, key: Namer): ReadonlySet<string> {
  const words = [
    job.kind,
    ...(job.ride === undefined ? [] : ['ride', ...(job.ride.where === 'private land' ? [] : ['road'])]),
    ...job.procedures,
    ...job.services,
    ...job.checks.map(({ check }) => check),
    ...job.readings.map(({ item }) => item),
    ...job.work.map(({ thing }) => thing),
  ];
  return new Set(words.map(key));
}

/** Steps in an order in which none comes before what it waits for; where two are free, as the content has them. */
function sorted(steps: readonly OrderStep[], edges: readonly OrderEdge[]): readonly OrderStep[] {
  const left = new Map(steps.map((step) => [step.id, 0]));
  const from = edgesBy('before', edges);
  for (const { after } of edges) left.set(after, (left.get(after) ?? 0) + 1);
  const out: OrderStep[] = [];
  const waiting = [...steps];
  for (;;) {
    const at = waiting.findIndex((step) => left.get(step.id) === 0);
    const [next] = at < 0 ? [] : waiting.splice(at, 1);
    // Steps of a ring stay behind; the ring is a problem of its own.
    if (next === undefined) return [...out, ...waiting];
    out.push(next);
    for (const { after } of from.get(next.id) ?? []) left.set(after, (left.get(after) ?? 0) - 1);
  }
}

/** All that comes before some steps, however far. */
function allBefore(own: ReadonlySet<string>, edges: readonly OrderEdge[]): ReadonlySet<string> {
  const into = edgesBy('after', edges);
  const found = new Set<string>();
  const look = [...own];
  for (let here = look.pop(); here !== undefined; here = look.pop()) {
    for (const { before } of into.get(here) ?? []) {
      if (found.has(before)) continue;
      found.add(before);
      look.push(before);
    }
  }
  return found;
}

/** The order of all open jobs. Linear in the records; steps and edges are few. */
export const workOrder = keptOfBook(orderOf);

/**
 * A step that had to come before something was taken off cannot be made up for once it is off: the reading of an engine as it
 * was is gone. Such an edge asks for nothing until all is back on.
 */
function edgesNow(
  book: Book,
  steps: readonly OrderStep[],
  edges: readonly OrderEdge[],
  key: Namer,
): readonly OrderEdge[] {
  const byId = new Map(steps.map((step) => [step.id, step]));
  return edges.filter(({ before, after }) => {
    const fitted = byId.get(before)?.fitted ?? [];
    const taker = byId.get(after);
    if (taker === undefined || firstNotOn(book, fitted) === undefined) return true;
    const taken = new Set(takenOffBy(book, taker).map(key));
    return !fitted.some((thing) => taken.has(key(thing)));
  });
}

function orderOf(book: Book): WorkOrder {
  const orders = book.content.orders ?? [];
  const key = makeNamer(book.records.maker);
  const edges = edgesNow(
    book,
    orders.flatMap((order) => order.steps),
    orders.flatMap((order) => order.edges),
    key,
  );
  const { features } = book.records.machine;
  const all = sorted(
    orders.flatMap((order) => order.steps),
    edges,
  );
  const here = all.filter((step) => appliesTo(step.applies, features));
  const onRecord = stepsOnRecord(book, here, key);
  const open = openJobs(book).map((job) => {
    const words = wordsOf(job, key);
    return { job, own: here.filter((step) => [step.id, ...step.by].some((word) => words.has(key(word)))) };
  });
  const jobsWith = new Map(
    here.map((step) => [step.id, open.filter(({ own }) => own.includes(step)).map(({ job }) => job)]),
  );
  const toDo = (ids: ReadonlySet<string>, shown: ReadonlySet<string>): readonly StepToDo[] =>
    here.flatMap((step) => {
      if (!ids.has(step.id)) return [];
      const record: OnRecord = onRecord.get(step.id) ?? {};
      const waiting = edges.filter(({ before, after }) => before === step.id && shown.has(after));
      const but = record.but === undefined ? {} : { but: record.but };
      const line = firstNotOn(book, step.fitted ?? []);
      const notOn = line === undefined ? {} : { notOn: line };
      return [{ step, jobs: jobsWith.get(step.id) ?? [], waiting, ...but, ...notOn }];
    });
  const missing = (own: ReadonlySet<string>): ReadonlySet<string> =>
    new Set([...allBefore(own, edges)].filter((id) => !own.has(id) && onRecord.get(id)?.done === undefined));
  const jobs = open.map(({ job, own }): JobInOrder => {
    const ids = new Set(own.map((step) => step.id));
    const first = missing(ids);
    const after = edges
      .filter((edge) => ids.has(edge.before) && !ids.has(edge.after))
      .flatMap(({ after: id, why }) => {
        const step = here.find((one) => one.id === id);
        return step === undefined ? [] : [{ step, why }];
      });
    return { job, own, first: toDo(first, new Set([...first, ...ids])), after };
  });
  const held = new Set(open.flatMap(({ own }) => own.map((step) => step.id)));
  const shown = new Set([...held, ...missing(held)]);
  return { steps: toDo(shown, shown), jobs };
}

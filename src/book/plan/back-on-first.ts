// What has to be back on before a job can be done: its steps need it fitted, it is off, and the job does not put it back itself.
import type { OrderStep } from '../../records/content-model.ts';
import type { Job } from '../../records/model.ts';
import type { Book, OpenLine } from '../book.ts';
import { makeNamer } from '../names.ts';
import { firstNotOn } from '../not-on-it.ts';
import { closesState } from '../off-states.ts';
import { chainOf } from './chain-of-records.ts';

export interface BackOn {
  readonly kind: 'not on';
  readonly line: OpenLine;
  /** The step that needs it. */
  readonly step: OrderStep;
  /** Open jobs that put it back. */
  readonly jobs: readonly Job[];
}

/** The job took it off, says that it goes back, or has a procedure that it comes off in and goes back. */
function putsBack(book: Book, job: Job, line: OpenLine): boolean {
  if (chainOf(job, book).has(line.job)) return true;
  const key = makeNamer(book.records.maker);
  const thing = key(line.entry.thing);
  const written = [...job.work, ...(job.toDo ?? [])];
  if (written.some((entry) => closesState(entry.verb) === line.state && key(entry.thing) === thing)) return true;
  const steps = job.procedures.flatMap((id) => book.content.procedures.get(id)?.steps ?? []);
  return steps.some(({ off }) => off.some((part) => key(part) === thing));
}

/** One for each thing that is off; `open` are all open jobs. */
export function backOnFirst(book: Book, job: Job, own: readonly OrderStep[], open: readonly Job[]): readonly BackOn[] {
  const found = new Map<OpenLine, BackOn>();
  for (const step of own) {
    const line = firstNotOn(book, step.fitted ?? []);
    if (line === undefined || found.has(line) || putsBack(book, job, line)) continue;
    found.set(line, { kind: 'not on', line, step, jobs: open.filter((one) => putsBack(book, one, line)) });
  }
  return [...found.values()];
}

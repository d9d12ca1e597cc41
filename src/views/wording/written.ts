// What the record of an open job says already at a place of its sheet: a tick, words beside it, a torque that was reached.
import { inRecord, reachedId } from '../../book/blank-ids.ts';
import { nameInRecord } from '../../book/own-words.ts';
import type { Cell } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { writtenText } from './value.ts';

/** Whether the record has a tick at this blank. */
export function isTicked({ job }: ViewContext, id: string): boolean {
  return job?.ticks?.includes(inRecord(job.id, id)) === true;
}

/** The words that the record has at this blank, the latest of them. */
export function remarkAt({ job }: ViewContext, id: string): string | undefined {
  return job?.remarks?.findLast((one) => one.blank === inRecord(job.id, id))?.says;
}

/** A tick box with what the record says: done, or that it was looked at and is not. */
export function tickAt(context: ViewContext, id: string, done = isTicked(context, id)): Cell {
  const words = done ? undefined : remarkAt(context, id);
  return { box: 'tick', id, done, ...(words === undefined ? {} : { written: words }) };
}

/** A line to write on, with the words that the record has there already. */
export function lineAt(context: ViewContext, id: string, asks?: string): Cell {
  const written = remarkAt(context, id);
  return {
    box: 'line',
    id,
    ...(asks === undefined ? {} : { about: { asks } }),
    ...(written === undefined ? {} : { text: written, written }),
  };
}

/** What a fastener was tightened to in this job, or how; nothing where it was not, or where nothing was written beside it. */
export function reachedText(context: ViewContext, fastener: string): string | undefined {
  const { job } = context;
  if (job === undefined) return undefined;
  const words = remarkAt(context, reachedId(job.id, fastener));
  if (job.state === 'planned') return words;
  const thing = nameInRecord(context.book.records.maker, fastener);
  const last = job.work.findLast((entry) => entry.verb === 'tightened' && entry.thing === thing);
  return last?.torque === undefined ? (last?.result ?? words) : writtenText(last.torque);
}

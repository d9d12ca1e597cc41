// How a record is named in a line, and how a finger is pointed at it.
import type { Book } from '../../book/book.ts';
import type { Job } from '../../records/model.ts';
import type { Inline, Text } from '../../sheet/sheet.ts';
import { dayText, spanText } from './day.ts';

/** The title of a record, leading to its page. */
export function jobTitle(job: Pick<Job, 'id' | 'title'>): Inline {
  return { kind: 'link', text: job.title, to: `job:${job.id}` };
}

/** The date of a record, leading to its page. */
export function jobDate(job: Job): Inline {
  return { kind: 'link', text: spanText(job.date), to: `job:${job.id}` };
}

/** `4 May 2024, Barrels off and measured`. */
export function jobNamed(job: Job): Text {
  return [`${dayText(job.date.from)}, `, jobTitle(job)];
}

/** A text that names records by their ids, with their titles in place of the ids, leading to them. */
export function withJobs(book: Book, text: string): Text {
  const pieces = text.split(/(\d{4}-\d{2}(?:-\d{2})?-[\p{L}\p{N}-]+)/u);
  if (pieces.length === 1) return text;
  return pieces.flatMap((piece): readonly Inline[] => {
    const job = book.jobs.get(piece);
    if (job !== undefined) return [jobTitle(job)];
    return piece === '' ? [] : [piece];
  });
}

// How a record is named in a line, and how a finger is pointed at it.
import type { Job } from '../../records/model.ts';
import type { Inline, Text } from '../../sheet/sheet.ts';
import { dayText, spanText } from './day.ts';

/** The title of a record, leading to its page. */
export function jobTitle(job: Job): Inline {
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

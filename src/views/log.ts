// The log by date, to be read like a diary: date and title, the first photo, the owner's first words, then kind, distance and what was done.
import type { Job } from '../records/model.ts';
import type { Block, Paragraph, Text } from '../sheet/sheet.ts';
import { photoBlock } from './job/photos.ts';
import { heading, joined, lines, sentence } from './wording/blocks.ts';
import { countOf } from './wording/count.ts';
import { spanText, yearOf } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { itemName } from './wording/named.ts';
import { writtenText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const log = defineView({
  id: 'log',
  purpose: 'The records by date, each in a few lines with a photo, newest first; one year where `of` names it.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => {
    const wanted = context.options['of'];
    const jobs = context.book.records.jobs.filter((job) => wanted === undefined || yearOf(job.date.from) === wanted);
    if (jobs.length === 0) return [lines([context.say('There is no record.')])];
    return logOf(context, newestFirst(jobs));
  },
});

/** Records in the order of their dates, newest first; those of one day in the order of their ids. */
export function newestFirst(jobs: readonly Job[]): readonly Job[] {
  return jobs.toSorted((one, other) => compare(other.date.from, one.date.from) || compare(other.id, one.id));
}

function compare(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}

/** The lines of some records, in the order given. */
export function logOf(context: ViewContext, jobs: readonly Job[]): readonly Block[] {
  return jobs.flatMap((job) => entry(context, job));
}

function entry(context: ViewContext, job: Job): readonly Block[] {
  const { say } = context;
  const [photo] = job.photos;
  const what = joined([sentence(say(job.kind)), stateWord(say, job), distance(job), job.purpose], '; ');
  const happened = sentence(job.ride?.whatHappened ?? '');
  const done = sentence(workText(context, job));
  const texts = [happened, what, done].filter((text) => text.length > 0);
  return [
    heading(3, [`${spanText(job.date)}  `, jobTitle(job)], `log-${job.id}`),
    ...(photo === undefined ? [] : [photoBlock(job, photo, 'small')]),
    { type: 'prose', paragraphs: [...firstWords(context, job), ...texts.map(paragraph)] },
  ];
}

function paragraph(text: Text): Paragraph {
  return { kind: 'paragraph', text };
}

const opened = new WeakMap<Job, readonly Paragraph[]>();

/** The first paragraph of what the owner wrote; kept, for a log is drawn again whenever one record of it changes. */
function firstWords(context: ViewContext, job: Job): readonly Paragraph[] {
  const known = opened.get(job);
  if (known !== undefined) return known;
  const made = firstOf(context, job);
  opened.set(job, made);
  return made;
}

function firstOf({ prose }: ViewContext, job: Job): readonly Paragraph[] {
  const [first] = job.body.trim() === '' ? [] : prose(job.body);
  return first?.kind === 'paragraph' ? [first] : [];
}

function stateWord(say: (words: string) => string, job: Job): Text | undefined {
  if (job.state === 'done') return undefined;
  const words = job.waitingFor === undefined ? say(job.state) : `${say('waiting for')} ${job.waitingFor}`;
  return [{ kind: 'strong', text: words }];
}

function distance(job: Job): string | undefined {
  return job.odometer === undefined ? undefined : writtenText(job.odometer);
}

/** What was done, verb by verb: `removed cylinder head, barrels; drained gearbox oil; 5 readings`. */
function workText({ book, say }: ViewContext, job: Job): string {
  const byVerb = new Map<string, string[]>();
  for (const entry of job.work) {
    const things = byVerb.get(entry.verb);
    if (things === undefined) byVerb.set(entry.verb, [itemName(book, entry.thing)]);
    else things.push(itemName(book, entry.thing));
  }
  const done = [...byVerb].map(([verb, things]) => `${say(verb)} ${things.join(', ')}`);
  const readings = job.readings.length === 0 ? [] : [countOf(job.readings.length, say('reading'), say('readings'))];
  const fitted = job.parts.filter((part) => part.state === 'fitted').map((part) => part.part);
  const parts = fitted.length === 0 ? [] : [`${say('fitted')} ${fitted.join(', ')}`];
  return [...done, ...parts, ...readings].join('; ');
}

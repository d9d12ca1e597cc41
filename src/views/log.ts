// The log by date, to be read like a diary: date and title, the first photo, what it was for, the owner's first words, and last what was done.
import type { Job } from '../records/model.ts';
import type { Block, Inline, Paragraph } from '../sheet/sheet.ts';
import { photoBlock } from './job/photos.ts';
import { heading, lines, sentence } from './wording/blocks.ts';
import { countOf } from './wording/count.ts';
import { spanText, yearOf } from './wording/day.ts';
import { grouped } from './wording/grouped.ts';
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
  const [photo] = job.photos;
  const told = [
    ...paragraph(sentence(job.purpose ?? '')),
    ...firstWords(context, job),
    ...paragraph(ridden(context, job)),
    ...doneList(context, job),
  ];
  return [
    heading(3, [...dateline(context, job), '  ', jobTitle(job)], `log-${job.id}`),
    ...(photo === undefined ? [] : [photoBlock(job, photo, 'small')]),
    ...(told.length === 0 ? [] : [{ type: 'prose', paragraphs: told } as const]),
  ];
}

function paragraph(text: string): readonly Paragraph[] {
  return text === '' ? [] : [{ kind: 'paragraph', text }];
}

/** `19 September 2026, service, 24 402 mi`; a record that is not done says so. */
function dateline({ say }: ViewContext, job: Job): readonly Inline[] {
  const clock = job.odometer === undefined ? [] : [writtenText(job.odometer)];
  const said = [spanText(job.date), say(job.kind), ...clock].join(', ');
  if (job.state === 'done') return [{ kind: 'em', text: said }];
  const words = job.waitingFor === undefined ? say(job.state) : `${say('waiting for')} ${job.waitingFor}`;
  return [
    { kind: 'em', text: `${said}, ` },
    { kind: 'strong', text: words },
  ];
}

/** What happened on the road; in a record that is not of a ride alone, it is said that it was on one. */
function ridden({ say }: ViewContext, { kind, ride }: Job): string {
  const happened = ride?.whatHappened ?? '';
  return kind === 'ride' || happened === '' ? sentence(happened) : `${say('Ridden')}: ${happened}`;
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

function firstOf({ prose }: ViewContext, { body }: Job): readonly Paragraph[] {
  const [first] = body.trim() === '' ? [] : prose(beginning(body));
  return first?.kind === 'paragraph' ? [first] : [];
}

/** As far as the first empty line: what stands below changes nothing above it, but where a name in brackets may be explained there. */
function beginning(body: string): string {
  const from = body.search(/[^\n]/);
  const end = body.indexOf('\n\n', from);
  const first = end < 0 ? body : body.slice(from, end);
  return first.includes('[') ? body : first;
}

/** What was done, an item for each verb: `Removed cylinder head, barrels`, `Drained gearbox oil`, `5 readings`. */
function doneList({ book, say }: ViewContext, job: Job): readonly Paragraph[] {
  const byVerb = grouped(job.work, ({ verb }) => verb);
  const done = [...byVerb].map(
    ([verb, those]) => [say(verb), those.map(({ thing }) => itemName(book, thing))] as const,
  );
  const fitted = job.parts.filter((part) => part.state === 'fitted').map((part) => part.part);
  const named = [...done, [say('fitted'), fitted] as const].filter(([, things]) => things.length > 0);
  const readings = job.readings.length === 0 ? [] : [countOf(job.readings.length, say('reading'), say('readings'))];
  const items = [...named.map(([verb, things]) => `${sentence(verb)} ${things.join(', ')}`), ...readings];
  if (items.length === 0) return [];
  return [{ kind: 'list', ordered: false, items: items.map(paragraph) }];
}

// The facts at the head of a record: when, by whom, at what distance, in which state, and what it goes on from.
import { printFigure } from '../../figure/print.ts';
import type { Book } from '../../book/book.ts';
import type { Job } from '../../records/model.ts';
import type { Block, Text } from '../../sheet/sheet.ts';
import { fact, heading, joined, lines } from '../wording/blocks.ts';
import type { Fact } from '../wording/blocks.ts';
import { count } from '../wording/count.ts';
import { dayText, spanText } from '../wording/day.ts';
import { jobTitle } from '../wording/job.ts';
import { plain } from '../wording/named.ts';
import { writtenText } from '../wording/value.ts';
import type { ViewContext } from '../view.ts';

/** One block of facts; only what the record says. */
export function jobFacts(context: ViewContext, job: Job): Block {
  const { say } = context;
  return {
    type: 'facts',
    across: 2,
    facts: [
      ...fact(say('Date'), spanText(job.date)),
      ...fact(say('Kind'), say(job.kind)),
      ...fact(say('State'), stateText(say, job)),
      ...fact(say('For'), job.purpose),
      ...fact(say('Hands'), job.hands.join(', ')),
      ...distance(context, job),
      ...fact(say('Time'), job.time === undefined ? undefined : writtenText(job.time)),
      ...fact(say('Goes on from'), continued(context, job)),
      ...fact(say('Procedures'), procedures(context, job)),
      ...fact(say('Heat cycles'), job.heatCycles === 0 ? undefined : count(job.heatCycles)),
      ...fact(say('State left in'), job.stateLeft.join('; ')),
      ...fact(say('Next'), job.next),
      ...fact(say('Signed'), job.signed === undefined ? undefined : `${job.signed.by}, ${dayText(job.signed.date)}`),
    ],
  };
}

function stateText(say: (words: string) => string, job: Job): string {
  return job.waitingFor === undefined ? say(job.state) : `${say('waiting for')} ${job.waitingFor}`;
}

function distance({ book, say }: ViewContext, job: Job): readonly Fact[] {
  if (job.odometer === undefined) return [];
  const clock = writtenText(job.odometer);
  const own = book.odometer.machineAt(job.date.from);
  if (own === undefined) return [{ name: say('On the clock'), value: clock }];
  const machine = printFigure(own);
  return [
    { name: say('On the clock'), value: clock },
    ...(machine === clock ? [] : fact(say('Distance of the machine'), machine)),
  ];
}

function continued({ book }: ViewContext, job: Job): Text | undefined {
  if (job.continues === undefined) return undefined;
  const before = book.jobs.get(job.continues);
  return before === undefined ? job.continues : [jobTitle(before)];
}

function procedures({ book, say }: ViewContext, job: Job): string {
  return job.procedures.map((id) => say(book.content.procedures.get(id)?.title ?? plain(id))).join('; ');
}

type Asked = Pick<ViewContext, 'book' | 'say'>;

/** Checks of hold points that the record proves, and services done, each on a line. */
export function jobChecks({ book, say }: ViewContext, job: Job, within: string): readonly Block[] {
  return [...checks({ book, say }, job, within), ...services({ book, say }, job, within)];
}

function services({ book, say }: Asked, job: Job, within: string): readonly Block[] {
  if (job.services.length === 0) return [];
  const lineOf = (id: string): string => {
    const service = book.due.find((due) => due.service.id === id)?.service;
    return service === undefined ? plain(id) : `${service.item}: ${say(service.action)}`;
  };
  return [heading(3, say('Services done'), `${within}services`), lines(job.services.map(lineOf))];
}

function checks({ book, say }: Asked, job: Job, within: string): readonly Block[] {
  if (job.checks.length === 0) return [];
  const texts = job.checks.map((one) => {
    const by = one.checkedBy === undefined ? undefined : `${say('checked by')} ${one.checkedBy}`;
    return joined([checkText(book, say, one.check), one.value, by]);
  });
  return [heading(3, say('Checks proved'), `${within}checks`), lines(texts)];
}

function checkText(book: Book, say: (words: string) => string, id: string): string {
  for (const point of book.content.holdPoints) {
    const check = point.checks.find((one) => one.id === id);
    if (check !== undefined) return say(check.text);
  }
  return plain(id);
}

// The facts at the head of a record: when, by whom, at what distance, in which state, and what it goes on from.
import { printFigure } from '../../figure/print.ts';
import type { Book } from '../../book/book.ts';
import type { HoldPoint } from '../../records/content-model.ts';
import type { Job } from '../../records/model.ts';
import type { Block, Text } from '../../sheet/sheet.ts';
import { fact, heading, lines } from '../wording/blocks.ts';
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
  // A list that grows: a dozen small lists put into one would be the dearest part of a record's page.
  const facts: Fact[] = [];
  const add = (name: string, value: Text | undefined): void => {
    if (value !== undefined && value !== '') facts.push({ name: say(name), value });
  };
  const day = spanText(job.date);
  add('Date', job.dayFrom === undefined ? day : `${day}, ${say('as its first photograph was taken')}`);
  add('Kind', say(job.kind));
  add('State', stateText(say, job));
  add('For', job.purpose);
  add('Hands', job.hands.join(', '));
  facts.push(...distance(context, job));
  add('Time', job.time === undefined ? undefined : writtenText(job.time));
  add('Goes on from', continued(context, job));
  add('Procedures', procedures(context, job));
  add('Heat cycles', job.heatCycles === 0 ? undefined : count(job.heatCycles));
  add('State left in', job.stateLeft.join('; '));
  add('Next', job.next);
  add('Signed', job.signed === undefined ? undefined : `${job.signed.by}, ${dayText(job.signed.date)}`);
  add('Print of this record', job.print);
  return { type: 'facts', across: 2, facts };
}

function stateText(say: (words: string) => string, job: Job): string {
  return job.waitingFor === undefined ? say(job.state) : `${say('waiting for')} ${job.waitingFor}`;
}

function distance({ book, say }: ViewContext, job: Job): readonly Fact[] {
  if (job.odometer === undefined) return [];
  const clock = writtenText(job.odometer);
  const told = { name: say('On the clock'), value: clock };
  const own = book.odometer.machineAt(job.date.from);
  // Most machines have the clock they were born with.
  if (own === undefined || (own.quantity === job.odometer.quantity && own.unit === job.odometer.unit)) return [told];
  const machine = printFigure(own);
  return machine === clock ? [told] : [told, ...fact(say('Distance of the machine'), machine)];
}

function continued({ book }: ViewContext, job: Job): Text | undefined {
  if (job.continues === undefined) return undefined;
  const before = book.jobs.get(job.continues);
  return before === undefined ? job.continues : [jobTitle(before)];
}

function procedures({ book, say }: ViewContext, job: Job): string {
  return job.procedures.map((id) => say(book.content.procedures.get(id)?.title ?? plain(id))).join('; ');
}

/** So many checks of one hold point are told one by one in the history. */
const mostInFull = 4;

type Asked = Pick<ViewContext, 'book' | 'say'>;

/** Checks of hold points that the record proves, and services done, each on a line. */
export function jobChecks({ book, say }: ViewContext, job: Job, within: string): readonly Block[] {
  return [...checks({ book, say }, job, within), ...services({ book, say }, job, within)];
}

function services(asked: Asked, job: Job, within: string): readonly Block[] {
  if (job.services.length === 0) return [];
  return [heading(3, servicesHead(asked, job), `${within}services`), lines(serviceTexts(asked, job))];
}

/** What a planned job names is still to be done. */
export function servicesHead({ say }: Pick<ViewContext, 'say'>, { state }: Job): string {
  return say(state === 'planned' ? 'Services to do' : 'Services done');
}

/** Each service done, `Plugs: renew`. */
export function serviceTexts({ book, say }: Asked, job: Job): readonly string[] {
  return job.services.map((id) => {
    const service = book.due.find((due) => due.service.id === id)?.service;
    return service === undefined ? plain(id) : `${service.item}: ${say(service.action)}`;
  });
}

function checks(asked: Asked, job: Job, within: string): readonly Block[] {
  if (job.checks.length === 0) return [];
  return [heading(3, asked.say('Checks proved'), `${within}checks`), lines(checkTexts(asked, job))];
}

/** Each check that the record proves, with its value and who looked as well. */
export function checkTexts({ book, say }: Asked, job: Job): readonly string[] {
  return job.checks.map((one) => {
    const by = one.checkedBy === undefined ? '' : `${say('checked by')} ${one.checkedBy}`;
    return [checkText(book, say, one.check), one.value ?? '', by].filter((text) => text !== '').join(', ');
  });
}

/** The same for the history: many checks of one hold point are told by their number, and by those that have a value or a witness. */
export function briefChecks(asked: Asked, job: Job): readonly string[] {
  const { book, say } = asked;
  const pointOf = (id: string): HoldPoint | undefined =>
    book.content.holdPoints.find((point) => point.checks.some((check) => check.id === id));
  const points = [...new Set(job.checks.map((one) => pointOf(one.check)))];
  return points.flatMap((point) => {
    const those = job.checks.filter((one) => pointOf(one.check) === point);
    if (point === undefined || those.length <= mostInFull) return checkTexts(asked, { ...job, checks: those });
    const telling = those.filter((one) => (one.value ?? one.checkedBy ?? '') !== '');
    const number = `${say(point.title)}: ${count(those.length)} ${say('checks')}`;
    if (telling.length === 0) return [number];
    const [first, ...rest] = checkTexts(asked, { ...job, checks: telling });
    return [`${number}, ${say('among them')}: ${first ?? ''}`, ...rest];
  });
}

function checkText(book: Book, say: (words: string) => string, id: string): string {
  for (const point of book.content.holdPoints) {
    const check = point.checks.find((one) => one.id === id);
    if (check !== undefined) return say(check.text);
  }
  return plain(id);
}

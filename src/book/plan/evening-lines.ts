// The evening as lines for the command line, and as plain data for another program.
import type { Book } from '../book.ts';
import type { Asked, Evening } from './evening.ts';
import { eveningOf } from './evening.ts';
import { minutesText } from './estimate.ts';
import { calledFor } from './called-for.ts';
import { besideTime } from './beside-time.ts';
import { notOnText } from '../not-on-it.ts';
import { oddMinutes } from './odd-minutes.ts';
import { freesText, obstacleText, readyText, unlockText } from './plan-text.ts';
import { freesAny, nothingByItself, worthSaying } from './unlock.ts';
import type { PlannedJob } from './plan-of-work.ts';
import { backText, goals, nothingOff, thenText } from './way-back-text.ts';
import { wayBack } from './way-back.ts';

/** So much is said of each list; the sheet has all of it. */
const most = 6;

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];
}

function named({ job }: PlannedJob): string {
  return `${job.title} (${job.id})`;
}

/** What was put aside says itself how it goes on. */
function withNext(one: PlannedJob): string {
  return one.job.next === undefined ? named(one) : `${named(one)}: next, ${one.job.next}`;
}

function tonightLines({ tonight, left, asked }: Evening): readonly string[] {
  const whole = `${minutesText(asked.minutes)}, ${asked.helper ? 'with a helper' : 'alone'}`;
  if (tonight.length === 0) return [`Nothing that is planned can be finished in ${whole}.`];
  const jobs = tonight.flatMap((one) => [`  ${named(one)}`, ...readyText(one).map((line) => `    ${line}`)]);
  return [`In ${whole}:`, ...jobs, `  ${minutesText(left)} left over`];
}

function restLines({ notTonight, asked, left }: Evening): readonly string[] {
  return notTonight.flatMap(({ planned, because }) => [
    named(planned),
    ...because.map((one) => `  ${obstacleText(one)}`),
    ...besideTime(planned, because, asked, left).map((line) => `  ${line}`),
  ]);
}

function unlockLines({ unlock, notTonight }: Evening): readonly string[] {
  const [first] = notTonight;
  if (first === undefined) return [];
  const worth = worthSaying(unlock).slice(0, most);
  const head = freesAny(unlock) ? [] : [nothingByItself];
  return [...head, ...worth.map((one) => `${unlockText(one)}: ${freesText(one)}`)];
}

function oddLines(book: Book): readonly string[] {
  const { firstSteps, looks, due } = oddMinutes(book);
  return [
    ...firstSteps.slice(0, most).map(({ step, waiting }) => `${step.step}: ${waiting[0]?.why ?? ''}`),
    ...(looks?.checks ?? []).slice(0, most).map(({ check }) => `${looks?.point.title ?? ''}: ${check.text}`),
    ...tightenedLines(book),
    ...due.slice(0, most).map(({ service, state }) => `${service.item}: ${service.action} (${state})`),
  ];
}

function putOffLines(book: Book): readonly string[] {
  return oddMinutes(book).putOff.map(({ text, line }) => `${text}: ${notOnText(line)}`);
}

/** Head and wheels after heat and rides; the schedule's own stand with the services. */
function tightenedLines(book: Book): readonly string[] {
  return calledFor(book).flatMap(({ row, reason }) => {
    if (row === undefined || (reason.why !== 'run hot since' && reason.why !== 'ridden since')) return [];
    const how =
      reason.why === 'run hot since' ? 'tighten again, stone cold; run hot' : 'see whether still tight; ridden';
    return [`${row.fastener.name}: ${how} ${reason.job.date.from}`];
  });
}

/** What a person asks standing in the garage door, answered in lines. */
export function eveningLines(book: Book, asked: Asked): readonly string[] {
  const evening = eveningOf(book, asked);
  const jobs = evening.plan.jobs.length === 0 ? ['No job is open.'] : tonightLines(evening);
  return [
    ...jobs,
    ...section('Nothing in the way, but nobody has said how long it takes', evening.timeNotKnown.map(withNext)),
    ...section('Not tonight, because', restLines(evening)),
    ...section('What would free most', unlockLines(evening)),
    ...section(
      'Waiting for each other by their steps: one of them is done in two goes',
      evening.plan.inTwoGoes.map(({ title }) => title),
    ),
    ...section('In odd minutes, in no job', oddLines(book)),
    ...section('Not in odd minutes either: it needs what is off', putOffLines(book)),
    ...backLines(book),
  ];
}

function backLines(book: Book): readonly string[] {
  if (book.off.open.length === 0) return [];
  return goals.flatMap(({ goal, title }) => {
    const way = wayBack(book, goal);
    const steps = way.steps.map((one, index) => `${String(index + 1)}. ${backText(book, one).join('; ')}`);
    const then = thenText(way);
    return section(title, [...(steps.length === 0 ? [nothingOff] : steps), ...(then === undefined ? [] : [then])]);
  });
}

/** The same as plain data: ids, minutes, sentences. */
export function eveningData(book: Book, asked: Asked): object {
  const evening = eveningOf(book, asked);
  const job = (one: PlannedJob): object => ({
    job: one.job.id,
    title: one.job.title,
    minutes: one.estimate.minutes ?? null,
    reckonedBy: one.estimate.from,
    helper: one.helper !== undefined,
    says: readyText(one),
  });
  return {
    machine: book.records.machine.name,
    today: book.today,
    minutes: asked.minutes,
    alone: !asked.helper,
    tonight: evening.tonight.map(job),
    minutesLeft: evening.left,
    timeNotKnown: evening.timeNotKnown.map(job),
    notTonight: evening.notTonight.map(({ planned, because }) => ({
      ...job(planned),
      because: because.map(obstacleText),
    })),
    unlock: evening.unlock.map((one) => ({
      what: unlockText(one),
      frees: one.frees.map(({ id }) => id),
      helps: one.helps.map(({ id }) => id),
    })),
    inTwoGoes: evening.plan.inTwoGoes.map(({ id }) => id),
    wayBack: Object.fromEntries(
      goals.map(({ goal }) => [goal, wayBack(book, goal).steps.map((one) => backText(book, one))]),
    ),
  };
}

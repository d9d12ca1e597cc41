// The sheets to print next: those of the planned jobs, and of what is due, to be tightened again or to be got. Each leads to its PDF.
import type { DueLine, JobPlan } from '../book/book.ts';
import { placeOfSheet } from '../book/order-of-sheets.ts';
import { calledFor, type CalledFor } from '../book/plan/called-for.ts';
import { partLines } from '../book/shopping/part-lines.ts';
import type { Inline, Text } from '../sheet/sheet.ts';
import { count } from './wording/count.ts';
import { jobTitle } from './wording/job.ts';
import { sheetsOf, type NamedSheet } from './wording/sheet-names.ts';
import type { ViewContext } from './view.ts';

/** So many planned jobs are named with their sheets; the page of sheets has them all. */
const mostJobs = 3;

/** A line for each job, one for what is called for besides; none where no job is planned and nothing is called for. */
export function nextSheets(context: ViewContext): readonly Text[] {
  const { book, say } = context;
  const all = sheetsOf(book).filter(({ definition }) => definition.on.includes('paper'));
  const plans = book.plans.slice(0, mostJobs);
  const ofJobs = plans.map((plan) => ({ plan, sheets: sheetsFor(plan, all) }));
  const named = new Set(ofJobs.flatMap(({ sheets }) => sheets));
  const others = calledSheets(context).flatMap((id) => all.filter((one) => one.id === id && !named.has(one)));
  const rest = book.plans.length - plans.length;
  return [
    ...ofJobs.flatMap(({ plan, sheets }) => ofJob(context, plan, sheets)),
    ...(others.length === 0 ? [] : [joinedLinks(others.map((sheet) => link(context, sheet)))]),
    ...(rest > 0 ? [[moreLink(`${count(rest)} ${say('more planned')}`)]] : []),
  ];
}

/** The sheets of the machine that the record of a job keeps, and those made for it. */
export function sheetsFor({ job }: JobPlan, all: readonly NamedSheet[]): readonly NamedSheet[] {
  const own = all
    .filter(({ plan }) => plan?.job === job)
    .toSorted((one, other) => placeOfSheet(one.definition.id) - placeOfSheet(other.definition.id));
  const kept = all.filter(({ definition }) => definition.per === 'machine' && definition.keptBy?.includes(job.kind));
  return [...kept, ...own];
}

/** Of what presses without a job being planned for it. */
function calledSheets({ book }: ViewContext): readonly string[] {
  const isWanted = partLines(book).some(({ part }) => part.state === 'wanted');
  return [
    ...(book.due.some(presses) ? ['service-sheet'] : []),
    ...(calledFor(book).some(isCalled) ? ['re-torque'] : []),
    ...(isWanted ? ['parts-to-get'] : []),
  ];
}

function presses({ state }: DueLine): boolean {
  return state === 'due' || state === 'overdue';
}

/** What goes together in a planned job is tightened by its own sheet. */
function isCalled({ reason }: CalledFor): boolean {
  return reason.why === 'due' ? presses(reason.due) : reason.why !== 'going together';
}

function moreLink(text: string): Inline {
  return { kind: 'link', text, to: 'page:sheets.html' };
}

function ofJob(context: ViewContext, { job }: JobPlan, sheets: readonly NamedSheet[]): readonly Text[] {
  if (sheets.length === 0) return [[jobTitle(job)]];
  return [[jobTitle(job), ': ', ...joinedLinks(sheets.map((sheet) => link(context, sheet)))]];
}

function joinedLinks(links: readonly Inline[]): readonly Inline[] {
  return links.flatMap((one, index) => (index === 0 ? [one] : [', ', one]));
}

function link({ say }: ViewContext, { id, definition }: NamedSheet): Inline {
  return { kind: 'link', text: say(definition.title), to: `print:${id}` };
}

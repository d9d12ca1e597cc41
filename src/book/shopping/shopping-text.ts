// The sentences of the shopping list: when a shop is open, what to bring, what would do as well, what is late. Dates stand as in the records.
import { formatDecimal } from '../../quantity/decimal.ts';
import type { Day } from '../../quantity/day.ts';
import { addDays, daysBetween } from '../../quantity/day-arithmetic.ts';
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { PartEntry, Supplier } from '../../records/model.ts';
import type { OpenLine } from '../book.ts';
import type { PartLine } from './part-lines.ts';
import type { Of } from './shopping-list.ts';
import type { AskedBy, ToGet, Trip } from './trips.ts';

function days(count: number): string {
  return `${formatDecimal(count, 0)}\u00a0${count === 1 ? 'day' : 'days'}`;
}

/** `4 × gudgeon pin circlips`. */
export function countedName(name: string, count: number): string {
  return count === 1 ? name : `${formatDecimal(count, 0)}\u00a0× ${name}`;
}

/** When the shop is open next, how long its post takes, and what the owner wrote beside it. */
export function shopText({ supplier, next }: Trip): readonly string[] {
  if (supplier === undefined) return [];
  const open =
    next === undefined
      ? undefined
      : `${next.inDays === 0 ? 'open today' : `open ${next.weekday} ${next.day}`}, ${next.hours}`;
  const never = supplier.hours.length === 0 ? 'hours not known' : 'closed all week, by the hours written';
  return [open ?? never, ...leadText(supplier), ...(supplier.note === undefined ? [] : [supplier.note])];
}

function leadText({ leadDays }: Supplier): readonly string[] {
  return leadDays === undefined ? [] : [`about ${days(leadDays)} to the door`];
}

/** What is taken along, with its size: `bring the old seal, 25×40×7 mm`; or the size alone. */
export function bringText({ bring, size }: PartEntry): string | undefined {
  if (bring !== undefined) return size === undefined ? `bring ${bring}` : `bring ${bring}, ${size}`;
  return size;
}

/** Size and sample, what would do as well, how it hangs on something, and the owner's own words. */
export function buyingText({ part, inDrawer }: ToGet): readonly string[] {
  const bring = bringText(part);
  return [
    ...(bring === undefined ? [] : [bring]),
    ...(part.alternatives ?? []).map((one) => `or ${one}`),
    ...(part.onlyIf === undefined ? [] : [`only if ${part.onlyIf}`]),
    ...(part.core === undefined ? [] : [`on exchange: ${formatMoney(part.core.deposit)} until the old one is back`]),
    ...(inDrawer ? ['one lies in the drawer: look there first'] : []),
    ...(part.note === undefined ? [] : [part.note]),
  ];
}

/** `“Before the first live kick” is held until then`; a job that is not begun holds nothing yet. */
export function holdingText({ holds, heldNow }: ToGet): string | undefined {
  if (holds === undefined) return undefined;
  return heldNow ? `“${holds.title}” is held until then` : `“${holds.title}” will be held once it is begun`;
}

/** Who asks for it: the job's title, with machine and number where there is more than one. */
export function askedText(one: AskedBy, among: readonly AskedBy[], machines: number): string {
  const many = among.length > 1 ? `${formatDecimal(one.count, 0)}\u00a0for ` : '';
  return machines > 1 ? `${many}${one.machine}, “${one.job.title}”` : `${many}“${one.job.title}”`;
}

/** Promised, late, or to be reckoned from the supplier's usual time. */
export function comingText({ part, job }: PartLine, today: Day, supplier: Supplier | undefined): string {
  const { promised } = part;
  if (promised !== undefined && promised < today)
    return `promised for ${promised}, ${days(daysBetween(promised, today))} late: ask`;
  if (promised !== undefined) return `promised for ${promised}`;
  const lead = supplier?.leadDays;
  if (lead === undefined || job.state === 'planned') return 'no day promised';
  const likely = addDays(job.date.to, lead);
  return likely < today ? `should have come by ${likely}: ask` : `about ${likely}, as they usually take`;
}

/** Work away: with whom, until when, at what price. */
export function awayText({ entry, since }: OpenLine, today: Day): readonly string[] {
  const { to, promised, price } = entry;
  const late = promised !== undefined && promised < today ? `, ${days(daysBetween(promised, today))} late: ask` : '';
  return [
    `${to === undefined ? 'away' : `at ${to}`} since ${since}`,
    promised === undefined ? 'no day promised' : `promised for ${promised}${late}`,
    ...(price === undefined ? [] : [`${formatMoney(price)} agreed`]),
  ];
}

/** The deposit, and by when the old part has to be with them. */
export function coreText({ part }: Of<PartLine>, today: Day): string {
  const { core, from } = part;
  if (core === undefined) return '';
  const where = from === undefined ? '' : ` to ${from}`;
  const money = `${formatMoney(core.deposit)} comes back`;
  if (core.returnBy === undefined) return `old one back${where}: ${money}; no day was named`;
  const left = daysBetween(today, core.returnBy);
  const when = left < 0 ? `, ${days(-left)} past: ask` : `, ${days(left)} left`;
  return `old one back${where} by ${core.returnBy}${when}: ${money}`;
}

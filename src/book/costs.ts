// What the machine has cost: money as paid, in one currency at the owner's stated rates; nothing counted twice.
import type { Money } from '../quantity/money.ts';
import { formatMoney, inCurrency, sum } from '../quantity/money-arithmetic.ts';
import type { Job, MoneyEntry, PartEntry, Records, WorkEntry } from '../records/model.ts';
import type { ClosedLine, Costs } from './book.ts';
import { byText } from './in-order.ts';
import type { Namer } from './names.ts';

interface Line {
  readonly job: Job;
  readonly entry: MoneyEntry | PartEntry;
  readonly group: string;
  readonly amount: Money;
  /** 1 spent, -1 come back. */
  readonly sign: 1 | -1;
}

function same(a: Money, b: Money): boolean {
  return a.minor === b.minor && a.currency === b.currency;
}

/** Does a payment of this record pay for the thing: by its words, or by the very amount. */
function paysFor(entry: MoneyEntry, thing: string, price: Money, key: Namer): boolean {
  if (entry.kind !== 'paid' && entry.kind !== 'deposit') return false;
  return same(entry.amount, price) || key(entry.for) === key(thing);
}

function paidLines(job: Job): readonly Line[] {
  return job.money.map((entry) => {
    const sign = entry.kind === 'paid' || entry.kind === 'deposit' ? 1 : -1;
    return { job, entry, group: entry.group, amount: entry.amount, sign };
  });
}

/** True when one payment of the record equals all its part prices together. */
function paidInOne(job: Job, priced: readonly Money[]): boolean {
  const [first] = priced;
  if (first === undefined || priced.some((price) => price.currency !== first.currency)) return false;
  const whole = sum(priced, first.currency);
  return job.money.some((entry) => entry.kind === 'paid' && same(entry.amount, whole));
}

/** Prices of parts that no payment of the same record covers. Wanted parts are not bought; returned ones came back; moved ones were paid for on the other machine. */
function partLines(job: Job, key: Namer): readonly Line[] {
  const bought = job.parts.filter(
    (part) =>
      part.price !== undefined && part.state !== 'wanted' && part.state !== 'returned' && part.movedFrom === undefined,
  );
  const prices = bought.flatMap((part) => (part.price === undefined ? [] : [part.price]));
  if (paidInOne(job, prices)) return [];
  return bought.flatMap((entry): readonly Line[] => {
    const price = entry.price;
    if (price === undefined || job.money.some((paid) => paysFor(paid, entry.part, price, key))) return [];
    return [{ job, entry, group: 'parts', amount: price, sign: 1 }];
  });
}

/** On account and the rest: payments of one group that come to the price. */
function paidInParts(payments: readonly MoneyEntry[], price: Money): boolean {
  const byGroup = new Map<string, number>();
  for (const { kind, group, amount } of payments) {
    const counts = (kind === 'paid' || kind === 'deposit') && amount.currency === price.currency;
    if (counts) byGroup.set(group, (byGroup.get(group) ?? 0) + amount.minor);
  }
  return [...byGroup.values()].includes(price.minor);
}

/** A price agreed when a thing was sent out, unless the record that sent it or took it back shows the payment. */
function sentOutLine(
  job: Job,
  entry: WorkEntry,
  back: ReadonlyMap<WorkEntry, ClosedLine>,
  key: Namer,
): readonly Line[] {
  const price = entry.price;
  if (price === undefined) return [];
  const returned = back.get(entry)?.byJob;
  const payments = [...job.money, ...(returned === undefined || returned === job ? [] : returned.money)];
  if (payments.some((paid) => paysFor(paid, entry.thing, price, key)) || paidInParts(payments, price)) return [];
  const firm = entry.to === undefined ? '' : `, ${entry.to}`;
  const paid: MoneyEntry = {
    kind: 'paid',
    amount: price,
    for: `${entry.thing}${firm}`,
    group: 'work sent out',
    at: entry.at,
  };
  return [{ job, entry: paid, group: 'work sent out', amount: price, sign: 1 }];
}

function totalsBy(
  lines: readonly { readonly name: string; readonly own: Money }[],
  currency: string,
): readonly { readonly name: string; readonly total: Money }[] {
  const groups = new Map<string, Money[]>();
  for (const line of lines) {
    const list = groups.get(line.name) ?? [];
    list.push(line.own);
    groups.set(line.name, list);
  }
  return [...groups]
    .map(([name, amounts]) => ({ name, total: sum(amounts, currency) }))
    .toSorted((a, b) => byText(a.name, b.name));
}

/** Prices that were not added, in sentences: paid for elsewhere, or the same money as a payment beside them. */
function leftOutOf(job: Job, key: Namer): readonly string[] {
  const counted = new Set(partLines(job, key).map((line) => line.entry));
  const priced = job.parts.filter((part) => part.price !== undefined && part.state !== 'wanted' && !counted.has(part));
  return priced.map((part) => {
    if (part.movedFrom !== undefined)
      return `${part.part} in ${job.id}: came from ${part.movedFrom}, its price is counted there`;
    if (part.state === 'returned') return `${part.part} in ${job.id}: returned`;
    return `${part.part} in ${job.id}: the same money as a payment of that record, counted once`;
  });
}

/** Adds up what was paid. What has no rate, or was paid for on another machine, is named and left out. */
export function countCosts(records: Records, jobs: readonly Job[], closed: readonly ClosedLine[], key: Namer): Costs {
  const { currency, rates, spendingLimit } = records.machine;
  const back = new Map(closed.filter((line) => line.state === 'sent out').map((line) => [line.entry, line]));
  const lines = jobs.flatMap((job) => [
    ...paidLines(job),
    ...partLines(job, key),
    ...job.work.flatMap((entry) => sentOutLine(job, entry, back, key)),
  ]);
  const counted = lines.map((line) => {
    const own = inCurrency(line.amount, currency, rates);
    return { ...line, own: own === undefined ? undefined : { minor: line.sign * own.minor, currency } };
  });
  const own = counted.flatMap((line) => (line.own === undefined ? [] : [{ ...line, own: line.own }]));
  const noRate = counted
    .filter((line) => line.own === undefined)
    .map((line) => `${formatMoney(line.amount)} in ${line.job.id}: no rate for ${line.amount.currency}`);
  const byGroup = totalsBy(
    own.map((line) => ({ name: line.group, own: line.own })),
    currency,
  );
  const byYear = totalsBy(
    own.map((line) => ({ name: line.job.date.from.slice(0, 4), own: line.own })),
    currency,
  );
  return {
    total: sum(
      own.map((line) => line.own),
      currency,
    ),
    byGroup: byGroup.map(({ name, total }) => ({ group: name, total })),
    byYear: byYear.map(({ name, total }) => ({ year: name, total })),
    entries: counted.map((line) => ({
      job: line.job,
      entry: line.entry,
      ...(line.own === undefined ? {} : { inOwn: line.own }),
    })),
    leftOut: [...noRate, ...jobs.flatMap((job) => leftOutOf(job, key))],
    ...(spendingLimit === undefined ? {} : { limit: spendingLimit }),
  };
}

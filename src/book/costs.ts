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

function addPaid(job: Job, lines: Line[]): void {
  for (const entry of job.money) {
    const sign = entry.kind === 'paid' || entry.kind === 'deposit' ? 1 : -1;
    lines.push({ job, entry, group: entry.group, amount: entry.amount, sign });
  }
}

/** True when one payment of the record equals all its part prices together. */
function paidInOne(job: Job, priced: readonly Money[]): boolean {
  const [first] = priced;
  if (first === undefined || priced.some((price) => price.currency !== first.currency)) return false;
  const whole = sum(priced, first.currency);
  return job.money.some((entry) => entry.kind === 'paid' && same(entry.amount, whole));
}

/** Why a part's price is not added; undefined when it is. Wanted parts are not bought and have no price to name. */
function notAdded(part: PartEntry, price: Money, job: Job, whole: boolean, key: Namer): string | undefined {
  if (part.movedFrom !== undefined) return `came from ${part.movedFrom}, its price is counted there`;
  if (part.state === 'returned') return 'returned';
  const paid = whole || job.money.some((entry) => paysFor(entry, part.part, price, key));
  return paid ? 'the same money as a payment of that record, counted once' : undefined;
}

function isBought(part: PartEntry): boolean {
  return (
    part.price !== undefined && part.state !== 'wanted' && part.state !== 'returned' && part.movedFrom === undefined
  );
}

/** Adds the part prices of a record that no payment beside them covers, and names the others. */
function addParts(job: Job, key: Namer, lines: Line[], leftOut: string[]): void {
  const bought = job.parts.filter(isBought);
  const prices = bought.flatMap((part) => part.price ?? []);
  const whole = paidInOne(job, prices);
  for (const part of job.parts) {
    const price = part.price;
    if (price === undefined || part.state === 'wanted') continue;
    const why = notAdded(part, price, job, whole, key);
    if (why === undefined) lines.push({ job, entry: part, group: 'parts', amount: price, sign: 1 });
    else leftOut.push(`${part.part} in ${job.id}: ${why}`);
  }
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
function addSentOut(
  job: Job,
  entry: WorkEntry,
  back: ReadonlyMap<WorkEntry, ClosedLine>,
  key: Namer,
  lines: Line[],
): void {
  const price = entry.price;
  if (price === undefined) return;
  const returned = back.get(entry)?.byJob;
  const payments = [...job.money, ...(returned === undefined || returned === job ? [] : returned.money)];
  if (payments.some((paid) => paysFor(paid, entry.thing, price, key)) || paidInParts(payments, price)) return;
  const what = entry.to === undefined ? entry.thing : `${entry.thing}, ${entry.to}`;
  const paid: MoneyEntry = { kind: 'paid', amount: price, for: what, group: 'work sent out', at: entry.at };
  lines.push({ job, entry: paid, group: 'work sent out', amount: price, sign: 1 });
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

/** Adds up what was paid. What has no rate, or was paid for on another machine, is named and left out. */
export function countCosts(records: Records, jobs: readonly Job[], closed: readonly ClosedLine[], key: Namer): Costs {
  const { currency, rates, spendingLimit } = records.machine;
  const back = new Map(closed.filter((line) => line.state === 'sent out').map((line) => [line.entry, line]));
  const lines: Line[] = [];
  const notCounted: string[] = [];
  for (const job of jobs) {
    addPaid(job, lines);
    addParts(job, key, lines, notCounted);
    for (const entry of job.work) addSentOut(job, entry, back, key, lines);
  }
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
    leftOut: [...noRate, ...notCounted],
    ...(spendingLimit === undefined ? {} : { limit: spendingLimit }),
  };
}

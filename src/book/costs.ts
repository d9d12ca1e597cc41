// What the machine has cost: money as paid, in one currency at the owner's stated rates; nothing counted twice.
import type { Money } from '../quantity/money.ts';
import { formatMoney, inCurrency, sum } from '../quantity/money-arithmetic.ts';
import type { Job, MoneyEntry, PartEntry, Records, WorkEntry } from '../records/model.ts';
import type { ClosedLine, Costs } from './book.ts';
import { byText } from './in-order.ts';
import { keptByJob } from './kept-by-job.ts';
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

/** Money and part prices that a record says by itself. */
interface OwnLines {
  readonly lines: readonly Line[];
  readonly leftOut: readonly string[];
}

const ownLines = keptByJob((job, key): OwnLines => {
  const lines: Line[] = [];
  const leftOut: string[] = [];
  addPaid(job, lines);
  addParts(job, key, lines, leftOut);
  return { lines, leftOut };
});

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

/** Sums by name, in the order of the names. */
interface Sums {
  readonly add: (name: string, minor: number) => void;
  readonly list: () => readonly { readonly name: string; readonly total: Money }[];
}

function sums(currency: string): Sums {
  const groups = new Map<string, number>();
  return {
    add: (name, minor) => groups.set(name, (groups.get(name) ?? 0) + minor),
    list: () =>
      [...groups]
        .map(([name, minor]) => ({ name, total: { minor, currency } }))
        .toSorted((a, b) => byText(a.name, b.name)),
  };
}

/** Adds up what was paid. What has no rate, or was paid for on another machine, is named and left out. */
export function countCosts(records: Records, jobs: readonly Job[], closed: readonly ClosedLine[], key: Namer): Costs {
  const { currency, rates, spendingLimit } = records.machine;
  const back = new Map(closed.filter((line) => line.state === 'sent out').map((line) => [line.entry, line]));
  const lines: Line[] = [];
  const notCounted: string[] = [];
  for (const job of jobs) {
    const itself = ownLines(job, key);
    lines.push(...itself.lines);
    notCounted.push(...itself.leftOut);
    for (const entry of job.work) addSentOut(job, entry, back, key, lines);
  }
  const noRate: string[] = [];
  const [byGroup, byYear] = [sums(currency), sums(currency)];
  let total = 0;
  const entries = lines.map(({ job, entry, amount, sign, group }): Costs['entries'][number] => {
    const worth = inCurrency(amount, currency, rates);
    if (worth === undefined) {
      noRate.push(`${formatMoney(amount)} in ${job.id}: no rate for ${amount.currency}`);
      return { job, entry };
    }
    const minor = sign * worth.minor;
    total += minor;
    byGroup.add(group, minor);
    byYear.add(job.date.from.slice(0, 4), minor);
    return { job, entry, inOwn: { minor, currency } };
  });
  return {
    total: { minor: total, currency },
    byGroup: byGroup.list().map(({ name, total: all }) => ({ group: name, total: all })),
    byYear: byYear.list().map(({ name, total: all }) => ({ year: name, total: all })),
    entries,
    leftOut: [...noRate, ...notCounted],
    ...(spendingLimit === undefined ? {} : { limit: spendingLimit }),
  };
}

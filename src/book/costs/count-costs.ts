// What the machine has cost: money as paid, in one currency at the owner's stated rates; nothing counted twice.
import type { Money } from '../../quantity/money.ts';
import { formatMoney, inCurrency } from '../../quantity/money-arithmetic.ts';
import type { Job, PartEntry, Records } from '../../records/model.ts';
import type { ClosedLine, Costs } from '../book.ts';
import { byText, inOrder } from '../in-order.ts';
import type { Namer } from '../names.ts';
import { plainName, remembered } from '../names.ts';
import { partLines } from '../shopping/part-lines.ts';
import { comeAtAnotherPrice } from './come-at-another-price.ts';
import { coreLines } from './core-deposits.ts';
import type { CostLine } from './cost-line.ts';
import { eachBuyOnce } from './once.ts';
import { ownLines } from './own-lines.ts';
import { sentOutLine } from './sent-out.ts';
import { sharedLines } from './shared-purchases.ts';

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

/** Test fees, plates, insurance: written under this group they stand apart from what the machine itself cost. */
function isFee(group: string): boolean {
  return plainName(group) === 'fee';
}

/** Ordered, and no later entry says that it came, with its price or without. */
function isCommitted({ entry, committed }: CostLine, ordered: ReadonlySet<PartEntry>): boolean {
  return committed === true || ('part' in entry && ordered.has(entry));
}

function stillOrdered(jobs: readonly Job[]): ReadonlySet<PartEntry> {
  if (!jobs.some((job) => job.parts.some(({ state }) => state === 'ordered'))) return new Set();
  const parts = jobs.flatMap((job) => job.parts.map((part) => ({ job, part })));
  return new Set(partLines({ parts }).flatMap(({ part }) => (part.state === 'ordered' ? [part] : [])));
}

interface Gathered {
  readonly lines: readonly CostLine[];
  readonly again: Costs['pricedAgain'];
  readonly notCounted: readonly string[];
}

function gather(records: Records, jobs: readonly Job[], closed: readonly ClosedLine[], key: Namer): Gathered {
  const back = new Map(closed.filter(({ state }) => state === 'sent out').map((line) => [line.entry, line.byJob]));
  const happened = jobs.filter(({ state }) => state !== 'planned');
  const own = jobs.map((job) => ownLines(job, key));
  const { lines: bought, again } = eachBuyOnce(
    own.flatMap((one) => one.lines),
    key,
  );
  const { lines, changed } = comeAtAnotherPrice(bought, key);
  const sent = happened.flatMap((job) => {
    const priced = job.work.filter(({ price }) => price !== undefined);
    return priced.flatMap((entry) => sentOutLine(job, entry, back.get(entry), key));
  });
  return {
    lines: [...lines, ...sent, ...coreLines(happened, key), ...sharedLines(records)],
    again,
    notCounted: [
      ...own.flatMap((one) => one.leftOut),
      ...changed,
      ...again.map(
        ({ part, job, before }) => `${part.part} in ${job.id}: the same money as in ${before.id}, counted once`,
      ),
    ],
  };
}

/** Where the line stands, for a sentence. */
function whereOf({ job, day }: CostLine): string {
  return job === undefined ? `a shared purchase on ${day}` : job.id;
}

/** Adds up what was paid, ordered or agreed. What has no rate, or was paid for on another machine, is named and left out. */
export function countCosts(records: Records, all: readonly Job[], closed: readonly ClosedLine[], key: Namer): Costs {
  const { currency, rates, spendingLimit } = records.machine;
  const jobs = inOrder(all);
  const { lines, again, notCounted } = gather(records, jobs, closed, key);
  const ordered = stillOrdered(jobs);
  const isOneOfFees = remembered(isFee);
  const noRate: string[] = [];
  const [byGroup, byYear] = [sums(currency), sums(currency)];
  let [total, fees, committed] = [0, 0, 0];
  const entries = lines.map((line): Costs['entries'][number] => {
    const { job, day, entry, amount, sign, group } = line;
    const open = isCommitted(line, ordered);
    const said: { -readonly [K in keyof Costs['entries'][number]]: Costs['entries'][number][K] } = { day, entry };
    if (job !== undefined) said.job = job;
    if (open) said.committed = true;
    const worth = inCurrency(amount, currency, rates);
    if (worth === undefined) {
      noRate.push(`${formatMoney(amount)} in ${whereOf(line)}: no rate for ${amount.currency}`);
      return said;
    }
    const minor = sign * worth.minor;
    total += minor;
    if (isOneOfFees(group)) fees += minor;
    if (open) committed += minor;
    byGroup.add(group, minor);
    byYear.add(day.slice(0, 4), minor);
    said.inOwn = { minor, currency };
    return said;
  });
  return {
    total: { minor: total, currency },
    fees: { minor: fees, currency },
    committed: { minor: committed, currency },
    byGroup: byGroup.list().map(({ name, total: whole }) => ({ group: name, total: whole })),
    byYear: byYear.list().map(({ name, total: whole }) => ({ year: name, total: whole })),
    entries,
    leftOut: [...noRate, ...notCounted],
    pricedAgain: again,
    ...(spendingLimit === undefined ? {} : { limit: spendingLimit }),
  };
}

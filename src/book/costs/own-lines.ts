// What a record says of money by itself: payments, and the prices of parts that no payment beside them covers.
import type { Money } from '../../quantity/money.ts';
import { sum } from '../../quantity/money-arithmetic.ts';
import type { Job, MoneyEntry, PartEntry } from '../../records/model.ts';
import { keptByJob } from '../kept-by-job.ts';
import type { Namer } from '../names.ts';
import type { CostLine } from './cost-line.ts';
import { lineOf, sameMoney } from './cost-line.ts';

/** Does a payment of this record pay for the thing: by its words, or by the very amount. */
export function paysFor(entry: MoneyEntry, thing: string, price: Money, key: Namer): boolean {
  if (entry.kind !== 'paid' && entry.kind !== 'deposit') return false;
  return sameMoney(entry.amount, price) || key(entry.for) === key(thing);
}

export interface OwnLines {
  readonly lines: readonly CostLine[];
  readonly leftOut: readonly string[];
}

function paid(job: Job): readonly CostLine[] {
  return job.money.map((entry) => {
    const sign = entry.kind === 'paid' || entry.kind === 'deposit' ? 1 : -1;
    return lineOf(job, entry, entry.group, entry.amount, sign);
  });
}

/** True when one payment of the record equals all its part prices together. */
function paidInOne(job: Job, priced: readonly Money[]): boolean {
  const [first] = priced;
  if (first === undefined || priced.some((price) => price.currency !== first.currency)) return false;
  const whole = sum(priced, first.currency);
  return job.money.some((entry) => entry.kind === 'paid' && sameMoney(entry.amount, whole));
}

/** What is left with the supplier until the old part is back pays for nothing. */
function isCore({ kind, amount }: MoneyEntry, { core }: PartEntry): boolean {
  return kind === 'deposit' && core !== undefined && sameMoney(amount, core.deposit);
}

/** Why a part's price is not added; undefined when it is. Wanted parts are not bought and have no price to name. */
function notAdded(part: PartEntry, price: Money, job: Job, whole: boolean, key: Namer): string | undefined {
  if (part.movedFrom !== undefined) return `came from ${part.movedFrom}, its price is counted there`;
  if (part.state === 'returned') return 'returned';
  const covered = whole || job.money.some((entry) => paysFor(entry, part.part, price, key) && !isCore(entry, part));
  return covered ? 'the same money as a payment of that record, counted once' : undefined;
}

function isBought(part: PartEntry): boolean {
  return (
    part.price !== undefined && part.state !== 'wanted' && part.state !== 'returned' && part.movedFrom === undefined
  );
}

function priced(job: Job, key: Namer): OwnLines {
  const lines: CostLine[] = [];
  const leftOut: string[] = [];
  const prices = job.parts.filter(isBought).flatMap((part) => part.price ?? []);
  const whole = paidInOne(job, prices);
  for (const part of job.parts) {
    const price = part.price;
    if (price === undefined || part.state === 'wanted') continue;
    const why = notAdded(part, price, job, whole, key);
    if (why === undefined) lines.push(lineOf(job, part, 'parts', price));
    else leftOut.push(`${part.part} (${job.id}): ${why}`);
  }
  return { lines, leftOut };
}

/** Money and part prices of one record. A planned one has paid nothing yet; what it ordered counts. */
export const ownLines = keptByJob((job, key): OwnLines => {
  const { lines, leftOut } = priced(job, key);
  // Kept with the record: what was put together line by line would keep room for more.
  if (job.state !== 'planned') return { lines: paid(job).concat(lines), leftOut: leftOut.slice() };
  return { lines: lines.filter(({ entry }) => 'part' in entry && entry.state === 'ordered'), leftOut: [] };
});

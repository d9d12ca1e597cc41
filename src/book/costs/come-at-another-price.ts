// What was ordered at one price and came at another is one buy: what it came at is what was paid.
import { formatDecimal } from '../../quantity/decimal.ts';
import type { Money } from '../../quantity/money.ts';
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { PartEntry } from '../../records/model.ts';
import type { Namer } from '../names.ts';
import { plainName } from '../names.ts';
import type { CostLine } from './cost-line.ts';

interface Order {
  readonly at: number;
  readonly part: PartEntry;
  /** Pieces of it that have not come, and what they were ordered at. */
  readonly count: number;
  readonly amount: Money;
}

/** Neither number nor supplier speaks against it. */
function mayBe(order: PartEntry, came: PartEntry): boolean {
  const number = order.number === undefined || came.number === undefined || order.number === came.number;
  const from = order.from === undefined || came.from === undefined || plainName(order.from) === plainName(came.from);
  return number && from;
}

/** What is still ordered once some of it came: nothing when all came. */
function stillOrdered({ at, part, count, amount }: Order, came: PartEntry, paid: Money): Order | undefined {
  if (came.count >= count) return undefined;
  const rest = paid.currency === amount.currency ? Math.max(0, amount.minor - paid.minor) : amount.minor;
  return { at, part, count: count - came.count, amount: { minor: rest, currency: amount.currency } };
}

function changeText(
  { part, count, amount: before }: Order,
  came: PartEntry,
  told: { readonly ordered: string; readonly came: string; readonly amount: Money; readonly rest: Order | undefined },
): string {
  const [then, now] = [formatMoney(before), formatMoney(told.amount)];
  if (told.rest === undefined)
    return `${part.part}: ordered at ${then} in ${told.ordered}, came at ${now} in ${told.came}; what it came at is counted`;
  const some = `${formatDecimal(came.count, 0)} of ${formatDecimal(count, 0)}`;
  return `${part.part}: ${some} came at ${now} in ${told.came}, ordered at ${then} in ${told.ordered}; the rest of it is still to come`;
}

/**
 * The lines without what has come of an order; and a sentence for each price that changed on the way. A line here or fitted goes against
 * the oldest order before it, in another record, of that name. Linear but for orders of one name.
 */
export function comeAtAnotherPrice(
  lines: readonly CostLine[],
  key: Namer,
): { readonly lines: readonly CostLine[]; readonly changed: readonly string[] } {
  if (!lines.some(({ entry }) => 'part' in entry && entry.state === 'ordered')) return { lines, changed: [] };
  const orders = new Map<string, Order[]>();
  const kept: (CostLine | undefined)[] = [...lines];
  const changed: string[] = [];
  lines.forEach((line, at) => {
    const { job, entry, amount } = line;
    if (job === undefined || !('part' in entry)) return;
    const open = orders.get(key(entry.part)) ?? [];
    if (entry.state === 'ordered')
      orders.set(key(entry.part), [...open, { at, part: entry, count: entry.count, amount }]);
    if (entry.state !== 'here' && entry.state !== 'fitted') return;
    const order = open.find((one) => mayBe(one.part, entry) && lines[one.at]?.job !== job);
    const ordered = order === undefined ? undefined : lines[order.at];
    if (order === undefined || ordered === undefined) return;
    const rest = stillOrdered(order, entry, amount);
    kept[order.at] = rest === undefined ? undefined : { ...ordered, amount: rest.amount, committed: true };
    orders.set(
      key(entry.part),
      rest === undefined ? open.filter((one) => one !== order) : open.map((one) => (one === order ? rest : one)),
    );
    changed.push(changeText(order, entry, { ordered: ordered.job?.id ?? '', came: job.id, amount, rest }));
  });
  return { lines: kept.filter((line) => line !== undefined), changed };
}

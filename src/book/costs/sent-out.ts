// Work sent out at an agreed price: paid when a payment says so; until then the rest of the price is agreed and still to pay.
import type { Money } from '../../quantity/money.ts';
import type { Job, MoneyEntry, WorkEntry } from '../../records/model.ts';
import { hasWords } from '../names.ts';
import type { Namer } from '../names.ts';
import type { CostLine } from './cost-line.ts';
import { lineOf } from './cost-line.ts';
import { paysFor } from './own-lines.ts';

function counts({ kind, amount }: MoneyEntry, price: Money): boolean {
  return (kind === 'paid' || kind === 'deposit') && amount.currency === price.currency;
}

/** On account and the rest: payments of one group that come to the price. */
function paidInParts(payments: readonly MoneyEntry[], price: Money): boolean {
  const byGroup = new Map<string, number>();
  for (const one of payments.filter((each) => counts(each, price)))
    byGroup.set(one.group, (byGroup.get(one.group) ?? 0) + one.amount.minor);
  return [...byGroup.values()].includes(price.minor);
}

/** What was paid on account, by its words: it is part of the price and not on top of it. */
function onAccount(payments: readonly MoneyEntry[], thing: string, price: Money): number {
  const own = payments.filter(
    (one) => counts(one, price) && (hasWords(one.for, 'on account') || hasWords(one.for, thing)),
  );
  return own.reduce((minor, one) => minor + one.amount.minor, 0);
}

/** The price of a thing sent out as far as no payment of the record that sent it, or took it back, covers it. */
export function sentOutLine(job: Job, entry: WorkEntry, back: Job | undefined, key: Namer): readonly CostLine[] {
  const { price } = entry;
  if (price === undefined) return [];
  const payments = [...job.money, ...(back === undefined || back === job ? [] : back.money)];
  if (payments.some((paid) => paysFor(paid, entry.thing, price, key)) || paidInParts(payments, price)) return [];
  const alone = job.work.filter((one) => one.verb === 'sent out' && one.price !== undefined).length === 1;
  const rest = price.minor - (alone ? onAccount(payments, entry.thing, price) : 0);
  if (rest <= 0) return [];
  const amount = { minor: rest, currency: price.currency };
  const what = entry.to === undefined ? entry.thing : `${entry.thing}, ${entry.to}`;
  const paid: MoneyEntry = { kind: 'paid', amount, for: what, group: 'work sent out', at: entry.at };
  const line = lineOf(job, paid, 'work sent out', amount);
  return [back === undefined ? { ...line, committed: true } : line];
}

// One amount that a sum is made of: who paid it, when, for what, and whether what it was paid for is here.
import type { Day } from '../../quantity/day.ts';
import type { Money } from '../../quantity/money.ts';
import type { Job, MoneyEntry, PartEntry } from '../../records/model.ts';

export interface CostLine {
  /** Absent for a purchase shared between machines. */
  readonly job?: Job;
  readonly day: Day;
  readonly entry: MoneyEntry | PartEntry;
  readonly group: string;
  readonly amount: Money;
  /** 1 spent, -1 come back. */
  readonly sign: 1 | -1;
  /** Ordered or agreed, and what it is for is not here. */
  readonly committed?: true;
}

export function sameMoney(a: Money, b: Money): boolean {
  return a.minor === b.minor && a.currency === b.currency;
}

/** A line of a record, on its first day. */
export function lineOf(job: Job, entry: CostLine['entry'], group: string, amount: Money, sign: 1 | -1 = 1): CostLine {
  return { job, day: job.date.from, entry, group, amount, sign };
}

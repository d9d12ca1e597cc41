// What workshop.yaml says, once read: where parts are bought and when, what lies in the drawer, what was bought for several machines.
import type { Place } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import type { Money } from '../quantity/money.ts';

/** Days of the week, in the order of ISO 8601: Monday is the first. */
export const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
export type Weekday = (typeof weekdays)[number];

/** From when to when a shop is open on some days. */
export interface OpenHours {
  readonly days: readonly Weekday[];
  /** Minutes since midnight; both empty of meaning where it is closed. */
  readonly spans: readonly { readonly from: number; readonly to: number }[];
  /** As somebody wrote it: `9:00 to 12:00`. */
  readonly text: string;
}

export interface Supplier {
  readonly name: string;
  readonly hours: readonly OpenHours[];
  /** Days from the order to the door, as a rule. */
  readonly leadDays?: number;
  readonly note?: string;
  readonly at: Place;
}

/** Something that lies in the drawer and belongs to no machine yet. */
export interface StockLine {
  readonly part: string;
  readonly number?: string;
  readonly count?: number;
  readonly at: Place;
}

/** Paid once, for several machines: so many shares of it for each, by the machine's name. */
export interface SharedPurchase {
  readonly paid: Money;
  readonly date: Day;
  readonly for: string;
  readonly group: string;
  readonly between: readonly { readonly machine: string; readonly shares: number }[];
  readonly at: Place;
}

export interface Workshop {
  readonly suppliers: readonly Supplier[];
  readonly stock: readonly StockLine[];
  readonly shared: readonly SharedPurchase[];
}

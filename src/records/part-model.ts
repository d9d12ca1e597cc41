// What a record says of a part: its numbers, where it is from, how far it is, and what is taken to the shop.
import type { Day } from '../quantity/day.ts';
import type { Money } from '../quantity/money.ts';
import type { Place } from '../problem/problem.ts';

export interface PartEntry {
  readonly part: string;
  readonly bookNumber?: string;
  readonly number?: string;
  readonly class?: 'original' | 'new old stock' | 'pattern' | 'used' | 'repaired' | 'made';
  readonly count: number;
  readonly from?: string;
  readonly price?: Money;
  readonly state: 'wanted' | 'ordered' | 'here' | 'fitted' | 'returned';
  readonly insteadOf?: string;
  /** Where that part is kept, so that it can go back; `no` when it is gone. */
  readonly originalKept?: string;
  /** The older number that this one's number took the place of in the maker's lists. */
  readonly supersedes?: string;
  /** Measured from the old part: `25×40×7 mm`. */
  readonly size?: string;
  /** What is taken along to the shop as a sample. */
  readonly bring?: string;
  /** What would do as well. */
  readonly alternatives?: readonly string[];
  /** Bought only when this turns out so: it holds no work up. */
  readonly onlyIf?: string;
  /** When an ordered part was promised for. */
  readonly promised?: Day;
  readonly core?: CoreDeposit;
  readonly movedFrom?: string;
  readonly movedTo?: string;
  /** What the owner set it at when it moved: no money that was paid. */
  readonly worth?: Money;
  readonly note?: string;
  readonly at: Place;
}

/** Money left with the supplier until the old part comes back to them. */
export interface CoreDeposit {
  readonly deposit: Money;
  readonly returnBy?: Day;
  /** The day the old part went back and the money came. */
  readonly returned?: Day;
}

// What makers' files and instruments.yaml say, once read: plain readonly data, every value with its source.
import type { Place } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import type { Dimension, Written, WrittenRange } from '../quantity/quantity.ts';
import type { Value } from './machine-model.ts';

/** The book a value was taken from, and the page. */
export interface Source {
  readonly title: string;
  readonly edition?: string;
  readonly page?: string;
  readonly frames?: { readonly from?: string; readonly to?: string };
  readonly corrected?: { readonly was: string; readonly why: string };
  /** What this one line says of its own source, where the lines of a schedule differ. */
  readonly remark?: string;
}

/** A hole of a cover: so far to the right of the first hole and above it. */
export interface ScrewPosition {
  readonly right: Written<'length'>;
  readonly up: Written<'length'>;
  readonly length?: Written<'length'>;
}

export interface Fastener {
  readonly id: string;
  readonly name: string;
  readonly of?: string;
  readonly thread?: string;
  readonly length?: Written<'length'>;
  readonly lengths: readonly { readonly length: Written<'length'>; readonly count: number }[];
  /** Where each hole lies, from the first one; as the part stands on the machine, seen from outside. */
  readonly positions?: readonly ScrewPosition[];
  readonly count?: number;
  /** Property class or grade as marked: `8.8`, `7T`, `A2-70`, `grade 5`. */
  readonly class?: string;
  /** What the female thread is cut in. */
  readonly into?: string;
  readonly duty?: 'cover' | 'bracket' | 'trim';
  /** Absent: no maker's value, the blank stays a blank. */
  readonly torque?: WrittenRange<'torque'>;
  readonly threads?: 'dry' | 'oiled' | 'locked';
  readonly stages: readonly Written<'torque'>[];
  readonly order?: string;
  readonly locking?: string;
  readonly singleUse: boolean;
  readonly disturbs: readonly string[];
  readonly source: Source;
  readonly at: Place;
}

export interface Limit {
  readonly id: string;
  readonly name: string;
  readonly positions: readonly string[];
  readonly unit: Written['unit'];
  readonly standard?: WrittenRange;
  /** `low` is a minimum, `high` a maximum. */
  readonly limit?: WrittenRange;
  /** How the book takes taper and out-of-round of the diameters of a bore: makers differ. */
  readonly rule?: 'difference' | 'half the difference';
  readonly instrument?: string;
  readonly condition: readonly string[];
  readonly of?: string;
  readonly disturbs: readonly string[];
  readonly source: Source;
  readonly at: Place;
}

export interface Setting {
  readonly id: string;
  readonly name: string;
  readonly value: Value;
  readonly range?: WrittenRange;
  readonly condition: readonly string[];
  readonly of?: string;
  readonly disturbs: readonly string[];
  readonly source: Source;
  readonly at: Place;
}

export interface Fluid {
  readonly id: string;
  readonly name: string;
  readonly quantity?: Written<'volume'>;
  readonly grade?: string;
  readonly source: Source;
  readonly at: Place;
}

export type Action = 'inspect' | 'adjust' | 'clean' | 'renew' | 'lubricate' | 'tighten' | 'measure';

/** A step between services: the first of its bounds to be reached counts. */
export interface Interval {
  readonly distance?: Written<'distance ridden'>;
  readonly months?: number;
  readonly running?: Written<'running time'>;
  readonly text: string;
}

/** One line of a schedule; able to say all sixteen rules of the trade. */
export interface ServiceLine {
  readonly id: string;
  readonly item: string;
  readonly action: Action;
  readonly first?: { readonly at: Interval; readonly after: 'new' | 'running-in' };
  readonly every?: Interval;
  readonly second?: Interval;
  readonly thenFrom?: Interval;
  readonly onlyIfNoDistanceService: boolean;
  readonly includes: readonly string[];
  readonly wear?: string;
  readonly severe: Readonly<Record<string, Interval | 'at once'>>;
  /** Share of the interval, 0 to 1; 0 for brakes, tyres and oil whatever is written. */
  readonly grace: number;
  readonly afterStorage: boolean;
  readonly partOf?: string;
  readonly unknown: 'due now' | 'inspect';
  readonly uses: readonly string[];
  /** `maker`, or `general` when the line comes from a schedule in content. */
  readonly basis: 'maker' | 'general';
  readonly source: Source;
  readonly at: Place;
}

export interface MakerData {
  readonly fasteners: readonly Fastener[];
  readonly limits: readonly Limit[];
  readonly fluids: readonly Fluid[];
  readonly settings: readonly Setting[];
  readonly services: readonly ServiceLine[];
  readonly sources: readonly Source[];
}

export interface Instrument {
  readonly id: string;
  readonly name: string;
  readonly measures?: Dimension;
  readonly resolution?: Written;
  readonly accuracy?: { readonly absolute?: Written; readonly share?: number };
  readonly range?: WrittenRange;
  readonly checked?: Day;
  readonly at: Place;
}

// What the records say, once read: plain readonly data. Nothing here is derived; see book/ for what follows from it.
import type { Place } from '../problem/problem.ts';
import type { Day, DaySpan } from '../quantity/day.ts';
import type { Money } from '../quantity/money.ts';
import type { Dimension, Written, WrittenRange } from '../quantity/quantity.ts';

/** A value that may be kept out of the buyer's copy. */
export interface Kept<T> {
  readonly value: T;
  readonly private: boolean;
}

/** A reading's value: read, not yet read (a blank), or text that could not be read in full. */
export type Value =
  | { readonly kind: 'read'; readonly written: Written }
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'unknown' };

export interface StampedNumber {
  readonly name: 'frame' | 'engine' | 'registration' | 'key' | (string & {});
  readonly stamped: string;
  readonly knownBy: string;
  readonly photo?: string;
  readonly private: boolean;
}

export interface Features {
  readonly stroke: 'two' | 'four';
  readonly cylinders: number;
  readonly cylinderNames: readonly string[];
  readonly lubrication: 'premix' | 'pump' | 'wet sump' | 'dry sump';
  readonly ignition: 'magneto' | 'battery and coil';
  readonly trigger: 'points' | 'electronic';
  readonly volts?: Written<'voltage'>;
  readonly battery: boolean;
  readonly lamps: boolean;
  readonly frontBrake: 'drum' | 'disc';
  readonly rearBrake: 'drum' | 'disc';
  readonly finalDrive: 'chain' | 'shaft' | 'belt';
  readonly wheels: 'spoked' | 'cast' | 'pressed';
}

export interface ToothPair {
  readonly driving: number;
  readonly driven: number;
}

export interface Geometry {
  readonly bore?: Written<'length'>;
  readonly stroke?: Written<'length'>;
  readonly rod?: Written<'length'>;
  readonly compressionRatio?: {
    readonly ratio: number;
    readonly decimals: number;
    readonly from: 'full stroke' | 'port closing';
  };
  readonly primary?: ToothPair;
  readonly gears: readonly ToothPair[];
  readonly final?: ToothPair;
  readonly frontTyre?: string;
  readonly rearTyre?: string;
  readonly chainPitch?: Written<'length'>;
  readonly chainLinks?: number;
}

/** One odometer for the time it was on the machine. */
export interface InstrumentPeriod {
  readonly id: string;
  readonly unit: Written<'distance ridden'>['unit'];
  readonly digits: number;
  readonly from: { readonly day: Day; readonly reads?: Written<'distance ridden'> };
  readonly to?: { readonly day: Day; readonly reads?: Written<'distance ridden'> };
  readonly state: 'working' | 'dead' | 'reset' | 'rolled over' | 'wrong drive';
  readonly at: Place;
}

export interface Machine {
  readonly file: string;
  readonly format: number;
  readonly name: string;
  readonly make: string;
  readonly model: string;
  readonly year?: string;
  readonly firstUse?: string;
  readonly numbers: readonly StampedNumber[];
  readonly features: Features;
  readonly geometry: Geometry;
  readonly clock: readonly InstrumentPeriod[];
  readonly altitude?: Written<'length'>;
  readonly site?: string;
  readonly units: 'metric' | 'imperial';
  readonly spelling: 'uk' | 'us';
  readonly paper: 'a4' | 'letter' | 'a5' | 'half-letter';
  readonly currency: string;
  readonly rates: Readonly<Record<string, number>>;
  readonly roadRules?: string;
  readonly spendingLimit?: Money;
}

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

export interface Fastener {
  readonly id: string;
  readonly name: string;
  readonly of?: string;
  readonly thread?: string;
  readonly length?: Written<'length'>;
  readonly lengths: readonly { readonly length: Written<'length'>; readonly count: number }[];
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

export type Verb =
  | 'removed'
  | 'refitted'
  | 'replaced'
  | 'lost'
  | 'loosened'
  | 'tightened'
  | 'drained'
  | 'filled'
  | 'disconnected'
  | 'connected'
  | 'opened'
  | 'closed'
  | 'sent out'
  | 'come back'
  | 'fitted temporarily'
  | 'taken away';

/** One action of off and on. */
export interface WorkEntry {
  readonly verb: Verb;
  readonly thing: string;
  readonly bag?: string;
  readonly fromBag?: string;
  readonly fasteners: readonly { readonly id: string; readonly count: number }[];
  readonly count?: number;
  readonly where?: string;
  readonly wayRound?: string;
  readonly quantity?: Written<'volume'>;
  readonly grade?: string;
  readonly ratio?: Written<'ratio'>;
  /** Torque aimed at, for `tightened`. */
  readonly torque?: Written<'torque'>;
  /** Firm, for `sent out`. */
  readonly to?: string;
  readonly threads?: 'dry' | 'oiled' | 'locked';
  readonly wrench?: string;
  readonly result?: 'reached' | 'yielded' | 'stripped' | 'by feel';
  readonly promised?: Day;
  readonly price?: Money;
  readonly note?: string;
  readonly at: Place;
}

export interface ReadingValue {
  readonly position: string;
  readonly value: Value;
  readonly at: Place;
}

export interface Reading {
  readonly item: string;
  readonly found: readonly ReadingValue[];
  readonly left: readonly ReadingValue[];
  readonly condition: readonly string[];
  readonly instrument?: string;
  readonly note?: string;
  readonly at: Place;
}

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
  readonly movedFrom?: string;
  readonly movedTo?: string;
  readonly note?: string;
  readonly at: Place;
}

export interface Finding {
  readonly id: string;
  readonly saw: string;
  readonly weight: 'stops' | 'limits' | 'not done' | 'note';
  readonly became: string;
  readonly until?: Day;
  readonly at: Place;
}

export interface CheckDone {
  readonly check: string;
  readonly by?: string;
  readonly checkedBy?: string;
  readonly value?: string;
  readonly at: Place;
}

export interface Repair {
  readonly of: string;
  readonly now: string;
  readonly why?: string;
  readonly standard?: WrittenRange;
  readonly limit?: WrittenRange;
  readonly at: Place;
}

export interface Correction {
  readonly record: string;
  readonly item: string;
  readonly position?: string;
  readonly was: string;
  readonly is: string;
  readonly why: string;
  readonly at: Place;
}

export interface Ride {
  readonly out?: Written<'distance ridden'>;
  readonly in?: Written<'distance ridden'>;
  readonly fuel?: Written<'volume'>;
  readonly oil?: Written<'volume'>;
  readonly weather?: string;
  readonly whatHappened?: string;
}

export interface RunLogLine {
  readonly minute: number;
  readonly saw: string;
}

export interface MoneyEntry {
  readonly kind: 'paid' | 'refund' | 'deposit' | 'deposit back';
  readonly amount: Money;
  readonly for: string;
  readonly group: string;
  readonly at: Place;
}

export interface Photo {
  readonly file: string;
  readonly caption: string;
  /** Taken before the work. */
  readonly before?: boolean;
  readonly private: boolean;
  readonly at: Place;
}

export type JobState = 'planned' | 'under way' | 'waiting' | 'done' | 'put aside';

export type JobKind =
  | 'buying'
  | 'intake'
  | 'cleaning'
  | 'waking'
  | 'first start'
  | 'strip'
  | 'measuring'
  | 'machining'
  | 'repair'
  | 'assembly'
  | 'setting up'
  | 'running-in'
  | 'ride'
  | 'service'
  | 'road test'
  | 'paperwork'
  | 'lay-up'
  | 'return'
  | 'handover';

/** One job record: one Markdown file. */
export interface Job {
  readonly id: string;
  readonly file: string;
  readonly title: string;
  readonly date: DaySpan;
  readonly kind: JobKind;
  readonly state: JobState;
  readonly waitingFor?: string;
  readonly purpose?: string;
  readonly hands: readonly string[];
  readonly odometer?: Written<'distance ridden'>;
  readonly time?: Written<'duration'>;
  readonly continues?: string;
  readonly procedures: readonly string[];
  readonly work: readonly WorkEntry[];
  readonly readings: readonly Reading[];
  readonly parts: readonly PartEntry[];
  readonly findings: readonly Finding[];
  readonly checks: readonly CheckDone[];
  readonly services: readonly string[];
  readonly repairs: readonly Repair[];
  readonly corrections: readonly Correction[];
  readonly ride?: Ride;
  readonly runLog: readonly RunLogLine[];
  readonly heatCycles: number;
  readonly money: readonly MoneyEntry[];
  readonly photos: readonly Photo[];
  readonly stateLeft: readonly string[];
  readonly next?: string;
  readonly signed?: { readonly by: string; readonly date: Day };
  /** Markdown, as written, and the line it begins on. */
  readonly body: string;
  readonly bodyLine: number;
}

/** Everything read from one machine folder (and the workshop above it). */
export interface Records {
  readonly machine: Machine;
  readonly maker: MakerData;
  readonly instruments: readonly Instrument[];
  readonly jobs: readonly Job[];
  readonly story?: { readonly file: string; readonly body: string };
  /** Ids of records that could not be read; sheets name them. */
  readonly unread: readonly { readonly file: string; readonly codes: readonly string[] }[];
  /** Places of values marked `private`, besides those that carry the mark themselves; left out of the buyer's copy. */
  readonly kept?: readonly Place[];
}

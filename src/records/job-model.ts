// What a job record says, once read: plain readonly data. Nothing here is derived.
import type { Place } from '../problem/problem.ts';
import type { Day, DaySpan } from '../quantity/day.ts';
import type { Money } from '../quantity/money.ts';
import type { Written, WrittenRange } from '../quantity/quantity.ts';
import type { Value } from './machine-model.ts';
import type { PartEntry } from './part-model.ts';

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
  /** `no` in a job that has begun: the line is still to be done. */
  readonly done?: boolean;
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
  /** Who read it, where more than one did. */
  readonly by?: string;
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

/** What a test of the fault tables showed: `test` and `saw` by their ids or other names. */
export interface TestDone {
  readonly test: string;
  readonly saw: string;
  readonly note?: string;
  readonly at: Place;
}

export interface CheckDone {
  readonly check: string;
  readonly by?: string;
  readonly checkedBy?: string;
  readonly value?: string;
  readonly at: Place;
}

/** A hold point or check that a person lets pass, knowing that it is not proved. */
export interface Release {
  /** Id of the hold point or check. */
  readonly of: string;
  readonly by: string;
  readonly why: string;
  readonly until?: Day;
  readonly at: Place;
}

/** A query that a person looked at and let stand, by its print: it rests until what it says changes. */
export interface Answer {
  readonly query: string;
  readonly by: string;
  readonly why: string;
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

/** What was written on a sheet and has no key of its own: at which blank, and what. */
export interface Remark {
  /** Id of the blank, without the record's own id before it. */
  readonly blank: string;
  readonly says: string;
  readonly by?: string;
  readonly at: Place;
}

export interface Ride {
  /** Absent: on the road. */
  readonly where?: 'road' | 'private land';
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

/** A part of a picture, as shares of its width and height, that is black in the buyer's copy. */
export interface CoveredArea {
  readonly left: Written<'share'>;
  readonly top: Written<'share'>;
  readonly width: Written<'share'>;
  readonly height: Written<'share'>;
}

export interface Photo {
  readonly file: string;
  readonly caption: string;
  /** Taken before the work. */
  readonly before?: boolean;
  readonly private: boolean;
  readonly cover?: readonly CoveredArea[];
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
/** A thing that was left over: what could be measured of it. */
export interface LeftOverThing {
  readonly name?: string;
  readonly thread?: string;
  readonly length?: Written<'length'>;
  readonly count?: number;
  readonly at: Place;
}

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
  /** How long it will take, as the owner reckons beforehand. */
  readonly takes?: Written<'duration'>;
  /** A second person is needed, or is not, whatever the procedures say. */
  readonly helper?: boolean;
  /** Ids of records whose work comes before this one's. */
  readonly after?: readonly string[];
  readonly procedures: readonly string[];
  /** The first number of the bags that its sheet prints, kept for this job. */
  readonly bagsFrom?: number;
  /** What was done; of a planned job, what is to be done. */
  readonly work: readonly WorkEntry[];
  /** Lines of `work` of a job that has begun which are still to be done. */
  readonly toDo?: readonly WorkEntry[];
  /** Ids of ticks on its sheets, without the record's own id before them. */
  readonly ticks?: readonly string[];
  readonly remarks?: readonly Remark[];
  readonly readings: readonly Reading[];
  readonly parts: readonly PartEntry[];
  readonly findings: readonly Finding[];
  readonly tests?: readonly TestDone[];
  readonly checks: readonly CheckDone[];
  readonly releases?: readonly Release[];
  readonly answers?: readonly Answer[];
  readonly services: readonly string[];
  readonly repairs: readonly Repair[];
  readonly corrections: readonly Correction[];
  readonly ride?: Ride;
  readonly runLog: readonly RunLogLine[];
  readonly heatCycles: number;
  readonly money: readonly MoneyEntry[];
  readonly photos: readonly Photo[];
  readonly stateLeft: readonly string[];
  /** What lay on the bench at the end and belongs somewhere. */
  readonly leftOver?: readonly LeftOverThing[];
  readonly next?: string;
  /** `print`: the record's print as it was when it was signed. */
  readonly signed?: { readonly by: string; readonly date: Day; readonly print?: string };
  /** The record says no day: it is the one on which its first photograph was taken. */
  readonly dayFrom?: 'photographs';
  /** The print of the words as they are now, see signed-print.ts; of signed records only. */
  readonly print?: string;
  /** Seven letters and digits over its file as it was read: another when anything in it is changed. */
  readonly version: string;
  /** Markdown, as written, and the line it begins on. */
  readonly body: string;
  readonly bodyLine: number;
}

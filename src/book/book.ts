// The book: everything that follows from the records at a date. Views read it; nothing writes it after it is made.
import type { Figure } from '../figure/figure.ts';
import type { Place, Problem } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import type { Money } from '../quantity/money.ts';
import type { Content, HoldPoint, Check, Procedure } from '../records/content-model.ts';
import type {
  Answer,
  Fastener,
  Job,
  Limit,
  MoneyEntry,
  PartEntry,
  Photo,
  Records,
  Release,
  ServiceLine,
  Setting,
  Value,
  WorkEntry,
} from '../records/model.ts';

/** Distance of the machine on a day, over its instrument periods. */
export interface DistanceAt {
  readonly day: Day;
  readonly job?: string;
  /** As on the clock that day. */
  readonly clock?: Figure<'distance ridden'>;
  /** The machine's own distance; absent when not known. */
  readonly machine?: Figure<'distance ridden'>;
}

export interface Odometer {
  readonly readings: readonly DistanceAt[];
  readonly now: DistanceAt;
  /** `as stated by the owner`: nothing speaks against the clock, and no readings bear it out; with the reason in a sentence. */
  readonly statement: {
    readonly word: 'actual' | 'as stated by the owner' | 'exceeds mechanical limit' | 'not actual' | 'not known';
    readonly why: string;
  };
  /** Interpolated between readings; undefined outside what is known. */
  readonly machineAt: (day: Day) => Figure<'distance ridden'> | undefined;
  /** What the clock fitted now shows at a distance of the machine; undefined without a clock that counts rightly. */
  readonly onClock: (distance: Figure<'distance ridden'>) => Figure<'distance ridden'> | undefined;
}

export interface OpenLine {
  readonly state: 'off' | 'loose' | 'empty' | 'disconnected' | 'open' | 'sent out' | 'temporary';
  readonly entry: WorkEntry;
  readonly job: Job;
  readonly since: Day;
  /** How many are still off, when some of a counted lot went back. */
  readonly remaining?: number;
}
export interface ClosedLine extends OpenLine {
  readonly by: WorkEntry;
  readonly byJob: Job;
}
export interface BagLine {
  readonly bag: string;
  readonly contents: readonly OpenLine[];
  readonly emptied: boolean;
}
export interface OffBook {
  readonly open: readonly OpenLine[];
  readonly closed: readonly ClosedLine[];
  readonly bags: readonly BagLine[];
  /** Free words of the newest job that left something. */
  readonly stateLeft: readonly { readonly job: Job; readonly text: string }[];
  readonly next?: { readonly job: Job; readonly text: string };
}

export interface SeriesPoint {
  readonly day: Day;
  readonly job: Job;
  readonly side: 'found' | 'left';
  readonly position: string;
  readonly value: Value;
  readonly condition: readonly string[];
  readonly instrument?: string;
  readonly machineDistance?: Figure<'distance ridden'>;
  /** Replaced by a later correction: printed struck through, never computed with. */
  readonly corrected?: { readonly by: Job; readonly why: string };
  readonly verdict?: Verdict;
  readonly at: Place;
}
export interface Series {
  readonly item: string;
  readonly name: string;
  /** Limit in force (after repairs). */
  readonly limit?: Limit;
  readonly setting?: Setting;
  readonly basis: readonly { readonly from: Day; readonly what: string }[];
  readonly points: readonly SeriesPoint[];
}
export type Verdict =
  | 'within standard'
  | 'worn, usable'
  | 'past the limit'
  | 'outside the range'
  | 'too close to call with this instrument'
  | 'too close to call by the digits written'
  | 'limit is for another condition'
  | 'no limit known';

/** `at its limit`: goes by wear alone and is renewed at its limit; past that limit it is overdue like any other. */
export type DueState = 'overdue' | 'due' | 'coming' | 'not due' | 'not known' | 'at its limit' | 'done once';
export interface DueLine {
  readonly service: ServiceLine;
  readonly state: DueState;
  readonly lastDone?: { readonly job: Job; readonly day: Day; readonly machineDistance?: Figure<'distance ridden'> };
  readonly dueDay?: Day;
  readonly dueAt?: Figure<'distance ridden'>;
  /** Shown on the clock fitted now. */
  readonly dueOnClock?: Figure<'distance ridden'>;
  readonly left?: { readonly days?: number; readonly distance?: Figure<'distance ridden'> };
  /** When the distance will be reached at the rider's own pace: a span, never a point; `late` is open when slow months stood still. */
  readonly projected?: { readonly early: Day; readonly likely: Day; readonly late?: Day };
  /** Which bound comes first, and why, in a sentence. */
  readonly why: string;
  /** What of that sentence stands in no other field: what presses besides the interval, running hours, where it counts from if not from the last time. */
  readonly besides: readonly string[];
}

/** Services done together on one day, nothing later than its grace allows. */
export interface Visit {
  readonly day: Day;
  readonly lines: readonly DueLine[];
}

export interface TorqueRow {
  readonly fastener: Fastener;
  /** Maker's value, general table (named), computed band, or none. */
  readonly basis: 'maker' | 'computed' | 'none';
  readonly value?: { readonly low: Figure<'torque'>; readonly high?: Figure<'torque'> };
  readonly stages: readonly Figure<'torque'>[];
  readonly changed?: { readonly now: string; readonly by: Job };
  readonly note?: string;
  /** True when some record loosened, removed or tightened it. */
  readonly touched?: boolean;
  /** How it was tightened last. */
  readonly last?: { readonly job: Job; readonly entry: WorkEntry };
  /** The entry that loosened it, or took it off with a part, when no record tightened it since. */
  readonly untightened?: { readonly job: Job; readonly entry: WorkEntry };
}

export interface CheckState {
  readonly check: Check;
  /** `each time`: to be looked at anew each time, whatever was ticked before; it holds nothing. */
  readonly state: 'proved' | 'not proved' | 'undone' | 'each time' | 'not for this machine';
  readonly by?: {
    readonly job: Job;
    readonly day: Day;
    readonly hand?: string;
    readonly checkedBy?: string;
    readonly value?: string;
  };
  readonly undoneBy?: { readonly job: Job; readonly what: string };
  /** How long the proof stands, in words, where it runs out; the day where it is a day. */
  readonly goodFor?: { readonly words: string; readonly day?: Day };
  /** Let pass by a person without proof: printed as released, never as proved. */
  readonly released?: { readonly job: Job; readonly release: Release };
  readonly why?: string;
}
export interface HoldState {
  readonly point: HoldPoint;
  readonly checks: readonly CheckState[];
  readonly clear: boolean;
  /** The whole point let pass by a person: printed as released, never as clear. */
  readonly released?: { readonly job: Job; readonly release: Release };
  /** Why it is held, in sentences; empty when clear. */
  readonly because?: readonly string[];
}

/** A planned job's blank, with what is known beside it. */
export interface Blank {
  /** `<record>/<item>/<position>`; the two boxes add `/found` and `/left`. */
  readonly id: string;
  readonly foundId?: string;
  readonly leftId?: string;
  readonly item: string;
  readonly name: string;
  readonly position: string;
  readonly limit?: Limit;
  readonly setting?: Setting;
  readonly unit: string;
  readonly last?: SeriesPoint;
  readonly found?: Value;
  readonly left?: Value;
  readonly verdict?: Verdict;
}
export interface JobPlan {
  readonly job: Job;
  readonly procedures: readonly Procedure[];
  readonly blanks: readonly Blank[];
  readonly bagFrom: number;
}

export interface Costs {
  /** Paid, ordered and agreed, less what came back; fees too. */
  readonly total: Money;
  /** Of it, the group `fees`: test, plates, insurance. */
  readonly fees: Money;
  /** Of it, what was ordered or agreed and is not here. */
  readonly committed: Money;
  readonly byGroup: readonly { readonly group: string; readonly total: Money }[];
  readonly byYear: readonly { readonly year: string; readonly total: Money }[];
  readonly entries: readonly {
    /** Absent for a purchase shared between machines. */
    readonly job?: Job;
    readonly day: Day;
    readonly entry: MoneyEntry | PartEntry;
    readonly inOwn?: Money;
    readonly committed?: boolean;
  }[];
  /** What the sum leaves out (a currency without a rate, the same money written twice). */
  readonly leftOut: readonly string[];
  /** Prices that were written again for one buy, and counted once. */
  readonly pricedAgain: readonly { readonly part: PartEntry; readonly job: Job; readonly before: Job }[];
  readonly limit?: Money;
}

/** The whole computed model of one machine. */
export interface Book {
  readonly records: Records;
  readonly content: Content;
  readonly today: Day;
  readonly odometer: Odometer;
  readonly off: OffBook;
  readonly series: readonly Series[];
  readonly due: readonly DueLine[];
  /** The due list by the days on which services fall together; the first is today when something presses. */
  readonly visits?: readonly Visit[];
  readonly torque: readonly TorqueRow[];
  readonly holds: readonly HoldState[];
  readonly plans: readonly JobPlan[];
  readonly costs: Costs;
  readonly parts: readonly { readonly job: Job; readonly part: PartEntry }[];
  readonly photos: readonly { readonly job: Job; readonly photo: Photo }[];
  /** Things a person should look at, ordered by what can hurt. */
  readonly queries: readonly Problem[];
  /** Queries that a record answers: by whom and why; they are not among `queries`. */
  readonly answered?: readonly { readonly query: Problem; readonly answer: Answer; readonly job: Job }[];
  readonly limits: ReadonlyMap<string, Limit>;
  readonly fasteners: ReadonlyMap<string, Fastener>;
  readonly settings: ReadonlyMap<string, Setting>;
  readonly jobs: ReadonlyMap<string, Job>;
  /** Newest date in the records, and a short fingerprint of all of them; printed on every sheet. */
  readonly recordsDate: Day;
  readonly recordsVersion: string;
  /** SHA-256 over the list of the records' hashes; absent where nobody hashed them. */
  readonly fingerprint?: string;
  /** Made from the copy for a next owner. */
  readonly copy?: 'buyer';
}

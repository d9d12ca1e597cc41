// What content/ says, once read: the same for every machine. A machine folder may add, never take away.
import type { Place } from '../problem/problem.ts';
import type { Grade, Paper } from '../sheet/sheet.ts';
import type { Day } from '../quantity/day.ts';
import type { Written, WrittenRange } from '../quantity/quantity.ts';
import type { FaultTables } from './fault-model.ts';
import type { Features, Interval, JobKind, ServiceLine, Source } from './model.ts';

/** Where a thing applies; an absent key does not restrict. `cylinders` is `one` or `more`. */
export type Applies = { readonly [K in keyof Features]?: readonly string[] };

export interface Caution {
  readonly id: string;
  readonly grade: Grade;
  readonly line: string;
  readonly at: Place;
}

export interface Step {
  readonly do: string;
  /** Its permanent number, where it was put between steps that had theirs. */
  readonly number?: number;
  /** Parts that come off in this step; each gets an off and an on tick. */
  readonly off: readonly string[];
  readonly fasteners: readonly string[];
  readonly wayRound?: string;
  readonly bag: boolean;
  readonly cautions: readonly string[];
  readonly measure: readonly string[];
  readonly set: readonly string[];
  readonly note?: string;
  readonly applies: Applies;
}

/** Something that a piece of work uses up: a part by its name, or a fluid by its id in the maker's data. */
export interface UsedUp {
  readonly part?: string;
  readonly fluid?: string;
  /** How many; absent: as many as it takes. */
  readonly count?: number;
  /** So many for every cylinder. */
  readonly perCylinder: boolean;
  readonly applies: Applies;
}

export interface Procedure {
  readonly id: string;
  readonly title: string;
  readonly applies: Applies;
  readonly before: readonly string[];
  readonly cautions: readonly string[];
  readonly tools: readonly string[];
  readonly steps: readonly Step[];
  readonly assembly: readonly Step[];
  readonly measure: readonly string[];
  readonly disturbs: readonly string[];
  readonly minutes?: number;
  /** Kind of the job that is planned with it first. */
  readonly kind?: JobKind;
  /** It takes a second person. */
  readonly helper?: boolean;
  /** What is used up by it. */
  readonly uses?: readonly UsedUp[];
  readonly body: string;
  readonly at: Place;
}

export interface Check {
  readonly id: string;
  readonly text: string;
  readonly why: string;
  readonly proof: 'look' | 'value' | 'photo' | 'done' | 'feel';
  readonly unit?: string;
  readonly undoneBy: readonly string[];
  /** How long a proof stands by time or distance; absent: until it is undone. */
  readonly goodFor?: Interval;
  /** To be looked at anew each time: printed open, proved by no record, holds nothing. */
  readonly eachTime?: boolean;
  readonly caution?: string;
  readonly applies: Applies;
  readonly at: Place;
}

export interface HoldPoint {
  readonly id: string;
  readonly title: string;
  readonly order: number;
  readonly checks: readonly Check[];
  readonly applies: Applies;
  readonly at: Place;
}

/** One line of a form: what is looked at or done, and where that is asked for. */
export interface FormLine {
  readonly id: string;
  readonly text: string;
  /** Group of lines it stands under. */
  readonly area?: string;
  /** Official number in the source. */
  readonly number?: string;
  /** What speaks against it, or the reason, in our own words. */
  readonly against?: string;
  /** Unit of a value to be written down. */
  readonly unit?: string;
  /** Places that it is measured at; the word `cylinder` in one stands for the name of each cylinder. */
  readonly positions: readonly string[];
  /** Evidence in words: `read: …`, `memory: …`, `common practice: …`; absent: as the form says. */
  readonly source?: string;
  /** Asked for only of machines first used in this span. */
  readonly firstUsedFrom?: Day;
  readonly firstUsedBefore?: Day;
  readonly caution?: string;
  /** Running in: how far it holds, or at which distances and after how many heat cycles it is done; what it counts from, what a record names it by. */
  readonly until?: Written<'distance ridden'>;
  readonly distances?: readonly Written<'distance ridden'>[];
  readonly cycles?: number;
  readonly newPart?: string;
  readonly by?: readonly string[];
  readonly applies: Applies;
  readonly at: Place;
}

/** A form: lines to be ticked, graded and written beside, the same for every machine that it applies to. */
export interface Form {
  readonly id: string;
  readonly title: string;
  readonly applies: Applies;
  /** Only where machine.yaml names these road rules. */
  readonly roadRules?: string;
  readonly source?: Source;
  /** Day on which the source was looked at. */
  readonly seen?: string;
  readonly note?: string;
  /** Heads of the tick columns, in order; one tick when empty. */
  readonly ticks: readonly string[];
  readonly lines: readonly FormLine[];
  readonly at: Place;
}

/** A step of the hard order of work. `by`: what a record names it by. */
export interface OrderStep {
  readonly id: string;
  readonly step: string;
  readonly by: readonly string[];
  /** Work after which it is to be done again; what undoes a check stands with the check. */
  readonly undoneBy?: readonly string[];
  /** Things that must be on the machine for it; any of several names of one thing. */
  readonly fitted?: readonly string[];
  readonly applies: Applies;
  readonly at: Place;
}
export interface OrderEdge {
  readonly before: string;
  readonly after: string;
  readonly why: string;
  readonly at: Place;
}
/** What must come before what: steps, and edges between them without a ring. */
export interface OrderOfWork {
  readonly order: string;
  readonly title: string;
  readonly steps: readonly OrderStep[];
  readonly edges: readonly OrderEdge[];
}

export interface SheetDefinition {
  readonly id: string;
  readonly code: string;
  readonly title: string;
  /** What one sheet is made for: the machine, each planned job, each job, or a site page only. */
  readonly per: 'machine' | 'planned job' | 'job';
  readonly paper?: Paper;
  readonly binding: 'left' | 'top';
  readonly foot: 'none' | 'sign off';
  /** Kinds of job whose record keeps what is written on it, of a sheet of the machine. */
  readonly keptBy?: readonly JobKind[];
  /** Kinds of planned job that get none of it: nothing is taken apart at an intake. */
  readonly notFor?: readonly JobKind[];
  /** What its file carries besides its pages. */
  readonly carries?: 'data';
  readonly applies: Applies;
  readonly views: readonly {
    readonly view: string;
    readonly options: Readonly<Record<string, string>>;
    readonly at: Place;
  }[];
  readonly on: readonly ('paper' | 'screen')[];
  /** Made only when it is asked for by its name: the workings; or then and for a next owner: what repeats other sheets. */
  readonly asked?: 'no' | 'yes' | 'handover';
  /** Section of the site's contents it is listed under. */
  readonly section: string;
  readonly at: Place;
}

export interface Content {
  readonly cautions: ReadonlyMap<string, Caution>;
  readonly procedures: ReadonlyMap<string, Procedure>;
  readonly holdPoints: readonly HoldPoint[];
  readonly schedules: readonly {
    readonly id: string;
    readonly title: string;
    readonly applies: Applies;
    /** Displacement of the engines it was meant for; absent: of any. */
    readonly meantFor?: WrittenRange<'volume'>;
    readonly services: readonly ServiceLine[];
  }[];
  readonly faults?: FaultTables;
  readonly forms?: readonly Form[];
  readonly orders?: readonly OrderOfWork[];
  readonly sheets: readonly SheetDefinition[];
  /** Pairs of words, UK first. */
  readonly words: readonly { readonly uk: string; readonly us: string }[];
  readonly pages: ReadonlyMap<string, { readonly title: string; readonly body: string }>;
}

// What content/faults says, once read: causes, what is tried or noticed, and what its outcomes speak for and against.
import type { Place } from '../problem/problem.ts';
import type { Applies } from './content-model.ts';

export const faultGroups = ['ignition', 'fuel', 'compression', 'air leak', 'exhaust', 'mechanical'] as const;
export type FaultGroup = (typeof faultGroups)[number];

export const likelihoods = ['very likely', 'likely', 'occasional', 'rare'] as const;
export type Likelihood = (typeof likelihoods)[number];

export const hazards = ['petrol', 'fire', 'high tension', 'heat', 'acid', 'air', 'moving parts', 'road'] as const;
export type Hazard = (typeof hazards)[number];

export interface FaultCause {
  readonly id: string;
  /** Short mark to write beside it: `E3`. */
  readonly mark?: string;
  readonly group: FaultGroup;
  readonly cause: string;
  /** In two or three words, for the no-start card. */
  readonly short?: string;
  readonly longStored: Likelihood;
  readonly latelyRunning: Likelihood;
  readonly cure: string;
  readonly effort: 'minutes' | 'an hour' | 'an evening' | 'days';
  /** Work or settings after which it is less likely. */
  readonly curedBy: readonly string[];
  /** Work or settings that may have brought it about. */
  readonly movedBy: readonly string[];
  readonly applies: Applies;
  readonly at: Place;
}

/** Ids of causes by how strongly something speaks for or against them. */
export interface Strengths {
  readonly shows: readonly string[];
  readonly stronglyFor: readonly string[];
  readonly for: readonly string[];
  readonly against: readonly string[];
  readonly stronglyAgainst: readonly string[];
  readonly excludes: readonly string[];
}

/** From readings to an outcome: where the value lies against the book. */
export interface ReadingRule {
  readonly items: readonly string[];
  readonly side: 'within' | 'past' | 'below' | 'above' | 'outside';
  /** Conditions of a reading that is not meant. */
  readonly without: readonly string[];
  /** False: only what was found counts, since what was left is the cure. */
  readonly left: boolean;
}

export interface FaultOutcome extends Strengths {
  readonly saw: string;
  readonly also: readonly string[];
  readonly words: string;
  /** Of a hundred engines without any of these causes, how many show it. */
  readonly usual: number;
  /** Whoever saw it had the engine running. */
  readonly running: boolean;
  /** The engine is not to be run or ridden so. */
  readonly stop: boolean;
  readonly means?: string;
  readonly note?: string;
  readonly caution?: string;
  /** Part of the no-start card that it stands in. */
  readonly card?: CardPart;
  /** Words in a finding or a run log that say it. */
  readonly phrases: readonly string[];
  /** Checks that say it while they are proved. */
  readonly checks: readonly string[];
  readonly reads?: ReadingRule;
  /** `test=outcome` that cannot be so as well. */
  readonly notWith: readonly string[];
  readonly applies: Applies;
  readonly at: Place;
}

export const cardParts = ['spark', 'fuel', 'compression', 'air'] as const;
export type CardPart = (typeof cardParts)[number];

export interface FaultTest {
  readonly id: string;
  readonly mark?: string;
  readonly also: readonly string[];
  readonly test: string;
  /** In a few words, for the no-start card. */
  readonly short?: string;
  readonly how?: string;
  readonly tools?: string;
  readonly minutes: number;
  /** In round units of the owner's currency, what must be bought for it. */
  readonly money: number;
  readonly hazard: readonly Hazard[];
  readonly point?: string;
  readonly caution?: string;
  readonly cautions: readonly string[];
  /** A look that costs nothing: comes before everything else. */
  readonly free: boolean;
  /** Noticed without doing anything for it: never offered as a test. */
  readonly notice: boolean;
  /** Needs an engine that runs. */
  readonly running: boolean;
  /** Two tests that look at one thing do not count twice. */
  readonly looksAt?: string;
  /** Offered only when one of these was seen. */
  readonly when: readonly string[];
  /** Not offered once one of these was seen. */
  readonly unless: readonly string[];
  /** Offered only when these tests have been done. */
  readonly after: readonly string[];
  /** Things that must be on the machine for it. */
  readonly fitted: readonly string[];
  /** Things that it takes off. */
  readonly takesOff: readonly string[];
  /** The test in words where one of those is off already: then it is a look. */
  readonly onceOff?: string;
  readonly applies: Applies;
  readonly outcomes: readonly FaultOutcome[];
  readonly at: Place;
}

/** What several outcomes say together beyond what each says alone. */
export interface FaultTogether extends Strengths {
  readonly saw: readonly string[];
  readonly words?: string;
  readonly card?: CardPart;
  readonly caution?: string;
  readonly applies: Applies;
  readonly at: Place;
}

export interface FaultTables {
  readonly causes: readonly FaultCause[];
  readonly tests: readonly FaultTest[];
  readonly together: readonly FaultTogether[];
}

export const noFaultTables: FaultTables = { causes: [], tests: [], together: [] };

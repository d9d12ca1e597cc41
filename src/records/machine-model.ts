// What machine.yaml says, once read: plain readonly data.
import type { Place } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import type { Money } from '../quantity/money.ts';
import type { Written } from '../quantity/quantity.ts';

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
  /** Absent: nobody has said. */
  readonly magneto?: 'flywheel' | 'separate' | 'none';
  readonly trigger: 'points' | 'electronic';
  readonly volts?: Written<'voltage'>;
  readonly battery: boolean;
  readonly lamps: boolean;
  /** Absent: nobody has said. */
  readonly gearbox?: 'unit' | 'separate';
  readonly frontBrake: 'drum' | 'disc';
  readonly rearBrake: 'drum' | 'disc';
  readonly finalDrive: 'chain' | 'shaft' | 'belt';
  readonly wheels: 'spoked' | 'cast' | 'pressed';
  /** Names of the features written `?`: their values here only stand in for something, and nothing may be decided by them. */
  readonly notKnown?: readonly string[];
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
  /** Outside diameter of the flywheel or rotor rim, as the owner measured it. */
  readonly flywheel?: Written<'length'>;
  readonly chainPitch?: Written<'length'>;
  readonly chainLinks?: number;
}

/** One odometer for the time it was on the machine. */
/** `whole` where only the month or year was written: then `day` is its first day. */
export interface ClockEnd {
  readonly day: Day;
  readonly whole?: 'month' | 'year';
  readonly reads?: Written<'distance ridden'>;
}

export interface InstrumentPeriod {
  readonly id: string;
  readonly unit: Written<'distance ridden'>['unit'];
  readonly digits: number;
  readonly from: ClockEnd;
  readonly to?: ClockEnd;
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
  /** Sides of a leaf that are printed. */
  readonly sides: 'one' | 'both';
  readonly currency: string;
  readonly rates: Readonly<Record<string, number>>;
  readonly roadRules?: string;
  /** Words that stay out of the buyer's copy wherever they stand. */
  readonly privateWords?: readonly string[];
  readonly spendingLimit?: Money;
  /** Share on top of what is still to come, 0 to 2: for what is found when it is open. */
  readonly allowance?: number;
  /** What an hour of one's own is worth to the owner; absent: hours are counted and not valued. */
  readonly hourRate?: Money;
}

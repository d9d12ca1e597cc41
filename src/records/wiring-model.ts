// What wiring.yaml says, once read: the wires of this machine as they were found, where cables and hoses run, and its earths.
import type { Place } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import type { Written } from '../quantity/quantity.ts';

/** One wire from end to end. */
export interface Wire {
  readonly id: string;
  readonly circuit?: string;
  /** Colours in words, ground colour first. */
  readonly colours: string;
  readonly from: string;
  readonly to: string;
  /** Mark or place of the connector it goes through. */
  readonly connector?: string;
  /** Resistance from end to end as last measured. */
  readonly through?: Written<'resistance'>;
  readonly photo?: string;
  readonly note?: string;
  readonly at: Place;
}

/** A cable or a hose, and its way. */
export interface Run {
  readonly id: string;
  readonly name: string;
  readonly way: string;
  /** Clips and ties it goes through. */
  readonly clips?: string;
  readonly photo?: string;
  readonly note?: string;
  readonly at: Place;
}

/** A place whose earth is looked at: volts lost with its circuit switched on. */
export interface Earth {
  readonly id: string;
  readonly name: string;
  /** What is switched on while it is read. */
  readonly on: string;
  readonly drop?: Written<'voltage'>;
  readonly at: Place;
}

export interface Wiring {
  /** When it was read off the machine. */
  readonly read?: Day;
  readonly wires: readonly Wire[];
  readonly runs: readonly Run[];
  readonly earths: readonly Earth[];
}

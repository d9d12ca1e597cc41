// What a command may know of the world around it.
import type { Terminal } from './terminal.ts';
import { dayOf } from './today.ts';

export interface Surroundings {
  readonly terminal: Terminal;
  /** The current folder. */
  readonly folder: string;
  readonly clock: () => Date;
}

/** The day to compute for, as text. */
export function dayFor(written: string | undefined, surroundings: Surroundings): string {
  return written ?? dayOf(surroundings.clock());
}

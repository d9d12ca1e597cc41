// Where an answer goes: for each blank of a job's sheets, the key of its record that keeps it.
import type { WorkEntry } from '../records/model.ts';
import type { FootField } from './foot-blanks.ts';

/** A line of `work` that a tick writes, without its place. */
export type WorkLine = Pick<WorkEntry, 'verb' | 'thing'> & {
  readonly bag?: string;
  readonly wayRound?: string;
  readonly fasteners?: readonly { readonly id: string; readonly count: number }[];
};

export type Target =
  /** `found` or `left` of a reading. */
  | { readonly kind: 'reading'; readonly item: string; readonly position: string; readonly side: 'found' | 'left' }
  /** A line of `work` is written. */
  | { readonly kind: 'work'; readonly line: WorkLine }
  /** A line of `work` that stands there, at this index, is done. */
  | { readonly kind: 'to do'; readonly index: number }
  /** A line `tightened`: that it was, or what was reached. */
  | { readonly kind: 'torque'; readonly fastener: string; readonly thing: string; readonly reached: boolean }
  /** A part is here: the state of the line of `parts` at this index. */
  | { readonly kind: 'part'; readonly index: number }
  /** A check is proved, or the value that proves it. */
  | { readonly kind: 'check'; readonly check: string; readonly value: boolean }
  /** A row for what nobody foresaw. */
  | { readonly kind: 'spare'; readonly row: string; readonly asked: string }
  /** Columns of what went wrong: missing, broken, sent out. */
  | { readonly kind: 'honest'; readonly row: string; readonly column: 'missing' | 'broken' | 'sent out' }
  /** A minute of a run. */
  | { readonly kind: 'minute'; readonly minute: string; readonly row: string }
  /** A stamped number as it was read, the first or the second time. */
  | { readonly kind: 'number'; readonly name: string; readonly turn: number }
  /** A service that was done. */
  | { readonly kind: 'service'; readonly service: string }
  /** The foot. */
  | { readonly kind: 'foot'; readonly field: FootField }
  /** A tick that has no other key. */
  | { readonly kind: 'tick' }
  /** Words that have no other key. */
  | { readonly kind: 'words' };

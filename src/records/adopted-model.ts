// What adopted.yaml says, once read: which records came from a former owner.
import type { Day } from '../quantity/day.ts';
import type { Place } from '../problem/problem.ts';

/** A record or a photo that stays as it came. */
export interface AdoptedRecord {
  /** Path below the machine folder. */
  readonly file: string;
  /** SHA-256 of its text or its bytes, hexadecimal. */
  readonly hash: string;
  readonly at: Place;
}

export interface Adopted {
  readonly date: Day;
  /** Of the package, as it is printed on its history. */
  readonly fingerprint?: string;
  readonly records: readonly AdoptedRecord[];
  /** Photos that came, each with the SHA-256 of its bytes. */
  readonly photos: readonly AdoptedRecord[];
  readonly before: readonly { readonly date: Day; readonly fingerprint?: string; readonly at: Place }[];
}

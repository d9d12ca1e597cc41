// A problem is a value, collected and reported all at once; nothing here throws.
import type { ProblemCode } from './codes.ts';

/** Where a value stands: a file, and the keys and indexes that lead to it. Line and column are found on demand (see source/locate). */
export interface Place {
  /** Path relative to the folder that was read, with forward slashes; content files begin with `content/`. */
  readonly file: string;
  /** Keys and indexes from the top of the front matter down to the value; empty means the file as a whole. */
  readonly path: readonly (string | number)[];
  /** Known line and column (1-based) when the place is not a front matter value, for example in the body. */
  readonly line?: number;
  readonly column?: number;
  /** Point at the key rather than at its value. */
  readonly atKey?: boolean;
}

/** `problem` stops check and build; `query` is printed in the binder for a person to look at. */
export type Severity = 'problem' | 'query';

export interface Problem {
  readonly code: ProblemCode;
  readonly severity: Severity;
  readonly at: Place;
  /** One sentence that names the wrong thing, in the owner's words. */
  readonly message: string;
  /** What to write instead. */
  readonly hint?: string;
  /** Other places that belong to it (the earlier odometer reading, the first file with this id). */
  readonly also?: readonly { readonly at: Place; readonly message: string }[];
}

/** What every stage returns: a value as far as one could be made, and what was wrong. */
export interface Outcome<T> {
  readonly value: T;
  readonly problems: readonly Problem[];
}

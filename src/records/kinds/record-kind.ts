// A kind of record: which files it is, what it is for, and the shape of its data. A new kind is one file like this and one line in list.ts.
import type { Shape, Told } from '../shapes/shape.ts';

export interface RecordKind<T> {
  readonly id: string;
  /** One sentence for the manual. */
  readonly purpose: string;
  /** As shown to people: `jobs/*.md`. */
  readonly files: string;
  readonly matches: (file: string) => boolean;
  readonly shape: Shape<T>;
}

/** What the manual and the JSON Schema need of a kind. */
export type ToldKind = Pick<RecordKind<unknown>, 'id' | 'purpose' | 'files'> & {
  readonly shape: { readonly told: Told };
};

/** Declares a kind of record. */
export function defineRecord<T>(kind: RecordKind<T>): RecordKind<T> {
  return kind;
}

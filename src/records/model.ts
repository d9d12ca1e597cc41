// What the records say, once read: plain readonly data. Nothing here is derived; see book/ for what follows from it.
import type { Place } from '../problem/problem.ts';
import type { Adopted } from './adopted-model.ts';
import type { Job } from './job-model.ts';
import type { Machine } from './machine-model.ts';
import type { Instrument, MakerData } from './maker-model.ts';
import type { Wiring } from './wiring-model.ts';
import type { Workshop } from './workshop-model.ts';

export type * from './adopted-model.ts';
export type * from './job-model.ts';
export type * from './machine-model.ts';
export type * from './maker-model.ts';
export type * from './part-model.ts';
export type * from './wiring-model.ts';
export type * from './workshop-model.ts';

/** Everything read from one machine folder (and the workshop above it). */
export interface Records {
  readonly machine: Machine;
  readonly maker: MakerData;
  readonly instruments: readonly Instrument[];
  /** Of the machine's own folder and the workshop above it, together. */
  readonly workshop?: Workshop;
  /** Wires, runs and earths as found, where they were written down. */
  readonly wiring?: Wiring;
  readonly jobs: readonly Job[];
  readonly story?: { readonly file: string; readonly body: string };
  /** What came from a former owner with a package. */
  readonly adopted?: Adopted;
  /** Ids of records that could not be read; sheets name them. */
  /** `ids` are those that its text declares, so that a reference to one of them is not called wrong as well. */
  readonly unread: readonly {
    readonly file: string;
    readonly codes: readonly string[];
    readonly ids?: readonly string[];
  }[];
  /** Texts of what the machine adds to the content; they count for the print of the records. */
  readonly own?: readonly { readonly file: string; readonly text: string }[];
  /** Places of values marked `private`, besides those that carry the mark themselves; left out of the buyer's copy. */
  readonly kept?: readonly Place[];
}

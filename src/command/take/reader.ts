// A kind of thing that `take` can read, and what its reader is given.
import type { Asker } from '../asker.ts';
import type { ExitCode } from '../exit-codes.ts';
import type { Surroundings } from '../surroundings.ts';

/** What the person said about how to take it; every one is absent when it was not said. */
export interface TakeOptions {
  /** Write without asking at the end. */
  readonly yes?: boolean;
  /** Show what would be written, and write nothing. */
  readonly show?: boolean;
  readonly today?: string;
  /** Name and value of what only one reader asks for: `columns`, `dates`, `per` … */
  readonly said: Readonly<Record<string, string>>;
}

export interface TakeWork {
  /** Absolute path of the machine folder. */
  readonly machine: string;
  /** Absolute path of what is to be taken: a file or a folder. */
  readonly from: string;
  readonly options: TakeOptions;
  readonly around: Surroundings;
  readonly asker: Asker;
}

export interface TakeReader {
  /** In words, for the help and for whoever gave something else: `a log in columns (CSV)`. */
  readonly reads: string;
  /** Whether this is one, by its name, its first bytes (up to 1,024) and whether it is a folder. */
  readonly knows: (path: string, head: Buffer, folder: boolean) => boolean;
  readonly take: (work: TakeWork) => Promise<ExitCode>;
}

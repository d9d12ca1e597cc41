// What `take` can read, in the order in which it is tried. A new kind of file is one reader and one line here.
import type { TakeReader } from './reader.ts';

export const takeReaders: readonly TakeReader[] = [];

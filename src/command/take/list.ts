// What `take` can read, in the order in which it is tried. A new kind of file is one reader and one line here.
import { logReader } from './log/take-log.ts';
import type { TakeReader } from './reader.ts';

export const takeReaders: readonly TakeReader[] = [logReader];

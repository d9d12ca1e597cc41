// What `take` can read, in the order in which it is tried. A new kind of file is one reader and one line here.
import { logReader } from './log/take-log.ts';
import { answersReader } from './take-answers.ts';
import { formReader } from './take-form.ts';
import { photosReader } from './photos/take-photos.ts';
import type { TakeReader } from './reader.ts';

export const takeReaders: readonly TakeReader[] = [formReader, answersReader, logReader, photosReader];

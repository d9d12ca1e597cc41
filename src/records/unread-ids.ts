// A record that could not be read is still there to be named: its own problem is told, not a second one.
import type { Records } from './model.ts';
import { recordId } from './read-job.ts';

/** Ids of job files that were left out. */
export function unreadIds({ unread }: Pick<Records, 'unread'>): readonly string[] {
  return unread.map(({ file }) => recordId(file));
}

// A record that could not be read is still there to be named: its own problem is told, not a second one.
import type { Records } from './model.ts';
import { recordId } from './read-job.ts';

/** Ids of job files that were left out. */
export function unreadIds({ unread }: Pick<Records, 'unread'>): readonly string[] {
  return unread.map(({ file }) => recordId(file));
}

/** Entries that a file declares which could not be read in full: to name one of them is no second problem. */
export function declaredUnread({ unread }: Pick<Records, 'unread'>): readonly { readonly id: string }[] {
  return unread.flatMap(({ ids = [] }) => ids.map((id) => ({ id })));
}

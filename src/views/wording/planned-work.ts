// The `work:` lines of a job that are still to be done, as steps in words.
import { lineId } from '../../book/blank-ids.ts';
import { plannedLines, type PlannedLine } from '../../book/planned-lines.ts';
import type { Verb } from '../../records/model.ts';
import type { Inline, Text } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { joined } from './blocks.ts';
import { workParticulars, workThing } from './work.ts';

export type { PlannedLine };

/** What to do, where a record says what was done. */
const toDo: Readonly<Record<Verb, string>> = {
  removed: 'Remove',
  refitted: 'Refit',
  replaced: 'Replace',
  lost: 'Look for',
  loosened: 'Loosen',
  tightened: 'Tighten',
  drained: 'Drain',
  filled: 'Fill',
  disconnected: 'Disconnect',
  connected: 'Connect',
  opened: 'Open',
  closed: 'Close',
  'sent out': 'Send out',
  'come back': 'Get back',
  'fitted temporarily': 'Fit for the time being',
  'taken away': 'Take away',
};

/** What to do in a word, for a line that is still to be done. */
export function toDoWord(verb: Verb): string {
  return toDo[verb];
}

/** Lines of an open job in the order of the record; none of any other job. */
export function plannedWork({ book, job }: ViewContext): ReturnType<typeof plannedLines> {
  return job === undefined ? { away: [], back: [] } : plannedLines(book, job);
}

/** `Clutch cover: Remove; way round …`; the fasteners stand in a column of their own. */
export function plannedText({ book, say }: ViewContext, { entry, follows }: PlannedLine): Text {
  const does = toDo[entry.verb];
  const thing: readonly Inline[] = [{ kind: 'strong', text: workThing(book, entry) }, `: ${say(does).toLowerCase()}`];
  if (follows) return thing;
  const more = workParticulars(book, say, { ...entry, fasteners: [] });
  return joined([thing, more === '' ? undefined : more]);
}

/** Permanent: by record, verb and thing. */
export function plannedId({ job }: ViewContext, { entry }: PlannedLine): string {
  return lineId(job?.id ?? '', entry.verb, entry.thing);
}

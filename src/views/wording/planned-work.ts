// The `work:` lines of a job that is only planned, as steps still to be done: what comes off, and what goes back after it.
import { closesState, opensState } from '../../book/off-states.ts';
import { plainName } from '../../book/names.ts';
import type { Verb, WorkEntry } from '../../records/model.ts';
import type { Inline, Text } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { joined } from './blocks.ts';
import { workParticulars, workThing } from './work.ts';

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

/** The verb that ends what a verb begins. */
const ends: Partial<Readonly<Record<Verb, Verb>>> = {
  removed: 'refitted',
  loosened: 'tightened',
  drained: 'filled',
  disconnected: 'connected',
  opened: 'closed',
  'sent out': 'come back',
  'fitted temporarily': 'taken away',
};

export interface PlannedLine {
  readonly entry: WorkEntry;
  /** `Remove`; of a line that goes back, what ends it. */
  readonly does: string;
  /** Ids of its fasteners: those it names, else those that the maker's data holds the part with. */
  readonly fasteners: readonly string[];
  /** True of a line that the record does not write, and that follows from what comes off. */
  readonly follows: boolean;
}

/** What to do in a word, for a line that is still to be done. */
export function toDoWord(verb: Verb): string {
  return toDo[verb];
}

/** Lines of a planned job in the order of the record; none of any other job. */
export function plannedWork({ book, job }: ViewContext): {
  readonly away: readonly PlannedLine[];
  readonly back: readonly PlannedLine[];
} {
  if (job?.state !== 'planned') return { away: [], back: [] };
  const line = (entry: WorkEntry, verb: Verb, follows: boolean): PlannedLine => {
    const ofPart = [...book.fasteners.values()].filter((one) => plainName(one.of ?? '') === plainName(entry.thing));
    const own = book.fasteners.has(entry.thing) ? [entry.thing] : [];
    const named = [...entry.fasteners.map((one) => one.id), ...own];
    const fasteners = named.length > 0 ? named : ofPart.map((one) => one.id);
    return { entry, does: toDo[verb], fasteners, follows };
  };
  const isBack = (entry: WorkEntry): boolean => entry.verb !== 'lost' && closesState(entry.verb) !== undefined;
  const closed = (entry: WorkEntry): boolean =>
    job.work.some(
      (one) => isBack(one) && closesState(one.verb) === opensState(entry.verb) && one.thing === entry.thing,
    );
  const away = job.work.filter((entry) => !isBack(entry));
  const following = away.flatMap((entry): readonly PlannedLine[] => {
    const end = ends[entry.verb];
    return end === undefined || closed(entry) ? [] : [line({ ...entry, verb: end }, end, true)];
  });
  return {
    away: away.map((entry) => line(entry, entry.verb, false)),
    back: [...job.work.filter(isBack).map((entry) => line(entry, entry.verb, false)), ...following],
  };
}

/** `Clutch cover: Remove; way round …`; the fasteners stand in a column of their own. */
export function plannedText({ book, say }: ViewContext, { entry, does, follows }: PlannedLine): Text {
  const thing: readonly Inline[] = [{ kind: 'strong', text: workThing(book, entry) }, `: ${say(does).toLowerCase()}`];
  if (follows) return thing;
  const more = workParticulars(book, say, { ...entry, fasteners: [] });
  return joined([thing, more === '' ? undefined : more]);
}

/** Permanent: by record, verb and thing. */
export function plannedId({ job }: ViewContext, { entry }: PlannedLine): string {
  return `${job?.id ?? ''}/${entry.verb}/${entry.thing}`;
}

// The work of a record in running lines, verb by verb: `Removed: cylinder head (bag 3, 8 × nuts); barrels (bag 4)`.
import type { Job, WorkEntry } from '../../records/model.ts';
import type { Inline, Text } from '../../sheet/sheet.ts';
import { sentence } from '../wording/blocks.ts';
import { toDoWord } from '../wording/planned-work.ts';
import { workParticulars, workThing } from '../wording/work.ts';
import type { ViewContext } from '../view.ts';
import { stillOpen } from './work.ts';

/** A line for each verb, in the order in which the record names it first. */
export function briefWork(context: ViewContext, job: Job): readonly Text[] {
  const byVerb = new Map<WorkEntry['verb'], WorkEntry[]>();
  for (const entry of job.work) {
    const those = byVerb.get(entry.verb);
    if (those === undefined) byVerb.set(entry.verb, [entry]);
    else those.push(entry);
  }
  return [...byVerb].map(([verb, entries]): Text => [
    { kind: 'strong', text: `${job.state === 'planned' ? planned(context, verb) : sentence(context.say(verb))}: ` },
    ...entries.flatMap((entry, index) => [...(index === 0 ? [] : ['; ']), ...entryText(context, entry)]),
  ]);
}

/** Nothing of a planned job was done. */
function planned({ say }: ViewContext, verb: WorkEntry['verb']): string {
  return `${say('To do')}, ${say(toDoWord(verb)).toLowerCase()}`;
}

function entryText({ book, say }: ViewContext, entry: WorkEntry): readonly Inline[] {
  const about = workParticulars(book, say, entry).replaceAll('; ', ', ');
  const text = about === '' ? workThing(book, entry) : `${workThing(book, entry)} (${about})`;
  const still = stillOpen(book, entry);
  return still === undefined ? [text] : [text, ', ', { kind: 'strong', text: `${say('still')} ${say(still)}` }];
}

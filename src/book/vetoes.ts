// Checks that the records themselves can speak against, whatever was ticked.
import type { Check } from '../records/content-model.ts';
import type { OffBook, TorqueRow } from './book.ts';
import { stateInWords } from './off-states.ts';

/** What a veto may look at. */
export interface Evidence {
  readonly off: OffBook;
  readonly torque: readonly TorqueRow[];
}

function openLines(evidence: Evidence): string | undefined {
  if (evidence.off.open.length === 0) return undefined;
  const lines = evidence.off.open.map(
    (line) => `${line.entry.thing} ${line.entry.verb === 'lost' ? 'lost' : stateInWords(line.state)}`,
  );
  return `on the records still: ${lines.join('; ')}`;
}

/** Fasteners that carry something and were worked on: not written as tightened since, or of unknown torque. They stay open until they are. */
function openFasteners({ torque }: Evidence): string | undefined {
  const carrying = torque.filter((row) => row.touched === true && row.fastener.duty === undefined);
  const loose = carrying
    .filter((row) => row.untightened !== undefined)
    .map((row) => `${row.fastener.name} not written as tightened`);
  const unknown = carrying
    .filter((row) => row.basis === 'none')
    .map((row) => `torque of ${row.fastener.name} not known`);
  return loose.length + unknown.length === 0 ? undefined : [...loose, ...unknown].join('; ');
}

/** By the permanent id of the check. */
const vetoes: ReadonlyMap<string, (evidence: Evidence) => string | undefined> = new Map([
  ['nothing-left-off', openLines],
  ['fasteners-all-done', openFasteners],
]);

/** Why the check cannot stand; undefined when the records do not speak against it. */
export function vetoOn(check: Check, evidence: Evidence): string | undefined {
  return vetoes.get(check.id)?.(evidence);
}

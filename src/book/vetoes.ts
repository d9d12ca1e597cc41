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

/** Fasteners that were worked on, carry something, and have no maker's torque: they stay open until a figure with its source is found. */
function unknownFasteners(evidence: Evidence): string | undefined {
  const unknown = evidence.torque.filter(
    (row) => row.basis === 'none' && row.touched === true && row.fastener.duty === undefined,
  );
  const loose = evidence.off.open.filter((line) => line.state === 'loose');
  const parts = [
    ...unknown.map((row) => `torque of ${row.fastener.name} not known`),
    ...loose.map((line) => `${line.entry.thing} loose`),
  ];
  return parts.length === 0 ? undefined : parts.join('; ');
}

/** By the permanent id of the check. */
const vetoes: ReadonlyMap<string, (evidence: Evidence) => string | undefined> = new Map([
  ['nothing-left-off', openLines],
  ['fasteners-all-done', unknownFasteners],
]);

/** Why the check cannot stand; undefined when the records do not speak against it. */
export function vetoOn(check: Check, evidence: Evidence): string | undefined {
  return vetoes.get(check.id)?.(evidence);
}

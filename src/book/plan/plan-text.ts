// The sentences of the plan: what stands in the way, why a job is ready, what would free it. Dates stand as in the records.
import { formatDecimal } from '../../quantity/decimal.ts';
import { minutesText } from './estimate.ts';
import type { Obstacle } from './obstacle.ts';
import type { PlannedJob } from './plan-of-work.ts';
import type { PartLine } from '../shopping/part-lines.ts';
import type { Unlock } from './unlock.ts';

/** `2 × head gasket`, `head gasket`. */
export function countedPart({ part, count }: PartLine): string {
  return count === 1 ? part.part : `${formatDecimal(count, 0)}\u00a0× ${part.part}`;
}

/** The part with how far it is: `head gasket (ordered, promised for 2026-12-01)`. */
export function partText(line: PartLine): string {
  const { state, promised } = line.part;
  const by = promised === undefined ? '' : `, promised for ${promised}`;
  return `${countedPart(line)} (${state}${by})`;
}

function checks(count: number): string {
  return count === 1 ? '1\u00a0check' : `${formatDecimal(count, 0)}\u00a0checks`;
}

/** What stands in the way, in a few words. */
export function obstacleText(one: Obstacle): string {
  if (one.kind === 'waiting') return `waits for ${one.of}`;
  if (one.kind === 'job') return `comes after “${one.job.title}”`;
  if (one.kind === 'hold') return `held: ${one.point.title}, ${checks(one.open)} open; first: ${one.first}`;
  if (one.kind === 'part') return `not here: ${partText(one.line)}`;
  if (one.kind === 'helper') return `needs a second person: ${one.why}`;
  if (one.kind === 'away') {
    const { thing, to, promised } = one.line.entry;
    const where = to === undefined ? '' : ` at ${to}`;
    return `${thing} still away${where}${promised === undefined ? '' : `, promised for ${promised}`}`;
  }
  if (one.kind === 'time')
    return one.minutes === undefined ? 'nobody has said how long it takes' : `takes about ${minutesText(one.minutes)}`;
  const where = one.jobs.length === 0 ? 'in no job yet' : `in “${one.jobs.map(({ title }) => title).join('”, “')}”`;
  if (one.kind === 'not on') {
    const { entry, since } = one.line;
    return `first: ${entry.thing} back on (off since ${since}; ${where}), for: ${one.step.step}`;
  }
  const off = one.notOn === undefined ? '' : `; first back on: ${one.notOn.entry.thing}`;
  return `first: ${one.step.step} (${where}${off})${one.why === '' ? '' : `: ${one.why}`}`;
}

/** What would take it away, as a thing to get or to do. */
function freeingText(one: Obstacle): string {
  if (one.kind === 'part') return partText(one.line);
  if (one.kind === 'helper') return 'a second person';
  if (one.kind === 'job') return `“${one.job.title}” done`;
  if (one.kind === 'step') return one.step.step;
  if (one.kind === 'hold') return `${one.point.title}: ${checks(one.open)} proved`;
  if (one.kind === 'not on') return `${one.line.entry.thing} back on`;
  if (one.kind === 'away') {
    const { thing, to } = one.line.entry;
    return `${thing} back${to === undefined ? '' : ` from ${to}`}`;
  }
  if (one.kind === 'waiting') return one.of;
  return one.minutes === undefined
    ? 'how long it takes, written under “takes”'
    : `${minutesText(one.minutes)} at one go`;
}

/** `from club spares scheme: 2 × head gasket (ordered), …`. */
export function unlockText({ obstacles, supplier }: Unlock): string {
  const what = obstacles.map(freeingText).join(', ');
  return supplier === undefined ? what : `from ${supplier}: ${what}`;
}

/** `frees “Rear wheel out”; one of several things for “Top end”`. */
export function freesText({ frees, helps }: Unlock): string {
  const quoted = (jobs: Unlock['frees']): string => jobs.map(({ title }) => `“${title}”`).join(', ');
  const pieces = [
    ...(frees.length === 0 ? [] : [`frees ${quoted(frees)}`]),
    ...(helps.length === 0 ? [] : [`one of several things for ${quoted(helps)}`]),
  ];
  return pieces.join('; ');
}

/** What is said of a job that cannot be finished tonight, and can be begun. */
export function beginText({ procedures, obstacles }: PlannedJob): string | undefined {
  const apart = procedures.some(({ steps, assembly }) => steps.length > 0 && assembly.length > 0);
  const onlyParts = obstacles.every(({ kind }) => kind === 'part');
  if (!apart || !onlyParts) return undefined;
  return obstacles.length === 0
    ? 'it can be begun, and left where nothing hangs loose: write the state it is left in'
    : 'taking apart can begin without the parts; it stands open until they come';
}

/** Why a job can be done: its time and whose reckoning that is, what is here for it, and what it clears the way for. */
export function readyText({ estimate, inHand, helper, waiting, holds, perhaps }: PlannedJob): readonly string[] {
  return [
    ...(estimate.minutes === undefined
      ? [estimate.from]
      : [`about ${minutesText(estimate.minutes)}, ${estimate.from}`]),
    ...(helper === undefined ? [] : [helper]),
    ...(inHand.length === 0 ? [] : [`here for it: ${inHand.map(countedPart).join(', ')}`]),
    ...perhaps.map(({ part }) => `${part.part}: only if ${part.onlyIf ?? ''}`),
    ...(holds === undefined ? [] : [`“${holds.title}” stays held until it is done`]),
    ...(waiting.length === 0 ? [] : [`clears the way for “${waiting.map(({ title }) => title).join('”, “')}”`]),
  ];
}

/** How many evenings of this length a job takes that does not fit into one. */
export function eveningsText(needed: number, minutes: number): string {
  return `about ${formatDecimal(Math.ceil(needed / minutes), 0)}\u00a0evenings of ${minutesText(minutes)}`;
}

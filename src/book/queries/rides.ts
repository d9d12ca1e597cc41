// Rides and starts that the records speak against.
import type { Place } from '../../problem/problem.ts';
import type { Job } from '../../records/model.ts';
import { keptFlat } from '../../records/runs.ts';
import type { Ground } from '../ground.ts';
import { hasWords, remembered } from '../names.ts';
import { stateInWords } from '../off-states.ts';
import { workDone } from '../work-by-verb.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** So many open checks are named; of more it is said how many. */
const mostNamed = 3;

/** Ridden or started while its hold point was held: the first time per point, with how often after it. */
export const riddenWhileHeld: Look = ({ holds }) => {
  const first = new Map<string, { readonly one: (typeof holds.ridden)[number]; again: number }>();
  for (const one of holds.ridden) {
    const known = first.get(one.point.id);
    if (known === undefined) first.set(one.point.id, { one, again: 0 });
    else known.again += 1;
  }
  return [...first.values()].map(({ one, again }) => {
    const more = again === 0 ? '' : `, and ${String(again)} more after it`;
    const named = one.open.slice(0, mostNamed).map((check) => `${inShort(check.text)} (${check.id})`);
    const rest = one.open.length - named.length;
    const open = [...named, ...(rest > 0 ? [`and ${String(rest)} more, as the hold point lists them`] : [])].join('; ');
    const message = `${one.job.title}: done while “${one.point.title}” was held${more}. Open: ${open}`;
    return query(
      'ridden-while-held',
      { file: one.job.file, path: [] },
      message,
      'tick the check in the record that proved it, or prove it now',
    );
  });
};

/** The first clause of a check, so that a line holds many. */
function inShort(text: string): string {
  const clause = text.split(/[;:]/u)[0] ?? text;
  const comma = clause.indexOf(',', 30);
  return comma < 0 ? clause : clause.slice(0, comma);
}

/** Ridden with something still off, loose, empty or open. */
export const riddenWithThingsOpen: Look = ({ ground, offWork }) => {
  const ride = ground.jobs.findLast((job) => job.ride !== undefined || job.kind === 'ride');
  if (ride === undefined) return [];
  const order = ground.order.get(ride) ?? 0;
  const open = offWork.off.open.filter(
    (line) => line.state !== 'sent out' && (ground.order.get(line.job) ?? 0) < order,
  );
  return open.map((line) => {
    const message = `${line.entry.thing} is ${stateInWords(line.state)} since ${line.since}, and the machine was ridden on ${ride.date.from}`;
    return query('ridden-with-thing-open', line.entry.at, message, 'write the entry that put it back, or put it back');
  });
};

const fuel: ReadonlySet<string> = new Set(['fuel', 'petrol', 'fuel tank', 'tank', 'gasoline', 'gas']);

/** Petrol without oil into an engine that is oiled by its fuel. */
export const plainPetrolInPremix: Look = ({ ground }) => {
  const { lubrication, notKnown } = ground.records.machine.features;
  if (lubrication !== 'premix' || notKnown?.includes('lubrication') === true) return [];
  return workDone(ground, 'filled')
    .filter(({ entry }) => fuel.has(ground.key(entry.thing)) && entry.ratio === undefined)
    .map(({ entry }) =>
      query(
        'petrol-without-oil',
        entry.at,
        `${entry.thing} filled with no oil written, and this engine is oiled by its fuel`,
        'write `ratio:`, for example 25:1',
      ),
    );
};

const isMixture = remembered((item) => hasWords(item, 'premix') || hasWords(item, 'mixture'));
const mixturesRead = keptFlat((job: Job) =>
  job.readings.filter((one) => isMixture(one.item)).flatMap((one) => [...one.found, ...one.left]),
);

/** What the records say of the mixture, with the places. */
function mixtureWords(ground: Ground): readonly { readonly at: Place; readonly text: string }[] {
  const entries = workDone(ground, 'filled').map(({ entry }) => entry);
  const read = mixturesRead(ground.jobs);
  return [
    ...entries.map((entry) => ({
      at: entry.at,
      text: [entry.ratio?.text, entry.grade, entry.note].filter((one) => one !== undefined).join(' '),
    })),
    ...read.map(({ at, value }) => ({
      at,
      text: value.kind === 'read' ? value.written.text : value.kind === 'words' ? value.text : '',
    })),
  ];
}

/** One machine, two ways of writing its mixture: 25:1 is 4 % of the petrol and 3.85 % of the mixture. */
export const mixtureWrittenTwoWays: Look = ({ ground }) => {
  const words = mixtureWords(ground);
  const asRatio = words.find((one) => /\b\d{2}\s*:\s*1\b/u.test(one.text));
  const asShare = words.find((one) => /\b\d(?:[.,]\d+)?\s*(?:%|per cent)/iu.test(one.text));
  if (asRatio === undefined || asShare === undefined) return [];
  return [
    query(
      'mixture-written-two-ways',
      asShare.at,
      'the mixture is written as a ratio in one place and in per cent in another',
      'write it as a ratio everywhere; per cent of what is not said',
    ),
  ];
};

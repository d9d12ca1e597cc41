// Work on what carries and stops the rider.
import { appliesTo } from '../applies.ts';
import { hasWords, remembered } from '../names.ts';
import type { Job, ReadingValue } from '../../records/model.ts';
import { keptFlat } from '../../records/runs.ts';
import type { Ground } from '../ground.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

const carries = [
  'brake',
  'spindle',
  'axle',
  'torque arm',
  'handlebar',
  'bar clamp',
  'yoke',
  'fork',
  'steering',
  'calliper',
  'caliper',
  'front wheel',
  'rear wheel',
];

/** Does the name speak of something that steers, stops or holds a wheel. */
export function carriesTheRider(name: string): boolean {
  return carries.some((word) => hasWords(name, word));
}

const back: ReadonlySet<string> = new Set(['refitted', 'replaced', 'tightened', 'connected']);

function unchecked(job: Job): boolean {
  return job.state === 'done' && job.checks.length === 0 && job.signed === undefined;
}

/** Brakes, spindles, torque arm or bars put back, and nobody wrote that they were looked at. */
export const safetyWorkUnchecked: Look = ({ ground }) => withoutCheck(ground.jobs);

const carrying = remembered(carriesTheRider);
const withoutCheck = keptFlat((job: Job) => {
  const entry = unchecked(job) ? job.work.find((one) => back.has(one.verb) && carrying(one.thing)) : undefined;
  if (entry === undefined) return [];
  const message = `${entry.thing} ${entry.verb}, and the record has no check of it`;
  return [query('safety-work-unchecked', entry.at, message, 'write what was checked under `checks:`, and by whom')];
});

/** A fastener marked as cover, bracket or trim whose name says that it carries: a computed band is not for it. */
export const computedOnSafetyJoint: Look = ({ torque }) =>
  torque
    .filter(
      (row) =>
        row.fastener.duty !== undefined &&
        (carriesTheRider(row.fastener.name) || carriesTheRider(row.fastener.of ?? '')),
    )
    .map(({ fastener }) =>
      query(
        'duty-against-its-name',
        fastener.at,
        `${fastener.name} is marked as ${fastener.duty ?? ''}, and its name says that it carries the rider`,
        'take the mark away if it holds a brake, wheel or the steering',
      ),
    );

/** A fault that stops use, still open, or left past the day it was allowed until. */
export const findingsOpen: Look = ({ ground }) => {
  const ride = ground.jobs.findLast((job) => job.ride !== undefined);
  const ridden = ride === undefined ? -1 : (ground.order.get(ride) ?? -1);
  return ground.jobs.flatMap((job) =>
    job.findings.flatMap((finding) => {
      if (finding.until !== undefined && finding.until < ground.today) {
        return [
          query(
            'finding-past-its-day',
            finding.at,
            `${finding.saw}: was to be done by ${finding.until}`,
            'do it, or write a new day and why',
          ),
        ];
      }
      const stops = finding.weight === 'stops' && finding.became === 'open';
      if (!stops || ride === undefined || ridden <= (ground.order.get(job) ?? 0)) return [];
      const message = `${finding.saw}: stops use and is open, and the machine was ridden on ${ride.date.from}`;
      return [query('ridden-with-stopping-fault', finding.at, message, 'write what became of it')];
    }),
  );
};

/** The last code read of each tyre: what a later tyre replaced does not count. */
function lastTyreCodes(ground: Ground): readonly ReadingValue[] {
  const last = new Map<string, readonly ReadingValue[]>();
  for (const { item, found, left } of tyreCodes(ground.jobs))
    last.set(ground.key(item), left.length > 0 ? left : found);
  return [...last.values()].flat();
}

const isCode = remembered((item) => /(?:tyre|tire)/iu.test(item) && /(?:date|code|age|dot)/iu.test(item));
const tyreCodes = keptFlat(({ readings }: Job) => readings.filter(({ item }) => isCode(item)));

/** A tyre code of three digits names a week and a year of an unknown decade before 2000 (49 CFR 574.5): never recent. */
export const tyreCodeOfThreeDigits: Look = ({ ground }) =>
  lastTyreCodes(ground)
    .filter(
      ({ value }) =>
        value.kind !== 'unknown' && /^\D*\d{3}\D*$/u.test(value.kind === 'words' ? value.text : value.written.text),
    )
    .map(({ at }) =>
      query(
        'tyre-code-of-three-digits',
        at,
        'a tyre code of three digits is from before 2000: the tyre is old whatever its tread',
        'renew it before it carries anybody',
      ),
    );

/** A value proof or a photograph asked for, and only a tick given. */
export const checkWithoutEvidence: Look = ({ ground }) => {
  const checks = new Map(
    ground.content.holdPoints
      .flatMap((point) => point.checks)
      .filter((check) => check.proof === 'value' || check.proof === 'photo')
      .filter((check) => appliesTo(check.applies, ground.records.machine.features))
      .map((check) => [ground.key(check.id), check]),
  );
  return ground.jobs.flatMap((job) =>
    job.checks.flatMap((done) => {
      const check = checks.get(ground.key(done.check));
      const value =
        check?.proof === 'value' && (done.value ?? '') === '' && job.readings.length === 0 && job.work.length === 0;
      const photo = check?.proof === 'photo' && job.photos.length === 0;
      if (!value && !photo) return [];
      return [
        query(
          'check-without-evidence',
          done.at,
          `${done.check}: ticked, and no ${value ? 'value' : 'photograph'} is with it`,
          value ? 'write `value:` beside it' : 'add the photograph to the record',
        ),
      ];
    }),
  );
};

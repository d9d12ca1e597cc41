// Dates and states of a record that contradict each other.
import type { Problem } from '../../problem/problem.ts';
import type { Job } from '../../records/model.ts';
import { mistyped } from '../in-order.ts';
import { keptFlat } from '../../records/runs.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** What is dated after today: one by one, or together when the binder is made for a day long past. */
export const doneLater: Look = ({ ground }) => {
  const [first] = ground.later;
  if (first === undefined) return [];
  if (ground.later.length <= mistyped) return ground.later.map(laterThanToday);
  const message = `${String(ground.later.length)} records are of work after today, from ${first.date.from}; they are left out until then, and so are the jobs planned after it`;
  return [query('done-in-the-future', { file: first.file, path: ['date'] }, message, 'look at the dates')];
};

const laterThanToday = (job: Job): Problem =>
  query(
    'done-in-the-future',
    { file: job.file, path: ['date'] },
    `${job.title} is done on ${job.date.from}, after today; it is left out until then`,
    'look at the date',
  );

/** Dates and states that contradict each other. */
export const datesAndStates: Look = ({ ground }) => inRecords(ground.all);

const inRecords = keptFlat((job: Job): readonly Problem[] => {
  const place = (key: string) => ({ file: job.file, path: [key] });
  const early = job.signed !== undefined && job.date.whole === undefined && job.signed.date < job.date.to;
  const filled =
    job.state === 'planned' &&
    job.readings.some((one) => [...one.found, ...one.left].some((each) => each.value.kind === 'read'));
  return [
    ...(early
      ? [
          query(
            'signed-before-its-work',
            place('signed'),
            `signed ${job.signed?.date ?? ''}, before its work ended on ${job.date.to}`,
            'a signed sheet is not used again: write the later work in a record of its own',
          ),
        ]
      : []),
    ...(filled
      ? [
          query(
            'planned-but-filled-in',
            place('state'),
            `${job.title} is planned, and has readings; they are not counted`,
            'write `state: under way` or `done`',
          ),
        ]
      : []),
  ];
});

// Dates and states of a record that contradict each other.
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Dates and states that contradict each other. */
export const datesAndStates: Look = ({ ground }) =>
  ground.all.flatMap((job) => {
    const place = (key: string) => ({ file: job.file, path: [key] });
    const future = job.state === 'done' && job.date.from > ground.today;
    const early = job.signed !== undefined && job.date.whole === undefined && job.signed.date < job.date.to;
    const filled =
      job.state === 'planned' &&
      job.readings.some((one) => [...one.found, ...one.left].some((each) => each.value.kind === 'read'));
    return [
      ...(future
        ? [
            query(
              'done-in-the-future',
              place('date'),
              `${job.title} is done on ${job.date.from}, after today`,
              'look at the date',
            ),
          ]
        : []),
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

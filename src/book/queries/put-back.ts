// Put back what was never off, tightened what was never loose, off twice.
import { stateInWords } from '../off-states.ts';
import type { Verb } from '../../records/model.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** What an entry ends, as the earlier record should have said it. */
const before: Partial<Readonly<Record<Verb, string>>> = {
  'taken away': 'fitted for the time being',
  'come back': 'sent out',
  closed: 'opened',
  connected: 'disconnected',
};

/** Put back what was never off. */
export const putBackNeverOff: Look = ({ offWork }) =>
  offWork.putBackNeverOff.map(({ entry }) => {
    const was = before[entry.verb];
    const never = was === undefined ? 'that it was off before' : `that it was ${was} before`;
    const when = was === undefined ? 'when it came off' : `when it was ${was}`;
    return query(
      'put-back-never-off',
      entry.at,
      `${entry.thing} ${entry.verb}, and no record says ${never}`,
      `write ${when}, or look at its name`,
    );
  });

/** Tightened, and neither it nor its part was ever touched before; services and running-in tighten for its own sake. */
export const tightenedNeverLoose: Look = ({ ground }) => {
  const touched = new Set<string>();
  return ground.jobs.flatMap((job) =>
    job.work.flatMap((entry) => {
      const key = ground.key(entry.thing);
      const holds = ground.fasteners.get(key)?.of;
      const known = touched.has(key) || (holds !== undefined && touched.has(ground.key(holds)));
      touched.add(key);
      for (const one of entry.fasteners) touched.add(ground.key(one.id));
      if (
        entry.verb !== 'tightened' ||
        known ||
        job.kind === 'service' ||
        job.kind === 'running-in' ||
        job.heatCycles > 0
      )
        return [];
      return [
        query(
          'tightened-never-loose',
          entry.at,
          `${entry.thing} tightened, and no record says that it was loose`,
          'write when it was loosened, or look at its name',
        ),
      ];
    }),
  );
};

/** Off twice without going back between. */
export const takenTwice: Look = ({ offWork }) =>
  offWork.takenTwice.map(({ entry, first }) =>
    query(
      'taken-off-twice',
      entry.at,
      `${entry.thing} ${entry.verb} again; it is ${stateInWords(first.state)} since ${first.since}`,
      'write when it went back between',
    ),
  );

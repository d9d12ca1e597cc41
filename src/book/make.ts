// The book on one screen: from records and content to everything that follows from them at a date.
import type { Day } from '../quantity/day.ts';
import type { Content } from '../records/content-model.ts';
import type { Job, Records } from '../records/model.ts';
import { keptFlat } from '../records/runs.ts';
import { parted } from './answers.ts';
import type { Book, Costs } from './book.ts';
import { countCosts } from './costs/count-costs.ts';
import { dueList } from './due/due-list.ts';
import { serviceVisits } from './due/visits.ts';
import { layGround } from './ground.ts';
import { holdPoints } from './holds.ts';
import { workOdometer } from './odometer.ts';
import { offAndOn } from './off-and-on.ts';
import { jobPlans } from './plans.ts';
import { judgeOf } from './judge.ts';
import { lookOver } from './queries/list.ts';
import { readingSeries } from './series.ts';
import { torqueTable } from './torque.ts';
import { recordsDate, recordsVersion } from './version.ts';

function byId<T extends { readonly id: string }>(entries: Iterable<T>): ReadonlyMap<string, T> {
  return new Map([...entries].map((entry) => [entry.id, entry]));
}

const partsOf = keptFlat((job: Job) => job.parts.map((part) => ({ job, part })));
const photosOf = keptFlat((job: Job) => job.photos.map((photo) => ({ job, photo })));

/** What is said of a book besides its records. */
export type About = Pick<Book, 'fingerprint' | 'copy'>;

/**
 * Everything that follows from the records at `today`: what was done after it is left out, and asked about. Pure; the order of `records.jobs` does not matter; linear in the
 * number of records.
 */
export function makeBook(written: Records, content: Content, today: Day, about: About = {}): Book {
  const ground = layGround(written, content, today);
  const { records } = ground;
  const odometer = workOdometer(ground);
  const offWork = offAndOn(ground.jobs, ground.key);
  const series = readingSeries(ground, odometer);
  const torque = torqueTable(ground);
  const holds = holdPoints(ground, odometer, judgeOf(series), { off: offWork.off, torque });
  const due = dueList(ground, odometer, series);
  let counted: Costs | undefined;
  const costs = (): Costs => (counted ??= countCosts(records, ground.all, offWork.off.closed, ground.key));
  const found = { ground, odometer, offWork, series, torque, holds, due, costs };
  const { open, answered } = parted(lookOver(found), ground.jobs);
  return {
    ...about,
    records,
    content,
    today,
    odometer: odometer.odometer,
    off: offWork.off,
    series: series.series,
    due,
    visits: serviceVisits(due, today),
    torque,
    holds: holds.holds,
    plans: jobPlans(ground, series),
    // Hardly a page shows them, and while a binder is served most pages are never asked for.
    get costs() {
      return costs();
    },
    parts: partsOf(ground.all),
    photos: photosOf(ground.all),
    queries: open,
    answered,
    limits: byId(series.limits.values()),
    fasteners: byId(ground.maker.fasteners),
    settings: byId(ground.maker.settings),
    jobs: ground.jobsById,
    recordsDate: recordsDate(records, today),
    recordsVersion: recordsVersion(records),
  };
}

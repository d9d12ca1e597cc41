// Checks across files, each a small function over all records; a new check is one file and one line here.
import type { Problem } from '../problem/problem.ts';
import type { Asset } from '../source/files.ts';
import { checkAfter } from './check-after.ts';
import { checkBags } from './check-bags.ts';
import { checkClock } from './check-clock.ts';
import { checkCorrections } from './check-corrections.ts';
import { checkDates } from './check-dates.ts';
import { checkIds } from './check-ids.ts';
import { checkMixture } from './check-mixture.ts';
import { checkNumbers } from './check-numbers.ts';
import { checkPhotos } from './check-photos.ts';
import { checkReadings } from './check-readings.ts';
import { checkReferences } from './check-references.ts';
import { checkServices } from './check-services.ts';
import type { Records } from './model.ts';

const checks: readonly ((records: Records, assets: readonly Asset[]) => readonly Problem[])[] = [
  checkIds,
  checkReferences,
  checkAfter,
  checkReadings,
  checkBags,
  checkCorrections,
  checkClock,
  checkDates,
  checkMixture,
  checkNumbers,
  checkServices,
  checkPhotos,
];

/** Every contradiction between files. */
export function checkRecords(records: Records, assets: readonly Asset[]): readonly Problem[] {
  return checks.flatMap((check) => check(records, assets));
}

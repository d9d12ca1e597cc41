// Released by hand: a person takes a held point or check on themselves, says why, and until when. Never the same as clear.
import type { Day } from '../quantity/day.ts';
import type { Job, Release } from '../records/model.ts';
import type { Ground } from './ground.ts';

export interface Released {
  readonly job: Job;
  readonly release: Release;
}

/** The release of a point or check in force at a record or a day; the newest of several. */
export type ReleaseAt = (id: string, day: Day, order: number) => Released | undefined;

/** Indexes the releases by what they release. */
export function releasesOf(ground: Ground): ReleaseAt {
  const found = new Map<string, Released[]>();
  for (const job of ground.jobs) {
    for (const release of job.releases ?? []) {
      const key = ground.key(release.of);
      const list = found.get(key) ?? [];
      list.push({ job, release });
      found.set(key, list);
    }
  }
  return (id, day, order) =>
    found
      .get(ground.key(id))
      ?.findLast(
        ({ job, release }) =>
          (ground.order.get(job) ?? 0) <= order && (release.until === undefined || release.until >= day),
      );
}

/** `released by hand by owner: pushed only, until 2026-06-01`. */
export function releaseWords({ release }: Released): string {
  const until = release.until === undefined ? 'until it is taken back' : `until ${release.until}`;
  return `released by hand by ${release.by}: ${release.why}; ${until}`;
}

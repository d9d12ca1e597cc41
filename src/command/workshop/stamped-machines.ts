// The machines of a workshop as their files stand before any is made, with what the last front page kept of those that are the same.
import { basename } from 'node:path';
import type { FrontLines } from '../../build.ts';
import { hashOf } from '../../cache/hash.ts';
import { stampsOf } from '../../disk.ts';
import { keptFronts } from './front-files.ts';
import type { BuildJob } from './machine-build.ts';

export interface StampedMachine {
  readonly job: BuildJob;
  /** The folder's name as it stands in pages and problems; the disk may spell its accents otherwise. */
  readonly folder: string;
  /** Hash of the program, what was chosen, and every file's name, size and time. */
  readonly key: string;
  /** Size of all its files: near enough how much work it is. */
  readonly bytes: number;
  /** Its lines on the front page, if its files were the same when that was made. */
  readonly front?: FrontLines;
}

/** Stamps are taken before the records are read: what is written meanwhile is seen the next time. */
export function stampedMachines(jobs: readonly BuildJob[], out: string): readonly StampedMachine[] {
  const kept = keptFronts(out);
  return jobs.map((job) => {
    const stamps = stampsOf(job.machine);
    const folder = basename(job.machine).normalize('NFC');
    const key = hashOf(JSON.stringify([job.machine, job.program, job.choices, stamps]));
    const before = kept[folder];
    const front = before?.key === key ? before.front : undefined;
    const bytes = stamps.reduce((sum, { size }) => sum + size, 0);
    return { job, folder, key, bytes, ...(front === undefined ? {} : { front }) };
  });
}

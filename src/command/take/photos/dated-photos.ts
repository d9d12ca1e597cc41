// The pictures of a folder, each with its time and the square code it shows, in the order in which they were taken.
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { checkPhoto } from '../../../photos/check-photo.ts';
import { photoTime, type PhotoTime } from '../../../photos/photo-time.ts';
import { squareCodeIn } from '../../../photos/square-code-in.ts';
import type { Problem } from '../../../problem/problem.ts';

export interface DatedPhoto {
  readonly name: string;
  readonly absolute: string;
  readonly size: number;
  readonly taken: PhotoTime;
  /** What a square code in it says. */
  readonly code?: string;
}

export interface DatedPhotos {
  readonly photos: readonly DatedPhoto[];
  /** Pictures without a day. */
  readonly undated: readonly string[];
  readonly problems: readonly Problem[];
}

/** An afternoon of one photographer; more at once is a mistaken folder. */
export const mostPhotos = 2000;

const picture = /\.(?:jpe?g|png|webp|hei[cf])$/iu;

/** Names of the pictures in a folder, not in folders inside it. */
export function pictureNames(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((each) => each.isFile() && picture.test(each.name) && !each.name.startsWith('.'))
    .map((each) => each.name)
    .toSorted();
}

/** Looks at every picture. `progress` is told how many were looked at. */
export async function datedPhotos(folder: string, progress: (done: number, all: number) => void): Promise<DatedPhotos> {
  const names = pictureNames(folder);
  const photos: DatedPhoto[] = [];
  const undated: string[] = [];
  const problems: Problem[] = [];
  for (const [index, name] of names.entries()) {
    progress(index, names.length);
    const absolute = join(folder, name);
    const { size, mtimeMs } = statSync(absolute);
    const wrong = checkPhoto({ file: name, absolute, size, modified: mtimeMs });
    if (wrong !== undefined) {
      problems.push(wrong);
      continue;
    }
    const taken = await photoTime(absolute, name);
    const code = await squareCodeIn(absolute).catch(() => undefined);
    if (taken === undefined) undated.push(name);
    else photos.push({ name, absolute, size, taken, ...(code === undefined ? {} : { code }) });
  }
  progress(names.length, names.length);
  return { photos: photos.toSorted(byTime), undated, problems };
}

/** By time; a picture of which only the day is known comes before all others of its day, so that it goes under no tag. */
function byTime(a: DatedPhoto, b: DatedPhoto): number {
  const [first, second] = [a, b].map(({ taken, name }) => [taken.day, taken.time ?? '', name].join(' '));
  return (first ?? '') < (second ?? '') ? -1 : 1;
}

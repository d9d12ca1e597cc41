// All photos of one binder: what is known from the last build is taken over, the rest is made, two at a time.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Outcome, Problem } from '../problem/problem.ts';
import type { Asset } from '../source/files.ts';
import { brokenPhoto, checkPhoto } from './check-photo.ts';
import { photoNames } from './photo-names.ts';
import { shrinkPhoto, shrinkSettings, type PhotoSize } from './shrink-photo.ts';

/** A photo as the binder has it. `key` tells the content and the settings it was made with. */
export interface MadePhoto extends PhotoSize {
  readonly file: string;
  readonly large: string;
  readonly small: string;
  readonly size: number;
  readonly modified: number;
  readonly key: string;
}

export interface PhotoWork {
  readonly assets: readonly Asset[];
  /** Folder that the copies are written below. */
  readonly into: string;
  /** Photos of the last build, by original file. */
  readonly known: ReadonlyMap<string, MadePhoto>;
  /** Only the large copies are wanted: for paper. */
  readonly large?: boolean;
  /** Takes a file of the last build over into the new folder; false when it is no longer there. */
  readonly takeOver: (file: string) => boolean;
  readonly progress: (done: number, all: number) => void;
}

/** Makes or takes over every photo. Photos with a problem are left out of the value and named in the problems. */
export async function makePhotos(work: PhotoWork): Promise<Outcome<readonly MadePhoto[]>> {
  const made: MadePhoto[] = [];
  const problems: Problem[] = [];
  const waiting = [...work.assets];
  const worker = async (): Promise<void> => {
    for (let asset = waiting.shift(); asset !== undefined; asset = waiting.shift()) {
      const result = await makeOne(asset, work);
      if ('code' in result) problems.push(result);
      else made.push(result);
      work.progress(made.length + problems.length, work.assets.length);
    }
  };
  await Promise.all([worker(), worker()]);
  return { value: made.sort((a, b) => (a.file < b.file ? -1 : 1)), problems };
}

async function makeOne(asset: Asset, work: PhotoWork): Promise<MadePhoto | Problem> {
  const known = work.known.get(asset.file);
  // Size and time first: hashing every original at every build would cost more than all the rest of an unchanged build.
  if (known?.size === asset.size && known.modified === asset.modified && isThere(known, work)) return known;
  const wrong = checkPhoto(asset);
  if (wrong !== undefined) return wrong;
  const key = photoKey(asset.absolute);
  const stamp = { file: asset.file, size: asset.size, modified: asset.modified, key };
  if (known?.key === key && isThere(known, work)) return { ...known, ...stamp };
  const names = photoNames(asset.file);
  try {
    const small = work.large === true ? undefined : join(work.into, names.small);
    const size = await shrinkPhoto(asset.absolute, join(work.into, names.large), small);
    return { ...stamp, ...names, ...size };
  } catch {
    return brokenPhoto(asset.file);
  }
}

function isThere(known: MadePhoto, work: PhotoWork): boolean {
  return work.takeOver(known.large) && (work.large === true || work.takeOver(known.small));
}

/** Content of the original and the settings of the copies, in one short word. */
function photoKey(path: string): string {
  return createHash('sha256').update(shrinkSettings).update(readFileSync(path)).digest('hex').slice(0, 32);
}

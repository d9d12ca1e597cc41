// Where each picture belongs: under the tag or sheet that was shot last before it on the same day, else under the day’s record.
import type { Job, Machine } from '../../../records/model.ts';
import { codeMeans, type Tagged } from '../../../records/square-codes.ts';
import type { DatedPhoto } from './dated-photos.ts';

export interface FiledPhoto {
  readonly photo: DatedPhoto;
  /** Id of the record it goes into: one that is there, or the day’s own that is to be made. */
  readonly job: string;
  readonly isNew: boolean;
  readonly caption: string;
  /** For the person: `after the tag of bag 3 at 15:30`. */
  readonly why: string;
}

export interface Filed {
  readonly filed: readonly FiledPhoto[];
  /** Pictures that are not this machine’s: after a tag of another one. */
  readonly elsewhere: readonly { readonly photo: DatedPhoto; readonly code: string }[];
}

interface Under {
  readonly photo: DatedPhoto;
  /** Undefined: the code is none of this machine’s. */
  readonly means: Tagged | undefined;
}

/** Files pictures that stand in the order of their time. `chosen` is the record for all that no tag speaks of. */
export function filePhotos(
  photos: readonly DatedPhoto[],
  machine: Machine,
  jobs: readonly Job[],
  chosen?: string,
): Filed {
  const ids = jobs.map((job) => job.id);
  const filed: FiledPhoto[] = [];
  const elsewhere: { photo: DatedPhoto; code: string }[] = [];
  let under: Under | undefined;
  for (const photo of photos) {
    // A tag holds for its evening: what is shot another day was shot of something else.
    if (under !== undefined && under.photo.taken.day !== photo.taken.day) under = undefined;
    if (photo.code !== undefined) under = { photo, means: codeMeans(photo.code, machine, ids) };
    const timed = photo.taken.time !== undefined;
    if (timed && under !== undefined && under.means === undefined)
      elsewhere.push({ photo, code: under.photo.code ?? '' });
    else filed.push(fileOne(photo, timed ? under : undefined, jobs, chosen));
  }
  return { filed, elsewhere };
}

function fileOne(
  photo: DatedPhoto,
  under: Under | undefined,
  jobs: readonly Job[],
  chosen: string | undefined,
): FiledPhoto {
  const { day } = photo.taken;
  const means = under?.means;
  const caption = captionOf(means, photo);
  const at = under?.photo.taken.time === undefined ? '' : ` at ${under.photo.taken.time.slice(0, 5)}`;
  const tag = means === undefined ? '' : `after the code of ${spokenOf(means)}${at}`;
  if (means?.job !== undefined) return { photo, job: means.job, isNew: false, caption, why: tag };
  if (chosen !== undefined) return { photo, job: chosen, isNew: false, caption, why: tag === '' ? 'as you said' : tag };
  const ofDay = jobs.filter((job) => job.date.from <= day && day <= job.date.to && job.date.whole === undefined);
  const [only, second] = ofDay;
  if (only !== undefined && second === undefined)
    return { photo, job: only.id, isNew: false, caption, why: tag === '' ? 'the one record of that day' : tag };
  const why = second === undefined ? 'no record of that day' : 'several records of that day';
  return {
    photo,
    job: `${day}-photos`,
    isNew: !jobs.some((job) => job.id === `${day}-photos`),
    caption,
    why: tag === '' ? why : tag,
  };
}

function spokenOf({ bag, step, job }: Tagged): string {
  const parts = [bag === undefined ? [] : `bag ${bag}`, step === undefined ? [] : `step ${step}`].flat();
  return parts.length > 0 ? parts.join(', ') : (job ?? 'this machine');
}

function captionOf(means: Tagged | undefined, { code }: DatedPhoto): string {
  if (means === undefined) return '';
  const parts = [
    means.bag === undefined ? [] : `Bag ${means.bag}`,
    means.step === undefined ? [] : `step ${means.step}`,
  ].flat();
  if (code !== undefined) return parts.length === 0 ? 'The sheet' : `The tag of ${parts.join(', ').toLowerCase()}`;
  return parts.join(', ');
}

// Photos of a record, each with its caption.
import type { Job, Photo } from '../../records/model.ts';
import type { PhotoBlock } from '../../sheet/sheet.ts';
import { dayText } from '../wording/day.ts';

/** A photo with its caption as the text for who cannot see it. */
export function photoBlock(job: Job, photo: Photo, size: PhotoBlock['size']): PhotoBlock {
  const alt = photo.caption === '' ? job.title : photo.caption;
  return { type: 'photo', file: photo.file, caption: photo.caption, alt, taken: dayText(job.date.from), size };
}

/** All photos of a record; one alone is set large, unless a size is asked for. */
export function jobPhotos(job: Job, asked?: PhotoBlock['size']): readonly PhotoBlock[] {
  const size = asked ?? (job.photos.length === 1 ? 'full' : 'half');
  return job.photos.map((photo) => photoBlock(job, photo, size));
}

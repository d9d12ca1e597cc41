// Every photo of the records, small, in order, with caption, day, record and file: to find the one that shows it.
import type { Block, Inline, PhotoBlock } from '../sheet/sheet.ts';
import type { Job, Photo } from '../records/model.ts';
import { lines, stack } from './wording/blocks.ts';
import { photoBlock } from './job/photos.ts';
import { defineView } from './view.ts';

export const photographs = defineView({
  id: 'photographs',
  purpose: 'All photos, small, with caption, day, record and file name.',
  needs: 'machine',
  options: [],
  blocks: ({ book, say }): readonly Block[] => {
    const all = book.photos.map(({ job, photo }) => withFile(job, photo));
    return all.length === 0 ? stack(lines([say('No photo is named in a record.')])) : all;
  },
});

/** A photo, small, with its record behind its caption. */
export function thumbnail(job: Job, photo: Photo): PhotoBlock {
  return { ...photoBlock(job, photo, 'small'), caption: named(job, photo) };
}

function named(job: Job, photo: Photo): readonly Inline[] {
  const ended = /[.!?]$/u.test(photo.caption) ? ' ' : '. ';
  return [
    ...(photo.caption === '' ? [] : [`${photo.caption}${ended}`]),
    { kind: 'link', text: job.title, to: `job:${job.id}` },
  ];
}

/** On paper the file is named as well: to find it again. */
function withFile(job: Job, photo: Photo): PhotoBlock {
  const name = photo.file.slice(photo.file.lastIndexOf('/') + 1);
  return { ...thumbnail(job, photo), caption: [...named(job, photo), ', ', { kind: 'code', text: name }] };
}

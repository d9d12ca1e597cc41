// The machine as it looks: the newest photo of a ride, else of the intake, that is not private.
import type { Job, JobKind, Photo } from '../records/model.ts';
import { photoBlock } from './job/photos.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** Records whose photos show the whole machine, best first. */
const showing: readonly (readonly JobKind[])[] = [
  ['ride', 'running-in', 'road test', 'handover'],
  ['intake', 'buying'],
];

export const portrait = defineView({
  id: 'portrait',
  purpose: 'One photo of the whole machine, where a record of a ride or of the intake has one.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const found = portraitOf(context);
    return found === undefined ? [] : [photoBlock(found.job, found.photo, 'half')];
  },
});

function portraitOf({ book }: ViewContext): { readonly job: Job; readonly photo: Photo } | undefined {
  const open = book.photos.filter(({ photo }) => !photo.private);
  for (const kinds of showing) {
    const those = open.filter(({ job }) => kinds.includes(job.kind));
    const newest = those.reduce<(typeof those)[number] | undefined>(
      (best, one) => (best === undefined || one.job.date.from > best.job.date.from ? one : best),
      undefined,
    );
    if (newest !== undefined) return newest;
  }
  return undefined;
}

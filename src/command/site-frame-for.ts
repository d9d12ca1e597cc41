// The frame of one binder's site: whose it is, and the photos that were made for it.
import type { Binder } from '../build.ts';
import type { MadePhoto } from '../photos/photo-work.ts';
import { frameOfNames, type SiteFrame } from '../render/site-frame.ts';

/** Makes the frame. `live` is the address of the reloading script, for the local server only; without `prints` nothing leads to a PDF. */
export function frameFor(
  binder: Binder,
  photos: ReadonlyMap<string, MadePhoto>,
  live?: string,
  prints = true,
): SiteFrame {
  const { book } = binder;
  return frameOfNames(binder.site, {
    machine: book.records.machine.name,
    frame: binder.frame,
    language: book.records.machine.spelling === 'us' ? 'en-US' : 'en-GB',
    recordsDate: binder.recordsDate,
    recordsVersion: book.recordsVersion,
    photoOf: (file) => photos.get(file),
    prints,
    printed: new Set(prints ? binder.sheets.map(({ id }) => id) : []),
    ...(live === undefined ? {} : { live }),
  });
}

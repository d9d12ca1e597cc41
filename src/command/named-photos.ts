// Which pictures of a machine folder go into the binder: those that a record names, and no others.
import type { Binder } from '../build.ts';
import type { Asset } from '../disk.ts';

/** The assets that the records name, as a photo, beside a number, or in the words of a body. */
export function namedPhotos(binder: Binder, assets: readonly Asset[]): readonly Asset[] {
  const { machine, jobs, story } = binder.book.records;
  const named = new Set(binder.book.photos.map(({ photo }) => photo.file));
  for (const number of machine.numbers) if (number.photo !== undefined) named.add(number.photo);
  const words = [...jobs.map((job) => job.body), story?.body ?? ''].filter((body) => body.includes('!['));
  return assets.filter((asset) => named.has(asset.file) || words.some((body) => isNamedIn(body, asset.file)));
}

/** A name in Markdown may be written as it is, or with its spaces and letters as codes. */
function isNamedIn(body: string, file: string): boolean {
  return body.includes(file) || body.includes(encodeURI(file));
}

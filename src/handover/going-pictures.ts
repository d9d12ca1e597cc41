// Which pictures go with a buyer's copy, and which parts of them are covered.
import type { CoveredArea } from '../records/model.ts';
import type { Asset, SourceFile } from '../source/files.ts';
import type { BuyersCopy, OwnersFolder } from './buyers-copy.ts';
import { leftOutMark } from './private-value.ts';

/** Pictures that the copied records name. A paper goes only where a record says so; a link never goes. */
export function goingPictures(
  { assets, records }: OwnersFolder,
  files: readonly SourceFile[],
  closed: ReadonlySet<string>,
): BuyersCopy['pictures'] {
  const texts = files.map(({ text }) => text.normalize('NFC'));
  const named = (file: string): boolean => texts.some((text) => text.includes(file) || text.includes(encodeURI(file)));
  const saidToGo = new Set(records.jobs.flatMap((job) => job.photos.map((photo) => photo.file)));
  return assets
    .filter(({ file, link }) => link !== true && !closed.has(file) && named(file))
    .filter(({ file }) => !file.startsWith('documents/') || saidToGo.has(file))
    .map((asset) => ({ asset, cover: coverOf(asset, records.jobs) }));
}

/** What any record covers of a picture is covered. */
function coverOf({ file }: Asset, jobs: OwnersFolder['records']['jobs']): readonly CoveredArea[] {
  return jobs.flatMap((job) => job.photos.filter((photo) => photo.file === file).flatMap(({ cover = [] }) => cover));
}

/** Running words without the pictures that do not go: `![caption](photos/x.jpg)` gives way as a whole. */
export function withoutClosedPictures(text: string, closed: ReadonlySet<string>): string {
  return text.replaceAll(/!\[[^\]]*\]\(\s*<?([^)>]+?)>?(?:\s+["'(][^)]*)?\)/gu, (whole, path: string) => {
    const file = decoded(path.trim())
      .replace(/^(?:\.\/)+/u, '')
      .normalize('NFC');
    return closed.has(file) || file.startsWith('documents/') ? leftOutMark : whole;
  });
}

function decoded(path: string): string {
  try {
    return decodeURI(path);
  } catch {
    return path;
  }
}

// Records that say no day: the day on which the first picture they name was taken.
import { pictureDay } from '../photos/photo-time.ts';
import type { Asset, SourceFile } from '../source/files.ts';

/** The front matter of a job file. */
const front = /^\uFEFF?---\r?\n(?<data>[\s\S]*?)\r?\n---/u;
const saysADay = /^date[ \t]*:/mu;
/** A record that names more pictures than these has its day from the first of them. */
const mostLookedAt = 200;

/** The same files; job records without `date:` carry the day of their earliest picture, where a camera or a name says one. */
export function withPicturedDays(files: readonly SourceFile[], assets: readonly Asset[]): readonly SourceFile[] {
  return files.map((source) => {
    if (!/^jobs\/.+\.md$/u.test(source.file)) return source;
    // Most records say their day: one look at the text is enough for them.
    if (source.text.includes('\ndate:')) return source;
    const data = front.exec(source.text)?.groups?.['data'];
    if (data === undefined || saysADay.test(data)) return source;
    const named = assets.filter(({ file, link }) => link !== true && data.includes(file)).slice(0, mostLookedAt);
    const days = named.flatMap((asset) => dayOf(asset) ?? []).toSorted();
    const [pictured] = days;
    return pictured === undefined ? source : { ...source, pictured };
  });
}

/** A picture that cannot be opened says nothing of its day; what is wrong with it is told elsewhere. */
function dayOf({ absolute, file }: Asset): string | undefined {
  try {
    return pictureDay(absolute, file.slice(file.lastIndexOf('/') + 1));
  } catch {
    return undefined;
  }
}

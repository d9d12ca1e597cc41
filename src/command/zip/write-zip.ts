// A folder as a ZIP, the same bytes whenever and wherever it is made: files in one order, one time, one mode.
import { createWriteStream } from 'node:fs';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { ZipFile } from 'yazl';

/** Kinds that packing makes no smaller. */
const packedAlready = /\.(?:jpe?g|png|webp|woff2|zip)$/iu;

/**
 * Writes `files` (paths below `folder`) under `name/` into a new ZIP at `path`. `day` is the time of every entry, at noon: a ZIP keeps
 * local time without saying whose, so the fields are given as they shall stand.
 */
export async function writeZip(
  path: string,
  { folder, files, name, day }: { folder: string; files: readonly string[]; name: string; day: string },
): Promise<void> {
  const [year = 1980, month = 1, date = 1] = day.split('-').map(Number);
  const mtime = new Date(Math.max(year, 1980), month - 1, date, 12);
  const zip = new ZipFile();
  for (const file of files.toSorted((a, b) => (a < b ? -1 : 1))) {
    const options = { mtime, mode: 0o100644, forceDosTimestamp: true, compress: !packedAlready.test(file) };
    zip.addFile(join(folder, file), `${name}/${file}`, options);
  }
  zip.end();
  await pipeline(zip.outputStream, createWriteStream(path, { flags: 'wx' }));
}

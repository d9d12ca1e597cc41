// A ZIP looked over before a byte of it is unpacked: paths that climb, links, doubled names and absurd sizes are named and nothing is written.
import { crc32 } from 'node:zlib';
import { openPromise, type Entry, type ZipFile } from 'yauzl';
import { doubledPaths, wrongPath } from '../../handover/package-paths.ts';

/** A file of a ZIP. Its bytes come only when they are asked for, and never more than its size. */
export interface ZipFileEntry {
  readonly path: string;
  /** Bytes when unpacked. */
  readonly size: number;
  /** Rejects when the packed bytes are not what the ZIP says of them. */
  readonly bytes: () => Promise<Buffer>;
}

export interface OpenZip {
  readonly files: readonly ZipFileEntry[];
  readonly close: () => void;
}

/** `wrong`: sentences, one for each thing that keeps the ZIP from being unpacked. */
export type ReadZip = OpenZip | { readonly wrong: readonly string[] };

export interface Limits {
  readonly files: number;
  readonly file: number;
  readonly all: number;
  /** Unpacked against packed; what deflate can reach at most is about 1032. */
  readonly ratio: number;
}

/** More than a workshop of photographs gives; beyond it a small ZIP can fill a disk. */
export const zipLimits: Limits = { files: 50_000, file: 512 * 1024 * 1024, all: 4 * 1024 * 1024 * 1024, ratio: 1100 };

/** Opens a ZIP and looks over all its names and sizes. Close it when done. */
export async function readZip(path: string, limits: Limits = zipLimits): Promise<ReadZip> {
  let zip: ZipFile;
  try {
    zip = await openPromise(path, { autoClose: false });
  } catch {
    return { wrong: ['This is no ZIP, or its end is missing.'] };
  }
  const looked = await lookOver(zip, limits);
  if ('wrong' in looked) zip.close();
  return looked;
}

async function lookOver(zip: ZipFile, limits: Limits): Promise<ReadZip> {
  if (zip.entryCount > limits.files) return { wrong: [`It holds ${String(zip.entryCount)} files: too many.`] };
  const entries: Entry[] = [];
  try {
    for await (const entry of zip.eachEntry()) entries.push(entry);
  } catch (cause) {
    return { wrong: [brokenOff(cause)] };
  }
  const files = entries.filter((entry) => !entry.fileName.endsWith('/'));
  const doubled = doubledPaths(files.map(({ fileName }) => fileName));
  const all = files.reduce((sum, { uncompressedSize }) => sum + uncompressedSize, 0);
  const wrong = [
    ...entries.flatMap((entry) => wrongEntry(entry, limits)),
    ...doubled.map((name) => `“${name}” is in it twice, as some disks see it.`),
    ...(all > limits.all ? [`Unpacked it would be ${String(all)} bytes: too many.`] : []),
  ];
  if (wrong.length > 0) return { wrong };
  return {
    files: files.map((entry) => ({
      path: entry.fileName,
      size: entry.uncompressedSize,
      bytes: async () => unpacked(zip, entry),
    })),
    close: () => zip.close(),
  };
}

/** The reader stops at the first name that climbs; which one stands in its words. */
function brokenOff(cause: unknown): string {
  const words = cause instanceof Error ? cause.message : '';
  const name = /^(?:invalid characters in fileName|absolute path|invalid relative path): (.*)$/su.exec(words)?.[1];
  return name === undefined ? 'Its list of files is broken.' : `“${name}” is not a path below the package.`;
}

const linkKind = 0o120000;
const fileKinds = new Set([0, 0o100000, 0o040000]);

function wrongEntry(entry: Entry, limits: Limits): readonly string[] {
  const name = `“${entry.fileName}”`;
  const path = wrongPath(entry.fileName.replace(/\/$/u, ''));
  // Upper half of the attributes: what the file was on the system that packed it.
  const kind = (entry.externalFileAttributes >>> 16) & 0o170000;
  if (path !== undefined) return [`${name} ${path}.`];
  if (kind === linkKind) return [`${name} is a link; links are not followed.`];
  if (!fileKinds.has(kind)) return [`${name} is neither a file nor a folder.`];
  if (entry.isEncrypted()) return [`${name} is locked with a password.`];
  if (!entry.canDecodeFileData()) return [`${name} is packed in a way that is not read here.`];
  if (entry.uncompressedSize > limits.file)
    return [`${name} would be ${String(entry.uncompressedSize)} bytes: too many.`];
  if (entry.uncompressedSize > Math.max(entry.compressedSize, 1) * limits.ratio)
    return [`${name} would unpack to ${String(entry.uncompressedSize)} bytes from ${String(entry.compressedSize)}.`];
  return [];
}

async function unpacked(zip: ZipFile, entry: Entry): Promise<Buffer> {
  const stream = await zip.openReadStreamPromise(entry);
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of stream) {
    if (!Buffer.isBuffer(part)) continue;
    size += part.length;
    // The stream counts as well; here so that memory is bounded whatever it does.
    if (size > entry.uncompressedSize) throw new Error('larger than its entry says');
    parts.push(part);
  }
  const bytes = Buffer.concat(parts);
  // The reader does not compare the sum that the ZIP keeps of each file.
  if (crc32(bytes) !== entry.crc32) throw new Error('other bytes than its entry says');
  return bytes;
}

// When a picture was taken: as the camera wrote it (EXIF), else as its name says; never the time of the file, which a copy changes.
import { closeSync, openSync, readSync } from 'node:fs';
import { decoder } from './picture-decoder.ts';
import { mostPixels } from './check-photo.ts';
import { pictureHead } from './picture-head.ts';

export interface PhotoTime {
  /** `2024-05-04`. */
  readonly day: string;
  /** `15:30:12`, where it is known. */
  readonly time?: string;
  readonly from: 'camera' | 'name';
}

/** Undefined when neither camera nor name says a day. */
export async function photoTime(path: string, name: string): Promise<PhotoTime | undefined> {
  const written = await exifOf(path);
  return (written && exifTime(written)) ?? nameTime(name);
}

/**
 * The day alone, without opening the picture: by the camera's own block in the head of a JPEG or HEIC file, else by the name. For a
 * record that says no day itself.
 */
export function pictureDay(path: string, name: string): string | undefined {
  const exif = isPicture(path) ? exifInHead(path) : undefined;
  return ((exif && exifTime(exif)) ?? nameTime(name))?.day;
}

function isPicture(path: string): boolean {
  const kind = pictureHead(path)?.kind;
  return kind === 'JPEG' || kind === 'HEIC';
}

/** So far into a HEIC file its EXIF is looked for. */
const headBytes = 1_000_000;

async function exifOf(path: string): Promise<Buffer | undefined> {
  if (pictureHead(path)?.kind === 'HEIC') return exifInHead(path);
  const sharp = await decoder();
  try {
    const { exif } = await sharp(path, { limitInputPixels: mostPixels }).metadata();
    return exif;
  } catch {
    return undefined;
  }
}

/** In HEIC the block lies somewhere in the file under its own mark, in JPEG near the beginning under the same. */
function exifInHead(path: string): Buffer | undefined {
  const file = openSync(path, 'r');
  try {
    const buffer = Buffer.alloc(headBytes);
    const head = buffer.subarray(0, readSync(file, buffer, 0, headBytes, 0));
    const at = head.indexOf('Exif\0\0', 0, 'latin1');
    return at < 0 ? undefined : head.subarray(at);
  } finally {
    closeSync(file);
  }
}

const exifPart = 0x8769;
/** When the picture was taken; when it was made digital. Not when it was last changed. */
const taken = [0x9003, 0x9004] as const;

/** The time in an EXIF block (CIPA DC-008, a TIFF structure); undefined when there is none, or it is no date. */
export function exifTime(exif: Buffer): PhotoTime | undefined {
  const tiff = exif.toString('latin1', 0, 6) === 'Exif\0\0' ? exif.subarray(6) : exif;
  const order = tiff.toString('latin1', 0, 2);
  if (tiff.length < 8 || (order !== 'II' && order !== 'MM')) return undefined;
  const little = order === 'II';
  const inside = entry(tiff, number(tiff, 4, 4, little), exifPart, little);
  const part = inside === undefined ? undefined : number(tiff, inside + 8, 4, little);
  for (const tag of part === undefined ? [] : taken) {
    const at = entry(tiff, part ?? 0, tag, little);
    const text = at === undefined ? '' : textAt(tiff, number(tiff, at + 8, 4, little));
    const found = /^(\d{4}):(\d{2}):(\d{2}) (\d{2}:\d{2}:\d{2})/u.exec(text);
    if (found === null) continue;
    const day = [found[1], found[2], found[3]].join('-');
    if (isDay(day)) return { day, time: found[4] ?? '', from: 'camera' };
  }
  return undefined;
}

function number(bytes: Buffer, at: number, length: 2 | 4, little: boolean): number {
  if (at < 0 || at + length > bytes.length) return 0;
  return little ? bytes.readUIntLE(at, length) : bytes.readUIntBE(at, length);
}

/** Offset of the entry with a tag in the directory at an offset. */
function entry(bytes: Buffer, directory: number, tag: number, little: boolean): number | undefined {
  if (directory < 8) return undefined;
  const many = Math.min(number(bytes, directory, 2, little), 500);
  for (let index = 0; index < many; index += 1) {
    const at = directory + 2 + 12 * index;
    if (number(bytes, at, 2, little) === tag) return at;
  }
  return undefined;
}

function textAt(bytes: Buffer, at: number): string {
  return bytes.toString('latin1', at, Math.min(at + 20, bytes.length));
}

/** `IMG_20240504_153012.jpg`, `2024-05-04 15.30.12.jpg`, `20240504-head-off.png`. */
export function nameTime(name: string): PhotoTime | undefined {
  const found =
    /(?<!\d)(?<year>(?:19|20)\d{2})(?<part>[-_.]?)(?<month>\d{2})\k<part>(?<day>\d{2})(?:[-_ T.]+(?:at )?(?<hour>[01]\d|2[0-3])[-_.:h]?(?<minute>[0-5]\d)[-_.:m]?(?<second>[0-5]\d)|(?!\d))/u.exec(
      name,
    )?.groups;
  if (found === undefined) return undefined;
  const day = [found['year'], found['month'], found['day']].join('-');
  const time = [found['hour'], found['minute'], found['second']].join(':');
  if (!isDay(day)) return undefined;
  return found['hour'] === undefined ? { day, from: 'name' } : { day, time, from: 'name' };
}

function isDay(text: string): boolean {
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
}

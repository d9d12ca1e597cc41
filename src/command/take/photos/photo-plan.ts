// What taking a folder of photos will do: the copies, the lines added to records, the records that are made for a day.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { editRecord } from '../../../entry/edit-record.ts';
import { flowText } from '../../../entry/flow-text.ts';
import type { Outcome } from '../../../problem/problem.ts';
import type { Asset, SourceFile } from '../../../source/files.ts';
import type { DatedPhoto } from './dated-photos.ts';
import type { FiledPhoto } from './file-photos.ts';

export interface PlacedPhoto extends FiledPhoto {
  /** Path in the machine folder: `photos/2024-05-04/head-off.jpg`. */
  readonly file: string;
  /** The picture lies there already and no record names it, as after a taking that broke off: it is only noted. */
  readonly isThere: boolean;
}

/** Pictures that are in the machine folder already, byte for byte, whatever they are called: the path of each by its name. */
export function alreadyHere(photos: readonly DatedPhoto[], assets: readonly Asset[]): ReadonlyMap<string, string> {
  const bySize = new Map<number, Asset[]>();
  for (const asset of assets) bySize.set(asset.size, [...(bySize.get(asset.size) ?? []), asset]);
  return new Map(
    photos.flatMap((photo) => {
      const alike = bySize.get(photo.size) ?? [];
      const same = alike.find((asset) => hashOf(asset.absolute) === hashOf(photo.absolute));
      return same === undefined ? [] : [[photo.name, same.file] as const];
    }),
  );
}

/** The names of those that some file of the machine speaks of; one with a slip in it counts too. */
export function notedHere(here: ReadonlyMap<string, string>, files: readonly SourceFile[]): ReadonlySet<string> {
  const isNoted = (path: string): boolean => files.some(({ text }) => text.includes(path));
  return new Set([...here].flatMap(([name, path]) => (isNoted(path) ? [name] : [])));
}

function hashOf(path: string): string {
  return createHash('sha256').update(readFileSync(path)).digest('hex');
}

/** Gives each picture its place, none the place of another; one that is there already stays. */
export function placePhotos(
  filed: readonly FiledPhoto[],
  assets: readonly Asset[],
  here: ReadonlyMap<string, string>,
): readonly PlacedPhoto[] {
  const used = new Set(assets.map((asset) => asset.file.toLowerCase()));
  return filed.map((one) => {
    const there = here.get(one.photo.name);
    if (there !== undefined) return { ...one, file: there, isThere: true };
    const file = freeName(`photos/${one.photo.taken.day}`, one.photo.name, used);
    used.add(file.toLowerCase());
    return { ...one, file, isThere: false };
  });
}

function freeName(folder: string, name: string, used: ReadonlySet<string>): string {
  const clean = name.normalize('NFC').replaceAll(/[\p{Cc}\\:*?"<>|#%]/gu, '-');
  const point = clean.lastIndexOf('.');
  for (let number = 1; ; number += 1) {
    const tried = number === 1 ? clean : `${clean.slice(0, point)}-${String(number)}${clean.slice(point)}`;
    const file = `${folder}/${tried}`;
    if (!used.has(file.toLowerCase())) return file;
  }
}

/** The records with the pictures added, and those that are made; only what changes. */
export function recordsWith(
  placed: readonly PlacedPhoto[],
  files: readonly SourceFile[],
  kind: string,
): Outcome<readonly SourceFile[]> {
  const byJob = grouped(placed);
  const made = [...byJob].map(([job, photos]): Outcome<SourceFile> => {
    const file = `jobs/${job}.md`;
    const record = files.find((one) => one.file === file);
    if (record === undefined) return { value: { file, text: dayText(photos, kind) }, problems: [] };
    const edits = photos.map((one) => ({ kind: 'add', path: [], key: 'photos', item: lineOf(one) }) as const);
    const { value, problems } = editRecord(record, edits);
    return { value: { file, text: value }, problems };
  });
  return { value: made.map((one) => one.value), problems: made.flatMap((one) => one.problems) };
}

function grouped(placed: readonly PlacedPhoto[]): ReadonlyMap<string, readonly PlacedPhoto[]> {
  const byJob = new Map<string, PlacedPhoto[]>();
  for (const one of placed) byJob.set(one.job, [...(byJob.get(one.job) ?? []), one]);
  return byJob;
}

function lineOf({ file, caption }: PlacedPhoto): Readonly<Record<string, string>> {
  return caption === '' ? { file } : { file, caption };
}

function dayText(photos: readonly PlacedPhoto[], kind: string): string {
  const day = photos[0]?.photo.taken.day ?? '';
  const lines = photos.map((one) => `  - ${flowText(lineOf(one))}`);
  return [
    '---',
    `title: Photos of ${day}`,
    `date: ${day}`,
    `kind: ${kind}`,
    'state: done',
    'photos:',
    ...lines,
    '---',
    '',
  ].join('\n');
}

// The manifest of an output folder: the mark that the folder is ours, and what it was made from, so that nothing is made twice.
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { MadePhoto } from '../photos/photo-work.ts';

/** Name of the file in every output folder. Its presence is the mark that the folder may be replaced. */
export const manifestFile = '.splitpin.json';

export interface InputMark {
  readonly file: string;
  readonly size: number;
  readonly modified: number;
  /** Hash of the text; empty for photos and papers, which carry their own key. */
  readonly hash: string;
}

export interface PrintMark {
  readonly file: string;
  readonly key: string;
  readonly pages: number;
}

export interface Manifest {
  readonly splitpin: 1;
  /** Hash of the program with its content and templates. */
  readonly program: string;
  /** Everything that was chosen for this build: day, paper, what is printed. */
  readonly options: string;
  readonly inputs: readonly InputMark[];
  readonly photos: readonly MadePhoto[];
  readonly prints: readonly PrintMark[];
  /** Every file of the folder but this one, with the hash of its text (empty for PDFs and photos). */
  readonly outputs: Readonly<Record<string, string>>;
  /** What the build said at its end, to be said again when nothing has changed. */
  readonly said: readonly string[];
}

/** A manifest and the time it was written: no file of its folder may be younger. */
export interface LastBuild {
  readonly folder: string;
  readonly manifest: Manifest;
  readonly written: number;
}

/** The last build in a folder; undefined when there is none, or when it was made by another version of this format. */
export function readLastBuild(folder: string): LastBuild | undefined {
  const path = join(folder, manifestFile);
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat?.isFile() !== true) return undefined;
  const manifest = parse(readFileSync(path, 'utf8'));
  return manifest === undefined ? undefined : { folder, manifest, written: stat.mtimeMs };
}

/** Writes the manifest: the last file of a build. */
export function writeManifest(folder: string, manifest: Manifest): void {
  writeFileSync(join(folder, manifestFile), JSON.stringify(manifest));
}

/** True for a folder that carries our mark, finished or not. */
export function isOurs(folder: string): boolean {
  return statSync(join(folder, manifestFile), { throwIfNoEntry: false })?.isFile() === true;
}

function parse(text: string): Manifest | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return isManifest(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Only we write this file; a folder whose manifest is not whole is ours all the same, but nothing is taken over from it. */
function isManifest(value: unknown): value is Manifest {
  if (typeof value !== 'object' || value === null) return false;
  const keys = ['program', 'options', 'inputs', 'photos', 'prints', 'outputs', 'said'];
  return 'splitpin' in value && value.splitpin === 1 && keys.every((key) => key in value);
}

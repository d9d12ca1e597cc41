// Folders whose pages all came out as they were: moved in one go when the new build takes the place of the old, and moved back where that was cut short.
import { existsSync, mkdirSync, readdirSync, renameSync } from 'node:fs';
import { dirname } from 'node:path';
import { readLastBuild } from './manifest.ts';

/** The folder of a file below the output folder; empty at the top. */
export function folderOf(file: string): string {
  return file.slice(0, Math.max(0, file.lastIndexOf('/')));
}

/** The files by their folders. */
export function byFolder(files: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const file of files) {
    const folder = folderOf(file);
    const list = found.get(folder);
    if (list === undefined) found.set(folder, [file]);
    else list.push(file);
  }
  return found;
}

/**
 * Whether a folder of the old build can be moved as it is: it holds these files and nothing else, neither what somebody put there
 * nor a page that is no more, and the new build has nothing in its place.
 */
export function isWhole(folder: string, files: readonly string[], from: string, to: string): boolean {
  if (folder === '' || existsSync(`${to}/${folder}`)) return false;
  const names = new Set(files.map((file) => file.slice(folder.length + 1)));
  const inside = readdirSync(`${from}/${folder}`);
  return inside.length === names.size && inside.every((name) => names.has(name));
}

/** Moves folders from one build to the other. */
export function moveFolders(folders: readonly string[], from: string, to: string): void {
  for (const folder of folders) {
    mkdirSync(dirname(`${to}/${folder}`), { recursive: true });
    renameSync(`${from}/${folder}`, `${to}/${folder}`);
  }
}

/** Moves back what the old build lacks by its own manifest and the new one has, so that the old one is whole again. */
export function giveBack(old: string, from: string): void {
  const files = Object.keys(readLastBuild(old)?.manifest.outputs ?? {});
  const lost = [...byFolder(files).keys()].filter(
    (folder) => !existsSync(`${old}/${folder}`) && existsSync(`${from}/${folder}`),
  );
  moveFolders(lost, from, old);
}

// Notices changes in a machine folder, whichever way an editor saves: each folder is watched, and the watch follows new folders.
import { statSync, watch, type FSWatcher } from 'node:fs';
import { join } from 'node:path';

export interface Watch {
  /** Brings the watch up to date with the folders there are now. */
  readonly follow: (folders: readonly string[]) => void;
  readonly close: () => void;
}

/** An editor's save is several events within a few milliseconds; this long after the first of them, they are one. */
const together = 4;

/**
 * Calls `changed` after changes in any of the folders that it is told to follow: with the absolute paths of the files that were
 * written to, or with nothing when a file came, went or was put in another's place.
 */
export function watchFolders(changed: (touched: readonly string[] | undefined) => void): Watch {
  const watchers = new Map<string, FSWatcher>();
  let waiting: NodeJS.Timeout | undefined;
  let touched: Set<string> | undefined = new Set();
  const soon = (folder: string, event: string, name: string | null): void => {
    if (event === 'change' && name !== null) touched?.add(join(folder, name));
    else touched = undefined;
    waiting ??= setTimeout(settle, together, 0);
  };
  const settle = (turn: number): void => {
    // An editor that is in the middle of writing has emptied the file first.
    if (turn < 5 && [...(touched ?? [])].some(isEmpty)) {
      waiting = setTimeout(settle, 5 * together, turn + 1);
      return;
    }
    const files = touched === undefined ? undefined : [...touched];
    waiting = undefined;
    touched = new Set();
    changed(files);
  };
  const drop = (folder: string): void => {
    watchers.get(folder)?.close();
    watchers.delete(folder);
  };
  const add = (folder: string): void => {
    const watcher = watch(folder, { persistent: true }, (event, name) => soon(folder, event, name));
    // A folder that goes away ends its own watch; the one above it tells of the change.
    watcher.on('error', () => drop(folder));
    watchers.set(folder, watcher);
  };
  return {
    follow: (folders) => {
      for (const folder of watchers.keys()) if (!folders.includes(folder)) drop(folder);
      for (const folder of folders) if (!watchers.has(folder)) add(folder);
    },
    close: () => {
      clearTimeout(waiting);
      for (const folder of watchers.keys()) drop(folder);
    },
  };
}

function isEmpty(file: string): boolean {
  return statSync(file, { throwIfNoEntry: false })?.size === 0;
}

// Relative addresses: every link leads to a file, from a folder, a stick or a server alike.

/**
 * The relative address of `target` seen from the page `from`; both are files below the output folder, with forward
 * slashes. A fragment stays; every other character that means something in an address is escaped.
 */
export function relativeHref(from: string, target: string): string {
  const hash = target.indexOf('#');
  const file = hash < 0 ? target : target.slice(0, hash);
  const fragment = hash < 0 ? '' : `#${encodeURIComponent(target.slice(hash + 1))}`;
  if (file === '' || (file === from && fragment !== '')) return fragment;
  // Nearly all lead to a file beside the page or below it.
  const folder = folderOf(from);
  if (file.startsWith(folder)) return inAddress(file.slice(folder.length)) + fragment;
  const start = from.split('/').slice(0, -1);
  const end = file.split('/');
  const shared = sharedFolders(start, end);
  const up = '../'.repeat(start.length - shared);
  return up + inAddress(end.slice(shared).join('/')) + fragment;
}

/** The folder a file lies in, with the slash at its end; nothing at the top. */
export function folderOf(file: string): string {
  return file.slice(0, file.lastIndexOf('/') + 1);
}

/** Each name on the way as it stands in an address; our own names are plain. */
function inAddress(path: string): string {
  return /^[\w./-]*$/.test(path) ? path : path.split('/').map(encodeURIComponent).join('/');
}

function sharedFolders(start: readonly string[], end: readonly string[]): number {
  let shared = 0;
  while (shared < start.length && shared < end.length - 1 && start[shared] === end[shared]) shared += 1;
  return shared;
}

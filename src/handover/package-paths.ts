// Which paths may stand in a package: below its folder, holdable on every system, and no two that some disk takes for one.

/** Longest path; more does not unpack everywhere. */
const longest = 240;

/** Names that some systems keep for devices, with or without an ending. */
const devices = /^(?:con|prn|aux|nul|com\d|lpt\d)(?:\..*)?$/iu;

/** What is wrong with a path inside a package, in words that follow its name; undefined when nothing is. */
export function wrongPath(path: string): string | undefined {
  if (path === '' || path.startsWith('/') || /^[a-z]:/iu.test(path)) return 'is not a path below the package';
  if (path.includes('\\')) return 'has a backslash in it';
  const parts = path.split('/');
  if (parts.includes('..')) return 'climbs out of the package';
  if (parts.some((part) => part === '' || part === '.')) return 'has an empty step in it';
  if (hasControl(path)) return 'has control characters in it';
  if (path.length > longest) return `is longer than ${String(longest)} characters`;
  if (parts.some((part) => /[<>:"|?*]|[ .]$/u.test(part) || devices.test(part)))
    return 'has a name in it that not every system can hold';
  return undefined;
}

function hasControl(text: string): boolean {
  return Array.from(text).some((letter) => letter < ' ' || letter === '\u007f');
}

/** A path as the least careful disk sees it: small letters, composed. */
export function asAnyDiskSeesIt(path: string): string {
  return path.normalize('NFC').toLowerCase().normalize('NFC');
}

/** Pairs of paths that some disk takes for one; the later of each pair. */
export function doubledPaths(paths: readonly string[]): readonly string[] {
  const met = new Set<string>();
  return paths.filter((path) => {
    const seen = asAnyDiskSeesIt(path);
    if (met.has(seen)) return true;
    met.add(seen);
    return false;
  });
}

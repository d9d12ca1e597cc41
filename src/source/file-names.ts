// Names of files that hold on every system: what one system allows and another refuses, cuts off or takes for the same.

/** Most bytes of one name: Linux counts bytes of UTF-8, others count less strictly. */
const mostBytes = 255;

/** Most characters of a path below the machine folder: some systems stop at 260 for the whole way, and the folder itself lies somewhere. Judgement. */
const mostOfPath = 180;

/**
 * Names of devices in Windows, with any ending (Microsoft, Windows App Development, “Naming Files, Paths, and Namespaces”). Digits
 * written high are taken for digits there.
 */
const device = /^(?:con|prn|aux|nul|conin\$|conout\$|(?:com|lpt)[0-9¹²³])(?:\..*)?$/iu;

// Control characters belong to what is refused: they are what is looked for here.
// oxlint-disable-next-line no-control-regex
const refused = /[<>:"|?*\\/\u0000-\u001f\u007f]/u;

/** Why a name cannot be kept on every system, as a part of a sentence; undefined where it can. */
export function nameFault(name: string): string | undefined {
  if (name === '' || name === '.' || name === '..') return 'it is no name of its own';
  const character = refused.exec(name)?.[0];
  if (character !== undefined) return `it has ${shown(character)} in it`;
  if (/[. ]$/u.test(name)) return 'it ends with a space or a dot';
  if (name.startsWith(' ')) return 'it begins with a space';
  if (device.test(name)) return `“${name.split('.')[0] ?? name}” is the name of a device there`;
  if (/\p{Cs}|\uFFFD/u.test(name)) return 'it has a character that cannot be read';
  const bytes = new TextEncoder().encode(name).length;
  if (bytes > mostBytes) return `it is ${String(bytes)} bytes long, and ${String(mostBytes)} are allowed`;
  return undefined;
}

/** The same of a whole path below a machine folder, with forward slashes. */
export function pathFault(path: string): string | undefined {
  for (const name of path.split('/')) {
    const fault = nameFault(name);
    if (fault !== undefined) return fault;
  }
  const long = path.length > mostOfPath;
  return long
    ? `its way is ${String(path.length)} characters long, and no more than ${String(mostOfPath)} always fit`
    : undefined;
}

/** Two paths with one key are one file on a system that does not tell letter case, or the two ways to write an accent, apart. */
export function nameKey(path: string): string {
  return path.normalize('NFD').toLowerCase().normalize('NFC').replaceAll('ς', 'σ');
}

function shown(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x21 || code === 0x7f ? `a control character (${String(code)})` : `the character ${character}`;
}

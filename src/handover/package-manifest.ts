// Manifests of RFC 8493 as text: a hash and a path a line, in the order of the paths, so that sha256sum reads them too.

export interface ManifestLine {
  /** Hexadecimal, in small letters. */
  readonly hash: string;
  readonly path: string;
}

/** The text of a manifest. Line ends and the percent sign in a path are written as codes, as the RFC asks. */
export function manifestText(lines: readonly ManifestLine[]): string {
  const sorted = lines.toSorted((a, b) => (a.path < b.path ? -1 : 1));
  return sorted.map(({ hash, path }) => `${hash}  ${coded(path)}\n`).join('');
}

/** The lines of a manifest; `wrong` are the numbers of lines that are none, from 1. */
export function readManifest(text: string): {
  readonly lines: readonly ManifestLine[];
  readonly wrong: readonly number[];
} {
  const lines: ManifestLine[] = [];
  const wrong: number[] = [];
  for (const [index, line] of text.split(/\r\n|\r|\n/u).entries()) {
    if (line.trim() === '') continue;
    // sha256sum puts a star before the path of a file that it read as bytes.
    const match = /^([0-9a-f]{64})[ \t]+\*?(?:\.\/)?(.+)$/iu.exec(line);
    if (match === null) wrong.push(index + 1);
    else lines.push({ hash: (match[1] ?? '').toLowerCase(), path: decoded(match[2] ?? '') });
  }
  return { lines, wrong };
}

const codes: Readonly<Record<string, string>> = { '%': '%25', '\r': '%0D', '\n': '%0A' };

function coded(path: string): string {
  return path.replaceAll(/[%\r\n]/gu, (letter) => codes[letter] ?? letter);
}

function decoded(path: string): string {
  return path.replaceAll(/%(25|0D|0A)/giu, (_all, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

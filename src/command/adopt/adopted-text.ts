// adopted.yaml: the mark of a machine that came with a package, and the list of the records that stay as they came.
import { scalarText } from '../../entry/flow-text.ts';
import type { Adopted } from '../../records/model.ts';
import type { SourceFile } from '../../source/files.ts';
import { sha256 } from '../../source/sha256.ts';

export interface Taken {
  readonly date: string;
  readonly fingerprint: string | undefined;
  /** Records that are history. */
  readonly fixed: readonly SourceFile[];
  /** Photos with their SHA-256. */
  readonly photos: readonly { readonly file: string; readonly hash: string }[];
  /** What the former owner had written so, when the machine came to them the same way. */
  readonly earlier: Adopted | undefined;
}

/** The file. */
export function adoptedText({ date, fingerprint, fixed, photos, earlier }: Taken): string {
  const before = earlier === undefined ? [] : [...earlier.before, earlier];
  const lines = [
    '# Written by `splitpin adopt`. The records and photos named here came from the former owner and stay as they are;',
    '# what one of them says wrongly is said rightly by a record of your own, with `corrects`.',
    'splitpin: 1',
    `date: ${date}`,
    ...print(fingerprint, ''),
    fixed.length === 0 ? 'records: none' : 'records:',
    ...fixed.map(({ file, text }) => `  - {file: ${scalarText(file)}, hash: ${sha256(text)}}`),
    ...(photos.length === 0 ? [] : ['photos:']),
    ...photos.map(({ file, hash }) => `  - {file: ${scalarText(file)}, hash: ${hash}}`),
    ...(before.length === 0 ? [] : ['before:']),
    ...before.flatMap((one) => [`  - date: ${one.date}`, ...print(one.fingerprint, '    ')]),
  ];
  return lines.join('\n') + '\n';
}

function print(fingerprint: string | undefined, indent: string): readonly string[] {
  return fingerprint === undefined ? [] : [`${indent}fingerprint: ${fingerprint}`];
}

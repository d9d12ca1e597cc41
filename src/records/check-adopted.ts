// Records that came from a former owner stay as they came: one that was changed, or is gone, is a problem.
import type { Problem } from '../problem/problem.ts';
import type { Asset, SourceFile } from '../source/files.ts';
import { sha256 } from '../source/sha256.ts';
import type { Adopted, AdoptedRecord } from './adopted-model.ts';
import { below } from './reference.ts';

const known = new WeakMap<SourceFile, string>();

/**
 * What differs from the list in adopted.yaml. Texts are kept from reading to reading, so each is hashed once. Of photos it is only seen
 * here that they are gone: their bytes are not read with the records.
 */
export function checkAdopted(
  adopted: Adopted,
  files: readonly SourceFile[],
  assets: readonly Asset[],
): readonly Problem[] {
  const pictures = new Set(assets.map(({ file }) => file));
  return [
    ...checkRecords(adopted.records, files),
    ...adopted.photos.flatMap((photo) => (pictures.has(photo.file.normalize('NFC')) ? [] : [goneOf(photo, '')])),
  ];
}

function checkRecords(records: readonly AdoptedRecord[], files: readonly SourceFile[]): readonly Problem[] {
  const there = new Map(files.map((file) => [file.file, file]));
  return records.flatMap(({ file, hash, at }): readonly Problem[] => {
    const found = there.get(file.normalize('NFC'));
    if (found === undefined)
      return [goneOf({ file, hash, at }, ' What it says wrongly is corrected by a later record.')];
    if (hashOf(found) === hash) return [];
    const message = 'This record came with the machine from its former owner, and is not what it was.';
    const hint =
      'Put it back from the package, and say what is to be said in a record of your own, with `corrects` or `continues`.';
    return [{ code: 'adopted-record-changed', severity: 'problem', at: { file: found.file, path: [] }, message, hint }];
  });
}

function goneOf({ file, at }: AdoptedRecord, more: string): Problem {
  const message = `${file} came with the machine from its former owner, and is gone.`;
  const hint = `Put it back from the package.${more}`;
  return { code: 'adopted-record-gone', severity: 'problem', at: below(at, 'file'), message, hint };
}

function hashOf(file: SourceFile): string {
  const before = known.get(file);
  if (before !== undefined) return before;
  const made = sha256(file.text);
  known.set(file, made);
  return made;
}

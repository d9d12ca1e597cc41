// Records that came from a former owner stay as they came: one that was changed, or is gone, is a problem.
import type { Problem } from '../problem/problem.ts';
import type { SourceFile } from '../source/files.ts';
import { sha256 } from '../source/sha256.ts';
import type { Adopted } from './adopted-model.ts';
import { below } from './reference.ts';

const known = new WeakMap<SourceFile, string>();

/** What differs from the list in adopted.yaml. Texts are kept from reading to reading, so each is hashed once. */
export function checkAdopted({ records }: Adopted, files: readonly SourceFile[]): readonly Problem[] {
  const there = new Map(files.map((file) => [file.file, file]));
  return records.flatMap(({ file, hash, at }): readonly Problem[] => {
    const found = there.get(file.normalize('NFC'));
    if (found === undefined) {
      const message = `${file} came with the machine from its former owner, and is gone.`;
      const hint = 'Put it back from the package. What it says wrongly is corrected by a later record.';
      return [{ code: 'adopted-record-gone', severity: 'problem', at: below(at, 'file'), message, hint }];
    }
    if (hashOf(found) === hash) return [];
    const message = 'This record came with the machine from its former owner, and is not what it was.';
    const hint =
      'Put it back from the package, and say what is to be said in a record of your own, with `corrects` or `continues`.';
    return [{ code: 'adopted-record-changed', severity: 'problem', at: { file: found.file, path: [] }, message, hint }];
  });
}

function hashOf(file: SourceFile): string {
  const before = known.get(file);
  if (before !== undefined) return before;
  const made = sha256(file.text);
  known.set(file, made);
  return made;
}

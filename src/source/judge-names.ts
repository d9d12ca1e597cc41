// The names of a machine folder’s files, judged together: copies that something left, names that fall together, names that not every system keeps.
import { conflictCopy, formerState, nameNotEverywhere, namesFallTogether } from '../problem/folder-problems.ts';
import type { Problem } from '../problem/problem.ts';
import { namedCopy } from './conflict-copies.ts';
import { nameKey, pathFault } from './file-names.ts';
import { isRecord } from './machine-files.ts';

export interface JudgedNames {
  readonly problems: readonly Problem[];
  /** Copies: named as problems or queries, and not read as records. */
  readonly copies: ReadonlySet<string>;
}

/** Judges paths below a machine folder, with forward slashes, as the disk spells them. */
export function judgeNames(files: readonly string[]): JudgedNames {
  const there = new Set(files);
  const copies = new Set<string>();
  const problems: Problem[] = [];
  for (const file of files) {
    const copy = copyOfRecord(file, there);
    if (copy === undefined) continue;
    copies.add(file);
    problems.push(copy);
  }
  const counted = files.filter(
    (file) => !copies.has(file) && (isRecord(file) || /^(?:photos|documents)\//u.test(file)),
  );
  return { problems: [...problems, ...fallingTogether(counted), ...counted.flatMap(notEverywhere)], copies };
}

function copyOfRecord(file: string, there: ReadonlySet<string>): Problem | undefined {
  const cut = file.lastIndexOf('/') + 1;
  const folder = file.slice(0, cut);
  const copy = namedCopy(file.slice(cut), (name) => there.has(folder + name));
  if (copy === undefined || !isRecord(folder + copy.of)) return undefined;
  const named = file.normalize('NFC');
  const of = (folder + copy.of).normalize('NFC');
  return copy.kind === 'conflict' ? conflictCopy(named, of) : formerState(named, of);
}

/** Jobs are left to the check of ids, which says the same of them in the words of a record. */
function fallingTogether(files: readonly string[]): readonly Problem[] {
  const first = new Map<string, string>();
  return files.flatMap((file): readonly Problem[] => {
    const key = nameKey(file);
    const other = first.get(key);
    if (other === undefined) first.set(key, file);
    return other === undefined || file.startsWith('jobs/') ? [] : [namesFallTogether(file, other)];
  });
}

function notEverywhere(file: string): readonly Problem[] {
  const why = pathFault(file);
  return why === undefined ? [] : [nameNotEverywhere(file.normalize('NFC'), why)];
}

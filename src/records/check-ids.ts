// One id, one thing: two entries of one id, and two files that a disk or a letter's two spellings would take for one.
import type { Place, Problem } from '../problem/problem.ts';
import type { SourceFile } from '../source/files.ts';
import type { Job, Records } from './model.ts';
import { recordId } from './read-job.ts';
import { keptFlat } from './runs.ts';

interface Named {
  readonly id: string;
  readonly at: Place;
}

/** Ids of makers' entries, instruments, clock periods and findings that are given twice. */
export function checkIds({ machine, maker, instruments, wiring, jobs }: Records): readonly Problem[] {
  const measured = [...maker.limits, ...maker.settings];
  const kinds: readonly (readonly Named[])[] = [
    maker.fasteners,
    measured,
    maker.fluids,
    maker.services,
    instruments,
    machine.clock,
    wiring?.wires ?? [],
    wiring?.runs ?? [],
    wiring?.earths ?? [],
  ];
  return [...kinds.flatMap(givenTwice), ...findingsTwice(jobs)];
}

const findingsTwice = keptFlat((job: Job) => givenTwice(job.findings));

/** Entries of one list whose id an earlier one has. */
export function givenTwice(list: readonly Named[]): readonly Problem[] {
  const first = new Map<string, Place>();
  return list.flatMap(({ id, at }): readonly Problem[] => {
    const place = { ...at, path: [...at.path, 'id'] };
    const earlier = first.get(id);
    if (earlier === undefined) first.set(id, place);
    return earlier === undefined ? [] : [idTwice(id, place, earlier)];
  });
}

/** The id of a file, and what it is compared by; kept with the file, which is read once while a binder is served. */
const ids = new WeakMap<SourceFile, { readonly id: string; readonly key: string }>();

function idOf(source: SourceFile): { readonly id: string; readonly key: string } {
  const before = ids.get(source);
  if (before !== undefined) return before;
  const id = recordId(source.file);
  const made = { id, key: id.toLowerCase() };
  ids.set(source, made);
  return made;
}

/** Job files whose names are one id: letter case and the two ways to write an accented letter do not tell files apart everywhere. */
export function sameFile(files: readonly SourceFile[]): readonly Problem[] {
  const first = new Map<string, string>();
  return files.flatMap((source): readonly Problem[] => {
    const { file } = source;
    const { id, key } = idOf(source);
    const earlier = first.get(key);
    if (earlier === undefined) first.set(key, file);
    return earlier === undefined ? [] : [idTwice(id, { file, path: [] }, { file: earlier, path: [] })];
  });
}

export function idTwice(id: string, at: Place, earlier: Place): Problem {
  return {
    code: 'id-twice',
    severity: 'problem',
    at,
    message: `The id “${id}” is taken already, in ${earlier.file}.`,
    hint: 'Give one of the two another id; the older one keeps it.',
    also: [{ at: earlier, message: 'It is used here first.' }],
  };
}

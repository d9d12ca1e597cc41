// A machine's own procedures: new ones, or more that a known one disturbs.
import type { Outcome, Problem } from '../../problem/problem.ts';
import { readDocument } from '../../source/document.ts';
import type { SourceFile } from '../../source/files.ts';
import { isBranch } from '../../source/tree.ts';
import { proceduresKind } from '../content-kinds/procedures.ts';
import type { Procedure } from '../content-model.ts';
import { readFile } from '../read-file.ts';
import { entry, need } from '../shapes/fields.ts';
import { id, list, text } from '../shapes/plain.ts';
import { weakened } from './weakened.ts';

/** What a machine may say of a procedure that there is. */
const more = {
  shape: entry({
    procedure: need(id, 'its permanent id'),
    disturbs: need(list(text), 'what it disturbs on this machine besides'),
  }),
};
const mayBeSaid: ReadonlySet<string> = new Set(['procedure', 'disturbs']);

/** All procedures, with the machine's. */
export function addProcedures(
  known: ReadonlyMap<string, Procedure>,
  own: readonly SourceFile[],
): Outcome<ReadonlyMap<string, Procedure>> {
  const value = new Map(known);
  const problems: Problem[] = [];
  for (const source of own.filter(({ file }) => proceduresKind.matches(file))) {
    const { value: document } = readDocument(source);
    const keys = document !== undefined && isBranch(document.data) ? document.data : {};
    const name = keys['procedure'];
    const before = typeof name === 'string' ? known.get(name) : undefined;
    const read = before === undefined ? fresh(source) : added(before, source, Object.keys(keys));
    problems.push(...read.problems);
    if (read.value !== undefined) value.set(read.value.id, read.value);
  }
  return { value, problems };
}

function fresh(source: SourceFile): Outcome<Procedure | undefined> {
  const { value, document, problems } = readFile(source, proceduresKind);
  return { value: value && { ...value, body: document?.body ?? '' }, problems };
}

function added(before: Procedure, source: SourceFile, keys: readonly string[]): Outcome<Procedure | undefined> {
  const others = keys.filter((key) => !mayBeSaid.has(key));
  if (others.length > 0) {
    const at = { file: source.file, path: [] };
    const hint = 'Give yours an id of its own, or write `disturbs:` alone to add to it.';
    return {
      value: undefined,
      problems: others.map((key) => weakened(at, key, `the procedure “${before.id}”`, hint)),
    };
  }
  const { value, problems } = readFile(source, more);
  const disturbs = [...new Set([...before.disturbs, ...(value?.disturbs ?? [])])];
  return { value: { ...before, disturbs }, problems };
}

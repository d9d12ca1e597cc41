// Instruments of the former owner's workshop come into the machine's own file, since its records name them; the new workshop's stay where they are.
import { editRecord } from '../../entry/edit-record.ts';
import { readDocument } from '../../source/document.ts';
import type { SourceFile } from '../../source/files.ts';
import { isBranch, isList, type Tree } from '../../source/tree.ts';

/** The machine's own instruments.yaml with the others in it; undefined where they cannot be put together. */
export function withFormer(own: string | undefined, shared: string): string | undefined {
  if (own === undefined) return shared;
  const file = 'instruments.yaml';
  const ids = new Set(instrumentsIn({ file, text: own }).flatMap(idOf));
  const added = instrumentsIn({ file, text: shared }).filter((one) => !idOf(one).some((id) => ids.has(id)));
  const edits = added.map((item) => ({ kind: 'add', path: [], key: 'instruments', item }) as const);
  const { value, failed } = editRecord({ file, text: own }, edits);
  return failed.size === 0 ? value : undefined;
}

/** Ids that both name: in the adopted machine they mean the former owner's tool. */
export function sameIds(own: string, workshop: string): readonly string[] {
  const ids = new Set(instrumentsIn({ file: 'instruments.yaml', text: own }).flatMap(idOf));
  return instrumentsIn({ file: 'instruments.yaml', text: workshop })
    .flatMap(idOf)
    .filter((id) => ids.has(id));
}

function instrumentsIn(source: SourceFile): readonly Tree[] {
  const list = readDocument(source).value?.data['instruments'] ?? null;
  return isList(list) ? list : [];
}

function idOf(one: Tree): readonly string[] {
  const id = isBranch(one) ? one['id'] : undefined;
  return typeof id === 'string' ? [id] : [];
}

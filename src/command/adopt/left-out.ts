// What the former owner left out of machine.yaml and the new one can say: the number of the key, where the site is kept, what may be spent.
import { editRecord } from '../../entry/edit-record.ts';
import type { RecordEdit } from '../../entry/record-edit.ts';
import { readDocument } from '../../source/document.ts';
import type { SourceFile } from '../../source/files.ts';
import { isBranch, type Tree } from '../../source/tree.ts';

/** A value that stands as `?`. */
export interface LeftOutValue {
  /** Name for `--how name=value`, and what is asked for. */
  readonly name: string;
  readonly path: readonly string[];
  readonly key: string;
}

const ownWords = ['spending limit', 'allowance', 'hour rate'] as const;

/** In the order of the file. What nobody ever knew, such as a feature, stays for the first sheet. */
export function leftOutOf(machine: SourceFile): readonly LeftOutValue[] {
  const data = readDocument(machine).value?.data ?? {};
  const { numbers, place } = { numbers: data['numbers'] ?? null, place: data['place'] ?? null };
  const stamped = isBranch(numbers)
    ? Object.entries(numbers).flatMap(([name, value]) => unknownNumber(name, value))
    : [];
  const site = isBranch(place) && place['site'] === '?' ? [{ name: 'site', path: ['place'], key: 'site' }] : [];
  const own = ownWords.filter((key) => data[key] === '?').map((key) => ({ name: key, path: [], key }));
  return [...stamped, ...site, ...own];
}

function unknownNumber(name: string, value: Tree): readonly LeftOutValue[] {
  const asks = `${name} number`;
  if (value === '?') return [{ name: asks, path: ['numbers'], key: name }];
  const open = isBranch(value) && value['stamped'] === '?';
  return open ? [{ name: asks, path: ['numbers', name], key: 'stamped' }] : [];
}

/** machine.yaml with the values said, every other byte as it was; `failed` are those that could not be put in. */
export function withSaid(
  machine: SourceFile,
  said: readonly { readonly value: LeftOutValue; readonly words: string }[],
): { readonly text: string; readonly failed: readonly string[] } {
  const edits = said.map(({ value: { path, key, name }, words }) => ({
    name,
    edit: { kind: 'set', path, key, value: words } satisfies RecordEdit,
  }));
  const { value, failed } = editRecord(
    machine,
    edits.map(({ edit }) => edit),
  );
  return { text: value, failed: edits.filter(({ edit }) => failed.has(edit)).map(({ name }) => name) };
}

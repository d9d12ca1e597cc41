// One file read by its kind: text to tree, tree to data; what was wrong, and what could be read all the same.
import type { Place, Problem } from '../problem/problem.ts';
import { readDocument, type Document } from '../source/document.ts';
import type { SourceFile } from '../source/files.ts';
import type { Tree } from '../source/tree.ts';
import type { Records } from './model.ts';
import type { RecordKind } from './kinds/record-kind.ts';
import { deskFor, type Desk } from './shapes/desk.ts';

export interface FileReading<T> {
  readonly file: string;
  readonly value: T | undefined;
  readonly document: Document | undefined;
  readonly problems: readonly Problem[];
  readonly kept: readonly Place[];
}

/** Reads a file as one kind. */
export function readFile<T>(
  source: SourceFile,
  kind: Pick<RecordKind<T>, 'shape'>,
  dimensionOf?: Desk['dimensionOf'],
): FileReading<T> {
  const { value: document, problems } = readDocument(source);
  if (document === undefined) return { file: source.file, value: undefined, document, problems, kept: [] };
  const desk = deskFor(source.file, dimensionOf);
  const value = kind.shape.read(withDay(document.data, source.pictured), undefined, desk);
  return { file: source.file, value, document, problems: desk.problems, kept: desk.kept };
}

/** A record that says no day has the one on which its first picture was taken. */
function withDay(data: Tree, pictured: string | undefined): Tree {
  if (pictured === undefined || data === null || typeof data !== 'object' || isList(data)) return data;
  return 'date' in data ? data : { ...data, date: pictured };
}

function isList(data: Tree): data is readonly Tree[] {
  return Array.isArray(data);
}

/** Files with problems, by name, with the codes found in each and the ids that their text declares. */
export function unreadFiles(
  readings: readonly FileReading<unknown>[],
  textOf: (file: string) => string | undefined,
): Records['unread'] {
  return readings
    .filter((reading) => reading.problems.some((problem) => problem.severity === 'problem'))
    .map(({ file, problems }) => ({
      file,
      codes: [...new Set(problems.map((problem) => problem.code))],
      ids: declaredIds(textOf(file) ?? ''),
    }));
}

/** Whatever is written after `id:`, in a text that need not be readable. */
function declaredIds(text: string): readonly string[] {
  return [...text.matchAll(/\bid:[ \t]*["']?([\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)*)/gu)].flatMap((found) => found[1] ?? []);
}

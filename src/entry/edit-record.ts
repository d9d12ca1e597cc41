// Edits the front matter of a record and leaves every other byte as it was: comments, order, line ends, byte order mark.
import type { Outcome, Problem } from '../problem/problem.ts';
import { cleanText } from '../source/clean-text.ts';
import { readDocument } from '../source/document.ts';
import type { SourceFile } from '../source/files.ts';
import type { Branch } from '../source/tree.ts';
import { afterEdit, sameTree, type RecordEdit } from './record-edit.ts';
import { spliceFor } from './splice-for.ts';

/**
 * The text with the edits done, one after the other. After each the record is read again and must say what it said before and the
 * edit, nothing else; an edit that cannot be done so is not done and comes back as a problem at the key.
 */
export function editRecord(
  record: SourceFile,
  edits: readonly RecordEdit[],
): Outcome<string> & { readonly failed: ReadonlySet<RecordEdit> } {
  const problems: Problem[] = [];
  const failed = new Set<RecordEdit>();
  let text = record.text;
  for (const edit of edits) {
    const made = edited({ file: record.file, text }, edit);
    if (made !== undefined) {
      text = made;
      continue;
    }
    failed.add(edit);
    problems.push(notEdited(record.file, edit));
  }
  return { value: text, problems, failed };
}

function edited(record: SourceFile, edit: RecordEdit): string | undefined {
  const before = dataOf(record);
  const wanted = before === undefined ? undefined : afterEdit(before, edit);
  if (wanted === undefined) return undefined;
  const clean = cleanText(record.text);
  const head = yamlPart(clean, record.file);
  const splice = spliceFor(clean.slice(head.from, head.to), edit);
  if (splice === undefined) return undefined;
  const [from, to] = [head.from + splice.at, head.from + splice.at + splice.remove].map((at) =>
    rawOffset(record.text, at),
  );
  const insert = splice.insert.replaceAll('\n', lineEnd(record.text));
  const text = record.text.slice(0, from) + insert + record.text.slice(to);
  const after = dataOf({ file: record.file, text });
  return after !== undefined && sameTree(after, wanted) ? text : undefined;
}

function dataOf(record: SourceFile): Branch | undefined {
  return readDocument(record).value?.data;
}

/** From where to where the YAML stands in cleaned text. */
function yamlPart(clean: string, file: string): { readonly from: number; readonly to: number } {
  if (/\.ya?ml$/iu.test(file)) return { from: 0, to: clean.length };
  const from = clean.indexOf('\n') + 1;
  const close = clean.indexOf('\n---', from - 1);
  return { from, to: close < 0 ? clean.length : Math.max(from, close + 1) };
}

/** An offset of the cleaned text in the text as it was saved. */
function rawOffset(raw: string, offset: number): number {
  let at = raw.charCodeAt(0) === 0xfeff ? 1 : 0;
  for (let left = offset; left > 0; left -= 1) at += raw.charAt(at) === '\r' && raw.charAt(at + 1) === '\n' ? 2 : 1;
  return at;
}

/** The line end of a text: the one its first line has. */
function lineEnd(raw: string): string {
  return /\r\n|\r|\n/u.exec(raw)?.[0] ?? '\n';
}

function notEdited(file: string, edit: RecordEdit): Problem {
  return {
    code: 'record-not-written-to',
    severity: 'problem',
    at: { file, path: [...edit.path, edit.key], atKey: true },
    message: `“${edit.key}” is written in a way that cannot be added to without changing more than was asked.`,
    hint: 'Write it by hand, or put the key as one value, or as a list, on lines of its own.',
  };
}

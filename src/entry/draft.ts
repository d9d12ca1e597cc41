// A record while answers go into it: its data, the edits so far, what they change, and what could not be taken.
import type { Book } from '../book/book.ts';
import { inRecord } from '../book/blank-ids.ts';
import { makeNamer, type Namer } from '../book/names.ts';
import type { Problem } from '../problem/problem.ts';
import type { ProblemCode } from '../problem/codes.ts';
import type { Day } from '../quantity/day.ts';
import type { Job } from '../records/model.ts';
import { isBranch, isList, type Branch, type Tree } from '../source/tree.ts';
import type { Change } from './answer.ts';
import type { Blank } from './blank.ts';
import { afterEdit, treeAt, type RecordEdit } from './record-edit.ts';

export interface Draft {
  readonly book: Book;
  readonly job: Job;
  readonly today: Day;
  /** Whose hand filled the sheet, where that was said. */
  readonly hand: string | undefined;
  /** A value that stands there gives way to the answer; without it both are kept. */
  readonly instead: boolean;
  readonly key: Namer;
  /** The record as it stands says `planned`: its lines of work are still to be done. */
  readonly planned: boolean;
  /** The data as it will be. */
  tree: Tree;
  readonly edits: RecordEdit[];
  /** What the answers change, each with the edit that does it. */
  readonly changes: { readonly change: Change; readonly by?: RecordEdit }[];
  readonly problems: Problem[];
  /** Lines of `work` of a planned job, by index, that the answers say are done. */
  readonly doneLines: Set<number>;
  /** Places at which these answers put words already. */
  readonly remarked: Set<string>;
}

/** A draft without any answer. */
export function draftOf(given: Pick<Draft, 'book' | 'job' | 'today' | 'hand' | 'instead'>, tree: Branch): Draft {
  const key = makeNamer(given.book.records.maker);
  const planned = textIn(tree, 'state') === 'planned';
  return {
    ...given,
    key,
    planned,
    tree,
    edits: [],
    changes: [],
    problems: [],
    doneLines: new Set(),
    remarked: new Set(),
  };
}

/** Takes an edit into the draft; what does not fit is a problem at the blank. */
export function edit(
  draft: Draft,
  blank: Pick<Blank, 'id' | 'asks'>,
  made: RecordEdit,
  said: Omit<Change, 'blank' | 'asks'>,
): void {
  const after = afterEdit(draft.tree, made);
  if (after === undefined) {
    refuse(
      draft,
      'record-not-written-to',
      `“${blank.asks}” cannot be written into this record: “${made.key}” stands there in another form.`,
      'Write it by hand.',
    );
    return;
  }
  draft.tree = after;
  draft.edits.push(made);
  draft.changes.push({ change: { blank: blank.id, asks: blank.asks, ...said }, by: made });
}

/** Adds an item to a list at the top of the record. */
export function add(draft: Draft, blank: Pick<Blank, 'id' | 'asks'>, key: string, item: Tree, becomes: string): void {
  edit(draft, blank, { kind: 'add', path: [], key, item }, { becomes });
}

/** The answer cannot be taken; the problem names the blank. */
export function refuse(draft: Draft, code: ProblemCode, message: string, hint?: string): void {
  const said = hint === undefined ? {} : { hint };
  const at = { file: draft.job.file, path: [] };
  draft.problems.push({ code, severity: 'problem', at, message, ...said });
}

/** The maps in a list at the top of the record, each with its index. */
export function linesOf(draft: Draft, key: string): readonly (readonly [index: number, line: Branch])[] {
  const list = treeAt(draft.tree, [key]);
  if (!isList(list)) return [];
  return list.flatMap((line, index) => (isBranch(line) ? [[index, line] as const] : []));
}

/** A scalar of a map, or nothing. */
export function textIn(line: Branch, key: string): string | undefined {
  const value = Object.hasOwn(line, key) ? line[key] : undefined;
  return typeof value === 'string' ? value : undefined;
}

/** The scalars of a list at the top of the record. */
export function textsOf(draft: Draft, key: string): readonly string[] {
  const list = treeAt(draft.tree, [key]);
  return isList(list) ? list.filter((one) => typeof one === 'string') : [];
}

/** Words kept under `remarks`, once; where an answer takes the place of what stands there, in that of the newest words of the same hand. */
export function remark(draft: Draft, blank: Pick<Blank, 'id' | 'asks'>, at: string, says: string): void {
  const where = inRecord(draft.job.id, at);
  const there = linesOf(draft, 'remarks').filter(([, line]) => textIn(line, 'at') === where);
  const isFirst = !draft.remarked.has(where);
  draft.remarked.add(where);
  if (there.some(([, line]) => textIn(line, 'says') === says)) return;
  const last = there.at(-1);
  if (last !== undefined && draft.instead && isFirst && textIn(last[1], 'by') === draft.hand) {
    const was = textIn(last[1], 'says') ?? '';
    edit(draft, blank, { kind: 'set', path: ['remarks', last[0]], key: 'says', value: says }, { was, becomes: says });
    return;
  }
  const by = draft.hand === undefined ? {} : { by: draft.hand };
  add(draft, blank, 'remarks', { at: where, says, ...by }, says);
}

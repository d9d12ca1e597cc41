// An answer to a measuring box: into the reading that the record has for it, beside what stands there, or as a reading of its own.
import { readAnyQuantity } from '../quantity/read-quantity.ts';
import { dimensionsOf } from '../records/dimensions-of.ts';
import { isBranch, type Branch, type Tree } from '../source/tree.ts';
import type { Blank } from './blank.ts';
import { notDone } from './clean-answer.ts';
import { add, edit, linesOf, refuse, remark, textIn, type Draft } from './draft.ts';
import { readBoxValue } from './read-value.ts';
import type { Target } from './target.ts';

type ReadingTarget = Extract<Target, { readonly kind: 'reading' }>;

/** Writes the value; `?` fills only what is empty, `-` says that it was not measured. */
export function writeReading(draft: Draft, blank: Blank, target: ReadingTarget, said: string): void {
  if (said === '-') {
    remark(draft, blank, blank.id, notDone);
    return;
  }
  const dimension = dimensionsOf(draft.book.records.maker)(target.item);
  const value =
    said === '?' ? ({ kind: 'words', text: '?' } as const) : readBoxValue(said, blank.unit ?? '', dimension);
  if (value.kind === 'refused') {
    refuse(draft, 'answer-unreadable', `${blank.asks}: ${value.message}.`, value.hint);
    return;
  }
  const fitting = linesOf(draft, 'readings').filter(
    ([, line]) => draft.key(textIn(line, 'item') ?? '') === draft.key(target.item),
  );
  const standing = fitting.flatMap(([index, line]) => valueIn(line, target).map((text) => ({ index, text })));
  if (standing.some(({ text }) => sameValue(text, value.text))) return;
  const open = standing.find(({ text }) => text === '?' || text === '');
  const first = standing[0];
  if (value.text === '?' && first !== undefined) return;
  if (open !== undefined) put(draft, blank, target, open.index, value.text);
  else if (first !== undefined && draft.instead) put(draft, blank, target, first.index, value.text, first.text);
  else if (first !== undefined) second(draft, blank, target, value.text, first.text);
  else intoFirst(draft, blank, target, fitting, value.text);
}

/** What stands at a side and position of a reading: one text, or nothing. */
function valueIn(line: Branch, { side, position }: ReadingTarget): readonly string[] {
  const values = Object.hasOwn(line, side) ? line[side] : undefined;
  if (values === undefined || values === null) return [];
  if (typeof values === 'string') return position === '' ? [values] : [];
  if (!isBranch(values)) return [];
  const one = Object.hasOwn(values, position) ? values[position] : undefined;
  if (one === null) return [''];
  return typeof one === 'string' ? [one] : [];
}

function sameValue(a: string, b: string): boolean {
  if (a === b) return true;
  const [one, other] = [readAnyQuantity(a), readAnyQuantity(b)];
  return (
    one.ok &&
    other.ok &&
    one.value.unit.symbol === other.value.unit.symbol &&
    one.value.decimals === other.value.decimals &&
    one.value.quantity === other.value.quantity
  );
}

/** Over a value that is not known, or that gives way. */
function put(
  draft: Draft,
  blank: Blank,
  { side, position }: ReadingTarget,
  index: number,
  text: string,
  was?: string,
): void {
  const [path, key] = position === '' ? [['readings', index], side] : [['readings', index, side], position];
  edit(draft, blank, { kind: 'set', path, key, value: text }, { ...(was === undefined ? {} : { was }), becomes: text });
}

/** Two hands wrote two values: the second is a reading of its own, and a query will say so. */
function second(draft: Draft, blank: Blank, target: ReadingTarget, text: string, was: string): void {
  const item: Branch = { ...reading(target, text), by: draft.hand ?? 'second sheet' };
  edit(draft, blank, { kind: 'add', path: [], key: 'readings', item }, { was, becomes: `${text}, beside it` });
}

function reading({ item, side, position }: ReadingTarget, text: string): Branch {
  return { item, [side]: values(position, text) };
}

function values(position: string, text: string): Tree {
  return position === '' ? text : { [position]: text };
}

/** Into the first reading of this item that has room for it. */
function intoFirst(
  draft: Draft,
  blank: Blank,
  target: ReadingTarget,
  fitting: readonly (readonly [number, Branch])[],
  text: string,
): void {
  const { side, position } = target;
  for (const [index, line] of fitting) {
    const there = Object.hasOwn(line, side) ? line[side] : undefined;
    const kept = isBranch(there) && 'private' in there;
    if (there === undefined || there === null) {
      edit(
        draft,
        blank,
        { kind: 'set', path: ['readings', index], key: side, value: values(position, text) },
        { becomes: text },
      );
      return;
    }
    if (isBranch(there) && !kept && position !== '') {
      edit(
        draft,
        blank,
        { kind: 'set', path: ['readings', index, side], key: position, value: text },
        { becomes: text },
      );
      return;
    }
  }
  add(draft, blank, 'readings', reading(target, text), text);
}

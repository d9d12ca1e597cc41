// A stamped number as it was read off the metal, each time that it was read: a reading in words, held against machine.yaml by a query.
import type { Blank } from './blank.ts';
import { notDone, notKnown } from './clean-answer.ts';
import { add, linesOf, remark, textIn, type Draft } from './draft.ts';
import type { Judged } from './judge-answer.ts';
import type { Book } from '../book/book.ts';
import { isBranch, type Branch } from '../source/tree.ts';

/** Of a number that machine.yaml keeps private, the reading is private as well. */
export function writeNumber(draft: Draft, blank: Blank, name: string, turn: number, said: string): void {
  if (said === '-' || said === '?') {
    remark(draft, blank, blank.id, said === '-' ? notDone : notKnown);
    return;
  }
  const item = `${name} number`;
  const by = turn > 1 ? { by: 'second reading' } : {};
  const same = linesOf(draft, 'readings').some(
    ([, line]) => textIn(line, 'item') === item && textIn(line, 'by') === by.by && foundIn(line) === said,
  );
  if (same) return;
  const known = draft.book.records.machine.numbers.find((one) => one.name === name);
  const found: Branch | string = known?.private === true ? { value: said, private: 'yes' } : said;
  add(draft, blank, 'readings', { item, found, ...by }, said);
}

function foundIn(line: Branch): string | undefined {
  const found = Object.hasOwn(line, 'found') ? line['found'] : null;
  return found !== undefined && isBranch(found) ? textIn(found, 'value') : textIn(line, 'found');
}

/** Said at once where it is not what machine.yaml has. */
export function judgeNumber(book: Book, name: string, said: string): readonly Judged[] {
  const known = book.records.machine.numbers.find((one) => one.name === name)?.stamped;
  if (known === undefined || known.includes('?') || plain(known) === plain(said)) return [];
  return [{ code: 'read-otherwise', text: `machine.yaml has ${known}. Read the stamp again, character by character.` }];
}

/** Spaces and the size of letters do not count. */
export function plain(number: string): string {
  return number.replaceAll(/\s+/gu, '').toUpperCase();
}

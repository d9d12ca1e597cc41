// Answers that are neither readings nor work: parts here, checks, words, rows for what nobody foresaw, what went wrong.
import { readDay } from '../quantity/day-arithmetic.ts';
import { askedUnit } from '../book/asked-unit.ts';
import { nameInRecord } from '../book/own-words.ts';
import { anchorOf } from './anchor.ts';
import type { Blank } from './blank.ts';
import { notDone, notKnown } from './clean-answer.ts';
import { add, edit, linesOf, remark, textIn, type Draft } from './draft.ts';
import { readBoxValue } from './read-value.ts';
import { saysYes } from './write-work.ts';

/** A part that was wanted or ordered is here. */
export function writePart(draft: Draft, blank: Blank, index: number, said: string): void {
  if (!saysYes(draft, blank, said)) return;
  const was = linesOf(draft, 'parts').find(([at]) => at === index)?.[1];
  const state = was === undefined ? undefined : textIn(was, 'state');
  if (state !== 'wanted' && state !== 'ordered') return;
  edit(
    draft,
    blank,
    { kind: 'set', path: ['parts', index], key: 'state', value: 'here' },
    { was: state, becomes: 'here' },
  );
}

/** A check that was proved, with the value that proves it where one was written. */
export function writeCheck(
  draft: Draft,
  blank: Blank,
  check: string,
  said: { readonly tick?: string; readonly value?: string },
): void {
  const { value } = said;
  if (value === '-' || value === '?') remark(draft, blank, blank.id, value === '-' ? notDone : notKnown);
  const written = value === undefined || value === '-' || value === '?' ? undefined : inUnit(draft, check, value);
  if (said.tick !== undefined && !saysYes(draft, blank, said.tick)) {
    if (written !== undefined) remark(draft, blank, `${blank.id}/value`, written);
    return;
  }
  if (said.tick === undefined && written === undefined) return;
  const there = linesOf(draft, 'checks').filter(([, line]) => textIn(line, 'check') === check);
  const plain = isPlain(draft, check);
  if (there.some(([, line]) => written === undefined || textIn(line, 'value') === written)) return;
  if (plain && written === undefined) return;
  const by = draft.hand === undefined ? {} : { by: draft.hand };
  add(
    draft,
    blank,
    'checks',
    { check, ...by, ...(written === undefined ? {} : { value: written }) },
    written ?? 'proved',
  );
}

/** A bare number is in the unit that the check asks for; words stay as they are. */
function inUnit(draft: Draft, check: string, value: string): string {
  const asked = draft.book.holds.flatMap((hold) => hold.checks).find((one) => one.check.id === check);
  const unit = askedUnit(draft.book.records.machine.units, asked?.check.unit ?? '');
  const read = readBoxValue(value, unit, undefined);
  return read.kind === 'refused' ? value : read.text;
}

function isPlain(draft: Draft, check: string): boolean {
  const { checks } =
    draft.tree !== null && typeof draft.tree === 'object' && 'checks' in draft.tree ? draft.tree : { checks: null };
  return Array.isArray(checks) && checks.includes(check);
}

/** A row for what nobody foresaw: the part that came off, with its fasteners and its state; without a part, words and ticks alone. */
export function writeSpare(draft: Draft, blank: Blank, row: ReadonlyMap<string, string>): void {
  const said = row.get('part');
  const part = said === undefined ? undefined : nameInRecord(draft.book.records.maker, said);
  const words = ['fasteners', 'note'].flatMap((key) => row.get(key) ?? []);
  if (part === undefined) {
    for (const one of words) remark(draft, blank, blank.id, one);
    return;
  }
  const there = (verb: string): boolean => linesOf(draft, 'work').some(([, line]) => textIn(line, verb) === part);
  const off = row.get('off');
  if (!there('removed') && (off === undefined || saysYes(draft, blank, off))) {
    const note = words.length === 0 ? {} : { note: words.join('; ') };
    add(draft, blank, 'work', { removed: part, ...note }, `removed ${part}`);
  }
  const on = row.get('on');
  if (on !== undefined && !there('refitted') && saysYes(draft, blank, on))
    add(draft, blank, 'work', { refitted: part }, `refitted ${part}`);
}

/** Missing and broken things are findings; what was sent out is off the machine until it comes back. */
export function writeHonest(draft: Draft, blank: Blank, column: 'missing' | 'broken' | 'sent out', said: string): void {
  if (said === '-' || said === '?') return;
  if (column === 'sent out') {
    sentOut(draft, blank, said);
    return;
  }
  const saw = column === 'missing' ? `missing when found: ${said}` : `broken in this job: ${said}`;
  const known = linesOf(draft, 'findings');
  if (known.some(([, line]) => textIn(line, 'saw') === saw)) return;
  const ids = new Set(known.map(([, line]) => textIn(line, 'id')));
  const name = anchorOf(`${said} ${column}`);
  const id = ids.has(name) ? `${name}-${String(known.length + 1)}` : name;
  add(draft, blank, 'findings', { id, saw }, saw);
}

/** `barrels, the reborer, 2026-12-05`: what, to whom, promised for. */
function sentOut(draft: Draft, blank: Blank, said: string): void {
  const [what = said, ...others] = said.split(/,\s*/u);
  const thing = nameInRecord(draft.book.records.maker, what);
  if (linesOf(draft, 'work').some(([, line]) => textIn(line, 'sent out') === thing)) return;
  const day = others.find((one) => readDay(one).ok);
  const to = others.filter((one) => one !== day).join(', ');
  const item = { 'sent out': thing, ...(to === '' ? {} : { to }), ...(day === undefined ? {} : { promised: day }) };
  add(draft, blank, 'work', item, `sent out ${thing}`);
}

// The foot: how it was left, what comes next, whose hand, which day; and how far the job is.
import { readDaySpan } from '../quantity/day-arithmetic.ts';
import { isBranch } from '../source/tree.ts';
import type { Blank } from './blank.ts';
import { add, edit, refuse, textsOf, type Draft } from './draft.ts';
import type { FootField } from './foot-blanks.ts';
import { treeAt } from './record-edit.ts';

/** Writes a field of the foot. What stands there in other words is kept beside it. */
export function writeFoot(draft: Draft, blank: Blank, field: FootField, said: string): void {
  if (said === '-' || said === '?') return;
  if (field === 'hand') addOnce(draft, blank, 'hands', said);
  else if (field === 'state-left-in') addOnce(draft, blank, 'state left', said);
  else if (field === 'next') writeNext(draft, blank, said);
  else if (field === 'date') writeDate(draft, blank, said);
  else if (field === 'odometer') writeIfOpen(draft, blank, field, onTheClock(draft, said));
  else if (field === 'time') writeIfOpen(draft, blank, field, said);
  else writeState(draft, blank, said);
}

function addOnce(draft: Draft, blank: Blank, key: string, said: string): void {
  if (!textsOf(draft, key).includes(said)) add(draft, blank, key, said, said);
}

function top(draft: Draft, key: string): string | undefined {
  const value = isBranch(draft.tree) ? treeAt(draft.tree, [key]) : undefined;
  return typeof value === 'string' ? value : undefined;
}

function set(draft: Draft, blank: Blank, key: string, value: string): void {
  const was = top(draft, key);
  if (was === value) return;
  edit(draft, blank, { kind: 'set', path: [], key, value }, { ...(was === undefined ? {} : { was }), becomes: value });
}

function writeNext(draft: Draft, blank: Blank, said: string): void {
  const was = top(draft, 'next');
  const there = (was ?? '').split('; ').includes(said);
  if (!there) set(draft, blank, 'next', was === undefined || was === 'none' || was === '?' ? said : `${was}; ${said}`);
}

/** A clock or a time that stands there stays; another one is said to whoever asks. */
function writeIfOpen(draft: Draft, blank: Blank, key: string, said: string): void {
  const was = top(draft, key);
  if (was === undefined || was === 'none' || was === '?' || was === said || draft.instead) set(draft, blank, key, said);
  else
    refuse(draft, 'answer-unreadable', `${blank.asks}: the record says ${was} already.`, 'Correct it in the record.');
}

/** The day of the work takes the place of the day it was planned for; a job that has begun lasts until then. */
function writeDate(draft: Draft, blank: Blank, said: string): void {
  const read = readDaySpan(said);
  if (!read.ok) {
    refuse(
      draft,
      'answer-unreadable',
      `${blank.asks}: ${read.why.message}.`,
      read.why.hint ?? 'Write a day as 2026-11-14.',
    );
    return;
  }
  const stands = readDaySpan(top(draft, 'date') ?? '');
  if (draft.planned || !stands.ok || stands.value.whole !== undefined) {
    set(draft, blank, 'date', said);
    return;
  }
  const date = stands.value;
  const from = read.value.from < date.from ? read.value.from : date.from;
  const to = read.value.to > date.to ? read.value.to : date.to;
  if (from === date.from && to === date.to) return;
  set(draft, blank, 'date', from === to ? from : `${from} to ${to}`);
}

/** A bare number is in the unit of the clock that is fitted. */
function onTheClock(draft: Draft, said: string): string {
  const unit = draft.book.records.machine.clock.at(-1)?.unit.symbol;
  return unit === undefined || !/^[\d\s.]+$/u.test(said) ? said : `${said} ${unit}`;
}

const inShort: Readonly<Record<string, string>> = { d: 'done', u: 'under way', p: 'put aside', w: 'waiting' };

/** `done`, `under way`, `put aside`, `waiting for …`. */
function writeState(draft: Draft, blank: Blank, words: string): void {
  const said = Object.hasOwn(inShort, words) ? (inShort[words] ?? words) : words;
  if (/^(?:under way|done|put aside|waiting(?: for .+)?)$/u.test(said)) set(draft, blank, 'state', said);
  else
    refuse(
      draft,
      'answer-unreadable',
      `“${said.slice(0, 40)}” is not how far a job can be.`,
      'Write under way, done, put aside or waiting for ….',
    );
}

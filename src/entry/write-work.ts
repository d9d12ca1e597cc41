// Answers that become lines of `work`: parts off and on, lines that were planned, torques.
import type { Branch } from '../source/tree.ts';
import type { Blank } from './blank.ts';
import { notDone, notKnown, tickSaid } from './clean-answer.ts';
import { add, edit, linesOf, refuse, remark, textIn, textsOf, type Draft } from './draft.ts';
import { inRecord } from '../book/blank-ids.ts';
import { takeOffLine } from './take-off-line.ts';
import { readBoxValue } from './read-value.ts';
import type { Target, WorkLine } from './target.ts';

/** The tick said yes; any other word is kept as words, and one that is no tick is refused. */
export function saysYes(draft: Draft, blank: Blank, said: string): boolean {
  const tick = tickSaid(said);
  if (tick === 'yes') return true;
  if (tick === undefined)
    refuse(draft, 'answer-unreadable', `${blank.asks}: “${said.slice(0, 40)}” is not a tick.`, 'Write yes, no or `-`.');
  else remark(draft, blank, blank.id, tick === 'no' ? notDone : notKnown);
  return false;
}

/** A tick without another key, once. */
export function writeTick(draft: Draft, blank: Blank, said: string): void {
  if (saysYes(draft, blank, said)) tick(draft, blank);
}

function tick(draft: Draft, blank: Blank): void {
  const id = inRecord(draft.job.id, blank.id);
  if (textsOf(draft, 'ticks').includes(id)) return;
  edit(draft, blank, { kind: 'add', path: [], key: 'ticks', item: id, oneALine: true }, { becomes: 'ticked' });
}

/** A part that came off or went back; a line that says so already, or that was planned, is not written twice. */
export function writeWork(draft: Draft, blank: Blank, line: WorkLine, said: string): void {
  const item: Branch = {
    [line.verb]: line.thing,
    ...(line.bag === undefined ? {} : { bag: line.bag }),
    ...(line.wayRound === undefined ? {} : { 'way round': line.wayRound }),
    ...(line.fasteners === undefined
      ? {}
      : { fasteners: Object.fromEntries(line.fasteners.map(({ id, count }) => [id, String(count)])) }),
  };
  if (!saysYes(draft, blank, said)) {
    if (tickSaid(said) === 'no') takeOffLine(draft, blank, line.verb, item);
    return;
  }
  const there = linesOf(draft, 'work').find(([, one]) => textIn(one, line.verb) === line.thing);
  if (there !== undefined) {
    doneLine(draft, blank, there[0]);
    return;
  }
  add(draft, blank, 'work', item, `${line.verb} ${line.thing}${line.bag === undefined ? '' : `, bag ${line.bag}`}`);
}

/** A line that stands in the record is done: of a planned job, all others are still to be done. */
export function writeToDo(draft: Draft, blank: Blank, index: number, said: string): void {
  if (saysYes(draft, blank, said)) doneLine(draft, blank, index);
}

function doneLine(draft: Draft, blank: Blank, index: number): void {
  const line = linesOf(draft, 'work').find(([at]) => at === index)?.[1];
  if (draft.planned) {
    if (draft.doneLines.has(index)) return;
    draft.doneLines.add(index);
    draft.changes.push({ change: { blank: blank.id, asks: blank.asks, becomes: 'done' } });
    return;
  }
  if (line !== undefined && textIn(line, 'done') === 'no')
    edit(
      draft,
      blank,
      { kind: 'set', path: ['work', index], key: 'done', value: 'yes' },
      { was: 'still to do', becomes: 'done' },
    );
}

const results = ['reached', 'yielded', 'stripped', 'by feel'] as const;

/** A fastener that was tightened: that it was, to what, or how. Another value than the one that stands there is a line beside it. */
export function writeTorque(
  draft: Draft,
  blank: Blank,
  target: Extract<Target, { readonly kind: 'torque' }>,
  said: string,
): void {
  if (!target.reached) {
    if (!saysYes(draft, blank, said)) {
      if (tickSaid(said) === 'no') takeOffLine(draft, blank, 'tightened', { tightened: target.thing });
      return;
    }
    tick(draft, blank);
    if (tightened(draft, target.thing).length === 0)
      add(draft, blank, 'work', { tightened: target.thing }, 'tightened');
    return;
  }
  if (said === '-' || said === '?') {
    remark(draft, blank, blank.id, said === '-' ? notDone : notKnown);
    return;
  }
  const how = results.find((word) => word === said.toLowerCase());
  const value = how === undefined ? readBoxValue(said, blank.unit ?? '', 'torque') : undefined;
  if (value?.kind === 'refused') {
    refuse(
      draft,
      'answer-unreadable',
      `${blank.asks}: ${value.message}.`,
      value.hint ?? `Write a torque, or one of: ${results.join(', ')}.`,
    );
    return;
  }
  if (value?.kind === 'words') {
    remark(draft, blank, blank.id, value.text);
    return;
  }
  writeReached(
    draft,
    blank,
    target.thing,
    value === undefined ? { result: how ?? 'reached' } : { to: value.text, result: 'reached' },
  );
}

function tightened(draft: Draft, fastener: string): readonly (readonly [number, Branch])[] {
  return linesOf(draft, 'work').filter(([, line]) => textIn(line, 'tightened') === fastener);
}

function writeReached(
  draft: Draft,
  blank: Blank,
  fastener: string,
  reached: { readonly to?: string; readonly result: string },
): void {
  const lines = tightened(draft, fastener);
  const becomes = reached.to ?? reached.result;
  const same = ([, line]: readonly [number, Branch]): boolean =>
    textIn(line, 'result') === reached.result && (reached.to === undefined || textIn(line, 'to') === reached.to);
  const known = lines.find(same);
  if (known !== undefined) return;
  const open = lines.find(([, line]) => textIn(line, 'result') === undefined);
  const standing = lines.at(-1);
  if (open === undefined && draft.instead && standing !== undefined) {
    again(draft, blank, standing, reached);
    return;
  }
  if (open === undefined) {
    const beside = lines.length === 0 ? {} : { note: `second answer, ${draft.hand ?? 'second sheet'}` };
    add(draft, blank, 'work', { tightened: fastener, ...reached, ...beside }, becomes);
    return;
  }
  const [index, line] = open;
  if (draft.planned) draft.doneLines.add(index);
  else if (textIn(line, 'done') === 'no')
    edit(draft, blank, { kind: 'set', path: ['work', index], key: 'done', value: 'yes' }, { becomes: 'done' });
  const set = (key: string, value: string): void =>
    edit(draft, blank, { kind: 'set', path: ['work', index], key, value }, { becomes: value });
  const aimed = textIn(line, 'to');
  if (reached.to !== undefined && (aimed === undefined || aimed === '?')) set('to', reached.to);
  set('result', reached.result);
  if (reached.to !== undefined && aimed !== undefined && aimed !== '?' && aimed !== reached.to)
    set('note', `reached ${reached.to}`);
}

/** What was reached takes the place of what stands there; the torque aimed at stays where none was read. */
function again(
  draft: Draft,
  blank: Blank,
  [index, line]: readonly [number, Branch],
  reached: { readonly to?: string; readonly result: string },
): void {
  for (const key of ['to', 'result'] as const) {
    const [value, was] = [reached[key], textIn(line, key)];
    if (value === undefined || value === was) continue;
    const said = { ...(was === undefined ? {} : { was }), becomes: value };
    edit(draft, blank, { kind: 'set', path: ['work', index], key, value }, said);
  }
}

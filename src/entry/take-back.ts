// Answers given again take back what they gave before: the tick of another grade, a tick that is none any more, words that said “not done”.
import { inRecord } from '../book/blank-ids.ts';
import { isList } from '../source/tree.ts';
import type { Blank } from './blank.ts';
import { notDone, notKnown, tickSaid, type TickSaid } from './clean-answer.ts';
import { edit, linesOf, textIn, type Draft } from './draft.ts';
import { treeAt } from './record-edit.ts';

type Answers = ReadonlyMap<string, readonly string[]>;

/**
 * What is left to be written: in a row of which one tick is given the others have nothing to say, and a row that is not ticked says so
 * once. Where answers take the place of what stands, that is taken out. `ticks` are the blanks whose tick is kept under `ticks`.
 */
export function takeBack(draft: Draft, blanks: readonly Blank[], ticks: readonly Blank[], answers: Answers): Answers {
  const left = new Map(answers);
  for (const row of rowsOf(ticks)) {
    const [given, not] = parted(row, answers);
    const silent = given.length > 0 ? not : not.slice(1);
    for (const { id } of silent) left.delete(id);
    if (!draft.instead) continue;
    for (const blank of not) untick(draft, blank);
    if (given.length > 0) for (const blank of row) forget(draft, blank);
  }
  if (!draft.instead) return left;
  for (const blank of blanks) if (answers.get(blank.id)?.some(isAnswer) === true) forget(draft, blank);
  return left;
}

/** Those of a row that were answered: with a tick, and otherwise. */
function parted(row: readonly Blank[], answers: Answers): readonly [given: readonly Blank[], not: readonly Blank[]] {
  const answered = row.filter(({ id }) => answers.has(id));
  const says = ({ id }: Blank, wanted: (tick: TickSaid) => boolean): boolean =>
    (answers.get(id) ?? []).some((said) => {
      const tick = tickSaid(said);
      return tick !== undefined && wanted(tick);
    });
  const given = answered.filter((blank) => says(blank, (tick) => tick === 'yes'));
  return [given, answered.filter((blank) => !given.includes(blank) && says(blank, (tick) => tick !== 'yes'))];
}

/** Ticks of one row together, every other by itself. */
function rowsOf(ticks: readonly Blank[]): readonly (readonly Blank[])[] {
  const rows = new Map<string, Blank[]>();
  for (const blank of ticks) {
    const key = blank.grades === undefined ? `one ${blank.id}` : `row ${blank.grades}`;
    const row = rows.get(key);
    if (row === undefined) rows.set(key, [blank]);
    else row.push(blank);
  }
  return [...rows.values()];
}

function isAnswer(said: string): boolean {
  const tick = tickSaid(said);
  return tick === undefined || tick === 'yes';
}

function untick(draft: Draft, blank: Blank): void {
  const list = treeAt(draft.tree, ['ticks']);
  const index = isList(list) ? list.indexOf(inRecord(draft.job.id, blank.id)) : -1;
  if (index < 0) return;
  edit(draft, blank, { kind: 'remove', path: [], key: 'ticks', index }, { was: 'ticked', becomes: 'not ticked' });
}

/** `not done` and `not known` are no longer so once there is an answer. */
function forget(draft: Draft, blank: Blank): void {
  const where = inRecord(draft.job.id, blank.id);
  const stale = linesOf(draft, 'remarks').findLast(
    ([, line]) => textIn(line, 'at') === where && [notDone, notKnown].includes(textIn(line, 'says') ?? ''),
  );
  if (stale === undefined) return;
  const [index, line] = stale;
  const was = textIn(line, 'says') ?? '';
  edit(draft, blank, { kind: 'remove', path: [], key: 'remarks', index }, { was, becomes: 'answered' });
}

// Every answer to its target, in the printed order of the blanks; notes after their blank; what belongs to no blank is named.
import { inRecord, noteId } from '../book/blank-ids.ts';
import { closesState } from '../book/off-states.ts';
import type { Blank } from './blank.ts';
import { refuse, remark, type Draft } from './draft.ts';
import { readBoxValue } from './read-value.ts';
import type { FootField } from './foot-blanks.ts';
import type { Target } from './target.ts';
import { takeBack } from './take-back.ts';
import { otherTarget, targetsOf } from './targets.ts';
import { writeFoot } from './write-foot.ts';
import { writeMinute, writeService } from './write-run.ts';
import { writeCheck, writeHonest, writePart, writeSpare } from './write-others.ts';
import { writeNumber } from './write-number.ts';
import { writeReading } from './write-reading.ts';
import { writeTick, writeToDo, writeTorque, writeWork } from './write-work.ts';

type Answers = ReadonlyMap<string, readonly string[]>;

/** Asked when a sheet is typed in, and printed nowhere. */
const unprinted: readonly (readonly [FootField, string])[] = [
  ['odometer', 'Clock reading'],
  ['time', 'Time it took'],
  ['state', 'How far the job is'],
];

/** Most characters of one value of a record. */
const longest = 1900;
const tooLong = 'Say it shortly here, and the rest in the text below the keys of the record.';

/** Takes the answers into the draft. */
export function takeAll(draft: Draft, printed: readonly Blank[], given: Answers): void {
  const { book, job } = draft;
  const targets = targetsOf(book, job);
  const foot = unprinted.map(([field, asks]): Blank => ({
    id: `${job.id}/foot/${field}`,
    kind: 'text',
    asks,
    singly: false,
  }));
  const blanks = [...printed, ...foot];
  const ids = new Set(blanks.map(({ id }) => id));
  const aimed = blanks.map((blank) => ({
    blank,
    target: targets.get(blank.id) ?? otherTarget(book, job.id, blank.id, blank.kind),
  }));
  const ticks = aimed.flatMap(({ blank, target }) => (target.kind === 'tick' ? [blank] : []));
  const answers = takeBack(draft, blanks, ticks, given);
  const left = new Set(answers.keys());
  for (const { blank, target } of aimed.toSorted((a, b) => turn(a.target) - turn(b.target))) {
    for (const said of answers.get(blank.id) ?? []) {
      if (said.length <= longest) take(draft, { blank, target, said, answers });
      else refuse(draft, 'answer-unreadable', `${blank.asks}: the answer is longer than a value may be.`, tooLong);
    }
    left.delete(blank.id);
    const note = noteId(blank.id);
    if (ids.has(note)) continue;
    for (const said of answers.get(note) ?? []) remark(draft, blank, note, said.slice(0, longest));
    left.delete(note);
  }
  for (const id of left)
    refuse(
      draft,
      'blank-unknown',
      `“${inRecord(job.id, id)}” is no blank of this job’s sheets.`,
      'Print the sheet anew, or write it into the record by hand.',
    );
}

/** Off before on, on before tight, and what proves the work after it: the lines of a record stand in the order of the work. */
function turn(target: Target): number {
  if (target.kind === 'work') return closesState(target.line.verb) === undefined ? 0 : 1;
  if (target.kind === 'torque') return 2;
  if (target.kind === 'check') return 3;
  return target.kind === 'foot' ? 4 : 0;
}

interface Said {
  readonly blank: Blank;
  readonly target: Target;
  readonly said: string;
  readonly answers: Answers;
}

function take(draft: Draft, { blank, target, said, answers }: Said): void {
  if (target.kind === 'reading') writeReading(draft, blank, target, said);
  else if (target.kind === 'work') writeWork(draft, blank, target.line, said);
  else if (target.kind === 'to do') writeToDo(draft, blank, target.index, said);
  else if (target.kind === 'torque') writeTorque(draft, blank, target, said);
  else if (target.kind === 'part') writePart(draft, blank, target.index, said);
  else if (target.kind === 'check') takeCheck(draft, blank, target, said, answers);
  else if (target.kind === 'spare') takeSpare(draft, blank, target, answers);
  else if (target.kind === 'honest') writeHonest(draft, blank, target.column, said);
  else if (target.kind === 'foot') writeFoot(draft, blank, target.field, said);
  else if (target.kind === 'service') writeService(draft, blank, target.service, said);
  else if (target.kind === 'minute') takeMinute(draft, blank, target, answers);
  else if (target.kind === 'number') writeNumber(draft, blank, target.name, target.turn, said);
  else if (target.kind === 'tick') writeTick(draft, blank, said);
  else remark(draft, blank, blank.id, inItsUnit(blank, said));
}

/** A bare number in a box is in the unit beside it. */
function inItsUnit({ kind, unit = '' }: Blank, said: string): string {
  if (kind !== 'value') return said;
  const read = readBoxValue(said, unit, undefined);
  return read.kind === 'refused' ? said : read.text;
}

/** Tick and value of a check are one line: written at the tick, or at the value where nothing was ticked. */
function takeCheck(
  draft: Draft,
  blank: Blank,
  target: Extract<Target, { readonly kind: 'check' }>,
  said: string,
  answers: Answers,
): void {
  if (!target.value) {
    const value = answers.get(`${blank.id}/value`)?.[0];
    writeCheck(draft, blank, target.check, { tick: said, ...(value === undefined ? {} : { value }) });
  } else if (!answers.has(blank.id.replace(/\/value$/u, ''))) writeCheck(draft, blank, target.check, { value: said });
}

/** All that was written in a row goes together, at the first blank of it that was answered. */
function takeSpare(
  draft: Draft,
  blank: Blank,
  target: Extract<Target, { readonly kind: 'spare' }>,
  answers: Answers,
): void {
  const row = new Map(
    ['off', 'on', 'part', 'fasteners', 'note'].flatMap((asked) => {
      const said = answers.get(`${draft.job.id}/${target.row}/${asked}`)?.[0];
      return said === undefined ? [] : [[asked, said] as const];
    }),
  );
  if (row.keys().next().value === target.asked) writeSpare(draft, blank, row);
}

/** The columns of a minute go together, at the first of them that was answered; what the column is called stands before its words. */
function takeMinute(
  draft: Draft,
  blank: Blank,
  target: Extract<Target, { readonly kind: 'minute' }>,
  answers: Answers,
): void {
  const row = [...answers].filter(([id]) => id.startsWith(`${target.row}/`));
  if (row[0]?.[0] !== blank.id) return;
  writeMinute(
    draft,
    blank,
    target.minute,
    row.flatMap(([id, said]) => said.map((words) => ({ column: Number(id.split('/').at(-1)), words }))),
  );
}

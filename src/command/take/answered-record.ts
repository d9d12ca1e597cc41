// A record with answers in it: what it said when they were asked gives way; of what it says by now, one wins, or both stand.
import { readDay, type Binder } from '../../build.ts';
import type { Change } from '../../entry/answer.ts';
import { judgeAnswer } from '../../entry/judge-answer.ts';
import { writeAnswers, type AnswersIn } from '../../entry/write-answers.ts';
import type { Problem } from '../../problem/problem.ts';
import type { Home } from './carried-home.ts';
import type { Matched, Met } from './match-answers.ts';

export const ways = ['form', 'record', 'both'] as const;
export type Way = (typeof ways)[number];

export interface Before {
  readonly home: Home;
  readonly text: string;
  readonly today: string;
  readonly binder: Binder;
}
export interface Answered {
  readonly text: string;
  readonly changes: readonly Change[];
  readonly problems: readonly Problem[];
  /** What there is to say of an answer at once, by its blank. */
  readonly remarks: ReadonlyMap<string, readonly string[]>;
}

/** Puts the answers in. Pure. */
export function answeredRecord(before: Before, matched: Matched, way: Way): Answered {
  const all = [...matched.fresh, ...matched.parted];
  const into = inputsOf(before, all);
  const sure = way === 'form' ? all : matched.fresh;
  const beside = way === 'both' ? matched.parted : [];
  const first = writeAnswers({ ...into, answers: sure.map(asAnswer), instead: true });
  const record = { file: before.home.file, text: first.value.text };
  const second = writeAnswers({ ...into, record, answers: beside.map(asAnswer) });
  const remarks = [...sure, ...beside].map(
    ({ blank, value }) => [blank.id, judgeAnswer(into.book, into.job, blank, value).map(({ text }) => text)] as const,
  );
  return {
    text: second.value.text,
    changes: [...first.value.changes, ...second.value.changes],
    problems: [...first.problems, ...second.problems],
    remarks: new Map(remarks),
  };
}

/** Whether an answer says anything but what the record says already, perhaps in other digits. */
export function saysMore(before: Before, met: Met): boolean {
  const alone = writeAnswers({ ...inputsOf(before, [met]), answers: [asAnswer(met)], instead: true });
  return alone.value.text !== before.text || alone.problems.length > 0;
}

function inputsOf({ home, text, today, binder }: Before, all: readonly Met[]): Omit<AnswersIn, 'answers'> {
  const day = readDay(today);
  const { job } = home;
  if (!day.ok) throw new Error('a day that is none');
  const hand = all.find(({ blank }) => blank.id === `${job.id}/foot/hand`)?.value;
  const by = hand === undefined ? {} : { hand };
  return { record: { file: home.file, text }, book: binder.book, job, sheet: home.sheets, today: day.value, ...by };
}

function asAnswer({ blank, value }: Met): { readonly blank: string; readonly value: string } {
  return { blank: blank.id, value };
}

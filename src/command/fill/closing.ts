// What is asked after the last blank, and printed nowhere: the clock, and how far the job is.
import type { Question } from './questions.ts';
import type { Session } from './session.ts';

/** Asked last; of the clock only where the record has none. */
export function closingQuestions({ job, book }: Session): readonly Question[] {
  const unit = book.records.machine.clock.at(-1)?.unit.symbol;
  const clock: readonly Question[] =
    unit === undefined || job.odometer !== undefined
      ? []
      : [one(`${job.id}/foot/odometer`, `Clock reading, in ${unit}`)];
  return [...clock, one(`${job.id}/foot/state`, 'How far it is: d done, u under way, p put aside, or waiting for …')];
}

function one(id: string, asks: string): Question {
  return { kind: 'one', blank: { id, kind: 'text', asks, singly: true } };
}

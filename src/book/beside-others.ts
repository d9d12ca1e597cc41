// What of one machine is laid beside the other machines of its workshop: its names, its numbers, and the parts that came or went.
import type { Place } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import type { StampedNumber } from '../records/model.ts';
import type { Book } from './book.ts';

/** A part that came from another machine or went to one, as this machine’s record tells it. */
export interface MovedPart {
  readonly part: string;
  readonly at: Place;
  readonly day: Day;
  /** Id of the record. */
  readonly job: string;
  readonly to?: string;
  readonly from?: string;
}

/** One machine of a workshop, as much as is laid beside the others: plain data, small beside its book. */
export interface OneOfThem {
  /** Name of its folder. */
  readonly folder: string;
  /** Its machine.yaml, as problems name it. */
  readonly file: string;
  readonly name: string;
  readonly model: string;
  readonly numbers: readonly Pick<StampedNumber, 'name' | 'stamped'>[];
  readonly moved: readonly MovedPart[];
}

/** What of a book is laid beside the books of other machines. */
export function besideOthers(folder: string, { records, parts }: Pick<Book, 'records' | 'parts'>): OneOfThem {
  const { file, name, model, numbers } = records.machine;
  return {
    folder,
    file,
    name,
    model,
    numbers: numbers.map((one) => ({ name: one.name, stamped: one.stamped })),
    moved: parts.flatMap(({ job, part }): readonly MovedPart[] => {
      const { movedTo: to, movedFrom: from } = part;
      if (to === undefined && from === undefined) return [];
      const told = { part: part.part, at: part.at, day: job.date.from, job: job.id };
      return [{ ...told, ...(to === undefined ? {} : { to }), ...(from === undefined ? {} : { from }) }];
    }),
  };
}

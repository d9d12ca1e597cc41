// What of one machine is laid beside the other machines of its workshop: its names, its numbers, and the parts that came or went.
import type { Place } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import type { Money } from '../quantity/money.ts';
import type { PartEntry, StampedNumber } from '../records/model.ts';
import type { Book } from './book.ts';
import { plainName } from './names.ts';

/** A part that came from another machine or went to one, as this machine’s record tells it. */
export interface MovedPart {
  readonly part: string;
  readonly at: Place;
  readonly day: Day;
  /** Id of the record. */
  readonly job: string;
  readonly to?: string;
  readonly from?: string;
  /** What it was set at, as it was written. */
  readonly worth?: Money;
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
    moved: movedParts({ parts }),
  };
}

/** Every part that came or went, in the order of the records. */
export function movedParts({ parts }: Pick<Book, 'parts'>): readonly MovedPart[] {
  return parts.flatMap(({ job, part }): readonly MovedPart[] => {
    const { movedTo: to, movedFrom: from } = part;
    if (to === undefined && from === undefined) return [];
    const worth = worthOf(part);
    return [
      {
        part: part.part,
        at: part.at,
        day: job.date.from,
        job: job.id,
        ...(to === undefined ? {} : { to }),
        ...(from === undefined ? {} : { from }),
        ...(worth === undefined ? {} : { worth }),
      },
    ];
  });
}

/** A price beside `moved from` was not paid here, so it says what the part was set at. */
function worthOf({ worth, price, movedFrom }: PartEntry): Money | undefined {
  return worth ?? (movedFrom === undefined ? undefined : price);
}

/** The machine that a record means by a name: its folder, its name or its model, where only one has it. */
export function machineNamed(machines: readonly OneOfThem[]): (said: string) => OneOfThem | undefined {
  const byName = new Map<string, OneOfThem | 'several'>();
  for (const one of machines) {
    for (const word of new Set([one.folder, one.name, one.model].map(plainName))) {
      byName.set(word, byName.has(word) ? 'several' : one);
    }
  }
  return (said) => {
    const found = byName.get(plainName(said));
    return found === 'several' ? undefined : found;
  };
}

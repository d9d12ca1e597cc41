// Which sheets this machine has, and what each is called: one for the machine, one for each planned job, or one for each record.
import type { Book, JobPlan } from '../../book/book.ts';
import type { SheetDefinition } from '../../records/content-model.ts';
import type { Job } from '../../records/model.ts';
import { appliesTo } from '../../book/applies.ts';

export interface NamedSheet {
  readonly id: string;
  readonly title: string;
  readonly definition: SheetDefinition;
  readonly job?: Job;
  readonly plan?: JobPlan;
}

function forPlan(definition: SheetDefinition, plan: JobPlan): NamedSheet {
  const { job } = plan;
  return { id: `${definition.id}-${job.id}`, title: `${definition.title}: ${job.title}`, definition, job, plan };
}

function forJob(definition: SheetDefinition, job: Job): NamedSheet {
  return { id: `${definition.id}-${job.id}`, title: `${definition.title}: ${job.title}`, definition, job };
}

/** Whether a sheet is made only when it is asked for by its name. */
export function waits({ asked = 'no' }: SheetDefinition, { copy }: Book): boolean {
  return asked === 'yes' || (asked === 'handover' && copy === undefined);
}

/**
 * Every sheet of a book, in the order of the definitions; what does not apply to the machine is not made, and what is made only
 * when it is asked for comes with `asked`.
 */
export function sheetsOf(book: Book, asked = false): readonly NamedSheet[] {
  const fitting = book.content.sheets.filter(
    (one) => (asked || !waits(one, book)) && appliesTo(one.applies, book.records.machine.features),
  );
  return fitting.flatMap((definition): readonly NamedSheet[] => {
    if (definition.per === 'planned job')
      return book.plans
        .filter(({ job }) => definition.notFor?.includes(job.kind) !== true)
        .map((plan) => forPlan(definition, plan));
    if (definition.per === 'job') return book.records.jobs.map((job) => forJob(definition, job));
    return [{ id: definition.id, title: definition.title, definition }];
  });
}

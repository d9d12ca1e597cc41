// Which sheets this machine has, and what each is called: one for the machine, one for each planned job, or one for each record.
import type { Book, JobPlan } from '../../book/book.ts';
import type { SheetDefinition } from '../../records/content-model.ts';
import type { Job } from '../../records/model.ts';
import { appliesTo } from '../../book/applies.ts';
import { plannedLines } from '../../book/planned-lines.ts';

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

/** What a view has nothing to say of; nobody prints a leaf for a sentence that there is nothing. */
const silent: Readonly<Record<string, (book: Book, plan: JobPlan) => boolean>> = {
  assembly: (book, { job, procedures }) => procedures.length === 0 && plannedLines(book, job).back.length === 0,
  measuring: (_, { blanks }) => blanks.length === 0,
};

function isEmpty(book: Book, { views }: SheetDefinition, plan: JobPlan): boolean {
  return views.some(({ view }) => silent[view]?.(book, plan) === true);
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
        .filter((plan) => definition.notFor?.includes(plan.job.kind) !== true && !isEmpty(book, definition, plan))
        .map((plan) => forPlan(definition, plan));
    if (definition.per === 'job') return book.records.jobs.map((job) => forJob(definition, job));
    return [{ id: definition.id, title: definition.title, definition }];
  });
}

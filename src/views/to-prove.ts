// What a planned job undoes and what must be proved after it, with ticks that its own record keeps: no id is copied by hand.
import { askedUnit } from '../book/asked-unit.ts';
import { checkId } from '../book/blank-ids.ts';
import type { CheckState, JobPlan } from '../book/book.ts';
import { plainName, withoutSide } from '../book/names.ts';
import type { ChecklistBlock } from '../sheet/sheet.ts';
import { heading, paragraphs, stack } from './wording/blocks.ts';
import { cautionNamed } from './wording/caution.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const toProve = defineView({
  id: 'to-prove',
  purpose: 'The checks of the hold points that a planned job undoes, to be proved after it.',
  needs: 'job',
  options: [],
  blocks: (context) => {
    const { plan, book, say } = context;
    if (plan === undefined) return [];
    const touched = touchedBy(plan);
    const undone = book.holds.flatMap((hold) => hold.checks).filter((state) => isUndone(state, touched));
    const once = undone.filter(({ check }, at) => undone.findIndex((one) => one.check.id === check.id) === at);
    if (once.length === 0) return [];
    return stack(
      heading(2, say('To be proved after it'), 'to-prove'),
      paragraphs(say('This work moves what these look at. Each is looked at anew, and ticked by whoever looked.')),
      { type: 'checklist', items: once.map((state, at) => item(context, state, once[at - 1])) },
    );
  },
});

/** Names of all that the job moves: parts, fasteners, settings, and what its procedures say besides. */
function touchedBy({ job, procedures }: JobPlan): ReadonlySet<string> {
  const steps = procedures.flatMap((one) => [...one.steps, ...one.assembly]);
  const things = [
    ...steps.flatMap((step) => [...step.off, ...step.fasteners, ...step.set]),
    ...procedures.flatMap((one) => one.disturbs),
    ...[...job.work, ...(job.toDo ?? [])].map((entry) => entry.thing),
  ];
  return new Set(things.map(plainName));
}

function isUndone({ check, state }: CheckState, touched: ReadonlySet<string>): boolean {
  if (state === 'not for this machine' || state === 'each time') return false;
  return check.undoneBy.some((thing) => touched.has(plainName(thing)) || touched.has(withoutSide(plainName(thing))));
}

function item(
  context: ViewContext,
  { check }: CheckState,
  before: CheckState | undefined,
): ChecklistBlock['items'][number] {
  const { job } = context;
  const own = job?.state === 'planned' ? undefined : job?.checks.find((one) => one.check === check.id);
  const caution =
    check.caution === undefined || check.caution === before?.check.caution
      ? undefined
      : cautionNamed(context, check.caution);
  return {
    id: checkId(job?.id ?? '', check.id),
    text: ours(context, check.at, check.text),
    singly: true,
    ...(own === undefined ? {} : { done: true }),
    ...(check.unit === undefined
      ? {}
      : {
          blank: {
            unit: askedUnit(context.book.records.machine.units, check.unit),
            ...(own?.value === undefined ? {} : { written: own.value }),
          },
        }),
    ...(caution === undefined ? {} : { caution: { grade: caution.grade, text: caution.text } }),
  };
}

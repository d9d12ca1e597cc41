// The head of a planned job: what it is for, what must be done before, the tools, and the cautions of its procedures.
import type { Block } from '../sheet/sheet.ts';
import type { Procedure } from '../records/content-model.ts';
import type { Job, PartEntry } from '../records/model.ts';
import type { Cell } from '../sheet/sheet.ts';
import { beforeId, hereId } from '../book/blank-ids.ts';
import { formatDecimal } from '../quantity/decimal.ts';
import { partCells, partColumns } from './job/parts.ts';
import { column, fact, joined, paragraphs, row, stack } from './wording/blocks.ts';
import { cautionNamed } from './wording/caution.ts';
import { count } from './wording/count.ts';
import { spanText } from './wording/day.ts';
import { ours } from './wording/ours.ts';
import { isTicked } from './wording/written.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const planHead = defineView({
  id: 'plan-head',
  purpose: 'What a planned job is for, what comes before it, its tools and its cautions.',
  needs: 'job',
  options: [],
  blocks: (context) => {
    const { job, plan, say } = context;
    if (job === undefined) return [];
    const procedures = plan?.procedures ?? [];
    return stack(
      {
        type: 'facts',
        across: 1,
        facts: [
          ...fact(say('For'), job.purpose),
          ...fact(
            say('Planned for'),
            joined(
              [
                spanText(job.date),
                ...procedures.map((one) => ours(context, one.at, one.title)),
                minutes(context, procedures),
              ],
              '; ',
            ),
          ),
          ...fact(
            say('Tools'),
            [...new Set(procedures.flatMap((one) => one.tools.map((tool) => ours(context, one.at, tool))))].join(', '),
          ),
          ...fact(say('Next after it'), job.next),
        ],
      },
      cautions(context, procedures),
      before(context, procedures),
      partsNeeded(context, job),
    );
  },
});

function minutes({ say }: ViewContext, procedures: readonly Procedure[]): string | undefined {
  const sum = procedures.reduce((total, one) => total + (one.minutes ?? 0), 0);
  if (sum === 0) return undefined;
  if (sum < 90) return `${say('about')} ${count(sum)}\u00a0min`;
  const halves = Math.round(sum / 30);
  const hours = formatDecimal(halves / 2, halves % 2);
  return `${say('about')} ${hours}\u00a0h`;
}

/** Cautions of the whole job; those that a step carries stand at that step and not in a preface. */
function cautions(context: ViewContext, procedures: readonly Procedure[]): readonly Block[] {
  const steps = procedures.flatMap((one) => [...one.steps, ...one.assembly]);
  const atSteps = new Set(steps.flatMap((step) => step.cautions));
  const ids = new Set(procedures.flatMap((one) => one.cautions).filter((id) => !atSteps.has(id)));
  return [...ids].flatMap((id) => cautionNamed(context, id) ?? []);
}

function before(context: ViewContext, procedures: readonly Procedure[]): readonly Block[] {
  const { job } = context;
  const items = procedures.flatMap((one) =>
    one.before.map((text, index) => ({
      ...beforeItem(context, beforeId(job?.id ?? '', one.id, index + 1)),
      text: ours(context, one.at, text),
    })),
  );
  if (items.length === 0) return [];
  return [paragraphs([{ kind: 'strong', text: context.say('Before you begin') }]), { type: 'checklist', items }];
}

/** What must be so before the work is a line of safety: ticked by itself. */
function beforeItem(
  context: ViewContext,
  id: string,
): { readonly id: string; readonly singly: true; readonly done: boolean } {
  return { id, singly: true, done: isTicked(context, id) };
}

/** Parts that the job waits for or has ready, each with a tick. */
function partsNeeded({ say }: ViewContext, job: Job): readonly Block[] {
  const needed = job.parts.filter((part) => part.state !== 'returned' && part.state !== 'fitted');
  if (needed.length === 0) return [];
  return [
    {
      type: 'table',
      caption: say('Parts needed'),
      columns: [column(say('Here'), 1, 'centre'), ...partColumns(say, needed)],
      rows: needed.map((part) => row(hereTick(say, job, part), ...partCells(say, part, needed))),
      empty: '',
      use: 'read',
    },
  ];
}

function hereTick(say: ViewContext['say'], job: Job, part: PartEntry): Cell {
  const asks = `${part.part}, ${say('here')}`;
  return { box: 'tick', id: hereId(job.id, part.part), done: part.state === 'here', about: { asks } };
}

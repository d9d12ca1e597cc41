// The head of a planned job: what it is for, what must be done before, the tools, and the cautions of its procedures.
import type { Block } from '../sheet/sheet.ts';
import type { Procedure } from '../records/content-model.ts';
import type { PartEntry } from '../records/model.ts';
import { formatDecimal } from '../quantity/decimal.ts';
import { partCells, partColumns } from './job/parts.ts';
import { column, fact, heading, row, stack } from './wording/blocks.ts';
import { cautionNamed } from './wording/caution.ts';
import { count } from './wording/count.ts';
import { spanText } from './wording/day.ts';
import { ours } from './wording/ours.ts';
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
        across: 2,
        facts: [
          ...fact(say('For'), job.purpose),
          ...fact(say('Planned for'), spanText(job.date)),
          ...fact(say('Procedures'), procedures.map((one) => ours(context, one.at, one.title)).join('; ')),
          ...fact(say('Time'), minutes(context, procedures)),
          ...fact(
            say('Tools'),
            procedures.flatMap((one) => one.tools.map((tool) => ours(context, one.at, tool))).join(', '),
          ),
          ...fact(say('Next after it'), job.next),
        ],
      },
      cautions(context, procedures),
      before(context, procedures),
      partsNeeded(context, job.parts),
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
  const items = procedures.flatMap((one) =>
    one.before.map((text, index) => ({
      id: `before/${one.id}/${count(index + 1)}`,
      text: ours(context, one.at, text),
    })),
  );
  if (items.length === 0) return [];
  return [heading(2, context.say('Before you begin'), 'before'), { type: 'checklist', items }];
}

/** Parts that the job waits for or has ready, each with a tick. */
function partsNeeded({ say }: ViewContext, parts: readonly PartEntry[]): readonly Block[] {
  const needed = parts.filter((part) => part.state !== 'returned' && part.state !== 'fitted');
  if (needed.length === 0) return [];
  return [
    heading(2, say('Parts needed'), 'parts-needed'),
    {
      type: 'table',
      columns: [column(say('Here'), 1, 'centre'), ...partColumns(say, needed)],
      rows: needed.map((part) => row({ box: 'tick', done: part.state === 'here' }, ...partCells(say, part, needed))),
      empty: '',
      use: 'work',
    },
  ];
}

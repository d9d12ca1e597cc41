// Roadworthiness: the common core, then the rules that this machine is under, with official numbers, citation and day; never a verdict.
import type { Form } from '../records/content-model.ts';
import type { Block } from '../sheet/sheet.ts';
import { anchor, fact, heading, lines, paragraphs, stack } from './wording/blocks.ts';
import { dayText, looseDateText } from './wording/day.ts';
import { formBlocks, formNamed } from './wording/form.ts';
import { headFigures } from './figures/engine.ts';
import { featureText } from './wording/feature.ts';
import { inlineFigure } from './wording/figure.ts';
import { jobNamed } from './wording/job.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const choice = { write: ['put right, date'], numbered: false } as const;

export const roadRules = defineView({
  id: 'road-rules',
  purpose: 'The common core of roadworthiness and the lines of the chosen road rules that are for this machine.',
  needs: 'machine',
  options: [],
  blocks: (context) => stack(head(context), core(context), chosen(context), advised(context)),
});

/** What decides which lines are asked for: date of first use, displacement, lamps; and that others decide. */
function head(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const { machine } = book.records;
  const displacement = headFigures(book).find(({ id }) => id === 'displacement');
  return [
    {
      type: 'facts',
      across: 3,
      facts: [
        ...fact(say('First used'), machine.firstUse === undefined ? say('not known') : looseDateText(machine.firstUse)),
        ...fact(
          say('Road rules'),
          machine.roadRules ?? say('none chosen in machine.yaml: only the common core is printed'),
        ),
        ...fact(say('Lamps'), say(featureText(machine.features, 'lamps'))),
        ...fact(say('Battery'), say(featureText(machine.features, 'battery'))),
        ...(displacement === undefined
          ? []
          : fact(say('Displacement'), [inlineFigure(displacement.figure, displacement.id)])),
      ],
    },
    paragraphs(
      say(
        'This sheet says what is looked at, not whether it passes. The authority, the tester and the text in force decide; whoever rides it answers for it.',
      ),
    ),
  ];
}

function formOnSheet(context: ViewContext, form: Form): readonly Block[] {
  return [heading(2, ours(context, form.at, form.title), anchor(form.id)), ...formBlocks(context, form, choice)];
}

function core(context: ViewContext): readonly Block[] {
  const form = formNamed(context, 'roadworthiness-core');
  return form === undefined ? [] : formOnSheet(context, form);
}

/** `us-pa` takes the lines of `us` and its own. */
function isUnder(rules: string, form: Form): boolean {
  const wanted = form.roadRules?.toLowerCase();
  return wanted !== undefined && (rules === wanted || rules.startsWith(`${wanted}-`));
}

function chosen(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const rules = book.records.machine.roadRules?.toLowerCase();
  if (rules === undefined) return [];
  const forms = (book.content.forms ?? []).filter((form) => isUnder(rules, form));
  if (forms.length === 0)
    return [
      lines([
        `${say('No lines are kept here for the road rules')} “${rules}”: ${say('ask the local authority for them.')}`,
      ]),
    ];
  return forms.flatMap((form) => formOnSheet(context, form));
}

/** What was advised and is still open: an advisory is answered before the next look. */
function advised({ book, say }: ViewContext): readonly Block[] {
  const open = book.records.jobs.flatMap((job) =>
    job.findings
      .filter(({ became, saw }) => /^(open|deferred|not done)\b/.test(became) || (/^advis/i.test(saw) && became === ''))
      .map((finding) => ({ job, finding })),
  );
  if (open.length === 0) return [];
  return [
    heading(2, say('Open in the records'), 'open-in-the-records'),
    {
      type: 'checklist',
      items: open.map(({ job, finding }) => ({
        id: `road/${job.id}/${finding.id}`,
        text: finding.saw,
        why: jobNamed(job),
        state: finding.until === undefined ? say(finding.weight) : `${say(finding.weight)} ${dayText(finding.until)}`,
      })),
    },
  ];
}

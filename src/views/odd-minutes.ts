// Odd minutes: what stands in no job and is small enough to need no plan.
import { calledFor } from '../book/plan/called-for.ts';
import { oddMinutes as oddMinutesOf } from '../book/plan/odd-minutes.ts';
import { notOnText } from '../book/not-on-it.ts';
import type { ChecklistBlock, Text } from '../sheet/sheet.ts';
import { heading, lines, paragraphs, stack } from './wording/blocks.ts';
import { reasonText } from './wording/called-for.ts';
import { withDates } from './wording/day.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** So many of each are enough for an evening. */
const most = 6;

export const oddMinutes = defineView({
  id: 'odd-minutes',
  purpose: 'First steps that others wait for, looks that keep a hold point held, services that press: all in no job.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { say } = context;
    const all = items(context);
    const later = putOff(context);
    if (all.length === 0 && later.length === 0) return [];
    return stack(
      heading(2, say('In odd minutes, in no job'), 'odd-minutes'),
      all.length === 0 ? undefined : { type: 'checklist', items: all },
      later.length === 0
        ? undefined
        : [paragraphs(`${say('Put off, since something is off that it needs')}:`), lines(later)],
    );
  },
});

function items(context: ViewContext): ChecklistBlock['items'] {
  const { firstSteps, looks, due } = oddMinutesOf(context.book);
  const { say } = context;
  return [
    ...firstSteps.slice(0, most).map(({ step, waiting: [first] }) => ({
      id: `odd/${step.id}`,
      text: ours(context, step.at, step.step),
      ...(first === undefined ? {} : { why: ours(context, first.at, first.why) }),
    })),
    ...(looks?.checks ?? []).slice(0, most).map(({ check }) => ({
      id: `odd/${check.id}`,
      text: ours(context, check.at, check.text),
      why: looks === undefined ? '' : ours(context, looks.point.at, looks.point.title),
    })),
    ...tightened(context),
    ...due.slice(0, most).map(({ service, state }) => ({
      id: `odd/${service.id}`,
      text: `${ours(context, service.at, service.item)}: ${say(service.action)}`,
      why: say(state),
    })),
  ];
}

/** What heat or a ride calls to be tightened again, cold; what the schedule asks stands with the other services. */
function tightened({ book, say }: ViewContext): ChecklistBlock['items'] {
  return calledFor(book).flatMap(({ row, reason }) => {
    if (row === undefined || reason.why === 'due' || reason.why === 'going together') return [];
    const text = `${row.fastener.name}: ${reason.why === 'run hot since' ? say('tighten again, stone cold') : say('see whether still tight')}`;
    return [{ id: `odd/${row.fastener.id}`, text, why: reasonText(say, reason) }];
  });
}

function putOff(context: ViewContext): readonly Text[] {
  const { putOff: later } = oddMinutesOf(context.book);
  return later.map(({ text, at, line }) => [`${ours(context, at, text)}: ${withDates(context.say(notOnText(line)))}`]);
}

// What is due: overdue first, with what was done last, which bound comes first, and the next date and figure on the clock.
import type { DueLine, DueState } from '../book/book.ts';
import { dueInBooksUnit } from '../book/due/due-figures.ts';
import { unknownHistory } from '../book/due/sentences.ts';
import { inUnit, of } from '../quantity/quantity.ts';
import type { Inline, Row, Text } from '../sheet/sheet.ts';
import { column, filledOnly, joined, lines, row } from './wording/blocks.ts';
import { countOf } from './wording/count.ts';
import { dayText, withDates } from './wording/day.ts';
import { inlineFigure } from './wording/figure.ts';
import { jobTitle } from './wording/job.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** The order on paper, and the word of each group. */
export const dueGroups: readonly { readonly state: DueState; readonly word: string }[] = [
  { state: 'overdue', word: 'Overdue' },
  { state: 'due', word: 'Due now' },
  { state: 'not known', word: 'Never recorded here' },
  { state: 'coming', word: 'Coming' },
  { state: 'at its limit', word: 'Renewed at its limit, whenever that comes' },
  { state: 'not due', word: 'Not due' },
  { state: 'done once', word: 'Once only, done' },
];

/** Lines that no record says were ever done, and that press or cannot be judged for it. */
export function neverRecorded(due: readonly DueLine[]): readonly DueLine[] {
  const pressing: ReadonlySet<DueState> = new Set(['overdue', 'due', 'not known']);
  return due.filter((one) => one.lastDone === undefined && pressing.has(one.state));
}

/** What can wait for the whole list where only what is due now or soon is shown. */
const later: ReadonlySet<DueState> = new Set(['not due', 'done once']);

export const serviceDue = defineView({
  id: 'service-due',
  purpose: 'The due list: overdue first; by distance, months or running hours, whichever comes first.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => {
    const { book, say } = context;
    const why = context.options['of'] === 'why';
    const groups = context.options['of'] === 'soon' ? dueGroups.filter(({ state }) => !later.has(state)) : dueGroups;
    const rest = book.due.filter((one) => !groups.some(({ state }) => state === one.state)).length;
    return [
      filledOnly({
        type: 'table',
        columns: [
          column(say('Item, what to do'), 5),
          column(say('Every'), 3),
          column(say('Last done'), 5),
          column(say('Due'), 5),
          ...(why ? [column(say('At your pace'), 4)] : []),
        ],
        rows: groups.flatMap(({ state, word }) => {
          const those = book.due.filter((one) => one.state === state);
          const silent = those.filter(isSilent);
          return [
            ...group(
              context,
              say(word),
              those.filter((one) => !isSilent(one)),
              why,
            ),
            ...group(context, `${say(word)}: ${say(unknownCounts)}`, silent, why),
          ];
        }),
        empty: say(
          rest > 0
            ? 'Nothing is due or coming.'
            : 'No schedule is recorded for this machine. What its book asks for goes under services, in a file of maker/.',
        ),
        use: 'read',
      }),
      ...(rest > 0
        ? [
            lines([
              `${countOf(rest, say('item'), say('items'))} ${say('not due yet, or done for good: see “Service due”')}`,
            ]),
          ]
        : []),
    ];
  },
});

/** What is said of many lines at once stands above them, and not in each. */
const unknownCounts = 'no record of it, and an unknown history counts as due';

function isSilent({ why, lastDone: last }: DueLine): boolean {
  return last === undefined && why === unknownHistory['due now'];
}

function group(context: ViewContext, word: string, due: readonly DueLine[], why: boolean): readonly Row[] {
  if (due.length === 0) return [];
  const band: Row = { kind: 'band', text: [{ kind: 'strong', text: word }] };
  return [band, ...due.map((one) => dueRow(context, one, why))];
}

function dueRow(context: ViewContext, due: DueLine, why: boolean): Row {
  const { service } = due;
  const { say } = context;
  const basis = service.basis === 'general' ? say('general, not the maker’s') : undefined;
  const item: Text = [{ kind: 'strong', text: ours(context, service.at, service.item) }, `: ${say(service.action)}`];
  const first = [joined([item, basis]), unbroken(service.every?.text ?? '')] as const;
  if (isSilent(due)) return row(...first, '', '', ...(why ? [''] : []));
  return row(
    ...first,
    why ? joined([lastDone(context, due), lastRecord(due)], ', ') : lastDone(context, due),
    dueCell(context, due, why),
    ...(why ? [atPace(context.say, due)] : []),
  );
}

/** Day and distance with what is left of each; on the screen also what presses besides, on paper where there is nothing else. */
function dueCell(context: ViewContext, due: DueLine, why: boolean): Text {
  const known = due.dueDay !== undefined || due.dueAt !== undefined;
  if (!known) return withDates(due.why);
  return joined([
    dueText(context, due),
    left(context.say, due),
    ...(why ? due.besides.map((one) => withDates(context.say(one))) : []),
  ]);
}

/** `about 19 April 2027, between 25 March 2027 and 24 September 2027`: when the distance is reached as it was ridden until now. */
function atPace(say: (words: string) => string, { projected, left: rest }: DueLine): string {
  // Once its day is past, a day on which its distance would come says nothing.
  if (projected === undefined || (rest?.days ?? 0) < 0) return '';
  const { early, likely, late } = projected;
  const span =
    late === undefined
      ? `${say('not before')} ${dayText(early)}`
      : `${say('between')} ${dayText(early)} ${say('and')} ${dayText(late)}`;
  return `${say('about')} ${dayText(likely)}, ${span}`;
}

/** Numbers keep to their units at the end of a line. */
export function unbroken(text: string): string {
  return text.replaceAll(/(\d) (?=\p{L})/gu, '$1\u00a0');
}

/** By how much a line is past its day or its distance; nothing where it is only due. */
export function overBy(say: (words: string) => string, due: DueLine): Text {
  const { days, distance } = due.left ?? {};
  const past = {
    ...(days !== undefined && days < 0 ? { days } : {}),
    ...(distance !== undefined && distance.quantity < 0 ? { distance } : {}),
  };
  return left(say, { ...due, left: past });
}

/** How much is left of the time and of the distance, or how much it is over. */
function left(say: (words: string) => string, { left: rest }: DueLine): Text {
  const days = rest?.days;
  const past = days !== undefined && days < 0;
  const time =
    days === undefined
      ? undefined
      : `${countOf(Math.abs(days), say('day'), say('days'))} ${say(past ? 'over' : 'left')}`;
  const distance = rest?.distance;
  if (distance === undefined) return time ?? '';
  const over = distance.quantity < 0;
  const size = over
    ? { ...distance, quantity: of(Math.abs(inUnit(distance.quantity, distance.unit)), distance.unit) }
    : distance;
  return joined([time, [inlineFigure(size), ` ${say(over ? 'over' : 'left')}`]], ', ');
}

/** The record of the last time, leading to it. */
function lastRecord(due: DueLine): Text | undefined {
  return due.lastDone === undefined ? undefined : [jobTitle(due.lastDone.job)];
}

/** When a service was last done and on what distance. */
export function lastDone({ say }: ViewContext, due: DueLine): Text {
  const last = due.lastDone;
  if (last === undefined) return say('not recorded');
  const distance: Text | undefined =
    last.machineDistance === undefined ? undefined : [inlineFigure(last.machineDistance)];
  return joined([dayText(last.day), distance], ', ');
}

/** ` (8515 km)`: the same point as the book counts it, where it counts in another unit; of the machine, where its clock shows another distance. */
function inBrackets(say: (words: string) => string, due: DueLine): readonly Inline[] {
  const figure = dueInBooksUnit(due.service, due.dueAt);
  if (figure === undefined) return [];
  const whose = due.dueOnClock?.quantity === due.dueAt?.quantity ? '' : ` ${say('of the machine')}`;
  return [' (', inlineFigure(figure), `${whose})`];
}

/** The day and the figure on the clock fitted now; what is left of each stands in the sentence beside it. */
export function dueText({ say }: ViewContext, due: DueLine): Text {
  const onClock = due.dueOnClock ?? due.dueAt;
  const distance: readonly Inline[] | undefined =
    onClock === undefined
      ? undefined
      : [
          `${say('at')} `,
          inlineFigure(onClock, `due-${due.service.id}`),
          due.dueOnClock === undefined ? ` ${say('of the machine')}` : ` ${say('on the clock')}`,
          ...inBrackets(say, due),
        ];
  const day = due.dueDay === undefined ? undefined : dayText(due.dueDay);
  return joined([day, distance], ` ${say('or')} `);
}

// How the machine stands today, what presses first: what is off, held, due, to look at, next; then what is clear.
import type { DueLine, HoldState } from '../book/book.ts';
import { readingsSince } from '../book/readings-since.ts';
import type { Block, Inline, Text } from '../sheet/sheet.ts';
import { fact, factOfLines, heading, joined, stack } from './wording/blocks.ts';
import { count, countOf } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { neverRecorded, overBy } from './service-due.ts';
import { ours } from './wording/ours.ts';
import { recordsUpTo } from './wording/records-up-to.ts';
import { workThing } from './wording/work.ts';
import { nextSheets } from './next-sheets.ts';
import { partsIn } from './still-holds.ts';
import { gravestFindings } from './known-findings.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** So many things are named; of more it is said how many. */
const mostNamed = 6;

export const standing = defineView({
  id: 'standing',
  purpose:
    'How the machine stands today: what is off, held, due, to look at, next; `sheets` names the sheets to print next as well.',
  needs: 'machine',
  options: ['sheets'],
  blocks: (context) => stack(heading(2, context.say('How it stands'), 'how-it-stands'), facts(context)),
});

function lead(text: string, page: string): readonly Inline[] {
  return [{ kind: 'link', text, to: `page:${page}` }];
}

/** A line for each, led to its page; `nothing` where there is none, `and 3 more` where they are many. */
function listed({ say }: ViewContext, all: readonly Named[], page: string): readonly Text[] {
  if (all.length === 0) return [lead(say('nothing, by the records'), page)];
  const rest = all.length - mostNamed;
  return [
    ...all.slice(0, mostNamed).map(({ name, how }) => joined([lead(name, page), how], ', ')),
    ...(rest > 0 ? [lead(`${say('and')} ${count(rest)} ${say('more')}`, page)] : []),
  ];
}

/** A thing and how it stands with it. */
interface Named {
  readonly name: string;
  readonly how?: Text;
}

function facts(context: ViewContext): Block {
  const { book, say, options } = context;
  const { off, due } = book;
  const unknown = neverRecorded(due).length;
  const open = off.open.map((line) => ({ name: workThing(book, line.entry), how: say(line.state) }));
  return {
    type: 'facts',
    facts: [
      ...factOfLines(say('Off, loose, empty or open'), listed(context, open, 'off.html')),
      ...factOfLines(
        say('Held'),
        points(context, (hold) => !hold.clear),
      ),
      ...factOfLines(say('Open findings'), findings(context)),
      ...factOfLines(
        say('Due or overdue'),
        due.length === 0
          ? [lead(say('not known: no schedule is recorded'), 'service.html')]
          : listed(context, pressing(context), 'service.html'),
      ),
      ...fact(say('To look at'), toLookAt(context)),
      ...factOfLines(say('Measure again'), named(context, toMeasureAgain(context), 'measurements.html')),
      ...factOfLines(say('Ordered'), named(context, partsIn(book, 'ordered'), 'parts.html')),
      ...fact(say('Next'), next(context)),
      ...factOfLines(say('Planned'), options['sheets'] === 'yes' ? [] : planned(context)),
      ...factOfLines(say('Planned, and sheets to print'), options['sheets'] === 'yes' ? nextSheets(context) : []),
      ...factOfLines(
        say('Clear on the records'),
        points(context, (hold) => hold.clear),
      ),
      ...fact(
        say('Never recorded here'),
        unknown === 0 ? undefined : lead(countOf(unknown, say('service'), say('services')), 'service.html'),
      ),
      ...fact(say('Records up to'), recordsUpTo(book)),
    ],
  };
}

/** How many queries the records raise. */
function toLookAt({ book, say }: ViewContext): Text {
  const { length } = book.queries;
  const words =
    length === 0
      ? say('nothing, by the records')
      : countOf(length, say('thing in the records'), say('things in the records'));
  return lead(words, 'problems.html');
}

/** As `listed`, and no line at all where there is nothing. */
function named(context: ViewContext, names: readonly string[], page: string): readonly Text[] {
  const all = names.map((name) => ({ name }));
  return all.length === 0 ? [] : listed(context, all, page);
}

/** What is overdue, longest first, then what is due; what nobody recorded comes last. */
function pressing(context: ViewContext): readonly Named[] {
  const { book, say } = context;
  const those = book.due.filter((one) => one.state === 'overdue' || one.state === 'due');
  return those.toSorted(moreUrgent).map((one) => {
    const { service } = one;
    return {
      name: ours(context, service.at, service.item),
      how: joined([say(service.action), overBy(say, one)], ', '),
    };
  });
}

function moreUrgent(one: DueLine, other: DueLine): number {
  return urgency(one) - urgency(other) || (one.left?.days ?? 0) - (other.left?.days ?? 0);
}

function urgency({ state, lastDone }: DueLine): number {
  if (lastDone === undefined) return 2;
  return state === 'overdue' ? 0 : 1;
}

/** Readings that later work has undone. */
function toMeasureAgain({ book }: ViewContext): readonly string[] {
  return readingsSince(book)
    .filter(({ undone }) => undone !== undefined)
    .map(({ series }) => series.name);
}

/** Every open finding that stops the machine or limits its use; nothing where there is none. */
function findings({ book, say }: ViewContext): readonly Text[] {
  return gravestFindings(book, say).map(({ weight, saw }): Text => [{ kind: 'strong', text: `${weight}: ` }, saw]);
}

function planned({ book }: ViewContext): readonly Text[] {
  return book.plans.map(({ job }): Text => [jobTitle(job)]);
}

/** What was written down as next, and the record that says so. */
function next({ book, say }: ViewContext): Text {
  const { off } = book;
  if (off.next === undefined) return say('not written down');
  return [`${off.next.text} (${say('written on')} ${dayText(off.next.job.date.from)}, `, jobTitle(off.next.job), ')'];
}

/** Hold points in their order; those held with how many checks are open. */
function points(context: ViewContext, wanted: (hold: HoldState) => boolean): readonly Text[] {
  const inOrder = context.book.holds.toSorted((one, other) => one.point.order - other.point.order);
  return inOrder.filter(wanted).map((hold) => pointText(context, hold));
}

function pointText(context: ViewContext, hold: HoldState): Text {
  const { say } = context;
  const asked = hold.checks.filter((check) => check.state !== 'not for this machine');
  const open = asked.filter((check) => check.state === 'not proved' || check.state === 'undone').length;
  const title = lead(ours(context, hold.point.at, hold.point.title), `hold-points.html#${hold.point.id}`);
  if (hold.clear) return title;
  const why =
    open === 0 ? say('held until every record can be read') : countOf(open, say('check open'), say('checks open'));
  return [...title, ', ', { kind: 'strong', text: why }];
}

// How the machine stands today, what presses first: what is off, held, due, to look at, next; then what is clear.
import type { HoldState } from '../book/book.ts';
import { readingsSince } from '../book/readings-since.ts';
import type { Block, Inline, Text } from '../sheet/sheet.ts';
import { fact, heading, joined, stack } from './wording/blocks.ts';
import { count, countOf } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { neverRecorded } from './service-due.ts';
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

/** Names one after the other; `nothing` where there are none, `and 3 more` where they are many. */
function listed({ say }: ViewContext, names: readonly string[], page: string): Text {
  if (names.length === 0) return lead(say('nothing, by the records'), page);
  const rest = names.length - mostNamed;
  const more = rest > 0 ? [`${say('and')} ${count(rest)} ${say('more')}`] : [];
  return lead([...names.slice(0, mostNamed), ...more].join('; '), page);
}

function facts(context: ViewContext): Block {
  const { book, say, options } = context;
  const { off, due } = book;
  const dueNames = due
    .filter((one) => one.state === 'overdue' || one.state === 'due')
    .map(({ service }) => `${ours(context, service.at, service.item)}, ${say(service.action)}`);
  const unknown = neverRecorded(due).length;
  const open = off.open.map((line) => `${workThing(book, line.entry)}, ${say(line.state)}`);
  return {
    type: 'facts',
    facts: [
      ...fact(say('Off, loose, empty or open'), listed(context, open, 'off.html')),
      ...fact(
        say('Held'),
        points(context, (hold) => !hold.clear),
      ),
      ...fact(say('Open findings'), findings(context)),
      ...fact(
        say('Due or overdue'),
        due.length === 0
          ? lead(say('not known: no schedule is recorded'), 'service.html')
          : listed(context, dueNames, 'service.html'),
      ),
      ...fact(say('To look at'), toLookAt(context)),
      ...fact(say('Measure again'), named(context, toMeasureAgain(context), 'measurements.html')),
      ...fact(say('Ordered'), named(context, partsIn(book, 'ordered'), 'parts.html')),
      ...fact(say('Next'), next(context)),
      ...fact(say('Planned'), joined(book.plans.map(({ job }): Text => [jobTitle(job)]))),
      ...fact(say('Next sheets to print'), options['sheets'] === 'yes' ? nextSheets(context) : undefined),
      ...fact(
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
function named(context: ViewContext, names: readonly string[], page: string): Text | undefined {
  return names.length === 0 ? undefined : listed(context, names, page);
}

/** Readings that later work has undone. */
function toMeasureAgain({ book }: ViewContext): readonly string[] {
  return readingsSince(book)
    .filter(({ undone }) => undone !== undefined)
    .map(({ series }) => series.name);
}

/** Every open finding that stops the machine or limits its use; nothing where there is none. */
function findings({ book, say }: ViewContext): Text | undefined {
  const grave = gravestFindings(book, say);
  if (grave.length === 0) return undefined;
  return joined(
    grave.map(({ weight, saw }): Text => [{ kind: 'strong', text: `${weight}: ` }, saw]),
    '; ',
  );
}

/** What was written down as next, and the record that says so. */
function next({ book, say }: ViewContext): Text {
  const { off } = book;
  if (off.next === undefined) return say('not written down');
  return [`${off.next.text} (${say('written on')} ${dayText(off.next.job.date.from)}, `, jobTitle(off.next.job), ')'];
}

/** Hold points in their order; those held with how many checks are open. */
function points(context: ViewContext, wanted: (hold: HoldState) => boolean): Text {
  const inOrder = context.book.holds.toSorted((one, other) => one.point.order - other.point.order);
  return joined(
    inOrder.filter(wanted).map((hold) => pointText(context, hold)),
    '; ',
  );
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

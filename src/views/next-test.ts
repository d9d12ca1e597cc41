// The search for a fault: what is known, which causes lead in each group and why, the next tests with how, cautions and blanks.
import { diagnose, type Diagnosis, type LeadingCause, type NextTest } from '../book/faults/diagnosis.ts';
import { leading, lowerFirst, moves, reasons, seenWords, workingOf } from '../book/faults/next-words.ts';
import type { Block, Cell, Inline, Row, Text } from '../sheet/sheet.ts';
import { column, heading, lines, paragraphs, row, sentence } from './wording/blocks.ts';
import { cautionRow } from './wording/caution.ts';
import { count, countOf } from './wording/count.ts';
import { spanText, withDates, withLastDay } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { defineView, type ViewContext } from './view.ts';

/** So many tests are offered on the sheet: an evening's worth. */
const most = 5;
const mostLooks = 3;

export const nextTest = defineView({
  id: 'next-test',
  purpose: 'The likeliest faults from what was seen, and the next tests that tell most.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => {
    const found = diagnose(context.book);
    const working = context.options['of'] === 'working';
    if (found.impossible.length > 0)
      return [heading(2, context.say('What is known'), 'known'), ...impossibleBlocks(context, found)];
    return [
      heading(2, context.say('What is known'), 'known'),
      ...knownBlocks(context, found),
      heading(2, context.say('What leads, and why'), 'leads'),
      ...(found.evidence.speaks
        ? []
        : [paragraphs(context.say('Nothing seen speaks for a fault; this is what is common on such a machine.'))]),
      ...leadsBlocks(context, found, working),
      heading(2, context.say('Next, in this order'), 'next'),
      ...looksBlocks(context, found),
      ...nextBlocks(context, found),
      ...behindBlocks(context, found),
      ...heldBlocks(context, found),
      ...apartBlocks(context, found),
      paragraphs(
        context.say(
          'Several faults at once are the rule on what has stood: after every cure look at the same thing again. All strengths here are judgement, none was counted; the maker’s book goes first.',
        ),
      ),
    ];
  },
});

/** What cannot all be so, in place of any conclusion. */
function impossibleBlocks({ say }: ViewContext, { impossible }: Diagnosis): readonly Block[] {
  return [
    paragraphs(say('These cannot all be so. Look again at both before anything is concluded:')),
    lines(impossible.map(([one, other]) => `${say(seenWords(one))} — ${say('and')} — ${say(seenWords(other))}`)),
  ];
}

function knownBlocks(context: ViewContext, found: Diagnosis): readonly Block[] {
  const { say } = context;
  const seen = found.seen.filter(({ outcome }) => outcome !== undefined);
  const stops = seen.flatMap((one): readonly Block[] =>
    one.outcome?.stop === true
      ? [
          {
            type: 'caution',
            grade: 'WARNING',
            text: sentence(say(`${seenWords(one)}: ${one.outcome.means ?? 'not to be run so'}.`)),
          },
        ]
      : [],
  );
  const moved = found.groups
    .flatMap(({ causes }) => causes)
    .flatMap(({ cause, known }) =>
      known
        .filter(({ times }) => times > 1)
        .map(({ why }) => `${sentence(say(cause.cause))}? ${say('worked on since')}: ${withLastDay(why)}`),
    );
  return [
    paragraphs(
      found.standing === 'long stored'
        ? say('Taken as long stored: no run within a year is on record.')
        : say('Taken as lately running: a run within a year is on record.'),
    ),
    ...stops,
    seen.length === 0
      ? paragraphs(say('Nothing is on record that speaks for or against a fault.'))
      : lines(seen.map((one): Text => [sentence(say(seenWords(one))), ...fromRecord(one.record)])),
    ...(moved.length === 0 ? [] : [paragraphs(say('To be set or proved again:')), lines(moved)]),
  ];
}

function fromRecord(record: Diagnosis['seen'][number]['record']): readonly Inline[] {
  if (record === undefined) return [];
  const { job, words } = record;
  return job === undefined ? [` (${words})`] : [` (${words}; `, jobTitle(job), `, ${spanText(job.date)})`];
}

/** A reason that most of them share is said once above, and only another one beside its cause; arithmetic has a column. */
function leadsBlocks(context: ViewContext, found: Diagnosis, working: boolean): readonly Block[] {
  const { say } = context;
  const all = found.groups.map(({ group, causes }) => ({ group, leads: leading(found, causes) }));
  const reasonOf = (one: LeadingCause): string => withLastDay(reasons(found, one).join('; '));
  const shared = mostOf(all.flatMap(({ leads }) => leads.map(reasonOf)));
  const once = shared !== undefined && !working;
  const causeOf = (one: LeadingCause): string => {
    const named = sentence(say(one.cause.cause));
    return once && reasonOf(one) !== shared ? `${named} (${say(reasonOf(one))})` : named;
  };
  const whyOf = (one: LeadingCause): string => {
    if (!working) return say(sentence(reasonOf(one)));
    return reasonOf(one) === shared ? say(sentence(workingOf(found, one))) : withWorking(found, one, say);
  };
  const table: Block = {
    type: 'table',
    columns: [
      column(say('Cause'), 4),
      column(say('How likely'), 2),
      ...(once ? [] : [column(say('Why'), 5)]),
      column(say('Usual cure'), 4),
    ],
    rows: all.flatMap(({ group, leads }): readonly Row[] => {
      if (leads.length === 0) return [];
      return [
        { kind: 'band', text: [{ kind: 'strong', text: sentence(say(group)) }] },
        ...leads.map((one) => row(causeOf(one), say(one.word), ...(once ? [] : [whyOf(one)]), say(one.cause.cure))),
      ];
    }),
    empty: say('No cause leads.'),
    use: 'read',
  };
  const before = [
    ...(shared === undefined ? [] : [`${say('Of each, where nothing else is said')}: ${say(shared)}.`]),
    ...(working && all.some(({ leads }) => leads.length > 0) ? [say(whatOddsAre)] : []),
  ];
  return before.length === 0 ? [table] : [paragraphs(...before), table];
}

const whatOddsAre =
  'Odds of one: as likely as not. Odds of a half: one time there for two times not. Each thing seen multiplies them.';

/** What more than two of three say; undefined where nothing is said so often. */
function mostOf(texts: readonly string[]): string | undefined {
  return texts.find((text) => texts.filter((one) => one === text).length * 3 > texts.length * 2);
}

/** What speaks for a cause stands in its arithmetic already; what does not is said before it. */
function withWorking(found: Diagnosis, one: LeadingCause, say: ViewContext['say']): string {
  const said = (one.parts.length > 0 ? moves(one) : reasons(found, one)).map(withLastDay);
  return say(sentence([...said, workingOf(found, one)].join('; ')));
}

/** Looks that cost nothing, each with a tick. */
function looksBlocks({ say }: ViewContext, found: Diagnosis): readonly Block[] {
  if (found.looks.length === 0) return [];
  return [
    heading(3, say('First, looks that cost nothing'), 'free-looks'),
    {
      type: 'checklist',
      items: found.looks.slice(0, mostLooks).map(({ test }) => ({
        id: `look-${test.id}`,
        text: say(test.test),
        why: say(test.how ?? ''),
      })),
    },
  ];
}

function nextBlocks(context: ViewContext, found: Diagnosis): readonly Block[] {
  const { say } = context;
  const next = found.next.slice(0, most);
  return [
    heading(3, say('Then, what tells most for its effort'), 'tests'),
    {
      type: 'table',
      columns: [column(say('Tick what was seen'), 4), column('', 4), column('', 4)],
      rows: next.flatMap((one, index) => testRows(context, one, index + 1)),
      empty:
        found.held.length + found.apart.length > 0
          ? say('Every test that would tell more has to wait; see below.')
          : say('No test is left that would tell more.'),
      use: 'work',
    },
  ];
}

/** A test with how it is done as a band, its cautions, then a tick for each outcome, three a line. */
function testRows(context: ViewContext, { test }: NextTest, number: number): readonly Row[] {
  const { say } = context;
  const title = `${count(number)}\u2002${sentence(say(test.test))}`;
  const aside = [
    countOf(test.minutes, 'minute', 'minutes'),
    ...(test.tools === undefined ? [] : [say(test.tools)]),
  ].join('; ');
  const how: readonly Inline[] = test.how === undefined ? [] : [{ kind: 'em', text: ` ${say(test.how)}` }];
  const cautions = [test.caution, ...test.cautions].flatMap((id) => cautionRow(context, id ?? ''));
  return [
    { kind: 'band', text: [{ kind: 'strong', text: `${title} (${aside})` }, ...how] },
    ...cautions,
    ...inThrees(test.outcomes.map((outcome): Cell => outcomeCell(context, test, outcome))).map((cells): Row => ({
      kind: 'cells',
      cells,
    })),
  ];
}

function outcomeCell(
  { say }: ViewContext,
  test: NextTest['test'],
  outcome: NextTest['test']['outcomes'][number],
): Cell {
  const asks = `${sentence(say(test.test))}: ${lowerFirst(say(outcome.words))}`;
  return { box: 'tick', id: `${test.id}-${outcome.saw}`, text: say(outcome.words), about: { asks } };
}

/** Three beside each other; empty cells fill the last row. */
function inThrees(cells: readonly Cell[]): readonly (readonly Cell[])[] {
  const none: Cell = { text: '' };
  return cells.flatMap((cell, index) =>
    index % 3 === 0 ? [[cell, cells[index + 1] ?? none, cells[index + 2] ?? none]] : [],
  );
}

/** Points that the engine is past by what was seen, and that the records do not prove: to be looked at before it is kicked again. */
function behindBlocks({ say }: ViewContext, { behind }: Diagnosis): readonly Block[] {
  return behind.flatMap(([point = '', ...reasons]): readonly Block[] => [
    paragraphs(
      `${say('Look first')}: ${say(point)}. ${say('The engine is past it by what was seen, and the records do not prove it')}:`,
    ),
    lines(reasons.slice(0, 3).map((reason) => say(reason))),
  ]);
}

/** Tests that wait, by the hold point that holds them. */
function heldBlocks(context: ViewContext, found: Diagnosis): readonly Block[] {
  const { say } = context;
  const points = [...new Set(found.held.map((one) => one.held[0] ?? ''))];
  return points.flatMap((point): readonly Block[] => {
    const mine = found.held.filter((one) => one.held[0] === point);
    const names = mine.slice(0, most).map(({ test }) => lowerFirst(say(test.short ?? test.test)));
    const because = mine[0]?.held.slice(1, 4) ?? [];
    return [
      heading(3, `${say('Held')}: ${say(point)}`, `held-${mine[0]?.test.point ?? ''}`),
      paragraphs(`${say('These would be tried, and wait for it')}: ${names.join('; ')}.`),
      lines(because.map((reason) => withDates(say(reason)))),
    ];
  });
}

/** Tests that the machine is too far apart for, by what is off. */
function apartBlocks({ say }: ViewContext, { apart }: Diagnosis): readonly Block[] {
  if (apart.length === 0) return [];
  const whys = [...new Set(apart.map((one) => one.apart))];
  return [
    heading(3, say('Put off: not to be tried as it stands'), 'put-off'),
    lines(
      whys.map((why) => {
        const mine = apart.filter((one) => one.apart === why).slice(0, most);
        const names = mine.map(({ test }) => lowerFirst(say(test.short ?? test.test)));
        return `${withDates(say(why))}: ${names.join('; ')}`;
      }),
    ),
  ];
}

// The parts of the machine by system: each leads to its life; what is open on it, and when it was touched last.
import { hasLife, isTold, type LifeLine, type PartLife } from '../book/part-lives.ts';
import type { Block, Inline, Row, Text } from '../sheet/sheet.ts';
import { lifeName, stateNow } from './part-life.ts';
import { column, filledOnly, lines, row } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { grouped } from './wording/grouped.ts';
import { jobDate } from './wording/job.ts';
import type { ViewContext } from './view.ts';

/** The table of the parts that records speak of; `fileOf` gives the page of those that have one. */
export function partList(
  context: ViewContext,
  lives: readonly PartLife[],
  fileOf: (life: PartLife) => string | undefined,
): Block {
  const { say } = context;
  const systems = grouped(lives, ({ system }) => system.name);
  return filledOnly({
    type: 'table',
    columns: [
      column(say('Part'), 5),
      column(say('Entries'), 1, 'right'),
      column(say('Touched last'), 3),
      column(say('Now'), 6),
    ],
    rows: [...systems].flatMap(([name, those]): readonly Row[] => [
      { kind: 'band', text: [{ kind: 'strong', text: say(name) }] },
      ...those.map((life) => partRow(context, life, fileOf(life))),
    ]),
    empty: say('No record names a part.'),
    use: 'read',
  });
}

function partRow(context: ViewContext, life: PartLife, file: string | undefined): Row {
  const last = life.lines.at(-1);
  const text = lifeName(context, life);
  const name: Text = file === undefined ? text : [{ kind: 'link', text, to: `page:${file}` }];
  const now = life.open.length === 0 ? '' : stateNow(context, life);
  return row(name, count(life.lines.length), last === undefined ? '' : [jobDate(last.job)], now);
}

/** So many dates are named; of more the newest. */
const mostDates = 4;

/** Parts of which nothing but the fitting is recorded, each with its dates. */
export function fittedOnly(context: ViewContext, lives: readonly PartLife[]): Block {
  return lines(lives.map((life) => [`${lifeName(context, life)}: `, ...dates(context, life.lines)]));
}

function dates({ say }: ViewContext, all: readonly LifeLine[]): readonly Inline[] {
  const shown = all.slice(-mostDates);
  const rest = all.length - shown.length;
  return [
    ...(rest === 0 ? [] : [`${count(rest)} ${say('before')}; `]),
    ...shown.flatMap(({ job }, index): readonly Inline[] => (index === 0 ? [jobDate(job)] : ['; ', jobDate(job)])),
  ];
}

/** Parts of which something is told, those of them that have a page of their own, and those that were only fitted. */
export function partsByTelling(lives: readonly PartLife[]): {
  readonly told: readonly PartLife[];
  readonly followed: readonly PartLife[];
  readonly fitted: readonly PartLife[];
} {
  const told = lives.filter(isTold);
  return { told, followed: told.filter(hasLife), fitted: lives.filter((life) => !isTold(life)) };
}

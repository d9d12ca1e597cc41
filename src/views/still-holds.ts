// What still holds of a machine that was left: readings that may be counted on, those to take again, parts on their way, and what has aged.
import { isLeftHalfWay, oldFillings, openJoints } from '../book/ages.ts';
import type { Book } from '../book/book.ts';
import type { ReadingSince } from '../book/readings-since.ts';
import { readingsSince } from '../book/readings-since.ts';
import { partLines } from '../book/shopping/part-lines.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { tyres } from './figures/tyres.ts';
import { column, heading, lines, row, stack } from './wording/blocks.ts';
import { count, countOf, times } from './wording/count.ts';
import { dayText, withDates } from './wording/day.ts';
import { resultText } from './wording/figure.ts';
import { jobDate } from './wording/job.ts';
import { itemName } from './wording/named.ts';
import { conditionText, valueText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** So many values of one reading are written out; of more it is said how many. */
const mostValues = 2;

export const stillHolds = defineView({
  id: 'still-holds',
  purpose: 'Readings that still hold and those to take again, parts on their way, and what has aged.',
  needs: 'machine',
  options: [],
  blocks: (context) => stack(onTheirWay(context), aged(context), readings(context)),
});

/** Parts of one state, in a few words each: `2 × head gasket`, `2 × head gasket (a shop)`. */
export function partsIn(book: Book, state: 'ordered' | 'here'): readonly string[] {
  return partLines(book)
    .filter(({ part }) => part.state === state)
    .map(({ part, count: many }) => {
      const name = many > 1 ? `${times(many)}\u00a0${part.part}` : part.part;
      return part.from === undefined ? name : `${name} (${part.from})`;
    });
}

function onTheirWay({ book, say }: ViewContext): readonly Block[] {
  const [ordered, here] = [partsIn(book, 'ordered'), partsIn(book, 'here')];
  const told = [
    ...(ordered.length === 0 ? [] : [`${say('Ordered')}: ${ordered.join('; ')}`]),
    ...(here.length === 0 ? [] : [`${say('Here, and not fitted')}: ${here.join('; ')}`]),
  ];
  return told.length === 0 ? [] : [heading(2, say('Parts on their way'), 'on-their-way'), lines(told)];
}

function aged({ book, say }: ViewContext): readonly Block[] {
  const fillings = oldFillings(book).map(
    (one) =>
      `${itemName(book, one.thing)}: ${say('filled')} ${dayText(one.day)}, ${countOf(one.months, say('month'), say('months'))} ${say('ago')}; ${say(one.why)} (${say('common practice')}: ${count(one.goodFor)} ${say('months')})`,
  );
  const joints = openJoints(book).map((thing) => itemName(book, thing));
  const gaskets =
    joints.length === 0
      ? []
      : [`${say('New gaskets before it goes back')}: ${joints.join(', ')} (${say('common practice')})`];
  const rubber = tyres(book).flatMap(({ wheel, made, age }): readonly Text[] => {
    const years = age[0];
    if (years === undefined) return [];
    const figure: Text = [{ kind: 'figure', text: resultText(years.figure), to: `working:${years.id}` }];
    const from = made === undefined ? '' : `, ${say('made')} ${say(made)}`;
    return [[`${say('Tyre')}, ${say(wheel)}: `, ...figure, from]];
  });
  const all = [...fillings, ...gaskets, ...rubber];
  return all.length === 0 ? [] : [heading(2, say('What ages while it stands'), 'what-ages'), lines(all)];
}

function valuesOf({ points }: ReadingSince, say: ViewContext['say']): string {
  const values = points.map((one) =>
    [one.position, valueText(one.value) ?? '?'].filter((word) => word !== '').join(' '),
  );
  const rest = values.length - mostValues;
  const more = rest > 0 ? [`${say('and')} ${count(rest)} ${say('more')}`] : [];
  const condition = conditionText(points[0]?.condition ?? []);
  return [...values.slice(0, mostValues), ...more].join(', ') + (condition === '' ? '' : `; ${condition}`);
}

/** To be taken again first: they are what somebody would wrongly count on. */
function readings({ book, say }: ViewContext): readonly Block[] {
  const all = readingsSince(book);
  const rows = (those: readonly ReadingSince[], stands: (one: ReadingSince) => string): readonly Row[] =>
    those.map((one) =>
      row(
        one.series.name,
        valuesOf(one, say),
        one.points[0] === undefined ? '' : [jobDate(one.points[0].job)],
        stands(one),
      ),
    );
  const band = (text: string): Row => ({ kind: 'band', text: [{ kind: 'strong', text }] });
  const again = all.filter((one) => one.undone !== undefined);
  // Of a machine in use they stand among the measurements; of one that was left, somebody has to know what need not be done twice.
  const good = isLeftHalfWay(book) ? all.filter((one) => one.undone === undefined) : [];
  if (again.length + good.length === 0) return [];
  const why = ({ undone }: ReadingSince): string =>
    undone === undefined ? '' : withDates(`${undone.what}, ${dayText(undone.job.date.from)}`);
  return [
    heading(2, say('Which readings still hold'), 'still-hold'),
    {
      type: 'table',
      columns: [
        column(say('Item'), 4),
        column(say('Last reading'), 5),
        column(say('On'), 3),
        column(say('Undone by'), 4),
      ],
      rows: [
        ...(again.length === 0 ? [] : [band(say('Measure again')), ...rows(again, why)]),
        ...(good.length === 0
          ? []
          : [band(say('Still holds: nothing on record has touched it since')), ...rows(good, () => '')]),
      ],
      empty: '',
      use: 'read',
    },
  ];
}

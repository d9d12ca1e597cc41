// One series as a grid: a row for each time it was read, a column for each position; what all rows share is said once above.
import type { Series, SeriesPoint } from '../book/book.ts';
import { formatDecimal } from '../quantity/decimal.ts';
import { inUnit } from '../quantity/quantity.ts';
import type { Unit } from '../quantity/quantity.ts';
import { isAlike } from '../records/alike.ts';
import type { Cell, Column, Row, TableBlock, Text } from '../sheet/sheet.ts';
import { column, joined, row, struck } from './wording/blocks.ts';
import { capped, olderOnes } from './wording/capped.ts';
import { inlineFigure } from './wording/figure.ts';
import { jobDate } from './wording/job.ts';
import { instrumentName } from './wording/named.ts';
import { positionGrid } from './wording/positions.ts';
import type { PositionGrid } from './wording/positions.ts';
import { conditionText, valueText } from './wording/value.ts';
import { verdictsText } from './wording/verdicts.ts';
import type { ViewContext } from './view.ts';

/** Readings taken together: one record, found or left, in one way; those corrected stand apart. */
export interface Occasion {
  readonly points: readonly SeriesPoint[];
  readonly how: string;
  readonly as: string;
  readonly corrected: boolean;
}

const known = new WeakMap<Series, { readonly say: ViewContext['say']; readonly all: readonly Occasion[] }>();

/** The times a series was read, oldest first. A page asks several times. */
export function occasions(context: ViewContext, series: Series): readonly Occasion[] {
  const before = known.get(series);
  if (before?.say === context.say) return before.all;
  const all = occasionsOf(context, series);
  known.set(series, { say: context.say, all });
  return all;
}

/** The points of one record stand together in a series, so each is looked for among the occasions of its record only. */
function occasionsOf({ book, say }: ViewContext, series: Series): readonly Occasion[] {
  const all: SeriesPoint[][] = [];
  let job: SeriesPoint['job'] | undefined;
  let ofJob: SeriesPoint[][] = [];
  for (const point of series.points) {
    if (point.job !== job) [job, ofJob] = [point.job, []];
    const those = ofJob.find(([first]) => first !== undefined && isTogether(first, point));
    if (those !== undefined) {
      those.push(point);
      continue;
    }
    const fresh = [point];
    ofJob.push(fresh);
    all.push(fresh);
  }
  return all.map((points): Occasion => {
    const [first] = points;
    const how =
      first === undefined ? '' : joined([conditionText(first.condition), instrumentName(book, first.instrument)]);
    const as = first?.side === 'left' ? say('left') : say('found');
    return { points, how: typeof how === 'string' ? how : '', as, corrected: first?.corrected !== undefined };
  });
}

function isTogether(one: SeriesPoint, other: SeriesPoint): boolean {
  return (
    one.side === other.side &&
    one.instrument === other.instrument &&
    one.corrected?.by === other.corrected?.by &&
    isAlike(one.condition, other.condition)
  );
}

/** How and in which unit all readings were taken, where all were taken alike. */
export function sharedWords(context: ViewContext, series: Series): string {
  const { say } = context;
  const all = occasions(context, series);
  const unit = sharedUnit(series);
  const how = all.every((one) => one.how === all[0]?.how) ? (all[0]?.how ?? '') : '';
  const words = unit === undefined || unit.symbol === '' ? [] : [`${say('read in')} ${inWords(unit)}`];
  return [...words, ...(how === '' ? [] : [how])].join('; ');
}

/** `read in in` would be read twice. */
function inWords({ symbol }: Unit): string {
  return symbol === 'in' ? 'inches' : symbol;
}

function sharedUnit(series: Series): Unit | undefined {
  const units = new Set<Unit>();
  for (const { value } of series.points) if (value.kind === 'read') units.add(value.written.unit);
  const [only] = units;
  return units.size === 1 && only?.inverse !== true ? only : undefined;
}

/** What differs from row to row and so needs a column. */
interface Shown {
  readonly distance: boolean;
  readonly as: boolean;
  readonly how: boolean;
  readonly verdict: boolean;
  readonly unit: Unit | undefined;
}

/** The grid; of more occasions than `shown` the newest. */
export function seriesGrid(context: ViewContext, series: Series, shown?: number): TableBlock {
  const { say } = context;
  const all = occasions(context, series);
  const grid = positionGrid(series.points.map((point) => point.position)) ?? listed(series);
  const has: Shown = {
    distance: grid.columns.length <= 4 && all.some((one) => one.points[0]?.machineDistance !== undefined),
    as: all.some((one) => one.as !== all[0]?.as),
    how: all.some((one) => one.how !== all[0]?.how),
    verdict: series.points.some((point) => point.verdict !== undefined || point.corrected !== undefined),
    unit: sharedUnit(series),
  };
  return {
    type: 'table',
    columns: columnsOf(say, grid, has),
    rows: capped(all.toReversed(), (rest) => olderOnes(say, rest), shown)
      .map((one) => ('kind' in one ? [one] : occasionRows(context, one, grid, has)))
      .toReversed()
      .flat(),
    empty: say('No reading is recorded.'),
    use: 'read',
  };
}

/** Positions that make no grid stand under one another. */
function listed(series: Series): PositionGrid {
  const lines = [...new Set(series.points.map((point) => point.position))];
  return { lines, columns: [''], placeOf: (position) => ({ line: position, column: '' }) };
}

function columnsOf(say: (words: string) => string, grid: PositionGrid, shown: Shown): readonly Column[] {
  const lineWords = grid.lines.some((line) => line !== '');
  return [
    column(say('Date'), 3.5),
    ...(shown.distance ? [column(say('Distance'), 2.2, 'right')] : []),
    ...(shown.as ? [column(say('As'), 1.2)] : []),
    ...(lineWords ? [column(say('Position'), 2)] : []),
    ...grid.columns.map((head) => column(head === '' ? say('Reading') : head, 2, 'right')),
    ...(shown.how ? [column(say('Condition, instrument'), 4)] : []),
    ...(shown.verdict ? [column(say('Verdict'), 4)] : []),
  ];
}

function occasionRows(context: ViewContext, one: Occasion, grid: PositionGrid, shown: Shown): readonly Row[] {
  const lines = grid.lines.filter((line) => one.points.some((point) => grid.placeOf(point.position).line === line));
  const lineWords = grid.lines.some((each) => each !== '');
  return lines.map((line, index): Row => {
    const points = one.points.filter((point) => grid.placeOf(point.position).line === line);
    const [first] = points;
    const distance = first?.machineDistance;
    const texts: readonly (Text | Cell)[] = [
      first === undefined || index > 0 ? '' : [jobDate(first.job)],
      ...(shown.distance ? [distance === undefined || index > 0 ? '' : [inlineFigure(distance)]] : []),
      ...(shown.as ? [index > 0 ? '' : one.as] : []),
      ...(lineWords ? [line] : []),
      ...grid.columns.map((head) => {
        const here = points.filter((point) => grid.placeOf(point.position).column === head);
        const values = valuesText(context, here, shown.unit);
        return one.corrected ? struck(values) : values;
      }),
      ...(shown.how ? [index > 0 ? '' : one.how] : []),
      ...(shown.verdict ? [judged(context, points, grid)] : []),
    ];
    return row(...texts);
  });
}

/** A number alone where the unit stands above the grid. */
function valuesText({ say }: ViewContext, points: readonly SeriesPoint[], unit: Unit | undefined): string {
  const texts = points.map(({ value }) => {
    if (unit === undefined || value.kind !== 'read') return valueText(value) ?? say('not read');
    return formatDecimal(inUnit(value.written.quantity, unit), value.written.decimals);
  });
  return texts.join('; ');
}

function judged({ say }: ViewContext, points: readonly SeriesPoint[], grid: PositionGrid): Text {
  const corrected = points.find((point) => point.corrected !== undefined)?.corrected;
  if (corrected === undefined) return verdictsText(say, points, (position) => grid.placeOf(position).column);
  return joined([say('corrected'), [jobDate(corrected.by)], corrected.why], ', ');
}

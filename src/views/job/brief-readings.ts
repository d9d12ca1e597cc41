// The readings of a record, one row an item: few positions in full, of many the smallest and the largest, as the grid of the series has them all.
import type { SeriesPoint } from '../../book/book.ts';
import type { Job, Reading, ReadingValue } from '../../records/model.ts';
import type { Block, Inline, Row, Text } from '../../sheet/sheet.ts';
import { column, joined, lines, row } from '../wording/blocks.ts';
import { count } from '../wording/count.ts';
import { instrumentName, itemName } from '../wording/named.ts';
import { seriesIndex } from '../wording/series-index.ts';
import { conditionText, valueText } from '../wording/value.ts';
import { verdictsText } from '../wording/verdicts.ts';
import type { ViewContext } from '../view.ts';
import { correctionTexts, repairTexts } from './readings.ts';

/** More positions than this stand under the measurements only. */
const mostInFull = 4;

export function briefReadings(context: ViewContext, job: Job): readonly Block[] {
  const { say } = context;
  const repairs = repairTexts(context, job).map((text) => joined([[strong(say('Now'))], text], ''));
  const corrections = correctionTexts(context, job).map((text) => joined([[strong(say('Corrected'))], text], ''));
  const other = [...corrections, ...repairs];
  const told = other.length === 0 ? [] : [lines(other)];
  if (job.readings.length === 0) return told;
  const left = job.readings.some((one) => one.left.length > 0);
  const found = !left || job.readings.some((one) => one.found.length > 0);
  const shown: Shown = { found, left };
  const items = [...new Set(job.readings.map(({ item }) => item))];
  const judged = new Map(items.map((item) => [item, judgedItem(context, job, item)]));
  return [
    {
      type: 'table',
      columns: [
        column(say('Read'), 4),
        ...(shown.found ? [column(say('Found'), 4)] : []),
        ...(shown.left ? [column(say('Left'), 4)] : []),
        column(say('Condition, instrument'), 3),
        column(say('Verdict'), 3),
      ],
      rows: job.readings.map((reading) => readingRow(context, reading, judged.get(reading.item) ?? nothing, shown)),
      empty: '',
      use: 'read',
    },
    ...told,
  ];
}

function strong(text: string): Inline {
  return { kind: 'strong', text: `${text}: ` };
}

/** The sides that this record has readings of. */
interface Shown {
  readonly found: boolean;
  readonly left: boolean;
}

/** What one record read of an item, and the verdicts on it; worked out once, however many rows the item has. */
interface Judged {
  readonly points: readonly SeriesPoint[];
  readonly verdicts: Text;
}
const nothing: Judged = { points: [], verdicts: '' };

function judgedItem({ book, say }: ViewContext, job: Job, item: string): Judged {
  const points = seriesIndex(book).ofRecord(job, item);
  const left = new Set(points.filter(({ side: of }) => of === 'left').map(({ position }) => position));
  // Judged is what was left, where the same place was found and left.
  const last = points.filter((point) => point.side === 'left' || !left.has(point.position));
  return {
    points,
    verdicts: verdictsText(
      say,
      last.filter((point) => point.corrected === undefined),
    ),
  };
}

function readingRow(context: ViewContext, reading: Reading, { points, verdicts }: Judged, shown: Shown): Row {
  const { book, say } = context;
  const none = reading.found.length + reading.left.length === 0;
  return row(
    itemName(book, reading.item),
    ...(shown.found ? [none ? say('to be read') : side(context, reading.found, points, 'found')] : []),
    ...(shown.left ? [side(context, reading.left, points, 'left')] : []),
    joined([conditionText(reading.condition), instrumentName(book, reading.instrument), reading.note]),
    verdicts,
  );
}

function side(
  context: ViewContext,
  values: readonly ReadingValue[],
  points: readonly SeriesPoint[],
  of: 'found' | 'left',
): Text {
  const { say } = context;
  if (values.length > mostInFull) return span(context, values);
  return values.flatMap((value, index): readonly Inline[] => {
    const text = valueText(value.value) ?? say('not read');
    const point = points.find((one) => one.position === value.position && one.side === of);
    const words = value.position === '' ? text : `${value.position}\u00a0${text}`;
    const inline: Inline = point?.corrected === undefined ? words : { kind: 'struck', text: words };
    return index === 0 ? [inline] : [', ', inline];
  });
}

/** `50.50 mm to 50.52 mm, 12 places`. */
function span({ say }: ViewContext, values: readonly ReadingValue[]): string {
  const read = values.flatMap(({ value }) => (value.kind === 'read' ? [value] : []));
  const sorted = read.toSorted((one, other) => one.written.quantity - other.written.quantity);
  const ends = [...new Set([valueText(sorted[0]), valueText(sorted.at(-1))])].filter((text) => text !== undefined);
  return `${ends.join(` ${say('to')} `)}, ${count(values.length)} ${say('places')}`;
}

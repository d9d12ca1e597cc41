// The readings of a record, found and left by position, with the verdict; a corrected one is struck and says by what.
import type { SeriesPoint } from '../../book/book.ts';
import type { Job, Reading, ReadingValue } from '../../records/model.ts';
import type { Block, Row, Text } from '../../sheet/sheet.ts';
import { column, filledOnly, heading, joined, lines, row, struck } from '../wording/blocks.ts';
import { jobTitle } from '../wording/job.ts';
import { instrumentName, itemName } from '../wording/named.ts';
import { seriesIndex } from '../wording/series-index.ts';
import { conditionText, valueText } from '../wording/value.ts';
import type { ViewContext } from '../view.ts';

/** A table of the readings and the corrections made to others, or nothing. */
export function jobReadings(context: ViewContext, job: Job, within: string): readonly Block[] {
  return [...readings(context, job, within), ...corrections(context, job, within), ...repairs(context, job, within)];
}

function readings(context: ViewContext, job: Job, within: string): readonly Block[] {
  if (job.readings.length === 0) return [];
  const { say } = context;
  const head = ['Item', 'Position', 'Found', 'Left', 'Condition, instrument', 'Verdict'];
  return [
    heading(3, say('Readings'), `${within}readings`),
    filledOnly({
      type: 'table',
      columns: head.map((text, index) =>
        column(say(text), index < 1 || index > 3 ? 4 : 3, index === 2 || index === 3 ? 'right' : 'left'),
      ),
      rows: job.readings.flatMap((reading) => readingRows(context, job, reading)),
      empty: '',
      use: 'read',
    }),
  ];
}

function readingRows(context: ViewContext, job: Job, reading: Reading): readonly Row[] {
  const { book } = context;
  const positions = positionsOf(reading);
  const how = joined([conditionText(reading.condition), instrumentName(book, reading.instrument), reading.note]);
  const name = itemName(book, reading.item);
  const points = seriesIndex(book).ofRecord(job, reading.item);
  if (positions.length === 0) return [row(name, '', context.say('to be read'), '', how, '')];
  return positions.map((position, index) => {
    const found = at(reading.found, position);
    const left = at(reading.left, position);
    const asFound = points.find((point) => point.position === position && point.side === 'found');
    const asLeft = points.find((point) => point.position === position && point.side === 'left');
    return row(
      index === 0 ? name : '',
      position,
      textOf(context, found, asFound),
      textOf(context, left, asLeft),
      index === 0 ? how : '',
      verdict(context, left === undefined ? asFound : asLeft),
    );
  });
}

/** Each once, as found first; nearly every reading has one. */
function positionsOf({ found, left }: Reading): readonly string[] {
  const [one, other] = [found[0]?.position, left[0]?.position];
  if (found.length === 1 && (left.length === 0 || (left.length === 1 && one === other))) return [one ?? ''];
  return [...new Set([...found, ...left].map(({ position }) => position))];
}

function at(values: readonly ReadingValue[], position: string): ReadingValue | undefined {
  return values.find((value) => value.position === position);
}

function textOf({ say }: ViewContext, value: ReadingValue | undefined, point: SeriesPoint | undefined): Text {
  if (value === undefined) return '';
  const text = valueText(value.value) ?? say('not read');
  return point?.corrected === undefined ? text : struck(text);
}

function verdict({ say }: ViewContext, point: SeriesPoint | undefined): Text {
  if (point?.corrected !== undefined)
    return [`${say('corrected by')} `, jobTitle(point.corrected.by), `: ${point.corrected.why}`];
  return point?.verdict === undefined ? '' : say(point.verdict);
}

function corrections(context: ViewContext, job: Job, within: string): readonly Block[] {
  if (job.corrections.length === 0) return [];
  return [heading(3, context.say('Corrections'), `${within}corrections`), lines(correctionTexts(context, job))];
}

/** What was corrected in another record: the old value struck, the new one, why and where. */
export function correctionTexts({ book, say }: ViewContext, job: Job): readonly Text[] {
  return job.corrections.map((one): Text => {
    const record = book.jobs.get(one.record);
    const of: Text = record === undefined ? one.record : [jobTitle(record)];
    const what: Text = [
      `${itemName(book, one.item)}${one.position === undefined ? '' : `, ${one.position}`}: `,
      { kind: 'struck', text: one.was },
      ` ${say('is')} ${one.is} (${one.why}), `,
    ];
    return joined([what, of], `${say('in')} `);
  });
}

function repairs(context: ViewContext, job: Job, within: string): readonly Block[] {
  if (job.repairs.length === 0) return [];
  return [heading(3, context.say('Repairs that change data'), `${within}repairs`), lines(repairTexts(context, job))];
}

/** What is no longer as the book has it, and why. */
export function repairTexts({ book }: ViewContext, job: Job): readonly Text[] {
  return job.repairs.map((one) => joined([`${itemName(book, one.of)}: ${one.now}`, one.why]));
}

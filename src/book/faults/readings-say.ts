// What readings say to the fault tables: where the newest value lies against the book, and how far oil raised a compression.
import type { Day } from '../../quantity/day.ts';
import type { FaultTables, ReadingRule } from '../../records/fault-model.ts';
import type { WrittenRange } from '../../quantity/quantity.ts';
import type { Book, Series, SeriesPoint } from '../book.ts';
import { byText } from '../in-order.ts';
import { plainName } from '../names.ts';
import { newestByPosition } from '../newest-by-position.ts';
import type { SeenOnRecord } from './seen-on-record.ts';

type Side = ReadingRule['side'];

/** Outcomes that the newest readings speak for, from a day on. */
export function readingsSay(book: Book, faults: FaultTables, from: Day): readonly SeenOnRecord[] {
  const bySides = faults.tests.flatMap((test) =>
    test.outcomes.flatMap((outcome): readonly SeenOnRecord[] => {
      const { reads } = outcome;
      if (reads === undefined) return [];
      const read = pointsFor(book, reads, from);
      const [first] = read;
      if (first === undefined) return [];
      const speaks =
        reads.side === 'within'
          ? read.every(({ sides }) => sides.has('within'))
          : read.some(({ sides }) => sides.has(reads.side));
      if (!speaks) return [];
      const point = (read.find(({ sides }) => sides.has(reads.side)) ?? first).point;
      return [{ test, outcome, day: point.day, job: point.job, words: wordsOf(first.series, point), side: point.side }];
    }),
  );
  return [...bySides, ...oilSays(book, faults, from)];
}

interface Read {
  readonly series: Series;
  readonly point: SeriesPoint;
  readonly sides: ReadonlySet<Side>;
}

/** The newest value of every position of the items, with where it lies. */
function pointsFor(book: Book, { items, without, left }: ReadingRule, from: Day): readonly Read[] {
  const wanted = new Set(items.map(plainName));
  return book.series
    .filter((series) => wanted.has(plainName(series.item)))
    .flatMap((series) => {
      const counted = series.points.filter(
        (point) =>
          point.corrected === undefined &&
          point.value.kind === 'read' &&
          point.day >= from &&
          !point.condition.some((one) => without.includes(one)) &&
          (left || point.side === 'found'),
      );
      return newestByPosition(counted).map((point) => ({ series, point, sides: sidesOf(series, point) }));
    });
}

function sidesOf({ limit, setting }: Series, { value, verdict }: SeriesPoint): ReadonlySet<Side> {
  const sides = new Set<Side>();
  if (verdict === 'within standard') sides.add('within');
  if (verdict === 'past the limit') sides.add('past');
  if (verdict === 'outside the range') sides.add('outside');
  const range = setting?.range ?? limit?.standard;
  if (value.kind === 'read' && range !== undefined) addSides(sides, value.written.quantity, range);
  return sides;
}

function addSides(sides: Set<Side>, value: number, { low, high }: WrittenRange): void {
  if (low !== undefined && value < low) sides.add('below').add('outside');
  else if (high !== undefined && value > high) sides.add('above').add('outside');
  else sides.add('within');
}

function wordsOf({ name }: Series, { value, position, condition }: SeriesPoint): string {
  const text = value.kind === 'read' ? value.written.text : '?';
  const where = position === '' ? '' : `, ${position}`;
  return `${name} ${text}${where}${condition.length === 0 ? '' : ` (${condition.join(', ')})`}`;
}

/** A rise by more than a fifth is one; less than a tenth is none; between them it says nothing. Common practice of the trade. */
const risen = 1.2;
const same = 1.1;

/** Compression dry against oiled, of the newest record that has both, at the cylinder that was lowest dry. */
function oilSays(book: Book, { tests }: FaultTables, from: Day): readonly SeenOnRecord[] {
  const test = tests.find((one) => one.id === 'compression-oiled');
  if (test === undefined) return [];
  const points = book.series
    .filter((series) => plainName(series.item).startsWith('compression'))
    .flatMap((series) => series.points)
    .filter((point) => point.corrected === undefined && point.day >= from)
    .toSorted((a, b) => byText(a.day, b.day));
  const newest = points.findLast((point) => point.condition.includes('oiled'));
  if (newest === undefined) return [];
  const pairs = points
    .filter((point) => point.job === newest.job && point.condition.includes('dry'))
    .flatMap((dry) => {
      const oiled = points.find(
        (one) => one.job === dry.job && one.position === dry.position && one.condition.includes('oiled'),
      );
      return dry.value.kind === 'read' && oiled?.value.kind === 'read'
        ? [{ point: oiled, dry: dry.value.written, oiled: oiled.value.written }]
        : [];
    });
  const worst = pairs.toSorted((a, b) => a.dry.quantity - b.dry.quantity).at(0);
  if (worst === undefined) return [];
  const ratio = worst.oiled.quantity / worst.dry.quantity;
  const saw = ratio > risen ? 'rises' : ratio < same ? 'same' : undefined;
  const outcome = test.outcomes.find((one) => one.saw === saw);
  if (outcome === undefined) return [];
  const { point, dry, oiled } = worst;
  const words = `compression ${dry.text} dry, ${oiled.text} oiled`;
  return [{ test, outcome, day: point.day, job: point.job, words, side: point.side }];
}

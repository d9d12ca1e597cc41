// Wear that nobody would believe, and parts left past their limit.
import { counting, shown, si } from './counting.ts';
import { slipOf } from './unit-slip.ts';
import { printRange } from '../../figure/print.ts';
import type { Job } from '../../records/model.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import type { Series, SeriesPoint } from '../book.ts';
import { newestByPosition } from '../newest-by-position.ts';
import { expandedUncertainty } from '../uncertainty.ts';
import { adjustmentsOf } from './adjusted.ts';
import type { Ground } from '../ground.ts';
import { keptWith } from '../../records/kept-with.ts';
import type { Problem } from '../../problem/problem.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** A part was left past its limit, and nothing in the record says why. */
export const leftPastLimit: Look = ({ series }) => series.series.flatMap((one) => pastLimit(one));

const pastLimit = keptWith((one: Series): readonly Problem[] => {
  return newestByPosition(counting(one)).flatMap((point) => {
    const renewed = one.basis.some((basis) => basis.from >= point.day);
    const said =
      point.job.findings.length > 0 ||
      point.job.readings.some((reading) => reading.at === point.at && reading.note !== undefined);
    const outside = point.verdict === 'outside the range';
    if ((point.verdict !== 'past the limit' && !outside) || renewed || said) return [];
    const bound = one.limit?.limit ?? one.setting?.range;
    return [
      query(
        'left-past-its-limit',
        point.at,
        `${one.name} ${shown(point)} is ${outside ? 'outside its range' : 'past its limit'}${bound === undefined ? '' : ` (${printRange(bound)})`}, and the record does not say what became of it`,
        'write a finding, or the reading after it was put right',
      ),
    ];
  });
});

/** 1 wears upwards (a maximum is its limit), -1 downwards; 0 when that is not known. Only sizes wear: a pressure comes back with better work. */
function direction(series: Series): number {
  const limit = series.limit?.limit;
  if (limit?.unit.dimension !== 'length') return 0;
  if (limit.low !== undefined && limit.high !== undefined) return 0;
  return limit.high === undefined ? -1 : 1;
}

function renewedBetween(series: Series, before: SeriesPoint, after: SeriesPoint): boolean {
  return series.basis.some((basis) => basis.from >= before.day && basis.from <= after.day);
}

/** Like readings only: one position, one condition; the words of a condition in any order. */
function likeness(point: SeriesPoint): string {
  const words = point.condition.length < 2 ? (point.condition[0] ?? '') : point.condition.toSorted().join(',');
  return `${point.position}|${words}`;
}

/** How far two readings may differ by their instruments alone, SI. */
function byInstruments(before: SeriesPoint, after: SeriesPoint, ground: Ground): number {
  return [before, after].reduce((sum, point) => {
    const tool = point.instrument === undefined ? undefined : ground.instruments.get(ground.key(point.instrument));
    return point.value.kind === 'read' ? sum + expandedUncertainty(point.value.written, tool) : sum;
  }, 0);
}

interface Backwards {
  readonly one: Series;
  readonly before: SeriesPoint;
  readonly point: SeriesPoint;
}

/**
 * Wear that runs backwards with no part renewed between. What a record found and what it left are two states with its work
 * between them: trued, adjusted, cleaned; so they are not compared, and neither are readings with such work between their records.
 * One query for all that a record read so: new rings that nobody wrote down show in every gap.
 */
export const wearBackwards: Look = ({ series, ground }) => {
  const adjustments = adjustmentsOf(ground);
  const byRecord = new Map<Job, Backwards[]>();
  for (const one of series.series) {
    const way = direction(one);
    if (way === 0) continue;
    const last = new Map<string, SeriesPoint>();
    for (const point of counting(one)) {
      const like = likeness(point);
      const before = last.get(like);
      last.set(like, point);
      if (before === undefined || before.job === point.job || renewedBetween(one, before, point)) continue;
      const back = way * (si(before) - si(point));
      if (back <= 0 || back <= byInstruments(before, point, ground)) continue;
      if (adjustments(ground.key(one.item), before, point)) continue;
      const known = byRecord.get(point.job);
      if (known === undefined) byRecord.set(point.job, [{ one, before, point }]);
      else known.push({ one, before, point });
    }
  }
  return [...byRecord.values()].flatMap(backwardsQuery);
};

/** So many are named beside the first; of more it is said how many. */
const mostNamed = 5;

function backwardsQuery(all: readonly Backwards[]): readonly Problem[] {
  const [first, ...others] = all;
  if (first === undefined) return [];
  const { one, before, point } = first;
  const named = others
    .slice(0, mostNamed)
    .map(({ one: other, point: read }) => `${other === one ? '' : `${other.name}: `}${shown(read)}`);
  const more = others.length - named.length;
  const rest = [...named, ...(more > 0 ? [`and ${formatDecimal(more, 0)} more`] : [])].join(', ');
  const items = [...new Set(all.map((each) => each.one.item))];
  const each = items.length === 1 ? '' : `, and the same of ${items.slice(1, mostNamed).join(', ')}`;
  return [
    query(
      'wear-backwards',
      point.at,
      `${one.name}: ${shown(point)} after ${shown(before)} on ${before.day}, and nothing was renewed between${rest === '' ? '' : `; so is ${rest}`}`,
      `measure again, or write what was renewed under \`repairs:\`, as {of: ${one.item}, now: …}${each}`,
    ),
  ];
}

/** Better than new: a worn part cannot be, so the instrument or the book is wrong. */
export const betterThanNew: Look = ({ series, ground }) =>
  series.series.flatMap((one) => {
    const way = direction(one);
    const standard = one.limit?.standard;
    const edge = way === 1 ? standard?.low : standard?.high;
    if (way === 0 || edge === undefined || one.basis.length > 0) return [];
    const beyond = counting(one).filter((point) => way * (edge - si(point)) > 0);
    return beyond.flatMap((point) => {
      if (point.value.kind !== 'read') return [];
      const better = way * (edge - si(point));
      const tool = point.instrument === undefined ? undefined : ground.instruments.get(ground.key(point.instrument));
      if (
        better <= 2 * expandedUncertainty(point.value.written, tool) ||
        slipOf(si(point), edge, point.value.written.unit.dimension) !== undefined
      )
        return [];
      return [
        query(
          'better-than-new',
          point.at,
          `${one.name} ${shown(point)} is better than new (${standard === undefined ? '' : printRange(standard)})`,
          'look at the instrument, and at which part this is',
        ),
      ];
    });
  });

// Wear to the limit: a straight line through like readings, and the span in which it reaches the limit. A span, not a point.

export interface WearPoint {
  /** Distance or hours, in any one unit. */
  readonly at: number;
  /** The reading, in any one unit. */
  readonly value: number;
}

export type Projection =
  | {
      readonly kind: 'span';
      readonly slope: number;
      readonly middle: number;
      readonly earliest: number;
      readonly latest: number | undefined;
      readonly scatter: number;
    }
  | { readonly kind: 'measure again'; readonly at: number | undefined; readonly because: string }
  | { readonly kind: 'past'; readonly because: string };

/** Two-sided 90 % points of Student's t for 1 to 10 degrees of freedom, then near the normal (NIST/SEMATECH e-Handbook, table of t; memory). */
const student = [6.314, 2.92, 2.353, 2.132, 2.015, 1.943, 1.895, 1.86, 1.833, 1.812] as const;

function studentPoint(freedom: number): number {
  return student[freedom - 1] ?? 1.645 + 1.7 / freedom;
}

interface Line {
  readonly slope: number;
  readonly meanAt: number;
  readonly meanValue: number;
  readonly spreadAt: number;
  readonly scatter: number;
  readonly count: number;
}

/** Ordinary least squares. */
export function fitLine(points: readonly WearPoint[]): Line {
  const count = points.length;
  const meanAt = points.reduce((sum, point) => sum + point.at, 0) / count;
  const meanValue = points.reduce((sum, point) => sum + point.value, 0) / count;
  const spreadAt = points.reduce((sum, point) => sum + (point.at - meanAt) ** 2, 0);
  const together = points.reduce((sum, point) => sum + (point.at - meanAt) * (point.value - meanValue), 0);
  const slope = spreadAt === 0 ? Number.NaN : together / spreadAt;
  const left = points.reduce((sum, point) => sum + (point.value - meanValue - slope * (point.at - meanAt)) ** 2, 0);
  const scatter = count > 2 ? Math.sqrt(left / (count - 2)) : 0;
  return { slope, meanAt, meanValue, spreadAt, scatter, count };
}

/** Where the band of prediction around the line meets the limit (Fieller form); [earliest, latest], latest undefined when the line may be level. */
function crossing(line: Line, limit: number, uncertainty: number): readonly [number, number | undefined] {
  const t = line.count > 2 ? studentPoint(line.count - 2) : 2;
  const scatter = Math.hypot(line.scatter, uncertainty / 2);
  const distance = limit - line.meanValue;
  const g = (t * scatter) ** 2 / (line.slope ** 2 * line.spreadAt);
  const middle = distance / line.slope;
  if (g >= 1) return [line.meanAt, undefined];
  const inner = Math.sqrt((1 - g) * (1 + 1 / line.count) + middle ** 2 / line.spreadAt);
  const half = ((t * scatter) / Math.abs(line.slope)) * inner;
  return [line.meanAt + (middle - half) / (1 - g), line.meanAt + (middle + half) / (1 - g)];
}

/**
 * Projects like readings of one part (same item, position, condition, restarted when the part was renewed) to a limit. Needs three
 * readings, or two with one of them the size when new (`startsNew`); else says where to measure again: at half the distance
 * covered so far, further on. `direction` is +1 when wear makes the value grow. `uncertainty` is the expanded one of a reading.
 * Straight-line wear is common practice, not a law; the span holds for nine in ten of such lines.
 */
export function projectWear(
  points: readonly WearPoint[],
  limit: number,
  direction: 1 | -1,
  uncertainty = 0,
  startsNew = false,
): Projection {
  const sorted = points.toSorted((a, b) => a.at - b.at);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined)
    return { kind: 'measure again', at: undefined, because: 'nothing was measured yet' };
  if ((last.value - limit) * direction >= 0) return { kind: 'past', because: 'the last reading has reached the limit' };
  const again = last.at + (last.at - first.at) / 2;
  const enough = sorted.length >= 3 || (sorted.length === 2 && startsNew);
  if (!enough)
    return {
      kind: 'measure again',
      at: sorted.length < 2 ? undefined : again,
      because: 'fewer than three like readings, and the size when new is not known',
    };
  const line = fitLine(sorted);
  const worn = line.slope * direction;
  if (!(worn > 0)) return { kind: 'measure again', at: again, because: 'no wear shows in these readings' };
  const middle = line.meanAt + (limit - line.meanValue) / line.slope;
  const [earliest, latest] = crossing(line, limit, uncertainty);
  // The limit is not reached yet, so it cannot be reached before the last reading.
  return {
    kind: 'span',
    slope: line.slope,
    middle,
    earliest: Math.max(last.at, earliest),
    latest,
    scatter: line.scatter,
  };
}

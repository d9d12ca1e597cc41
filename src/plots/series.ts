// One series of readings: its line in one of three patterns, its marks in one of four shapes, labels where there is room.
import type { PlotBlock } from '../sheet/sheet.ts';
import { at, labelSize, round, type Field } from './axes.ts';
import { dashes } from './dashes.ts';
import type { Primitive } from './primitive.ts';
import { roomIndex, textRoom, type Taken } from './room.ts';
import type { Scale } from './scales.ts';

type Series = PlotBlock['series'][number];

export const markSize = 5;

/** The line through the points in their order; none for fewer than two points. */
export function seriesLine(series: Series, x: Scale, y: Scale): readonly Primitive[] {
  const points = series.points.filter((point) => Number.isFinite(point.x) && Number.isFinite(point.y));
  if (series.line === 'none' || points.length < 2) return [];
  const d = 'M' + points.map((point) => at(x.place(point.x), y.place(point.y))).join('L');
  return [{ kind: 'path', d, stroke: { ink: 'ink', width: 0.9, dash: dashes(series.line) } }];
}

/** One mark a point. */
export function seriesMarks(series: Series, x: Scale, y: Scale): readonly Primitive[] {
  return series.points
    .filter((point) => Number.isFinite(point.x) && Number.isFinite(point.y))
    .map((point) => ({
      kind: 'dot' as const,
      x: round(x.place(point.x)),
      y: round(y.place(point.y)),
      size: markSize,
      mark: series.mark,
      ...(point.label === undefined ? {} : { title: point.label }),
    }));
}

/** The places that marks and lines take up, as small rectangles along them. */
export function seriesRoom(series: readonly Series[], x: Scale, y: Scale): readonly Taken[] {
  return series.flatMap((one) => {
    const points = one.points.map((point) => ({ x: x.place(point.x), y: y.place(point.y) }));
    const between = one.line === 'none' ? [] : points.slice(1).flatMap((to, index) => steps(points[index] ?? to, to));
    return [...points, ...between].map((point) => markRoom(point.x, point.y));
  });
}

function steps(
  from: { readonly x: number; readonly y: number },
  to: { readonly x: number; readonly y: number },
): readonly { x: number; y: number }[] {
  const count = Math.min(200, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 4));
  return Array.from({ length: count }, (_, index) => ({
    x: from.x + ((to.x - from.x) * index) / count,
    y: from.y + ((to.y - from.y) * index) / count,
  }));
}

/** More points than this stand too close for labels; their values are in the table. */
const mostLabels = 150;

/** Labels of points, above the mark or below it; a label without room is left out (the table has it). */
export function pointLabels(
  series: readonly Series[],
  x: Scale,
  y: Scale,
  field: Field,
  before: readonly Taken[],
): readonly Primitive[] {
  if (series.reduce((sum, one) => sum + one.points.length, 0) > mostLabels) return [];
  const taken = roomIndex([...before, ...seriesRoom(series, x, y)]);
  const drawn: Primitive[] = [];
  for (const point of series.flatMap((one) => one.points)) {
    if (point.label === undefined || point.label === '') continue;
    const free = labelRooms(point.label, x.place(point.x), y.place(point.y)).find(
      (room) => inside(room, field) && taken.isFree(room),
    );
    if (free === undefined) continue;
    taken.add(free);
    const middle = round((free.left + free.right) / 2);
    drawn.push({
      kind: 'text',
      x: middle,
      y: round(free.bottom - 2),
      text: point.label,
      size: labelSize,
      anchor: 'middle',
    });
  }
  return drawn;
}

function markRoom(x: number, y: number): Taken {
  const half = markSize / 2;
  return { left: x - half, right: x + half, top: y - half, bottom: y + half };
}

function labelRooms(label: string, x: number, y: number): readonly Taken[] {
  const half = textRoom(label, labelSize) / 2 + 2;
  const above = y - markSize / 2 - 1;
  const below = y + markSize / 2 + labelSize + 3;
  return [above, below].map((bottom) => ({ left: x - half, right: x + half, top: bottom - labelSize - 2, bottom }));
}

function inside(room: Taken, field: Field): boolean {
  return (
    room.left >= field.left && room.right <= field.right + 6 && room.top >= field.top - 6 && room.bottom <= field.bottom
  );
}

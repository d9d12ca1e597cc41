// One plot as a list of primitives: axes, limits, series, and the names of the series above them.
import type { PlotBlock } from '../sheet/sheet.ts';
import { labelSize, xAxis, yAxis, type Field } from './axes.ts';
import { limitLines, limitRooms } from './limits.ts';
import type { Primitive } from './primitive.ts';
import { textRoom } from './room.ts';
import { xScale, yScale } from './scales.ts';
import { pointLabels, seriesLine, seriesMarks, seriesRoom } from './series.ts';
import { mostNames, seriesNames } from './names.ts';
import { thinned } from './thinned.ts';

export type { Primitive } from './primitive.ts';

/** More points of a series than this only make a line black, on any paper. */
const mostPoints = 240;

/**
 * Draws a plot into a rectangle of the given size (points; at least 120 × 90 is sensible).
 * The title is not drawn: it is the caption, set by the printer. Text is 9 points and never lies over other text.
 */
export function drawPlot(
  asked: PlotBlock,
  size: { readonly width: number; readonly height: number },
): readonly Primitive[] {
  const block = thinned(asked, mostPoints);
  const names = seriesNames(block.series, size.width, labelSize + 6, size.height * mostNames);
  const top = labelSize + 10 + names.height + (names.height > 0 ? 3 : 0);
  const bottom = size.height - 2 * labelSize - 10;
  const y = yScale(block, bottom, top);
  const left = Math.max(20, ...y.ticks.map((tick) => textRoom(tick.label, labelSize) + 6));
  const field: Field = { left, right: size.width - 6, top, bottom };
  const x = xScale(block, left + 6, field.right - 22);
  const limits = limitLines(block.limits, y, field, () => seriesRoom(block.series, x, y));
  return [
    ...yAxis(y, field, block.y.label),
    ...xAxis(x, field, block.x.label),
    ...limits.lines,
    ...block.series.flatMap((series) => seriesLine(series, x, y)),
    ...block.series.flatMap((series) => seriesMarks(series, x, y)),
    ...limits.names,
    ...pointLabels(block.series, x, y, field, [...limits.taken, ...limitRooms(block.limits, y, field)]),
    ...names.drawn,
  ];
}

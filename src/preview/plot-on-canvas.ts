// A plot on the small picture of a page: its lines and marks; its letters stay away.
import type { PlotItem } from '../layout/placed.ts';
import { drawPlot } from '../plots/plot.ts';
import type { Canvas } from './canvas.ts';

export function drawPlotOn({ x, y, width, height, plot }: PlotItem, on: Canvas): void {
  for (const primitive of drawPlot(plot, { width, height })) {
    if (primitive.kind === 'dot') on.circle(x + primitive.x, y + primitive.y, primitive.size / 2, 0.5);
    if (primitive.kind === 'path' && primitive.stroke !== undefined && primitive.stroke.ink !== 'paper')
      on.stroke(moved(primitive.d, x, y, on), primitive.stroke.width, primitive.stroke.dash !== undefined);
  }
}

/** Path data of M, L and Z, moved to a place. */
function moved(d: string, x: number, y: number, on: Canvas): string {
  const steps = d.match(/[MLZ][^MLZ]*/g) ?? [];
  return steps
    .map((step) => {
      if (step.startsWith('Z')) return 'Z';
      const [dx = 0, dy = 0] = step.slice(1).trim().split(/[ ,]+/).map(Number);
      return step.charAt(0) + on.at(x + dx, y + dy);
    })
    .join('');
}

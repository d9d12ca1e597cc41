// The first side of a sheet as a small picture, drawn from what layout has placed: to be known again in a list, not to be read.
import type { PlacedItem, PlacedPage } from '../layout/placed.ts';
import { canvas, type Canvas } from './canvas.ts';
import { drawPlotOn } from './plot-on-canvas.ts';

/** Characters of a picture at most; where letters and codes would take more, they are drawn as grey bars and boxes. */
const most = 15_000;

/** Type from this size on stays letters in any case, in points. */
const large = 12;

/** An SVG of one page in points, black on white; `pages` is how many the sheet has. */
export function firstSide(page: PlacedPage, pages: number): string {
  const fine = drawn(page, pages, 0);
  return fine.length <= most ? fine : drawn(page, pages, large);
}

/** Type below `least` points, and square codes unless it is 0, are only hinted at. */
function drawn(page: PlacedPage, pages: number, least: number): string {
  const on = canvas(page.width, page.height);
  for (const item of page.items) draw(item, on, pages, least);
  return on.end();
}

function draw(item: PlacedItem, on: Canvas, pages: number, least: number): void {
  switch (item.kind) {
    case 'text':
      if (item.size < least) on.bar(item.x, item.y, item.width, item.size);
      else on.text(item.text, item.face, item.size, item.x, item.y, item.width);
      return;
    case 'total':
      on.text(item.before + String(pages), 'regular', item.size, item.x, item.y, undefined);
      return;
    case 'line':
      on.line(item.x1, item.y1, item.x2, item.y2, item.weight, item.dash !== undefined);
      return;
    case 'box':
      on.box(item, item.weight, item.use === 'cut');
      return;
    case 'fill':
      on.fill(item, item.grey);
      return;
    case 'photo':
      on.fill(item, 0.15);
      on.box(item, 0.5, false);
      return;
    case 'tick':
      on.stroke(
        `M${on.at(item.x + item.size * 0.2, item.y + item.size * 0.55)}L${on.at(item.x + item.size * 0.42, item.y + item.size * 0.8)}L${on.at(item.x + item.size * 0.85, item.y + item.size * 0.15)}`,
        1.8,
        false,
      );
      return;
    case 'circle':
      on.circle(item.x, item.y, item.radius, item.weight);
      return;
    case 'modules':
      code(item, on, least > 0);
      return;
    case 'plot':
      drawPlotOn(item, on);
      return;
    case 'anchor':
    case 'empty':
    case 'field':
      return;
  }
}

/** A square code by its rows, or as a grey square. */
function code(item: Extract<PlacedItem, { kind: 'modules' }>, on: Canvas, coarse: boolean): void {
  const { x, y, module, runs } = item;
  if (!coarse) {
    for (const { row, start, length } of runs) on.module(x + start * module, y + row * module, length * module, module);
    return;
  }
  const side = runs.reduce((far, run) => Math.max(far, run.row + 1, run.start + run.length), 0) * module;
  on.fill({ x, y, width: side, height: side }, 0.5);
}

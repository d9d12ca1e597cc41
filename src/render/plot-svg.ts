// A plot as SVG, drawn from the same primitives as on paper, once for a wide screen and once for a narrow one.
import { mostNames, seriesNames } from '../plots/names.ts';
import { drawPlot, type Primitive } from '../plots/plot.ts';
import { thinned } from '../plots/thinned.ts';
import type { PlotBlock } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import { markPath } from './plot-mark.ts';
import type { Scope } from './scope.ts';

/** Sizes in user units, chosen so that the 9 unit letters are read at arm's length once set; the stylesheet shows one. */
const sizes = { broad: { width: 480, height: 250 }, slim: { width: 250, height: 220 } } as const;

/** More points than this only make a line black. */
const most = { broad: 160, slim: 80 } as const;

/** The two drawings of a plot. Each has a title and a description; colours come from the stylesheet, through classes. */
export function plotSvg(block: PlotBlock, scope: Scope): string {
  return drawing(block, 'broad', scope) + drawing(block, 'slim', scope);
}

function drawing(block: PlotBlock, shape: keyof typeof sizes, scope: Scope): string {
  const { width, height } = sizes[shape];
  // Names of many series take no room from the field: the plot grows by them, and they are whole within their share of what it grows to.
  const room = (height * mostNames) / (1 - mostNames);
  const size = { width, height: height + seriesNames(block.series, width, 0, room).height };
  const id = `plot-${scope.nextNumber()}`;
  return (
    `<svg class="${shape}" viewBox="0 0 ${size.width} ${size.height}" role="img" aria-labelledby="${id}-title ${id}-text">` +
    `<title id="${id}-title">${escapeHtml(block.title)}</title><desc id="${id}-text">${escapeHtml(block.description)}</desc>` +
    `${drawn(drawPlot(shape === 'broad' ? thinned(block, most.broad) : forNarrow(block), size), shape === 'broad')}</svg>\n`
  );
}

/** On a telephone nothing hovers over a point: many stand there without their values, which the table has. */
function forNarrow(block: PlotBlock): PlotBlock {
  const few = thinned(block, most.slim);
  if (few === block) return block;
  const bare = few.series.map((series) => ({ ...series, points: series.points.map(({ x, y }) => ({ x, y })) }));
  return { ...few, series: bare };
}

/** Points without a title of their own are one path, as long as one mark follows the other. */
function drawn(primitives: readonly Primitive[], titled: boolean): string {
  let html = '';
  let marks = '';
  let mark = '';
  const flush = (): void => {
    if (marks !== '') html += `<path class="${mark}" d="${marks}"/>`;
    marks = '';
  };
  for (const primitive of primitives) {
    if (primitive.kind === 'dot' && (!titled || primitive.title === undefined)) {
      if (primitive.mark !== mark) flush();
      mark = primitive.mark;
      marks += markPath(primitive);
      continue;
    }
    flush();
    html += primitiveSvg(primitive);
  }
  flush();
  return html;
}

function primitiveSvg(primitive: Primitive): string {
  if (primitive.kind === 'path') return pathSvg(primitive);
  if (primitive.kind === 'dot') {
    const title = primitive.title === undefined ? '' : `<title>${escapeHtml(primitive.title)}</title>`;
    return `<path class="${primitive.mark}" d="${markPath(primitive)}">${title}</path>`;
  }
  const strong = primitive.strong === true ? ' class="strong"' : '';
  return (
    `<text${strong} x="${primitive.x}" y="${primitive.y}" font-size="${primitive.size}" text-anchor="${primitive.anchor}">` +
    `${escapeHtml(primitive.text)}</text>`
  );
}

function pathSvg(path: Extract<Primitive, { kind: 'path' }>): string {
  const classes = `fill-${path.fill ?? 'none'} stroke-${path.stroke?.ink ?? 'none'}`;
  const width = path.stroke === undefined ? '' : ` stroke-width="${path.stroke.width}"`;
  const dash =
    (path.stroke?.dash ?? []).length === 0 ? '' : ` stroke-dasharray="${path.stroke?.dash?.join(' ') ?? ''}"`;
  return `<path class="${classes}" d="${path.d}"${width}${dash}/>`;
}

// A plot as SVG, drawn from the same primitives as on paper, once for a wide screen and once for a narrow one.
import { drawPlot, type Primitive } from '../plots/plot.ts';
import type { PlotBlock } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import { markPath } from './plot-mark.ts';
import type { Scope } from './scope.ts';

/** Sizes in user units, chosen so that the 9 unit letters are read at arm's length once set; the stylesheet shows one. */
const sizes = { broad: { width: 480, height: 250 }, slim: { width: 250, height: 220 } } as const;

/** The two drawings of a plot. Each has a title and a description; colours come from the stylesheet, through classes. */
export function plotSvg(block: PlotBlock, scope: Scope): string {
  return drawing(block, 'broad', scope) + drawing(block, 'slim', scope);
}

function drawing(block: PlotBlock, shape: keyof typeof sizes, scope: Scope): string {
  const size = sizes[shape];
  const id = `plot-${scope.nextNumber()}`;
  return (
    `<svg class="${shape}" viewBox="0 0 ${size.width} ${size.height}" role="img" aria-labelledby="${id}-title ${id}-text">` +
    `<title id="${id}-title">${escapeHtml(block.title)}</title><desc id="${id}-text">${escapeHtml(block.description)}</desc>` +
    `${drawPlot(block, size).map(primitiveSvg).join('')}</svg>\n`
  );
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

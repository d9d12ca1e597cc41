// Blocks that are a picture with its words: plots, drawings, and square codes with their text.
import type { CodeBlock, DrawingBlock, PlotBlock } from '../../sheet/sheet.ts';
import { drawingSvg } from '../drawing-svg.ts';
import { escapeHtml } from '../escape.ts';
import { plotSvg } from '../plot-svg.ts';
import type { Scope } from '../scope.ts';
import { squareCodeSvg } from '../square-code.ts';

/** A plot below its title. */
export function plotHtml(block: PlotBlock, scope: Scope): string {
  return titled('plot', block.title, plotSvg(block, scope));
}

/** A drawing below its title. */
export function drawingHtml(block: DrawingBlock, scope: Scope): string {
  return titled('drawing', block.title, drawingSvg(block, scope));
}

function titled(kind: string, title: string, svg: string): string {
  return `<figure class="${kind}">\n<figcaption>${escapeHtml(title)}</figcaption>\n${svg}</figure>\n`;
}

/** A square code above its text. */
export function codeHtml({ text, caption }: CodeBlock): string {
  const words = `${escapeHtml(caption)} <span class="figure">${escapeHtml(text)}</span>`;
  return `<figure class="code">\n${squareCodeSvg(text)}\n<figcaption>${words}</figcaption>\n</figure>\n`;
}

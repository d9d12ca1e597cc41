// A square code as one SVG path: each run of dark modules is a stroke of one module's breadth.
import { squareModules, type SquareModules } from '../sheet/square-modules.ts';
import { escapeHtml } from './escape.ts';

/** Quiet modules that a reader needs on each side. */
const quiet = 4;

/** The SVG of a square code for `text`, error correction level M. Dark on a white ground in either colour scheme. */
export function squareCodeSvg(text: string): string {
  const modules = squareModules(text);
  const side = modules.size + 2 * quiet;
  let path = '';
  for (let row = 0; row < modules.size; row += 1) path += rowPath(modules, row);
  return (
    `<svg class="square-code" viewBox="0 0 ${side} ${side}" role="img" aria-label="${escapeHtml(`Square code: ${text}`)}">` +
    `<path class="ground" d="M0 0h${side}v${side}h-${side}z"/><path class="dark" d="${path}"/></svg>`
  );
}

function rowPath(modules: SquareModules, row: number): string {
  let path = '';
  let from = -1;
  let pen = 0;
  for (let column = 0; column <= modules.size; column += 1) {
    const dark = column < modules.size && modules.dark(row, column);
    if (dark && from < 0) from = column;
    if (dark || from < 0) continue;
    path += path === '' ? `M${from + quiet} ${row + quiet}.5` : `m${from - pen} 0`;
    path += `h${column - from}`;
    pen = column;
    from = -1;
  }
  return path;
}

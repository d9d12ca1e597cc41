// A drawing in true scale as SVG: its size is given in millimetres, and a line of 100 mm stands below it; a screen keeps neither.
import type { DrawingBlock, DrawingMark } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import type { Scope } from './scope.ts';

/** Millimetres of letters of nine points. */
const letters = 3.2;
/** Millimetres that a telephone is broad; a drawing that is broader is made small on it, and its letters are not. */
const telephone = 87;
/** A scale of hundreds of lines is laid on the metal and read there: it is drawn once. */
const fewMarks = 120;
const checkLine = 100;
const below = 12;

/** The drawing, a title and a description; colours come from the stylesheet, through classes. */
export function drawingSvg(block: DrawingBlock, scope: Scope): string {
  return block.sketch === undefined ? trueScale(block, scope) : sketches(block, block.sketch, scope);
}

/** As broad as the page, and arranged anew for a narrow screen; the stylesheet shows one. */
function sketches(block: DrawingBlock, slim: NonNullable<DrawingBlock['sketch']>, scope: Scope): string {
  return sketch('broad', block, block, scope) + sketch('slim', block, slim, scope);
}

function sketch(
  shape: 'broad' | 'slim',
  { title, description }: DrawingBlock,
  { size, marks }: NonNullable<DrawingBlock['sketch']>,
  scope: Scope,
): string {
  const id = `drawing-${scope.nextNumber()}`;
  return (
    `<svg class="${shape}" viewBox="-0.5 -0.5 ${size.width + 1} ${size.height + 1}" role="img" aria-labelledby="${id}-title ${id}-text">` +
    `<title id="${id}-title">${escapeHtml(title)}</title><desc id="${id}-text">${escapeHtml(description)}</desc>` +
    `${marks.map((mark) => markSvg(mark)).join('')}</svg>\n`
  );
}

function trueScale(block: DrawingBlock, scope: Scope): string {
  const id = `drawing-${scope.nextNumber()}`;
  const width = Math.max(block.size.width, checkLine);
  const height = block.size.height + below;
  const y = block.size.height + 4;
  const narrow = block.size.width > telephone && block.marks.length <= fewMarks ? onTelephone(block, scope) : '';
  const shape = narrow === '' ? '' : ' class="true broad"';
  const check: readonly DrawingMark[] = [
    { kind: 'line', x1: 0, y1: y, x2: checkLine, y2: y },
    { kind: 'line', x1: 0, y1: y - 2, x2: 0, y2: y + 2 },
    { kind: 'line', x1: checkLine, y1: y - 2, x2: checkLine, y2: y + 2 },
    { kind: 'label', x: 0, y: y + 6, text: 'On paper exactly 100 mm. A screen is not to scale.', anchor: 'start' },
  ];
  return (
    `<svg${shape} width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}-title ${id}-text">` +
    `<title id="${id}-title">${escapeHtml(block.title)}</title><desc id="${id}-text">${escapeHtml(block.description)}</desc>` +
    `${[...block.marks, ...check].map((mark) => markSvg(mark)).join('')}</svg>\n${narrow}`
  );
}

/** As small as the screen, with letters of the size of others; in no scale, so without the line that proves one. */
function onTelephone({ title, description, size, marks }: DrawingBlock, scope: Scope): string {
  const id = `drawing-${scope.nextNumber()}`;
  const times = size.width / telephone;
  const side = letters * times * 2;
  const below = letters * times;
  return (
    `<svg class="true slim" viewBox="${-side} -0.5 ${size.width + 2 * side} ${size.height + below}" role="img" aria-labelledby="${id}-title ${id}-text">` +
    `<title id="${id}-title">${escapeHtml(title)}</title><desc id="${id}-text">${escapeHtml(description)}</desc>` +
    `${marks.map((mark) => markSvg(mark, times)).join('')}</svg>\n`
  );
}

/** `times`: how much larger letters and lines are drawn than on paper; a text keeps clear of what it stands below. */
function markSvg(mark: DrawingMark, times = 1): string {
  const strong = mark.kind === 'label' && mark.strong === true ? ' class="strong"' : '';
  if (mark.kind === 'label')
    return `<text${strong} x="${mark.x}" y="${tidy(mark.y + (times - 1) * letters * ascent)}" font-size="${tidy(letters * times)}" text-anchor="${anchorOf(mark.anchor)}">${escapeHtml(mark.text)}</text>`;
  const stroke = 'class="fill-none stroke-ink"';
  if (mark.kind === 'circle')
    return `<circle ${stroke} stroke-width="${tidy(0.2 * times)}" cx="${mark.x}" cy="${mark.y}" r="${mark.radius}"/>`;
  const dash = mark.dashed === true ? ' stroke-dasharray="1.5 1"' : '';
  return `<path ${stroke} stroke-width="${tidy((mark.heavy === true ? 0.5 : 0.2) * times)}"${dash} d="M${mark.x1} ${mark.y1}L${mark.x2} ${mark.y2}"/>`;
}

/** Height of letters over their size. */
const ascent = 0.7;

function tidy(value: number): number {
  return Math.round(value * 100) / 100;
}

/** Written out, so that nothing but these three words can come into the attribute. */
function anchorOf(anchor: string): 'start' | 'middle' | 'end' {
  if (anchor === 'end') return 'end';
  return anchor === 'middle' ? 'middle' : 'start';
}

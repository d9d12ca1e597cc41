// Drawings in true scale: lengths as millimetres, and short ways to write their marks.
import { inUnit } from '../../quantity/quantity.ts';
import type { Written } from '../../quantity/quantity.ts';
import { millimetre } from '../../quantity/units.ts';
import type { DrawingMark } from '../../sheet/sheet.ts';

/** A written length in millimetres. */
export function inMillimetres(length: Written<'length'>): number {
  return inUnit(length.quantity, millimetre);
}

/** An upright line. */
export function upright(x: number, from: number, to: number, more: { heavy?: true; dashed?: true } = {}): DrawingMark {
  return { kind: 'line', x1: x, y1: from, x2: x, y2: to, ...more };
}

/** A level line. */
export function level(y: number, from: number, to: number): DrawingMark {
  return { kind: 'line', x1: from, y1: y, x2: to, y2: y };
}

/** A text with its middle at x. */
export function label(x: number, y: number, text: string): DrawingMark {
  return { kind: 'label', x, y, text, anchor: 'middle' };
}

/** The outline of a rectangle from the upper left corner. */
export function outline(x: number, y: number, width: number, height: number): readonly DrawingMark[] {
  return [
    level(y, x, x + width),
    level(y + height, x, x + width),
    upright(x, y, y + height),
    upright(x + width, y, y + height),
  ];
}

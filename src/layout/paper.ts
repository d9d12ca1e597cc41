// Sheets of paper, their margins and the frame that is left for content. All lengths in points.
import type { Paper, Sheet } from '../sheet/sheet.ts';
import type { Frame } from './placed.ts';

export const millimetre = 72 / 25.4;

/** Nothing may stand nearer to an edge: printers do not print there. */
export const unprintable = 6 * millimetre;

interface Format {
  readonly width: number;
  readonly height: number;
  readonly binding: number;
  readonly edge: number;
}

const formats: Record<Paper, Format> = {
  a4: { width: 595.28, height: 841.89, binding: 22 * millimetre, edge: 13 * millimetre },
  letter: { width: 612, height: 792, binding: 22 * millimetre, edge: 13 * millimetre },
  a5: { width: 419.53, height: 595.28, binding: 20 * millimetre, edge: 9 * millimetre },
  'half-letter': { width: 396, height: 612, binding: 20 * millimetre, edge: 9 * millimetre },
  tag: { width: 60 * millimetre, height: 120 * millimetre, binding: unprintable, edge: unprintable },
  // ISO/IEC 7810, ID-1: a bank card.
  card: { width: 85.6 * millimetre, height: 53.98 * millimetre, binding: unprintable, edge: unprintable },
};

/** Paper that takes one tag or one card, and nothing else of a sheet. */
export function takesOneCard(paper: Paper): boolean {
  return paper === 'tag' || paper === 'card';
}

export interface Leaf {
  readonly width: number;
  readonly height: number;
  /** Everything that may be printed on, running head and all. */
  readonly area: Frame;
}

/** The printed area of a leaf; on the back of a leaf bound at the left the wide margin is at the right. */
export function leaf(sheet: Sheet, back: boolean): Leaf {
  const { width, height, binding, edge } = formats[sheet.paper];
  const top = sheet.binding === 'top' && !back ? binding : edge;
  const bottom = sheet.binding === 'top' && back ? binding : edge;
  const left = sheet.binding === 'left' && !back ? binding : edge;
  const right = sheet.binding === 'left' && back ? binding : edge;
  const area = { x: left, y: top, width: width - left - right, height: height - top - bottom };
  return { width, height, area };
}

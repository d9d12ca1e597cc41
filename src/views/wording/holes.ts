// The holes of a cover or head, drawn where they lie: a circle with a cross, and a text below each.
import type { ScrewPosition } from '../../records/model.ts';
import type { DrawingBlock, DrawingMark } from '../../sheet/sheet.ts';
import { inMillimetres, label, level, outline, upright } from './true-scale.ts';

/** Room round the outermost holes, and half the width of the cross that marks a hole. */
const margin = 14;
const cross = 5;
/** A hole is pushed through the card with the screw itself; the circle is where its head lies. */
const head = 5;

export interface Hole {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/** The holes from the upper left corner of the drawing, each with its text by its number in the list (from 0). */
export function holesOf(positions: readonly ScrewPosition[], textOf: (index: number) => string): readonly Hole[] {
  const left = Math.min(...positions.map((one) => inMillimetres(one.right)));
  const top = Math.max(...positions.map((one) => inMillimetres(one.up)));
  return positions.map((one, index) => ({
    x: margin + inMillimetres(one.right) - left,
    y: margin + top - inMillimetres(one.up),
    text: textOf(index),
  }));
}

function holeMarks({ x, y, text }: Hole): readonly DrawingMark[] {
  return [
    { kind: 'circle', x, y, radius: head },
    level(y, x - cross / 2, x + cross / 2),
    upright(x, y - cross / 2, y + cross / 2),
    label(x, y + head + 4, text),
  ];
}

/** The drawing of the holes in true scale. */
export function holeDrawing(holes: readonly Hole[], title: string, description: string): DrawingBlock {
  const width = Math.max(...holes.map((hole) => hole.x)) + margin;
  const height = Math.max(...holes.map((hole) => hole.y)) + margin;
  return {
    type: 'drawing',
    title,
    description,
    size: { width, height },
    marks: [...outline(0, 0, width, height), ...holes.flatMap(holeMarks)],
  };
}

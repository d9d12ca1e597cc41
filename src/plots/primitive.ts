// What a plot is drawn with: three kinds of mark, drawn alike as SVG on screen and as vectors on paper.

/** Ink is the full text colour, rule a thin-line colour (paper: grey or thin black), paper the ground. */
export type Ink = 'ink' | 'rule' | 'paper';

export type PointMark = 'dot' | 'square' | 'triangle' | 'cross';

/**
 * Lengths are points (1/72 inch) on paper and user units on screen; x grows to the right, y downwards,
 * the origin is the upper left corner of the plot.
 */
export type Primitive =
  /** `d` is SVG path data of the commands M, L and Z in absolute coordinates. */
  | {
      readonly kind: 'path';
      readonly d: string;
      readonly stroke?: { readonly ink: Ink; readonly width: number; readonly dash?: readonly number[] };
      readonly fill?: Ink;
    }
  /** `y` is the baseline; `anchor` says which end of the text stands at `x`. Never under 9. */
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly strong?: boolean;
    }
  /** A point of a series; `size` is its width and height. `title` says the value in words (screen only). */
  | {
      readonly kind: 'dot';
      readonly x: number;
      readonly y: number;
      readonly size: number;
      readonly mark: PointMark;
      readonly title?: string;
    };
